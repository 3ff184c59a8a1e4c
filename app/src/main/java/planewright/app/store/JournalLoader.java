package planewright.app.store;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Kept;

/** Reads every record below a journal's folder, and notes what cannot be read. */
final class JournalLoader {
    private final Path folder;
    private final Map<String, Path> files;
    private final List<BuildRecord> builds = new ArrayList<>();
    private final List<EntryRecord> entries = new ArrayList<>();
    private final List<Kept> others = new ArrayList<>();
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
    record Loaded(List<BuildRecord> builds, List<EntryRecord> entries, List<Kept> others, List<SetAside> setAside) {}

    Loaded load() throws IOException {
        var root = folder.resolve("builds");
        if (Files.isDirectory(root)) {
            for (var build : folders(root)) {
                load(build);
            }
        }
        for (var file : jsonFiles(folder.resolve(RecordFiles.TEMPLATES), Names::isOurs)) {
            loadOther(file, FileKind.TEMPLATE);
        }
        loadOther(folder.resolve(RecordFiles.CALENDAR), FileKind.CALENDAR);
        loadOther(folder.resolve(RecordFiles.MATERIALS), FileKind.MATERIALS);
        return new Loaded(builds, entries, others, List.copyOf(setAside));
    }

    private void loadOther(Path file, FileKind<?> kind) {
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try {
            var record = kind.read(JsonFiles.read(plain(file)));
            if (kind == FileKind.TEMPLATE) {
                requireUlid(record);
            }
            claim(file, record);
            others.add(record);
        } catch (IOException unreadable) {
            setAside(file, unreadable);
        }
    }

    private void load(Path build) throws IOException {
        var head = build.resolve("build.json");
        var entryFiles = jsonFiles(build.resolve("entries"), Names::isUlid);
        if (entryFiles.isEmpty() && !Files.exists(head, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        BuildRecord record = null;
        try {
            record = FileKind.BUILD.read(JsonFiles.read(plain(head)));
            keep(head, record);
            builds.add(record);
        } catch (IOException unreadable) {
            setAside(head, unreadable);
            record = null;
        }
        for (var file : entryFiles) {
            loadEntry(file, record);
        }
    }

    private void loadEntry(Path file, BuildRecord build) {
        try {
            var entry = FileKind.ENTRY.read(JsonFiles.read(plain(file)));
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
        requireUlid(record);
        claim(file, record);
    }

    private static void requireUlid(Kept record) throws Unreadable {
        if (!Names.isUlid(record.id())) {
            throw new Unreadable(
                    "field 'id' is '" + record.id() + "'; accepted: a ULID of 26 capital letters and digits");
        }
    }

    private void claim(Path file, Kept record) throws Unreadable {
        var first = files.putIfAbsent(record.id(), file);
        if (first != null) {
            throw new Unreadable("its id " + record.id() + " is also that of " + folder.relativize(first));
        }
    }

    private void setAside(Path file, IOException unreadable) {
        var reason = "it cannot be read (" + unreadable.getClass().getSimpleName() + ")";
        if (unreadable instanceof Unreadable) {
            reason = unreadable.getMessage();
        } else if (unreadable instanceof NoSuchFileException) {
            reason = "it is missing";
        }
        setAside.add(new SetAside(file, reason));
    }

    /** A link would let a journal show files from elsewhere, and reading a pipe or device may never end. */
    private static Path plain(Path file) throws IOException {
        var attributes = Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        if (!attributes.isRegularFile()) {
            throw new Unreadable("it is a link, a folder or a device; accepted: a plain file");
        }
        return file;
    }

    /** Those named as we name them come first: of two with one id, the copy is set aside. */
    private List<Path> folders(Path root) throws IOException {
        var found = new ArrayList<Path>();
        try (var folders = Files.newDirectoryStream(root, Files::isDirectory)) {
            for (var build : folders) {
                if (Files.isSymbolicLink(build)) {
                    setAside(build, new Unreadable("it is a link; accepted: a folder"));
                } else {
                    found.add(build);
                }
            }
        }
        found.sort(ownNamesFirst(Names::isOurs));
        return found;
    }

    private List<Path> jsonFiles(Path folder, Predicate<String> ours) throws IOException {
        var found = new ArrayList<Path>();
        if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    if (file.getFileName().toString().endsWith(".json") || Files.isDirectory(file)) {
                        found.add(file);
                    }
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFileFailed(Path file, IOException failure) {
                    setAside(file, failure);
                    return FileVisitResult.CONTINUE;
                }
            });
        }
        found.sort(ownNamesFirst(name -> ours.test(name.replaceFirst("\\.json$", ""))));
        return found;
    }

    private static Comparator<Path> ownNamesFirst(Predicate<String> ours) {
        return Comparator.<Path, Boolean>comparing(
                        path -> !ours.test(path.getFileName().toString()))
                .thenComparing(Comparator.naturalOrder());
    }
}
