/** The mass ledger of the build that is shown. */
package planewright.app.ui.parts;
