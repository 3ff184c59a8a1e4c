/** The log of the build that is shown: its entries to read, and each in an editor in its own place. */
package planewright.app.ui.log;
