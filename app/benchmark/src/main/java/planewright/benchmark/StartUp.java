package planewright.benchmark;

import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The start-up: from before the process starts to its first painted frame, of the program with the sample journal and of an empty
 * window, by turns, so that a busy machine slows both.
 */
final class StartUp implements Section {
    private static final double MOST = 1.3;

    @Override
    public void measure(Run run) throws IOException, InterruptedException {
        var sample = run.root().resolve("journal-samples/workshop");
        if (GraphicsEnvironment.isHeadless() || !Files.isDirectory(sample)) {
            run.report().leftOut("start-up", "there is no display, or no sample journal in " + sample);
            return;
        }
        var temp = Files.createTempDirectory(run.user().toAbsolutePath().getParent(), "start-up");
        copy(sample, temp.resolve("workshop"));
        var options = options(run.plugins(), temp);
        var empty = new Candidate(
                "empty",
                options,
                EmptyWindow.class.getName(),
                List.of(EmptyWindow.class.getName(), "once"),
                List.of("painted"));
        var program = new Candidate(
                "program",
                options,
                "planewright.app.Main",
                List.of(OneSession.class.getName()),
                List.of("painted", "filled"));
        for (var each : List.of(empty, program)) {
            each.makeArchive(temp);
            each.measure(temp);
        }
        byTurns(run, temp, empty, program);
    }

    private static void byTurns(Run run, Path temp, Candidate empty, Candidate program)
            throws IOException, InterruptedException {
        var bare = new ArrayList<Double>();
        var painted = new ArrayList<Double>();
        var filled = new ArrayList<Double>();
        for (int round = 0; round < run.rounds(); round++) {
            bare.add(empty.measure(temp).get("painted"));
            var times = program.measure(temp);
            painted.add(times.get("painted"));
            filled.add(times.get("filled"));
        }
        run.report()
                .goal(Goal.of("start to the first painted frame", "ms", Median.of(painted))
                        .comparedWith("an empty window of the same size and look", Median.of(bare), MOST));
        run.report().figure("start-up", "sample journal in the window, ms", Median.of(filled));
    }

    /** The archives go by the class path, so both get the same one. */
    private static List<String> options(String plugins, Path temp) {
        return Launcher.options(
                "-Dplanewright.plugins=" + plugins,
                "-Dplanewright.journal=" + temp.resolve("workshop"),
                "-Dplanewright.user=" + temp.resolve("user"),
                "-Dplanewright.announceFirstPaint=true");
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (var file : files.toList()) {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
            }
        }
    }
}
