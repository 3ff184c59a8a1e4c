package planewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import planewright.app.calc.Calculation;
import planewright.app.calc.Outcome;
import planewright.app.calc.PluginHost;
import planewright.app.calc.Prefill;
import planewright.app.calc.Runs;
import planewright.app.store.JournalFolder;
import planewright.app.store.JsonFiles;
import planewright.app.store.UserFolders;

/** The program as a process of its own, on a copy of the sample: what scripts see of it. */
class CommandLineProcessTest {
    @TempDir
    private static Path temp;

    private static Path journal;
    private static SortedMap<String, String> before;

    @BeforeAll
    static void copyTheSample() throws IOException {
        journal = Workplace.copySample(temp.resolve("workshop"));
        before = Workplace.contents(journal);
    }

    @ParameterizedTest
    @CsvSource({"balance.ledger, Slate Ray", "balance.weighing, Backwards Goose"})
    void answersAsJsonWhatTheWindowComputes(String calculator, String build) throws Exception {
        var said = run("calc", calculator, "--build", build, "--json");
        assertThat(said.err()).isEmpty();
        assertThat(said.code()).isZero();
        var answer = JsonFiles.parse(said.out());
        assertThat(answer.path("calculator").textValue()).isEqualTo(calculator);
        assertThat(answer.path("build").textValue()).isEqualTo(build);
        var here = computedHere(calculator, build);
        assertThat(text(answer, "inputs")).isEqualTo(JsonFiles.text(here.inputs()));
        assertThat(text(answer, "results")).isEqualTo(JsonFiles.text(here.json()));
        assertThat(Workplace.contents(journal)).isEqualTo(before);
    }

    /** What is printed can be given back: the same inputs from a file, without a journal, compute to the same. */
    @Test
    void itsJsonIsReadBackAsInputs() throws Exception {
        var said = run("calc", "balance.ledger", "--build", "Long Friday", "--json");
        var file = Files.writeString(temp.resolve("inputs.json"), said.out());
        var again = run("calc", "balance.ledger", "--inputs", file.toString(), "--json");
        assertThat(again.err()).isEmpty();
        assertThat(text(JsonFiles.parse(again.out()), "results"))
                .isEqualTo(text(JsonFiles.parse(said.out()), "results"));
    }

    @Test
    void describesACalculatorAsJsonSchemaThatItsOwnAnswersMeet() throws Exception {
        var said = run("calc", "balance.ledger", "--describe");
        assertThat(said.err()).isEmpty();
        assertThat(said.code()).isZero();
        var schema = JsonFiles.parse(said.out());
        var registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
        assertThat(registry.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"))
                        .validate(schema))
                .isEmpty();
        var here = computedHere("balance.ledger", "Slate Ray");
        var instance = JsonFiles.object();
        instance.set("inputs", here.inputs());
        instance.set("results", here.json());
        assertThat(registry.getSchema(schema).validate(instance)).isEmpty();
        ((ObjectNode) instance.path("inputs")).put("kettle", 1);
        assertThat(registry.getSchema(schema).validate(instance)).isNotEmpty();
    }

