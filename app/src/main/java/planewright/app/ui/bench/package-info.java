/** The bench over all builds: what cures, and what may be touched. */
package planewright.app.ui.bench;
