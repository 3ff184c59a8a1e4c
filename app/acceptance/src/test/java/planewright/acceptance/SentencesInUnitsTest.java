package planewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Unit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.Run;
import planewright.api.quantity.Units;
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
import planewright.shared.quantity.UnitChoice;

/**
 * Who has chosen inches, ounces and miles reads no millimetre, gram or metre in anything that a packaged calculator says: findings,
 * titles, labels of drawings, what it refuses.
 */
class SentencesInUnitsTest {
    private static final Set<Unit<?>> CHOSEN = Set.of(
            Units.INCH,
            Units.OUNCE,
            Units.SQUARE_INCH,
            Units.MILE_PER_HOUR,
            Units.OUNCE_INCH,
            Units.OUNCE_FORCE_INCH,
            Units.POUND_SQUARE_INCH,
            Units.OUNCE_PER_SQUARE_FOOT,
            Units.POUND_PER_CUBIC_FOOT);

    private static final UnitChoice IMPERIAL = kind -> CHOSEN.stream()
            .filter(unit -> Units.alike(unit, kind))
            .<Unit<?>>map(unit -> unit)
            .findFirst();

    private static final Pattern METRIC = Pattern.compile("(?:^|\\d\\s?|, )"
            + "(?:mm|cm|dm|m|mm²|cm²|dm²|g|kg|mg|m/s|g·mm|kg·m|kg·m²|N·m|N·cm|g/dm²|kg/m³)(?![\\p{L}\\d·/²³])");

    /** The name that a template is given is the same for every reader, so that it is found again. */
    private static final String TEMPLATE = "submerged inlet, ";

    private static final Path DRAWS =
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
    void allThatIsSaidIsInTheUnitsOfTheReader(String id) throws IOException {
        for (var locale : List.of(Locale.UK, Locale.GERMANY)) {
            var calculator = plugins.calculator(id).orElseThrow().in(locale);
            for (var inputs : inputs(calculator)) {
                assertThat(said(Calculation.run(calculator, inputs, run(), IMPERIAL)))
                        .as("%s to a reader of inches", id)
                        .noneMatch(text -> METRIC.matcher(text).find());
            }
        }
    }

    @Test
    void theSameSentencesAreMetricForWhoeverHasChosenNothing() throws IOException {
        var metric = plugins.calculators().stream()
                .flatMap(calculator -> inputs(calculator).stream()
                        .flatMap(inputs -> said(Calculation.run(calculator, inputs, run())).stream()))
                .filter(text -> METRIC.matcher(text).find())
                .collect(Collectors.toSet());
        assertThat(metric).hasSizeGreaterThan(50);
    }

    private static Run run() {
        return Runs.unwatched(journal, LocalDateTime.of(2026, 9, 20, 12, 0));
    }

    /** What the journal knows of each build, and what a bench may have measured. */
    private static List<ObjectNode> inputs(Described calculator) {
        var all = new ArrayList<ObjectNode>();
        journal.builds()
                .forEach(build ->
                        all.add(Prefill.of(calculator, journal, build.id()).inputs()));
        var given = read(DRAWS.resolve(calculator.id() + ".json"));
        var drawn = journal.builds().stream()
                .filter(build -> build.name().equals(given.path("build").textValue()))
                .findFirst()
                .map(build -> Prefill.of(calculator, journal, build.id()).inputs())
                .orElseGet(JsonFiles::object);
        drawn.setAll((ObjectNode) given.path("inputs"));
        all.add(drawn);
        all.add(JsonFiles.object());
        all.add(scaled(drawn, 1e5));
        all.add(scaled(drawn, 1e-5));
        if (drawn.has("material")) {
            for (var material : List.of("cyanoacrylate", "lightweight spackle", "solvent contact / rubber adhesive")) {
                all.add(drawn.deepCopy().put("material", material));
            }
        }
        return all;
    }

    /** So large or so small that it is refused, or is unusual at least. */
    private static ObjectNode scaled(ObjectNode inputs, double by) {
        var scaled = inputs.deepCopy();
        scale(scaled, by);
        return scaled;
    }

    private static void scale(JsonNode node, double by) {
        if (node.has("value") && node.has("unit")) {
            ((ObjectNode) node).put("value", node.path("value").doubleValue() * by);
        } else {
            node.forEach(each -> scale(each, by));
        }
    }

    private static JsonNode read(Path file) {
        try {
            return JsonFiles.read(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<String> said(Outcome outcome) {
        if (outcome instanceof Outcome.Refused refused) {
            return refused.problems().stream().map(InputProblem::message).toList();
        }
        assertThat(outcome).isInstanceOf(Outcome.Answered.class);
        var texts = new ArrayList<String>();
        collect(((Outcome.Answered) outcome).json(), texts);
        ((Outcome.Answered) outcome).unusual().forEach(finding -> texts.add(finding.text()));
        return texts;
    }

    private static void collect(JsonNode node, List<String> texts) {
        if (node.isTextual() && !node.textValue().startsWith(TEMPLATE)) {
            texts.add(node.textValue());
        }
        if (node.isObject()) {
            node.properties().stream()
                    .filter(field -> !isData(node, field.getKey()))
                    .forEach(field -> collect(field.getValue(), texts));
        } else {
            node.forEach(each -> collect(each, texts));
        }
    }

    /** A source is cited as published; the unit of a number, an axis or a drawing is turned by the window, together with them. */
    private static boolean isData(JsonNode node, String key) {
        return key.equals("source")
                || key.equals("unit") && (node.has("value") || node.has("label") || node.has("layers"));
    }
}
