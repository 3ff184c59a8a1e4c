package planewright.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Map;
import planewright.app.calc.TestPlugins;

/** What many plugins cost at the start, and what the host adds to a calculation. */
final class PluginLoad implements Section {
    private static final int FEW = 4;
    private static final int MANY = 30;

    @Override
    public void measure(Run run) throws IOException, InterruptedException {
        var folder = Files.createTempDirectory(run.user().toAbsolutePath().getParent(), "plugins");
        var few = folder(folder.resolve("few"), FEW);
        var many = folder(folder.resolve("many"), MANY);
        var child = run.child().archivedFor(PluginStart.class, few.toString());
        child.measure(PluginStart.class, many.toString());
        var fewTimes = new ArrayList<Double>();
        var manyTimes = new ArrayList<Double>();
        var calls = new ArrayList<Double>();
        for (int round = 0; round < run.rounds(); round++) {
            fewTimes.add(child.measure(PluginStart.class, few.toString()));
            var told = child.run(PluginStart.class, many.toString());
            manyTimes.add(told.get("start"));
            calls.add(told.get("call"));
        }
        run.report().figure("plugins", FEW + " plugins started, ms", Median.of(fewTimes));
        run.report().figure("plugins", MANY + " plugins started, ms", Median.of(manyTimes));
        run.report()
                .goal(Goal.under(
                        MANY + " plugins instead of " + FEW + ", more at the start",
                        "ms",
                        Median.of(manyTimes) - Median.of(fewTimes),
                        150));
        run.report().goal(Goal.under("a trivial calculation through the host, median", "ms", Median.of(calls), 1));
    }

    /** A folder of so many plugins that differ in their names only. */
    private static Path folder(Path folder, int count) throws IOException {
        for (int i = 0; i < count; i++) {
            var name = "bench" + i;
            TestPlugins.zip(
                    folder.resolve(name + ".zip"),
                    TestPlugins.SOUND.replace("plugin.id=bench", "plugin.id=" + name),
                    Map.of(
                            name + ".Station",
                            TestPlugins.STATION
                                    .replace("package bench;", "package " + name + ";")
                                    .replace("\"bench.station\"", "\"" + name + ".station\"")));
        }
        return folder;
    }
}
