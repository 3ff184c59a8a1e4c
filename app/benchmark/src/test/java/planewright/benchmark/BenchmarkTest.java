package planewright.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.synthetic.SyntheticJournal;

/** That everything is measured; how it comes out on a busy machine with a tiny journal says nothing. */
class BenchmarkTest {
    /** Of two times; on a busy machine it may come out below 0. */
    private static final String DIFFERENCE = "30 plugins instead of 4, more at the start";

    private static final Set<String> WHOLE = Set.of(
            "start to the first painted frame",
            "first screen of a warm start",
            "search ready at a warm start",
            "index and catalogue made anew",
            "scan for outside changes, nothing changed",
            "search as you type, median of the kinds",
            "search, worst question of all kinds",
            "heap in use, idle, no window",
            "heap in use, idle, window open",
            "durable save, median",
            "saved entry found, median",
            DIFFERENCE,
            "a trivial calculation through the host, median",
            "lattice of 800 panels with all derivatives",
            "the same, sides not alike",
            "neutral point while a handle is dragged, worst sample build",
            "small views of a 12-megapixel photo, two sizes",
            "pictures scrolled, 99 of 100 events",
            "pictures scrolled, longest event",
            "an hour's work, 99 of 100 events",
            "an hour's work, longest event",
            "heap in use after an hour's work");

    @TempDir
    private Path temp;

    @Test
    void everyGoalIsMeasuredOrSaidToBeLeftOut() throws IOException, InterruptedException {
        var report = new Report();
        var root = Path.of(System.getProperty("planewright.root"));
        Benchmark.measure(
                new Run(root, SyntheticJournal.of(4, 60, 12), temp.resolve("journal"), temp.resolve("user"), 1, report),
                List.of());
        var json = report.json();
        var goals = json.get("goals");
        assertThat(goals).allSatisfy(goal -> {
            assertThat(goal.get("measured").asDouble()).isFinite();
            if (!goal.get("goal").asText().equals(DIFFERENCE)) {
                assertThat(goal.get("measured").asDouble()).isPositive();
            }
            assertThat(goal.get("met").isBoolean()).isTrue();
            assertThat(goal.has("ceiling") || goal.has("ratio")).isTrue();
            if (goal.has("yardstick")) {
                assertThat(goal.get("yardstickMeasured").asDouble())
                        .isPositive()
                        .isFinite();
                assertThat(goal.get("ratio").asDouble()).isPositive().isFinite();
            }
        });
        var names = StreamSupport.stream(goals.spliterator(), false)
                .map(goal -> goal.get("goal").asText())
                .collect(Collectors.toSet());
        if (json.get("leftOut").isEmpty()) {
            assertThat(names).isEqualTo(WHOLE);
        } else {
            assertThat(WHOLE).containsAll(names);
            assertThat(json.get("leftOut"))
                    .allSatisfy(left -> assertThat(left.get("why").asText()).isNotBlank());
        }
        assertThat(json.get("figures").findValues("one word, median")).hasSize(1);
    }
}
