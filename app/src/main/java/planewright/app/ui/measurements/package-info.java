/** Every measurement of the build that is shown, with its history. */
package planewright.app.ui.measurements;
