package planewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import planewright.api.calculator.Finding;
import planewright.api.journal.Entry;
import planewright.api.journal.JournalReader.Dated;
import planewright.api.journal.Measurement;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.calc.Calculation;
import planewright.app.calc.Described;
import planewright.app.calc.KeptFigures;
import planewright.app.calc.Outcome;
import planewright.app.calc.PluginHost;
import planewright.app.calc.Prefill;
import planewright.app.calc.ResultView;
import planewright.app.calc.Runs;
import planewright.app.calc.Staleness;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.store.JournalFolder;
import planewright.app.store.JsonFiles;
import planewright.app.store.UserFolders;
import planewright.shared.quantity.UnitChoice;

/** The packaged calculators on the sample journal: what they answer agrees with what its log tells. */
class SampleCalculationsTest {
    /**
     * Two values of one thing may differ by this many combined standard uncertainties: JCGM 100:2008, 6.2 and 6.3.3, a
     * coverage factor of 2, which about one pair in twenty exceeds by chance; the sample holds no such pair.
     */
    private static final double COVERAGE = 2;

    /** Nobody finds a balance point with two fingers to better than this, mm: common practice, no source. */
    private static final double FINGERS = 2;

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

    static Stream<Named<BuildRecord>> builds() {
        return journal.builds().stream().map(build -> Named.of(build.name(), build));
    }

