/**
 * Outlines: shapes at true size. They lie in the journal as SVG files with millimetres, under their hashes, so that any
 * browser shows and prints them; here they are read back into lines and curves. A file that draws in a way that is not read,
 * or that could do harm, is refused with the reason; none is taken in by half.
 */
package planewright.app.outline;
