package planewright.app.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
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

    /** What it is called: its name or title, or else the word for it. */
    public String title() {
        return name().orElseGet(this::word);
    }

    /** The name of a build or template, or an entry's title; empty for what has none. */
    public Optional<String> name() {
        if (record instanceof EntryRecord entry) {
            return Optional.of(entry.title()).filter(title -> !title.isBlank());
        }
        if (record instanceof BuildRecord build) {
            return Optional.of(build.name());
        }
        return record instanceof TemplateRecord template ? Optional.of(template.name()) : Optional.empty();
    }

    /** The word for what has no name: of an entry what kind of entry it is. */
    public String word() {
        return record instanceof EntryRecord entry ? entry.kind().word() : kind();
    }
}
