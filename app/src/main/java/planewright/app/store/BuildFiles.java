package planewright.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import planewright.app.files.SafeFile;

/**
 * The files of one build as they lie on disk.
 *
 * @param folder of the build
 * @param head its {@code build.json}; empty where there is none
 * @param entries what could be entries, those first that are named as we name them: of two with one id, the copy is set aside
 * @param leftOvers what saves that were cut short have left
 * @param unreadable what could not even be looked at
 */
record BuildFiles(
        Path folder, Optional<Found> head, List<Found> entries, List<Path> leftOvers, List<SetAside> unreadable) {
    private static final String ENDING = ".json";

    /** A file and what the file system says of it. */
    record Found(Path file, BasicFileAttributes attributes) {
        long stamp() {
            return Stamp.of(attributes);
        }

        /**
         * A link would let a journal show files from elsewhere, and reading a pipe or device may never end.
         *
         * @throws Unreadable if it is not a plain file
         */
        Path plain() throws Unreadable {
            if (!attributes.isRegularFile()) {
                throw new Unreadable("it is a link, a folder or a device; accepted: a plain file");
            }
            return file;
        }
    }

    /** All folders that could be those of builds, in order; links are told as unreadable. */
    static List<Path> folders(Path builds, List<SetAside> unreadable) throws IOException {
        var found = new ArrayList<Path>();
        if (Files.isDirectory(builds)) {
            try (var folders = Files.newDirectoryStream(builds, Files::isDirectory)) {
                for (var build : folders) {
                    if (Files.isSymbolicLink(build)) {
                        unreadable.add(new SetAside(build, StoreWords.say("it is a link; accepted: a folder")));
                    } else {
                        found.add(build);
                    }
                }
            }
        }
        found.sort(ownNamesFirst(Names::isOurs));
        return found;
    }

    static BuildFiles in(Path folder) throws IOException {
        var ours = new ArrayList<Found>();
        var odd = new ArrayList<Found>();
        var leftOvers = new ArrayList<Path>();
        var unreadable = new ArrayList<SetAside>();
        var root = folder.resolve("entries");
        if (Files.exists(root, LinkOption.NOFOLLOW_LINKS)) {
            FileWalk.under(root, new FileWalk.Seen() {
                @Override
                public void file(Path file, BasicFileAttributes attributes) {
                    var name = file.getFileName().toString();
                    if (isJson(name) && Names.isUlid(nameOf(name))) {
                        ours.add(new Found(file, attributes));
                    } else if (isJson(name) || attributes.isSymbolicLink() && Files.isDirectory(file)) {
                        odd.add(new Found(file, attributes));
                    } else if (SafeFile.isLeftOver(file)) {
                        leftOvers.add(file);
                    }
                }

                @Override
                public void failed(Path file, IOException failure) {
                    unreadable.add(setAside(file, failure));
                }
            });
        }
        odd.sort(Comparator.comparing(Found::file));
        ours.addAll(odd);
        return new BuildFiles(folder, head(folder), ours, leftOvers, unreadable);
    }

    static Optional<Found> head(Path folder) throws IOException {
        var head = folder.resolve(RecordFiles.HEAD);
        try {
            return Optional.of(
                    new Found(head, Files.readAttributes(head, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)));
        } catch (NoSuchFileException none) {
            return Optional.empty();
        }
    }

    /** Whether nothing in it looks like a build. */
    boolean isNone() {
        return head.isEmpty() && entries.isEmpty() && unreadable.isEmpty();
    }

    /** JSON files in a folder itself, those first that are named as we name them. */
    static List<Path> json(Path folder) throws IOException {
        var found = new ArrayList<Path>();
        try (var files = Files.newDirectoryStream(folder)) {
            for (var file : files) {
                if (isJson(file)) {
                    found.add(file);
                }
            }
        }
        found.sort(ownNamesFirst(name -> Names.isOurs(nameOf(name))));
        return found;
    }

    static void requireUlid(String id) throws Unreadable {
        if (!Names.isUlid(id)) {
            throw new Unreadable("field 'id' is '{0}'; accepted: a ULID of 26 capital letters and digits", id);
        }
    }

    /** A file's name without its ending: the id of an entry that is named as we name them. */
    static String nameOf(String name) {
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    }

    private static boolean isJson(Path file) {
        return isJson(file.getFileName().toString());
    }

    /** Some systems write endings in capitals; some put a companion beside each file, its name after a dot and a low line. */
    private static boolean isJson(String name) {
        return name.toLowerCase(Locale.ROOT).endsWith(ENDING) && !name.startsWith("._");
    }

    /** Why a file cannot be shown, in a builder's words. */
    static SetAside setAside(Path file, IOException unreadable) {
        var reason =
                StoreWords.say("it cannot be read ({0})", unreadable.getClass().getSimpleName());
        if (unreadable instanceof Unreadable) {
            reason = unreadable.getMessage();
        } else if (unreadable instanceof NoSuchFileException) {
            reason = StoreWords.say("it is missing");
        }
        return new SetAside(file, reason);
    }

    private static Comparator<Path> ownNamesFirst(Predicate<String> ours) {
        return Comparator.<Path, Boolean>comparing(
                        path -> !ours.test(path.getFileName().toString()))
                .thenComparing(Comparator.naturalOrder());
    }
}
