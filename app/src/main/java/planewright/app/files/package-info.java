/** Files that are wholly old or wholly new, whatever happens while they are written, and the mark before a text. */
package planewright.app.files;
