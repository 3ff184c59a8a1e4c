package planewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import planewright.acceptance.Draws.Told;
import planewright.app.calc.Calculation;
import planewright.app.calc.Described;
import planewright.app.calc.Outcome;
import planewright.app.calc.PluginHost;
import planewright.app.calc.Prefill;
import planewright.app.calc.Runs;
import planewright.app.journal.OpenJournal;
import planewright.app.store.JournalFolder;
import planewright.app.store.JsonFiles;
import planewright.app.store.UserFolders;

/**
 * The ± that every packaged calculator tells, against what its answers do when its inputs move. Inputs with the ± of a bench
 * stand in {@code draws}, a file a calculator; one that is new without a file fails here.
 *
 * <p>A ± may hold more than the inputs bring, such as the error of a lattice: what is told where no input has one is taken off
 * in squares. A magnitude keeps the ± of what it is the magnitude of, so inputs stay away from where one is next to 0. Sources: JCGM 100:2008, 5.1.2 (first order), 5.1.3, note 2 (slopes over one ±), and JCGM 101:2008, 7 (draws).
 */
class SpreadByDrawsTest {
    /** Slopes are taken over this much of a ± and over a whole one: what curves makes the difference. */
    private static final double SHORT = 0.01;

    /** A slope agrees to this share of itself, or of the whole ±: what rounding of doubles leaves of a difference. */
    private static final double ROUNDING = 1e-3;

    private static final double ROUNDING_OF_WHOLE = 1e-4;

    private static final int DRAWS = 3000;

    /** Each of their answers solves a lattice, so that thousands would take minutes. */
    private static final Set<String> WITH_LATTICES = Set.of("balance.planform", "balance.lean");

    private static final int DRAWS_OF_LATTICES = 300;

    /** A standard deviation of so many draws is seldom further off than five of its own: about one in two million. */
    private static final double CHANCE = 5;

    /** What second order may add: no ± is itself known better, JCGM 100:2008, table E.1, even from 50 readings. */
    private static final double SECOND_ORDER = 0.1;

    /** Results that move with the inputs and tell no ±, and why. */
    private static final Map<String, String> WITHOUT = Map.ofEntries(
            Map.entry("contributions\\[.*", "shares tell what matters most; they are no measures"),
            Map.entry("loads\\[.*share", "as above"),
            Map.entry("causes\\[.*share", "as above, to a whole percent"),
            Map.entry("pull.bars\\[.*", "bars to compare by eye"),
            Map.entry("suspects\\[.*density", "what would have to be, not what is"),
            Map.entry("spanEfficiency", "near its greatest value, where a slope says nothing of how far it falls"),
            Map.entry("(tipReserve|stallsAt)", "jumps from strip to strip of the lattice"),
            Map.entry("(powers|responses)\\[.*", "the lattice's own error is greater"),
            Map.entry("(stations|lip)\\[.*", "ordinates to cut to"),
            Map.entry("(limits|pairs|places)\\[.*", "tables of what if, to a tenth"));

    private static final Told NOTHING = new Told(0, 0);

    private static final Path DRAWS_FOLDER =
            Workplace.root().resolve("app/acceptance/src/test/resources/planewright/acceptance/draws");

    @TempDir
    private static Path temp;

    private static JournalFolder open;
    private static OpenJournal journal;
    private static PluginHost plugins;

    @BeforeAll
    static void open() throws IOException {
        var user = UserFolders.under(temp.resolve("user"));
        open = JournalFolder.open(Workplace.copySample(temp.resolve("workshop")), user);
        journal = open.journal();
        plugins = PluginHost.open(Workplace.pluginZips(), user.data());
    }

    @AfterAll
    static void close() throws IOException {
        plugins.close();
        open.close();
    }

    static Stream<String> calculators() {
        return plugins.calculators().stream().map(Described::id);
    }

