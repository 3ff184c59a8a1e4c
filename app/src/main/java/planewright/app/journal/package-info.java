/**
 * The open journal: its records, the edits one can make, undo, and word of every change. It knows no files and no window;
 * what it holds is made durable by the {@link planewright.app.journal.Storage} it was opened with, before an edit counts
 * as done.
 */
package planewright.app.journal;
