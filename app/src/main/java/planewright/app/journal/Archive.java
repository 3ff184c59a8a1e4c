package planewright.app.journal;

import java.util.Collection;
import java.util.List;

/** Where the entries lie that are not in memory. Reading waits for the disk. */
public interface Archive {
    /**
     * Those of a build's entries that can be read, in any order.
     *
     * @param ids of the entries
     * @throws java.io.UncheckedIOException if the place itself cannot be reached
     */
    List<EntryRecord> read(String build, Collection<String> ids);
}
