/** Charts and drawings on a {@code Graphics2D}: of the window, of a picture, of a page. */
package planewright.app.figure;
