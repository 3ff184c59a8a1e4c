package planewright.acceptance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

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

    /** Every packaged plugin. Never empty. */
    public static List<Path> pluginZips() {
        return required(pluginModules().stream().map(Workplace::zip));
    }

    /** Copies the sample journal to {@code folder}, which must not exist yet, and returns it. */
    public static Path copySample(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(sample())) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Files.copy(file, folder.resolve(sample().relativize(file).toString()));
            }
        }
        return folder;
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
