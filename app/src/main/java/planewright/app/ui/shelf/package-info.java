/** The shelf: all builds, grouped by their life. */
package planewright.app.ui.shelf;
