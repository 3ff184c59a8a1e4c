/** Finding entries by their words. */
package planewright.app.ui.search;
