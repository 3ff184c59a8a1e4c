package planewright.app.journal;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import planewright.api.figure.Outline;

/** Where the entries lie that are not in memory. Reading waits for the disk. */
public interface Archive {
    /**
     * Those of a build's entries that can be read, in any order.
     *
     * @param ids of the entries
     * @throws java.io.UncheckedIOException if the place itself cannot be reached
     */
    List<EntryRecord> read(String build, Collection<String> ids);

    /** An entry's stamp if every later change of its file shows in it; else zero. */
    default long settled(long stamp) {
        return stamp;
    }

    /** The outline of that hash; empty where there is none that can be read. */
    default Optional<Outline> outline(String hash) {
        return Optional.empty();
    }
}
