package planewright.app.across;

import java.time.LocalDateTime;
import java.util.Optional;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.shared.quantity.Written;

/**
 * A value that a build has.
 *
 * @param entry where it stands; empty for what follows from the build itself
 */
public record BuildValue(BuildRecord build, Written quantity, Source source, Optional<EntryRecord> entry) {
    /** When it was measured or set. */
    public Optional<LocalDateTime> at() {
        return entry.map(EntryRecord::at);
    }
}
