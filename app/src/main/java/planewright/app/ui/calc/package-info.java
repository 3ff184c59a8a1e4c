/** Calculators: a form and a results page made from what a calculator says of itself. */
package planewright.app.ui.calc;
