/** What could not be read or used, and why. */
package planewright.app.ui.notices;
