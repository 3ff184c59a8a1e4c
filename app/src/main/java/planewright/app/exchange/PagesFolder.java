package planewright.app.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** A folder that pages are to be written into: only pages that this program wrote give way to new ones. */
final class PagesFolder {
    static final String INDEX = "index.html";
    static final String WORDS = "words.js";
    static final List<String> COPIED = List.of("pages.css", "pages.js");

    private static final Pattern WRITTEN =
            Pattern.compile("builds/[0-9a-z]{26}\\.html|pictures/[0-9a-f]{64}(-small)?\\.jpg");
    private static final Set<String> FOLDERS = Set.of("", "builds", "pictures");
    private static final int BEGINNING = 2000;
    private static final int MOST_TOLD = 3;

    private final Path folder;
    private final Path named;

    /**
     * @param folder where it lies now
     * @param named as the builder knows it
     */
    PagesFolder(Path folder, Path named) {
        this.folder = folder;
        this.named = named;
    }

    /**
     * @param replace whether there may be pages in it
     * @throws ExchangeRefused if there is anything in it that pages may not be written over
     */
    void requireFree(boolean replace) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        if (!Files.isDirectory(folder)) {
            throw new ExchangeRefused(ExchangeWords.say("'{0}' is a file; accepted: a folder", named));
        }
        try (var files = Files.list(folder)) {
            if (files.findAny().isEmpty()) {
                return;
            }
        }
        if (!replace) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "folder {0} is not empty; name another one, or say to replace the pages in it", named));
        }
        var strays = strays();
        if (!strays.isEmpty()) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "folder {0} holds what is no page of a journal: {1}; name another one",
                    named, String.join(", ", strays.stream().limit(MOST_TOLD).toList())));
        }
        if (!hasOurIndex()) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "folder {0} holds no pages of a journal: its file index.html is missing or was written by "
                            + "another program; name another one",
                    named));
        }
    }

    private boolean hasOurIndex() throws IOException {
        var index = folder.resolve(INDEX);
        if (!Files.isRegularFile(index, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        try (var in = Files.newInputStream(index)) {
            return new String(in.readNBytes(BEGINNING), StandardCharsets.UTF_8).contains(Page.GENERATOR);
        }
    }

    private Collection<String> strays() throws IOException {
        var root = folder.toRealPath();
        var strays = new TreeSet<String>();
        Files.walkFileTree(root, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path below, BasicFileAttributes attributes) {
                return FOLDERS.contains(Tree.name(root, below)) ? FileVisitResult.CONTINUE : stray(below);
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                return attributes.isRegularFile() && isWritten(Tree.name(root, file))
                        ? FileVisitResult.CONTINUE
                        : stray(file);
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException failure) {
                return stray(file);
            }

            private FileVisitResult stray(Path file) {
                strays.add(Tree.name(root, file));
                return FileVisitResult.SKIP_SUBTREE;
            }
        });
        return strays;
    }

    private static boolean isWritten(String name) {
        return name.equals(INDEX)
                || name.equals(WORDS)
                || COPIED.contains(name)
                || WRITTEN.matcher(name).matches();
    }
}
