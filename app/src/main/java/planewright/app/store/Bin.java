package planewright.app.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import planewright.app.files.SafeFile;
import planewright.app.journal.Kept;

/** What was deleted, byte for byte, in the journal's folder {@code bin} until somebody throws it away. */
final class Bin {
    private final Path folder;

    /**
     * @param folder where deleted records lie; made when the first one comes
     */
    Bin(Path folder) {
        this.folder = folder;
    }

    /** Keeps a text under an id of its own. */
    void put(String id, String text) throws IOException {
        SafeFile.write(file(id), text.getBytes(StandardCharsets.UTF_8));
    }

    /** Takes a record's file in; where the disk has no room for a copy, the file itself. */
    void take(String id, Path file, String text) throws IOException {
        try {
            put(id, text);
        } catch (IOException noRoom) {
            try {
                SafeFile.move(file, file(id));
            } catch (IOException second) {
                noRoom.addSuppressed(second);
                throw noRoom;
            }
            return;
        }
        SafeFile.delete(file);
    }

    /** The text of a deleted record; empty where there is none that can be read. */
    Optional<String> text(String id) {
        try {
            return Files.isRegularFile(file(id), LinkOption.NOFOLLOW_LINKS)
                    ? Optional.of(JsonFiles.content(file(id)))
                    : Optional.empty();
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    /** Throws a record away for good. */
    void forget(String id) throws IOException {
        if (Files.exists(file(id), LinkOption.NOFOLLOW_LINKS)) {
            SafeFile.delete(file(id));
        }
    }

    /** What can be brought back, the last deleted first. Files that are no records of ours are left alone and out. */
    List<Binned> all() throws IOException {
        var found = new ArrayList<Binned>();
        if (Files.isDirectory(folder)) {
            try (var files = Files.newDirectoryStream(folder, "*.json")) {
                for (var file : files) {
                    record(file).ifPresent(found::add);
                }
            }
        }
        found.sort(Comparator.comparing(Binned::deleted).reversed());
        return found;
    }

    private Optional<Binned> record(Path file) throws IOException {
        try {
            var tree = JsonFiles.read(file);
            Kept record = RecordFiles.read(tree, file.getFileName().toString().replaceFirst("\\.json$", ""));
            return file(record.id()).equals(file)
                    ? Optional.of(new Binned(
                            file, record, Files.getLastModifiedTime(file).toInstant()))
                    : Optional.empty();
        } catch (Unreadable noRecord) {
            return Optional.empty();
        }
    }

    private Path file(String id) {
        return folder.resolve(id + ".json");
    }
}
