package planewright.benchmark;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Measures the start-up: from before the process starts to its first painted frame, of the program with the sample journal and
 * of an empty window, by turns, so that a busy machine slows both. Run it in the project's folder, after packaging.
 */
public final class StartUp {
    private static final int ROUNDS = 9;
    private static final double GOAL = 1.3;

    private final Path root;
    private final Path temp;

    private StartUp(Path root, Path temp) {
        this.root = root;
        this.temp = temp;
    }

    /**
     * Measures and prints.
     *
     * @param words how many times each is started; 9 where nothing is said
     */
    public static void main(String[] words) throws IOException, InterruptedException {
        int rounds = words.length > 0 ? Integer.parseInt(words[0]) : ROUNDS;
        var temp = Files.createTempDirectory("planewright-start-up");
        try {
            new StartUp(Path.of("").toAbsolutePath(), temp).run(rounds);
        } finally {
            delete(temp);
        }
    }

    private void run(int rounds) throws IOException, InterruptedException {
        copy(root.resolve("journal-samples/workshop"), temp.resolve("workshop"));
        var empty = new Candidate(
                "empty",
                options(),
                EmptyWindow.class.getName(),
                List.of(EmptyWindow.class.getName(), "once"),
                List.of("painted"));
        var program = new Candidate(
                "program",
                options(),
                "planewright.app.Main",
                List.of(OneSession.class.getName()),
                List.of("painted", "filled"));
        for (var each : List.of(empty, program)) {
            each.makeArchive(temp);
            each.measure(temp);
        }
        var bare = new ArrayList<Double>();
        var painted = new ArrayList<Double>();
        var filled = new ArrayList<Double>();
        for (int round = 0; round < rounds; round++) {
            bare.add(empty.measure(temp).get("painted"));
            var times = program.measure(temp);
            painted.add(times.get("painted"));
            filled.add(times.get("filled"));
        }
        tell(rounds, Candidate.median(bare), Candidate.median(painted), Candidate.median(filled));
    }

    private static void tell(int rounds, double bare, double painted, double filled) {
        System.out.printf(
                Locale.ROOT,
                "Java %s, medians of %d starts each, by turns%n",
                Runtime.version().feature(),
                rounds);
        System.out.printf(Locale.ROOT, "empty window, painted    %6.0f ms%n", bare);
        System.out.printf(
                Locale.ROOT,
                "program, painted         %6.0f ms  %.2f x (goal: %.1f or less)%n",
                painted,
                painted / bare,
                GOAL);
        System.out.printf(Locale.ROOT, "program, journal filled  %6.0f ms  %.2f x%n", filled, filled / bare);
    }

    /** The launcher's own options; the archives go by the class path, so both get the same one. */
    private List<String> options() throws IOException {
        return List.of(
                "-XX:+UseSerialGC",
                "--enable-native-access=ALL-UNNAMED",
                "-Xlog:disable",
                "-Xlog:all=warning:stderr",
                "-Dfile.encoding=UTF-8",
                "-Dplanewright.plugins=" + joined(plugins()),
                "-Dplanewright.journal=" + temp.resolve("workshop"),
                "-Dplanewright.user=" + temp.resolve("user"),
                "-Dplanewright.announceFirstPaint=true",
                "-cp",
                joined(classPath()));
    }

    private List<Path> classPath() throws IOException {
        var jars = new ArrayList<Path>();
        jars.addAll(files(root.resolve("app/target"), "glob:planewright-app-*[0-9].jar"));
        jars.addAll(files(root.resolve("app/target/lib"), "glob:*.jar"));
        jars.addAll(files(root.resolve("app/benchmark/target"), "glob:planewright-benchmark-*.jar"));
        return jars;
    }

    private List<Path> plugins() throws IOException {
        var zips = new ArrayList<Path>();
        for (var module : files(root.resolve("plugins"), "glob:*")) {
            if (Files.isDirectory(module.resolve("target"))) {
                zips.addAll(files(module.resolve("target"), "glob:*.zip"));
            }
        }
        return zips;
    }

    private static List<Path> files(Path folder, String pattern) throws IOException {
        if (!Files.isDirectory(folder)) {
            throw new IOException("folder " + folder + " is not there; package first, and run in the project's folder");
        }
        var matcher = folder.getFileSystem().getPathMatcher(pattern);
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> matcher.matches(file.getFileName()))
                    .sorted()
                    .toList();
        }
    }

    private static String joined(List<Path> paths) {
        return paths.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (var file : files.toList()) {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }
}
