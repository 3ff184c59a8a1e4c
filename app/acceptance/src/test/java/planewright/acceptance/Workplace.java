package planewright.acceptance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.lang.model.SourceVersion;
import planewright.app.pictures.PictureShelf;

/** Where the built program, its packaged plugins and the sample journal lie while the tests run. */
public final class Workplace {
    private static final Path ROOT =
            Path.of(Objects.requireNonNull(System.getProperty("planewright.root"), "planewright.root"));

    private Workplace() {}

    /** The repository's folder. */
    public static Path root() {
        return ROOT;
    }

    /** The sample journal as committed. Tests that write work on a {@linkplain #copySample copy}. */
    public static Path sample() {
        return ROOT.resolve("journal-samples/workshop");
    }

    /** The folder of every plugin's module, in the order of their names. Never empty. */
    public static List<Path> pluginModules() {
        try (Stream<Path> folders = Files.list(ROOT.resolve("plugins"))) {
            return required(folders.filter(folder -> Files.isRegularFile(folder.resolve("pom.xml"))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The package of a plugin's classes: its module's name, with an underscore where that is a word of the language, as the
     * Java Language Specification, 6.1, advises.
     */
    public static String packageOf(String module) {
        return "planewright." + module + (SourceVersion.isKeyword(module) ? "_" : "");
    }

    /** Every packaged plugin. Never empty. */
    public static List<Path> pluginZips() {
        return required(pluginModules().stream().map(Workplace::zip));
    }

    /** Copies the sample journal to {@code folder}, which must not exist yet, and returns it. */
    public static Path copySample(Path folder) throws IOException {
        for (var file : files(sample())) {
            var copy = folder.resolve(sample().relativize(file).toString());
            Files.createDirectories(copy.getParent());
            Files.copy(file, copy);
        }
        return folder;
    }

    /** Every file below a journal with the hash of its content; not the lock, which is no part of a journal. */
    public static SortedMap<String, String> contents(Path journal) throws IOException {
        var contents = new TreeMap<String, String>();
        for (var file : files(journal)) {
            contents.put(journal.relativize(file).toString(), PictureShelf.hash(Files.readAllBytes(file)));
        }
        return contents;
    }

    private static List<Path> files(Path journal) throws IOException {
        try (Stream<Path> files = Files.walk(journal)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().equals(".lock"))
                    .toList();
        }
    }

    private static Path zip(Path module) {
        try (Stream<Path> files = Files.list(module.resolve("target"))) {
            var zips = files.filter(file -> file.toString().endsWith(".zip")).toList();
            if (zips.size() != 1) {
                throw new IllegalStateException(zips.size() + " zips in " + module + "; accepted: one; run ./verify");
            }
            return zips.get(0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> required(Stream<Path> paths) {
        var found = paths.sorted().toList();
        if (found.isEmpty()) {
            throw new IllegalStateException("no plugins below " + ROOT);
        }
        return found;
    }
}
