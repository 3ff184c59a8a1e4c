/** One thing over all builds, and how it goes with another. */
package planewright.app.ui.across;
