package planewright.app.store;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Kept;

/** Reads every build and entry below a journal's folder, and notes what cannot be read. */
final class JournalLoader {
    private final Path folder;
    private final Map<String, Path> files;
    private final List<BuildRecord> builds = new ArrayList<>();
    private final List<EntryRecord> entries = new ArrayList<>();
    private final List<SetAside> setAside = new ArrayList<>();

    /**
     * @param folder the journal's
     * @param files is filled with the file of each record, by id
     */
    JournalLoader(Path folder, Map<String, Path> files) {
        this.folder = folder;
        this.files = files;
    }

    /** What was read and what was not. */
    record Loaded(List<BuildRecord> builds, List<EntryRecord> entries, List<SetAside> setAside) {}

    Loaded load() throws IOException {
        var root = folder.resolve("builds");
        if (Files.isDirectory(root)) {
            try (var folders = Files.newDirectoryStream(root, Files::isDirectory)) {
                for (var build : folders) {
                    load(build);
                }
            }
        }
        return new Loaded(builds, entries, List.copyOf(setAside));
    }

    private void load(Path build) throws IOException {
        var head = build.resolve("build.json");
        BuildRecord record = null;
        try {
            record = BuildFile.read(JsonFiles.read(head));
            keep(head, record);
            builds.add(record);
        } catch (IOException unreadable) {
            setAside(head, unreadable);
            record = null;
        }
        for (var file : jsonFiles(build.resolve("entries"))) {
            loadEntry(file, record);
        }
    }

    private void loadEntry(Path file, BuildRecord build) {
        try {
            var entry = EntryFile.read(JsonFiles.read(file));
            if (build == null) {
                throw new Unreadable("its build cannot be read");
            }
            if (!entry.build().equals(build.id())) {
                throw new Unreadable("field 'build' is '" + entry.build() + "'; accepted: '" + build.id()
                        + "', the build in whose folder it lies");
            }
            keep(file, entry);
            entries.add(entry);
        } catch (IOException unreadable) {
            setAside(file, unreadable);
        }
    }

    private void keep(Path file, Kept record) throws Unreadable {
        if (!Names.isUlid(record.id())) {
            throw new Unreadable(
                    "field 'id' is '" + record.id() + "'; accepted: a ULID of 26 capital letters and digits");
        }
        var first = files.putIfAbsent(record.id(), file);
        if (first != null) {
            throw new Unreadable("its id " + record.id() + " is also that of " + folder.relativize(first));
        }
    }

    private void setAside(Path file, IOException unreadable) {
        var reason = unreadable instanceof Unreadable
                ? unreadable.getMessage()
                : "it cannot be read (" + unreadable.getClass().getSimpleName() + ")";
        setAside.add(new SetAside(file, reason));
    }

    private static List<Path> jsonFiles(Path folder) throws IOException {
        var found = new ArrayList<Path>();
        if (Files.isDirectory(folder)) {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    if (file.getFileName().toString().endsWith(".json")) {
                        found.add(file);
                    }
                    return FileVisitResult.CONTINUE;
                }
            });
        }
        found.sort(null);
        return found;
    }
}
