package planewright.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import planewright.app.Settings;
import planewright.app.calc.Calculation;
import planewright.app.calc.Outcome;
import planewright.app.calc.PluginHost;
import planewright.app.calc.Runs;
import planewright.app.journal.OpenJournal;
import planewright.app.store.JsonFiles;

/** Starts the plugins of a folder, then asks the first calculator many times; tells both. */
public final class PluginStart {
    private static final int CALLS = 2_000;

    private PluginStart() {}

    /**
     * Runs them.
     *
     * @param words the folder
     */
    public static void main(String[] words) throws IOException {
        var watch = new Stopwatch();
        try (var host = PluginHost.open(
                List.of(Path.of(words[0])), Settings.ofSystem().user().data())) {
            double started = watch.milliseconds();
            if (!host.problems().isEmpty()) {
                throw new IOException("a plugin was refused: " + host.problems().get(0));
            }
            ChildJvm.tell("start", started);
            ChildJvm.tell("call", call(host));
        }
    }

    private static double call(PluginHost host) throws IOException {
        var described = host.calculators().get(0);
        var inputs = JsonFiles.parse("""
                {"parts": [{"name": "motor", "mass": "62 g", "x": "40 mm"}, {"name": "pack", "mass": "186 g", "x": "-20 mm"}]}
                """);
        var run = Runs.unwatched(
                OpenJournal.read("none", List.of(), change -> null), LocalDateTime.of(2025, 3, 14, 20, 15));
        var times = new ArrayList<Double>();
        for (int i = 0; i < CALLS; i++) {
            var watch = new Stopwatch();
            var outcome = Calculation.run(described, inputs, run);
            times.add(watch.milliseconds());
            if (!(outcome instanceof Outcome.Answered)) {
                throw new IOException("the calculator has not answered: " + outcome);
            }
        }
        return Median.of(times);
    }
}
