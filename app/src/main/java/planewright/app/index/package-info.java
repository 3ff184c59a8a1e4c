/**
 * Search over the open journal. The index is a cache: it is brought up to date when it is opened, made anew when it is
 * missing or damaged, and follows every edit.
 */
package planewright.app.index;
