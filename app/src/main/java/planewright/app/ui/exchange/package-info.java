/** Bringing pictures, tables, notes and journals in, and taking archives, tables and pages out. */
package planewright.app.ui.exchange;
