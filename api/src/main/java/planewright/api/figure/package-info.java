/**
 * Charts and drawings as data. A calculator says what is to be seen; the program decides colours, fonts and how it is
 * drawn on screen and on paper.
 */
package planewright.api.figure;
