/** Choosing the journal that the window is open on. */
package planewright.app.ui.journals;
