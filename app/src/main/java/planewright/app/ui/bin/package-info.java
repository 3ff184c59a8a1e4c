/** What was deleted and can be brought back. */
package planewright.app.ui.bin;