    @ParameterizedTest
    @MethodSource("calculators")
    void eachInputReachesEachSpreadByItsSlope(String id) throws IOException {
        var draws = draws(id);
        var whole = draws.answer();
        var exact = draws.exact();
        assertThat(draws.uncertain()).isNotEmpty();
        assertThat(whole.values().stream().filter(Told::tellsSpread)).isNotEmpty();
        for (var input : draws.uncertain()) {
            var here = draws.moved(input, 0);
            var near = slopes(draws, input, SHORT);
            var far = slopes(draws, input, 1);
            here.forEach((result, told) -> {
                if (told.tellsSpread() && near.containsKey(result) && far.containsKey(result)) {
                    double slack = Math.max(
                            ROUNDING * Math.max(told.spread(), near.get(result)),
                            ROUNDING_OF_WHOLE * whole.get(result).spread());
                    assertThat(told.without(exact.getOrDefault(result, NOTHING)))
                            .as("± that %s brings to %s of %s", input, result, id)
                            .isBetween(
                                    Math.min(near.get(result), far.get(result)) - slack,
                                    Math.max(near.get(result), far.get(result)) + slack);
                }
            });
        }
    }

    /** How far each result goes for one ± of an input, from as much of it on either side. */
    private static Map<String, Double> slopes(Draws draws, String input, double over) {
        var up = draws.moved(input, over);
        var down = draws.moved(input, -over);
        up.keySet().retainAll(down.keySet());
        return up.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        result -> Math.abs(result.getValue().value()
                                        - down.get(result.getKey()).value())
                                / (2 * over)));
    }

    @ParameterizedTest
    @MethodSource("calculators")
    void drawsScatterAsItsSpreadsTell(String id) throws IOException {
        var draws = draws(id);
        var whole = draws.answer();
        var exact = draws.exact();
        var drawn = IntStream.range(0, WITH_LATTICES.contains(id) ? DRAWS_OF_LATTICES : DRAWS)
                .parallel()
                .mapToObj(number -> draws.drawn(new SplittableRandom(number)))
                .toList();
        whole.forEach((result, told) -> {
            var scatter = Scatter.of(drawn.stream()
                    .map(answer -> answer.get(result))
                    .filter(Objects::nonNull)
                    .mapToDouble(Told::value)
                    .toArray());
            if (told.tellsSpread()) {
                double brought = told.without(exact.getOrDefault(result, NOTHING));
                assertThat(scatter.count())
                        .as("answers that tell %s of %s", result, id)
                        .isEqualTo(drawn.size());
                assertThat(brought)
                        .as("± of %s of %s", result, id)
                        .isBetween(
                                scatter.deviation() * (1 - SECOND_ORDER) - CHANCE * scatter.chance(),
                                scatter.deviation() * (1 + SECOND_ORDER) + CHANCE * scatter.chance());
            } else if (scatter.deviation() > 1e-9 * Math.abs(told.value())) {
                assertThat(WITHOUT.keySet())
                        .as("%s of %s tells no ±", result, id)
                        .anyMatch(result::matches);
            }
        });
    }

    /**
     * How far drawn values lie apart.
     *
     * @param deviation standard deviation
     * @param chance standard uncertainty of that, from the fourth moment
     */
    private record Scatter(int count, double deviation, double chance) {
        static Scatter of(double[] values) {
            double mean = IntStream.range(0, values.length)
                    .mapToDouble(i -> values[i])
                    .average()
                    .orElse(0);
            double second = moment(values, mean, 2);
            double deviation = Math.sqrt(second);
            double ofSquares = Math.sqrt(Math.max(0, moment(values, mean, 4) - second * second) / values.length);
            return new Scatter(values.length, deviation, deviation > 0 ? ofSquares / (2 * deviation) : 0);
        }

        private static double moment(double[] values, double mean, int power) {
            return Arrays.stream(values)
                    .map(value -> Math.pow(value - mean, power))
                    .average()
                    .orElse(0);
        }
    }

    private static Draws draws(String id) throws IOException {
        var calculator = plugins.calculator(id).orElseThrow();
        var given = JsonFiles.read(DRAWS_FOLDER.resolve(id + ".json"));
        var inputs = journal.builds().stream()
                .filter(build -> build.name().equals(given.path("build").textValue()))
                .findFirst()
                .map(build -> Prefill.of(calculator, journal, build.id()).inputs())
                .orElseGet(JsonFiles::object);
        inputs.setAll((ObjectNode) given.path("inputs"));
        var run = Runs.unwatched(journal, LocalDateTime.of(2026, 9, 20, 12, 0));
        var outcome = Calculation.run(calculator, inputs, run);
        assertThat(outcome).as(id).isInstanceOf(Outcome.Answered.class);
        return new Draws(calculator, ((Outcome.Answered) outcome).inputs(), run);
    }
}
