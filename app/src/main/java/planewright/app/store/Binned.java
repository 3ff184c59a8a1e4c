package planewright.app.store;

import java.nio.file.Path;
import java.time.Instant;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Kept;

/**
 * A deleted record that the journal still keeps.
 *
 * @param file where it lies
 * @param record what it says
 * @param deleted when it was deleted
 */
public record Binned(Path file, Kept record, Instant deleted) {
    /** What it is called: a build's name, an entry's title or else its kind. */
    public String title() {
        if (record instanceof EntryRecord entry) {
            return entry.title().isBlank() ? entry.kind().word() : entry.title();
        }
        return ((BuildRecord) record).name();
    }
}
