/** Files that are wholly old or wholly new, whatever happens while they are written. */
package planewright.app.files;
