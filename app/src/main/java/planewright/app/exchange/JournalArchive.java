package planewright.app.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import planewright.app.files.SafeFile;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Slow;
import planewright.app.store.JournalFolder;

/**
 * A journal, or one build as a journal of its own, as a ZIP file that can be brought in again. Of the same files the same archive is
 * made, to the byte.
 */
public final class JournalArchive {
    private static final Set<String> HEADS = Set.of(JournalFolder.HEAD, "README.md", ".gitignore", ".gitattributes");

    private final JournalFolder journal;
    private final Watch watch;
    private final Map<String, Path> files = new TreeMap<>();
    private final Set<String> keys = new HashSet<>();
    private final Set<LeftOut> leftOut = new LinkedHashSet<>();

    private JournalArchive(JournalFolder journal, Watch watch) {
        this.journal = journal;
        this.watch = watch;
    }

    /** Writes the whole journal; hidden files, links and the program's own lock stay behind. */
    public static Taken take(JournalFolder journal, PictureForm form, Path zip, boolean replace, Watch watch)
            throws IOException {
        Slow.work("taking a journal out");
        var archive = new JournalArchive(journal, watch);
        archive.gather(journal.folder());
        return archive.write(form, zip, replace, Map.of(), () -> {
            archive.gather(journal.folder().resolve("photos"));
            archive.gather(journal.folder().resolve("outlines"));
        });
    }

    /**
     * Writes one build, the pictures of its log, and templates that came from it, went to it or flew on it, as a journal of
     * that name.
     */
    public static Taken take(
            JournalFolder journal, BuildRecord build, PictureForm form, Path zip, boolean replace, Watch watch)
            throws IOException {
        Slow.work("taking a build out");
        var archive = new JournalArchive(journal, watch);
        for (var head : HEADS) {
            archive.add(journal.folder().resolve(head));
        }
        archive.gather(journal.folder().resolve("schema"));
        archive.gather(journal.folderOf(build));
        archive.addNamed(build);
        var id = UUID.nameUUIDFromBytes((journal.id() + "\n" + build.id()).getBytes(StandardCharsets.UTF_8));
        var name = journal.journal().name() + ": " + build.name();
        return archive.write(
                form,
                zip,
                replace,
                Map.of(JournalFolder.HEAD, JournalFolder.head(id, name).getBytes(StandardCharsets.UTF_8)),
                () -> archive.addNamed(build));
    }

    /** Finds what records name. */
    private interface Listing {
        void run() throws IOException;
    }

    private void addNamed(BuildRecord build) throws IOException {
        addPictures(build);
        addTemplates(build);
    }

    private void addPictures(BuildRecord build) {
        for (var entry : journal.journal().log(build.id())) {
            for (var picture : entry.pictures()) {
                addOrTell(journal.pictures().file(picture));
            }
        }
    }

    private void addOrTell(Path file) {
        if (Files.isRegularFile(file)) {
            add(file);
        } else {
            leftOut.add(new LeftOut(name(file), ExchangeWords.say("it is missing")));
        }
    }

    private void addTemplates(BuildRecord build) throws IOException {
        for (var template : journal.journal().templates()) {
            boolean belongs = Stream.of(
                            template.cameFrom().stream(), template.wentTo().stream(), template.flewOn().stream())
                    .flatMap(days -> days)
                    .anyMatch(day -> day.build().equals(build.id()));
            if (belongs) {
                add(journal.fileOf(template));
                template.outline()
                        .ifPresent(hash -> addOrTell(journal.outlines().file(hash)));
            }
        }
    }

    private void gather(Path place) throws IOException {
        if (!Files.isDirectory(place)) {
            return;
        }
        Files.walkFileTree(place, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                if (!folder.equals(place) && folder.getFileName().toString().startsWith(".")) {
                    leftOut.add(new LeftOut(name(folder), ExchangeWords.say("it is hidden")));
                    return FileVisitResult.SKIP_SUBTREE;
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (!attributes.isRegularFile()) {
                    leftOut.add(new LeftOut(name(file), ExchangeWords.say("it is a link or a device")));
                } else if (!name(file).equals(".lock") && !SafeFile.isLeftOver(file)) {
                    add(file);
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException failure) {
                leftOut.add(new LeftOut(
                        name(file),
                        ExchangeWords.say(
                                "it cannot be read ({0})", failure.getClass().getSimpleName())));
                return FileVisitResult.CONTINUE;
            }
        });
    }

    /** What goes out must be able to come in again, on every system. */
    private void add(Path file) {
        var name = name(file);
        var problem = ArchiveName.problem(name);
        if (problem.isPresent()) {
            leftOut.add(new LeftOut(name, problem.get()));
        } else if (!files.containsKey(name) && !keys.add(ArchiveName.key(name))) {
            leftOut.add(new LeftOut(name, ExchangeWords.say("on some systems its name is that of another file")));
        } else if (Files.isRegularFile(file)) {
            files.put(name, file);
        }
    }

    private Taken write(PictureForm form, Path zip, boolean replace, Map<String, byte[]> instead, Listing named)
            throws IOException {
        var target = Target.file(zip, replace);
        Target.outside(target, journal.folder());
        var counts = new int[2];
        SafeFile.write(target, out -> {
            var archived = new ArchivedFiles(out, form, leftOut);
            write(archived, instead, named);
            counts[0] = archived.number();
            counts[1] = archived.tellPlace();
        });
        return new Taken(counts[0], counts[1], List.copyOf(leftOut));
    }

    /** Records last, for they name pictures, and what has come in since the files were listed before them. */
    private void write(ArchivedFiles archived, Map<String, byte[]> instead, Listing named) throws IOException {
        writeContents(archived, Set.of());
        var written = Set.copyOf(files.keySet());
        named.run();
        writeContents(archived, written);
        for (var file : files.entrySet()) {
            if (isRecord(file.getKey())) {
                var content = instead.get(file.getKey());
                write(
                        file.getKey(),
                        name -> archived.add(name, content == null ? Files.readAllBytes(file.getValue()) : content));
            }
        }
        archived.finish();
    }

    private void writeContents(ArchivedFiles archived, Set<String> written) throws IOException {
        for (var file : files.entrySet()) {
            if (!isRecord(file.getKey()) && !written.contains(file.getKey())) {
                write(file.getKey(), name -> archived.add(name, file.getValue()));
            }
        }
    }

    private interface Adding {
        void add(String name) throws IOException;
    }

    /** A file may be deleted or renamed after it was listed. */
    private void write(String name, Adding adding) throws IOException {
        watch.reached(name);
        try {
            adding.add(name);
        } catch (NoSuchFileException gone) {
            leftOut.add(new LeftOut(name, ExchangeWords.say("it is missing")));
        }
    }

    private static boolean isRecord(String name) {
        return name.endsWith(".json");
    }

    private String name(Path file) {
        return Tree.name(journal.folder(), file);
    }
}
