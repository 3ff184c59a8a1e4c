/**
 * Bringing in what lies elsewhere (pictures, tables, notes, a journal in an archive) and taking out what the journal holds
 * (archives, tables, pages to read in a browser). What is brought in becomes one edit, wholly or not at all; what is taken
 * out stands under its name only when it is complete.
 */
package planewright.app.exchange;