    /** FAA-H-8083-1B, chapter 2: the balance point is the sum of the moments over the sum of the masses. */
    @ParameterizedTest
    @MethodSource("builds")
    void ledgerIsTheSumOfMomentsOverTheSumOfMasses(BuildRecord build) {
        var answered = run("balance.ledger", build);
        double mass = 0;
        double moment = 0;
        for (var part : answered.inputs().path("parts")) {
            assertThat(part.at("/mass/unit").textValue()).isEqualTo("g");
            assertThat(part.at("/x/unit").textValue()).isEqualTo("mm");
            mass += part.at("/mass/value").doubleValue();
            moment += part.at("/mass/value").doubleValue() * part.at("/x/value").doubleValue();
        }
        assertThat(answered.inputs().path("parts")).hasSameSizeAs(build.parts());
        assertThat(number(answered, "mass", "g")).isCloseTo(mass, within(1e-6 * mass));
        assertThat(number(answered, "balanceX", "mm")).isCloseTo(moment / mass, within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("builds")
    void ledgerAgreesWithTheScaleAndWithWhatItFliesWith(BuildRecord build) {
        var answered = run("balance.ledger", build);
        var weighed = weighed(build);
        assertThat(Math.abs(number(answered, "mass", "g") - weighed.in(Units.GRAM)))
                .as("ledger and scale, g")
                .isLessThanOrEqualTo(COVERAGE * Math.hypot(spread(answered, "mass"), weighed.spreadIn(Units.GRAM)));
        assertThat(Math.abs(number(answered, "balanceX", "mm") - flown(build)))
                .as("ledger and set-up, mm")
                .isLessThanOrEqualTo(COVERAGE * spread(answered, "balanceX"))
                .isLessThanOrEqualTo(FINGERS);
    }

    @ParameterizedTest
    @MethodSource("builds")
    void scalesAgreeWithTheWeighedMassAndWithWhatItFliesWith(BuildRecord build) {
        var answered = run("balance.weighing", build);
        double sum = 0;
        for (var support : answered.inputs().path("supports")) {
            sum += support.at("/reading/value").doubleValue()
                    - support.at("/tare/value").doubleValue();
        }
        assertThat(answered.inputs().path("supports")).hasSize(3);
        assertThat(number(answered, "mass", "g")).isCloseTo(sum, within(1e-6 * sum));
        var weighed = weighed(build);
        assertThat(Math.abs(sum - weighed.in(Units.GRAM)))
                .as("supports and one large scale, g")
                .isLessThanOrEqualTo(COVERAGE * Math.hypot(spread(answered, "mass"), weighed.spreadIn(Units.GRAM)));
        assertThat(Math.abs(number(answered, "balanceX", "mm") - flown(build)))
                .as("scales and set-up, mm")
                .isLessThanOrEqualTo(COVERAGE * spread(answered, "balanceX"))
                .isLessThanOrEqualTo(FINGERS);
    }

    /** All of them flew, or are meant to: nothing says stop, and nothing in the numbers is out of the ordinary. */
    @ParameterizedTest
    @MethodSource("builds")
    void nothingTellsTheBuilderToStop(BuildRecord build) {
        for (var id : List.of("balance.ledger", "balance.weighing")) {
            var answered = run(id, build);
            assertThat(ResultView.of(calculator(id), answered).findings())
                    .as("%s of %s", id, build.name())
                    .isNotEmpty()
                    .noneMatch(finding -> finding.grade() == Finding.Grade.STOP);
            assertThat(answered.unusual()).as("%s of %s", id, build.name()).isEmpty();
        }
    }

    @Test
    void logsKeepResultsOfBothCalculators() {
        assertThat(kept())
                .extracting(entry -> entry.keptResult().orElseThrow().calculator())
                .contains("balance.ledger", "balance.weighing");
        assertThat(kept().stream().map(EntryRecord::build).distinct()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(kept()).allMatch(entry -> entry.kind() == Entry.Kind.KEPT_RESULT);
    }

    @ParameterizedTest
    @MethodSource("namedKept")
    void keptResultsAreFreshAndComputeToTheSameAgain(EntryRecord entry) {
        var kept = entry.keptResult().orElseThrow();
        var calculator = calculator(kept.calculator());
        assertThat(Staleness.changes(kept, calculator, journal, entry.build(), UnitChoice.NONE))
                .isEmpty();
        var again = Calculation.run(calculator, kept.inputs(), Runs.unwatched(journal, entry.at()));
        assertThat(again).isInstanceOf(Outcome.Answered.class);
        var answered = (Outcome.Answered) again;
        assertThat(JsonFiles.text(answered.inputs())).isEqualTo(JsonFiles.text(kept.inputs()));
        assertThat(answered.json().equals(SampleCalculationsTest::compare, kept.results()))
                .as("computed again, %s says %s", entry.title(), JsonFiles.text(answered.json()))
                .isTrue();
    }

    /** The last digits of a number may differ with the order in which it was added up. */
    private static int compare(JsonNode one, JsonNode other) {
        if (one.isNumber() && other.isNumber()) {
            double apart = Math.abs(one.doubleValue() - other.doubleValue());
            return apart <= 1e-12 * Math.max(1, Math.abs(one.doubleValue())) ? 0 : 1;
        }
        return one.equals(other) ? 0 : 1;
    }

    @ParameterizedTest
    @MethodSource("namedKept")
    void keptResultsShowTheirFiguresAndTheirOrigins(EntryRecord entry) {
        var kept = entry.keptResult().orElseThrow();
        assertThat(KeptFigures.charts(kept.results())).isNotEmpty();
        assertThat(KeptFigures.drawings(kept.results())).hasSize(2);
        var origins =
                kept.origins().properties().stream().map(Map.Entry::getValue).toList();
        assertThat(origins).isNotEmpty();
        for (var origin : origins) {
            var from = origin.path("entry").asText("");
            if (!from.isEmpty()) {
                var source = journal.entry(entry.build(), from).orElseThrow();
                assertThat(source.at()).as(entry.title()).isBeforeOrEqualTo(entry.at());
            }
        }
    }

    static Stream<Named<EntryRecord>> namedKept() {
        return kept().stream().map(entry -> Named.of(entry.title(), entry));
    }

    private static List<EntryRecord> kept() {
        return journal.builds().stream()
                .flatMap(build -> journal.log(build.id()).stream())
                .filter(entry -> entry.keptResult().isPresent())
                .toList();
    }

    private static Outcome.Answered run(String id, BuildRecord build) {
        var calculator = calculator(id);
        var inputs = Prefill.of(calculator, journal, build.id()).inputs();
        var now =
                journal.log(build.id()).get(journal.log(build.id()).size() - 1).at();
        var outcome = Calculation.run(calculator, inputs, Runs.unwatched(journal, now));
        assertThat(outcome).as("%s of %s", id, build.name()).isInstanceOf(Outcome.Answered.class);
        return (Outcome.Answered) outcome;
    }

    private static Described calculator(String id) {
        return plugins.calculator(id).orElseThrow();
    }

    /** The newest mass of the whole that a scale showed; kept results tell computed ones. */
    private static Measured<Mass> weighed(BuildRecord build) {
        return journal.measurements(build.id()).stream()
                .filter(dated -> dated.entry().kind() != Entry.Kind.KEPT_RESULT)
                .filter(dated -> dated.what().name().equals("all-up mass"))
                .max(Comparator.comparing(
                        (Dated<Measurement> dated) -> dated.entry().at()))
                .orElseThrow()
                .what()
                .value()
                .asType(Mass.class);
    }

    /** Where it balances as set up now, mm. */
    private static double flown(BuildRecord build) {
        return journal.setUpValue(build.id(), "balance point")
                .orElseThrow()
                .what()
                .value()
                .asType(Length.class)
                .in(Units.MILLIMETRE);
    }

    private static double number(Outcome.Answered answered, String result, String unit) {
        assertThat(answered.json().path(result).path("unit").textValue()).isEqualTo(unit);
        return answered.json().path(result).path("value").doubleValue();
    }

    private static double spread(Outcome.Answered answered, String result) {
        JsonNode spread = answered.json().path(result).path("plusMinus");
        assertThat(spread.isNumber()).as("± of %s", result).isTrue();
        return spread.doubleValue();
    }
}
