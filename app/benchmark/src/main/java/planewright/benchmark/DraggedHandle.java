package planewright.benchmark;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import planewright.api.journal.Planform;
import planewright.app.store.JsonFiles;
import planewright.app.store.PlanformJson;
import planewright.app.store.Unreadable;
import planewright.shared.lattice.BalanceBand;
import planewright.shared.planform.MarginBand;
import planewright.shared.planform.Shaping;

/**
 * How long it takes from a handle's new place to the neutral point and the balance range, as the window's page does it while
 * the handle is dragged; and when it is let go. On every build of the sample journal, the tip's leading edge moved a little each time.
 */
final class DraggedHandle {
    private static final double MOST = 100;
    private static final int WARM_UP = 4;

    private final int rounds;

    DraggedHandle(int rounds) {
        this.rounds = rounds;
    }

    void measure(Run run) throws IOException {
        double worst = 0;
        for (var build : builds(run.root().resolve("journal-samples/workshop/builds"))) {
            var tree = JsonFiles.read(build.resolve("build.json"));
            var name = tree.path("name").asText();
            var shape = shape(tree);
            for (int i = 0; i < (rounds == 1 ? 1 : WARM_UP); i++) {
                first(shape, i);
            }
            var during = new ArrayList<Double>();
            var after = new ArrayList<Double>();
            for (int round = 0; round < rounds; round++) {
                var watch = new Stopwatch();
                first(shape, round + 0.5);
                during.add(watch.milliseconds());
                watch = new Stopwatch();
                BalanceBand.settled(dragged(shape, round + 0.5), MarginBand.usual("", shape), step -> {});
                after.add(watch.milliseconds());
            }
            worst = Math.max(worst, Median.of(during));
            run.report().figure("neutral point while a handle is dragged, ms", name, Median.of(during));
            run.report().figure("neutral point settled after a drag, ms", name, Median.of(after));
        }
        run.report().goal(Goal.under("neutral point while a handle is dragged, worst sample build", "ms", worst, MOST));
    }

    private static void first(Planform shape, double round) {
        BalanceBand.first(dragged(shape, round), MarginBand.usual("", shape));
    }

    private static Planform dragged(Planform shape, double round) {
        var wing = shape.surfaces().get(0);
        int tip = wing.panels().size();
        double edge = Shaping.stations(wing).get(tip).edge().x() + 0.001 * round;
        return Shaping.surface(shape, 0, Shaping.edge(wing, tip, edge));
    }

    private static List<Path> builds(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Files::isDirectory).sorted().toList();
        }
    }

    private static Planform shape(ObjectNode tree) throws Unreadable {
        return PlanformJson.read((ObjectNode) tree.get("planform"));
    }
}
