/** The shape of the build that is shown: a drawing with handles and a table of the same numbers. */
package planewright.app.ui.planform;
