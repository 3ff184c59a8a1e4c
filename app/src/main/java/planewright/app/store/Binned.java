package planewright.app.store;

import java.nio.file.Path;
import java.time.Instant;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Kept;
import planewright.app.journal.TemplateRecord;

/**
 * A deleted record that the journal still keeps.
 *
 * @param file where it lies
 * @param record what it says
 * @param deleted when it was deleted
 */
public record Binned(Path file, Kept record, Instant deleted) {
    /** What kind of record it is, in a word. */
    public String kind() {
        return FileKind.of(record).word();
    }

    /** What it is called: its name, an entry's title or else its kind. */
    public String title() {
        if (record instanceof EntryRecord entry) {
            return entry.title().isBlank() ? entry.kind().word() : entry.title();
        }
        if (record instanceof BuildRecord build) {
            return build.name();
        }
        return record instanceof TemplateRecord template ? template.name() : kind();
    }
}
