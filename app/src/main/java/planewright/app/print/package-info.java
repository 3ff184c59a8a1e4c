/** Sheets of paper: an entry, a log, a calculator's answer, as PDF with searchable text and vector figures. */
package planewright.app.print;