    static Stream<Arguments> wrong() {
        return Stream.of(
                wrong(2, "Target x is '92 g'; accepted: m, cm, mm", calc("Slate Ray", "--target-x", "92 g")),
                wrong(
                        2,
                        "mass of 'motor' is -62 g; accepted: at least 0.001 g",
                        calc("Slate Ray", "--parts", "name=motor, mass=-62 g, x=1 mm")),
                wrong(1, "build 'Nobody' is not in the journal; accepted: Backwards Goose", calc("Nobody")),
                wrong(
                        2,
                        "calculator 'balance.legder' is not there; accepted: balance.",
                        "calc",
                        "balance.legder",
                        "--build",
                        "Slate Ray",
                        "--keep"),
                wrong(1, "the window needs a display", "open"));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("wrong")
    void oneLineOnStandardErrorACodeAndNothingWritten(int code, String told, String[] words) throws Exception {
        var said = run(words);
        assertThat(said.err()).contains(told).endsWith("\n");
        assertThat(said.err().lines()).hasSize(1);
        assertThat(said.out()).isEmpty();
        assertThat(said.code()).isEqualTo(code);
        assertThat(Workplace.contents(journal)).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({"show --json", "find balance --json", "check --json"})
    void withJsonNothingButJsonIsOnStandardOutput(String words) throws Exception {
        var said = run(words.split(" "));
        assertThat(said.err()).isEmpty();
        assertThat(said.code()).isZero();
        assertThat(JsonFiles.parse(said.out())).isNotEmpty();
        assertThat(said.out()).startsWith("{").endsWith("}\n");
    }

    @Test
    void withoutADisplayAndWithoutWordsTheMainJobIsShownOnTheCommandLine() throws Exception {
        var own = Workplace.copySample(temp.resolve("tour"));
        var said = on(own);
        assertThat(said.err()).isEmpty();
        assertThat(said.code()).isZero();
        assertThat(said.out())
                .startsWith("There is no display")
                .contains("$ ./planewright show", "$ ./planewright calc", "--keep", "$ ./planewright find")
                .contains("0 files wrong");
        var after = Workplace.contents(own);
        assertThat(after).containsAllEntriesOf(before).hasSize(before.size() + 1);
        try (var found = Files.walk(temp.resolve("user"))) {
            var sheet = found.filter(file -> file.toString().endsWith(".pdf"))
                    .findFirst()
                    .orElseThrow();
            try (var pdf = Loader.loadPDF(sheet.toFile())) {
                assertThat(new PDFTextStripper().getText(pdf)).contains("Where does it balance?");
            }
        }
    }

    private record Said(int code, String out, String err) {}

    private static Said run(String... words) throws Exception {
        return on(journal, words);
    }

    /** As the launcher starts it, but without a display and with the user's files in the test's folder. */
    private static Said on(Path journal, String... words) throws Exception {
        var plugins = String.join(
                File.pathSeparator,
                Workplace.pluginZips().stream().map(Path::toString).toList());
        var command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "--enable-native-access=ALL-UNNAMED",
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-Dfile.encoding=UTF-8",
                "-Dplanewright.plugins=" + plugins,
                "-Dplanewright.journal=" + journal,
                "-Dplanewright.user=" + temp.resolve("user"),
                "-cp",
                System.getProperty("java.class.path"),
                "planewright.app.Main"));
        command.addAll(List.of(words));
        var out = Files.createTempFile(temp, "out", ".txt");
        var err = Files.createTempFile(temp, "err", ".txt");
        var builder = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().keySet().removeAll(List.of("PLANEWRIGHT_JOURNAL", "JAVA_TOOL_OPTIONS", "DISPLAY"));
        int code = builder.start().waitFor();
        return new Said(
                code, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
    }

    private static Outcome.Answered computedHere(String calculator, String build) throws IOException {
        var user = UserFolders.under(temp.resolve("here"));
        try (var open = JournalFolder.open(journal, user);
                var plugins = PluginHost.open(Workplace.pluginZips(), user.data())) {
            var log = open.journal().builds().stream()
                    .filter(each -> each.name().equals(build))
                    .findFirst()
                    .orElseThrow();
            var described = plugins.calculator(calculator).orElseThrow();
            var inputs = Prefill.of(described, open.journal(), log.id()).inputs();
            return (Outcome.Answered) Calculation.run(
                    described, inputs, Runs.unwatched(open.journal(), LocalDateTime.of(2026, 11, 25, 20, 0)));
        }
    }

    private static String text(ObjectNode answer, String part) {
        assertThat(answer.path(part)).isInstanceOf(ObjectNode.class);
        return JsonFiles.text((ObjectNode) answer.path(part));
    }

    private static Arguments wrong(int code, String told, String... words) {
        return Arguments.of(code, told, words);
    }

    private static String[] calc(String build, String... words) {
        var first = List.of("calc", "balance.ledger", "--keep", "--json", "--build", build);
        return Stream.concat(first.stream(), Stream.of(words)).toArray(String[]::new);
    }
}
