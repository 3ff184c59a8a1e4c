/** One build: what it is, and the tabs of its pages. */
package planewright.app.ui.build;
