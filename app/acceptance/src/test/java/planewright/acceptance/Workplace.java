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

    /** Every packaged plugin, in the order of their names. Never empty. */
    public static List<Path> pluginZips() {
        try (Stream<Path> modules = Files.list(ROOT.resolve("plugins"))) {
            List<Path> zips = modules.map(module -> module.resolve("target"))
                    .filter(Files::isDirectory)
                    .flatMap(Workplace::zipsIn)
                    .sorted()
                    .toList();
            if (zips.isEmpty()) {
                throw new IllegalStateException("No packaged plugin under plugins/*/target: run with ./verify");
            }
            return zips;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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

    private static Stream<Path> zipsIn(Path target) {
        try (Stream<Path> files = Files.list(target)) {
            return files.filter(file -> file.getFileName().toString().endsWith(".zip")).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
