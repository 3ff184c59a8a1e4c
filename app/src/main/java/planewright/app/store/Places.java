package planewright.app.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Kept;

/**
 * Where the file of each record lies. Of entries only those are remembered that lie elsewhere than we would put them: there are
 * too many of them.
 */
final class Places {
    private final Path folder;
    private final Map<String, Path> files = new ConcurrentHashMap<>();

    /**
     * @param folder the journal's
     */
    Places(Path folder) {
        this.folder = folder;
    }

    /** A record lies in that file. */
    void note(Kept record, Path file) throws IOException {
        if (record instanceof EntryRecord entry) {
            noteEntry(entry.build(), entry.id(), file);
        } else {
            files.put(record.id(), file);
        }
    }

    /** An entry lies in that file. */
    void noteEntry(String build, String id, Path file) throws IOException {
        if (file.equals(ours(build, id))) {
            files.remove(id);
        } else {
            files.put(id, file);
        }
    }

    void forget(Kept record) {
        files.remove(record.id());
    }

    /** The file of an entry that lies elsewhere than we would put it. */
    Optional<Path> oddly(String id) {
        return Optional.ofNullable(files.get(id));
    }

    /** Where a record lies, or would. */
    Path of(Kept record) throws IOException {
        if (record instanceof EntryRecord entry) {
            return entry(entry.build(), entry.id());
        }
        var known = files.get(record.id());
        return known == null ? RecordFiles.place(folder, record) : known;
    }

    /** Where an entry lies, or would. */
    Path entry(String build, String id) throws IOException {
        var odd = files.get(id);
        return odd == null ? ours(build, id) : odd;
    }

    /** Whether an entry lies where it was seen last. */
    boolean isPlace(String id, Path file) {
        var odd = files.get(id);
        return odd == null ? file.getParent().getFileName().toString().equals(Names.yearOf(id)) : odd.equals(file);
    }

    private Path ours(String build, String id) throws IOException {
        var head = files.get(build);
        if (head == null) {
            throw new IOException(StoreWords.say(
                    "entry {0} belongs to build {1}, which is not in the journal; make the build first", id, build));
        }
        return head.resolveSibling(Names.pathOf(id));
    }
}
