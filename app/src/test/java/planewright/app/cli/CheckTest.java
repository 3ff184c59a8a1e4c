package planewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.app.Bench;
import planewright.app.journal.Edit;
import planewright.app.store.JournalFolder;
import planewright.app.store.JsonFiles;

/** What is written obeys the schemas that lie in the journal, and what they refuse, {@code check} finds too. */
class CheckTest {
    private static final SchemaRegistry SCHEMAS = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    @TempDir
    private Path folder;

    private CommandLineBench bench;

    @BeforeEach
    void fullJournal() throws Exception {
        bench = new CommandLineBench(folder);
        try (var opened = JournalFolder.open(bench.journal(), bench.settings().user())) {
            var build = Bench.fullBuild().withName("Full");
            opened.journal().apply(Edit.add("build", build));
            var entry = Bench.fullEntry(build).withPictures(List.of());
            opened.journal().apply(Edit.add("entry", entry));
        }
    }

    @Test
    void allThatIsWrittenObeysTheSchemas() throws Exception {
        bench.run("add", "--build", "full", "fin joint epoxy 12 h", "spinner 12 g", "Sanded.", "--tag", "nose");
        assertThat(bench.run("calc", "bench.station", "--build", "grey", "--keep")
                        .code())
                .isZero();
        var files = files("builds");
        assertThat(files).hasSize(6);
        for (var file : files) {
            var kind = file.getFileName().toString().equals("build.json") ? "build-2" : "entry-2";
            assertThat(faults(kind, JsonFiles.read(file))).as(file.toString()).isEmpty();
        }
        assertThat(faults("journal-1", JsonFiles.read(bench.journal().resolve("journal.json"))))
                .isEmpty();
        assertThat(bench.run("check").code()).isZero();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /schema               | 0
            /schema               |
            /id                   |
            /id                   | "three"
            /at                   | "yesterday"
            /kind                 | "walk"
            /title                | 7
            /text                 | "words"
            /text/0               | 7
            /tags                 | {}
            /measurements         | {}
            /measurements/0       | "212 g"
            /measurements/0/name  | " "
            /measurements/0/value | 212
            /measurements/0/unit  |
            /joints/0/start       |
            /joints/0/fullyCured  | "soon"
            /setUp/0/value        |
            /flights              | {}
            /flights/0/id         |
            /flights/0/duration   | "7 min"
            /repairs/0/broke      | " "
            /repairs/0/massAdded  | 7
            /tasks/0/name         |
            /tasks/0/handsOn      | "25 min"
            /keptResult/inputs    | []
            /keptResult/calculator|
            """)
    void whatTheSchemaRefusesCheckFinds(String pointer, String changed) throws Exception {
        var tree = damage("entries", pointer.strip(), changed);
        var said = bench.run("check");
        assertThat(said.out()).contains("1 file wrong", "full-");
        assertThat(said.code()).isEqualTo(1);
        assertThat(faults("entry-2", tree)).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "entries, /measurements/0/value, heavy",
        "entries, /measurements/0/unit, stone",
        "entries, /flights/0/duration/unit, mm",
        "entries, /repairs/0/massAdded/unit, min",
        "entries, /tasks/0/handsOn/unit, g",
        "build.json, /parts/0/mass/unit, stone",
        "build.json, /parts/0/x/unit, g",
        "build.json, /planform/unit, stone"
    })
    void valuesThatNoSchemaKnowsAreFoundToo(String place, String pointer, String changed) throws Exception {
        damage(place, pointer, "\"" + changed + "\"");
        var said = bench.run("check");
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out()).contains("full-", changed);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /name                              | " "
            /life                              | "dead"
            /begun                             | "2025-13-01"
            /notes                             | "one"
            /parts/0/mass                      | 212
            /parts/0/name                      |
            /planform/surfaces/0/panels        | []
            /planform/surfaces/0/panels/0/span | -5
            /planform/surfaces/0/mirrored      | "yes"
            /planform/bodies/0/sections        | []
            """)
    void whatTheSchemaRefusesOfABuildCheckFinds(String pointer, String changed) throws Exception {
        var tree = damage("build.json", pointer.strip(), changed);
        var said = bench.run("check", "--json");
        assertThat(said.code()).isEqualTo(1);
        assertThat(JsonFiles.parse(said.out()).at("/wrong/0/file").asText()).contains("full-");
        assertThat(faults("build-2", tree)).isNotEmpty();
    }

    private ObjectNode damage(String place, String pointer, String changed) throws IOException {
        var file = files("builds").stream()
                .filter(each ->
                        each.toString().contains("full-") && each.toString().contains(place))
                .findFirst()
                .orElseThrow();
        var tree = JsonFiles.read(file);
        change(tree, pointer, changed);
        Files.writeString(file, JsonFiles.text(tree));
        return tree;
    }

    private List<?> faults(String schema, JsonNode instance) throws IOException {
        var tree = JsonFiles.read(bench.journal().resolve("schema").resolve(schema + ".json"));
        return SCHEMAS.getSchema(tree)
                .validate(instance, run -> run.executionConfig(config -> config.formatAssertionsEnabled(true)));
    }

    private List<Path> files(String under) throws IOException {
        try (var files = Files.walk(bench.journal().resolve(under))) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    /** Puts another value there; none removes it. */
    private static void change(ObjectNode tree, String pointer, String changed) throws IOException {
        int slash = pointer.lastIndexOf('/');
        var holder = tree.at(pointer.substring(0, slash));
        var name = pointer.substring(slash + 1);
        var value = changed == null
                ? null
                : JsonFiles.parse("{\"value\": " + changed + "}").get("value");
        assertThat(tree.at(pointer).isMissingNode()).isFalse();
        if (holder instanceof ObjectNode object) {
            if (value == null) {
                object.remove(name);
            } else {
                object.set(name, value);
            }
        } else {
            ((ArrayNode) holder).set(Integer.parseInt(name), value);
        }
    }
}
