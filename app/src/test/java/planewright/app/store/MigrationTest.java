package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.journal.Planform;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.FlightRecord;

/** A journal of format 1, as the program wrote it then and as this test keeps it. */
class MigrationTest {
    private static final String FLIGHT = "01JSVEFGQ6QZ32KCY7HSSNNYR7";
    private static final String REPAIR = "01JTKMPA7N7GYQF9XC85AVCN1R";

    @TempDir
    private Path temp;

    private Path journal;

    @BeforeEach
    void copy() throws Exception {
        journal = temp.resolve("journal");
        var kept = Path.of(
                        MigrationTest.class.getResource("format-1/journal.json").toURI())
                .getParent();
        try (Stream<Path> files = Files.walk(kept)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                var to = journal.resolve(kept.relativize(file).toString());
                Files.createDirectories(to.getParent());
                Files.copy(file, to);
            }
        }
    }

    @Test
    void readingChangesNoByteOfIt() throws IOException {
        var before = everything();
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside()).isEmpty();
            assertThat(open.readOnly()).isEmpty();
            for (var build : open.journal().builds()) {
                open.journal().apply(Edit.change("nothing", build, build));
                for (var entry : open.journal().log(build.id())) {
                    open.journal().apply(Edit.change("nothing", entry, entry));
                }
            }
        }
        assertThat(everything()).isEqualTo(before);
    }

    /** The numbers and words are those of the file. */
    @Test
    void itsOneFlightIsTheFirstOfTheList() throws IOException {
        try (var open = Bench.open(journal)) {
            var flights = entry(open, FLIGHT).flights();
            assertThat(flights).hasSize(1);
            assertThat(flights.get(0).duration().orElseThrow().in(Units.MINUTE)).isEqualTo(4);
            assertThat(flights.get(0).conditions()).isEqualTo("13 C, wind 4 m/s");
            assertThat(flights.get(0).behaviour())
                    .isEqualTo("Quick in roll, needs down trim at speed and up trim when slow");
            assertThat(entry(open, REPAIR).flights()).isEmpty();
            assertThat(entry(open, REPAIR).joints()).isNotEmpty();
        }
    }

    @Test
    void anEntryIsBroughtToSchemaTwoWhenItIsChangedAndSaysTheSame() throws IOException {
        var old = JsonFiles.read(file(FLIGHT));
        change(FLIGHT);
        var now = JsonFiles.read(file(FLIGHT));
        assertThat(errors(Files.readString(file(FLIGHT)), "entry-2.json")).isEmpty();
        var flight = (ObjectNode) now.get("flights").get(0);
        assertThat(flight.remove("id")).isNotNull();
        assertThat(flight).isEqualTo(old.remove("flight"));
        now.remove("flights");
        assertThat(now.remove("schema").intValue()).isEqualTo(2);
        old.remove("schema");
        old.put("title", "changed");
        assertThat(now).isEqualTo(old);
        assertThat(JsonFiles.read(file(REPAIR)).get("schema").intValue()).isEqualTo(1);
    }

    /** A diff of the file shows what was changed and no more. */
    @Test
    void theMigratedFileKeepsTheOrderOfItsLines() throws IOException {
        change(FLIGHT);
        var lines = Files.readAllLines(file(FLIGHT)).stream()
                .filter(line -> line.startsWith("  \""))
                .map(line -> line.replaceFirst("\":.*", "").strip().substring(1))
                .toList();
        assertThat(lines).containsExactly("schema", "id", "build", "at", "kind", "title", "text", "tags", "flights");
    }

    @Test
    void whatSchemaOneDidNotKnowSurvives() throws IOException {
        edit(
                FLIGHT,
                text -> text.replace("\"behaviour\"", "\"field\": \"barley\",\n    \"id\": 7,\n    \"behaviour\"")
                        .replace("  \"flight\"", "  \"tasks\": \"mow the lawn\",\n  \"flight\""));
        change(FLIGHT);
        assertThat(errors(Files.readString(file(FLIGHT)), "entry-2.json")).isEmpty();
        var now = JsonFiles.read(file(FLIGHT));
        assertThat(now.get("tasks of schema 1").textValue()).isEqualTo("mow the lawn");
        var flight = now.get("flights").get(0);
        assertThat(flight.get("field").textValue()).isEqualTo("barley");
        assertThat(flight.get("id of schema 1").intValue()).isEqualTo(7);
    }

    @Test
    void anotherFlightOfTheDayLeavesTheFirstAsItWas() throws IOException {
        edit(FLIGHT, text -> text.replace("\"behaviour\"", "\"field\": \"barley\",\n    \"behaviour\""));
        try (var open = Bench.open(journal)) {
            var before = entry(open, FLIGHT);
            var second = new FlightRecord("k3f9q2", Optional.empty(), "", "again");
            open.journal()
                    .apply(Edit.change(
                            "fly",
                            before,
                            before.withFlights(List.of(before.flights().get(0), second))));
        }
        var flights = JsonFiles.read(file(FLIGHT)).get("flights");
        assertThat(flights).hasSize(2);
        assertThat(flights.get(0).get("field").textValue()).isEqualTo("barley");
        assertThat(flights.get(1).get("behaviour").textValue()).isEqualTo("again");
    }

    @Test
    void undoGivesTheOldFileBackByteForByte() throws IOException {
        var before = Files.readString(file(FLIGHT));
        try (var open = Bench.open(journal)) {
            var entry = entry(open, FLIGHT);
            open.journal().apply(Edit.change("title", entry, entry.withTitle("changed")));
            assertThat(Files.readString(file(FLIGHT))).isNotEqualTo(before);
            open.journal().undo();
        }
        assertThat(Files.readString(file(FLIGHT))).isEqualTo(before);
    }

    /** A program of format 1 writes nowhere where minReader is above 1, and so cannot spoil what it does not know. */
    @Test
    void olderProgramsAreShutOutBeforeTheFirstFileThatTheyWouldNotUnderstand() throws IOException {
        var head = JsonFiles.read(journal.resolve("journal.json"));
        try (var open = Bench.open(journal)) {
            var entry = entry(open, FLIGHT);
            open.journal().apply(Edit.change("nothing", entry, entry));
            assertThat(minReader()).isEqualTo(1);
            assertThat(journal.resolve("schema/entry-2.json")).doesNotExist();
        }
        change(FLIGHT);
        assertThat(minReader()).isEqualTo(2);
        var now = JsonFiles.read(journal.resolve("journal.json"));
        assertThat(now.put("minReader", 1)).isEqualTo(head);
        assertThat(errors(Files.readString(journal.resolve("journal.json")), "journal-1.json"))
                .isEmpty();
        for (var schema : Schema.files()) {
            assertThat(journal.resolve("schema").resolve(schema)).hasContent(schema(schema));
        }
        assertThat(journal.resolve("README.md")).content().contains("templates/");
    }

    @Test
    void aBuildIsBroughtToSchemaTwoWhenItIsChangedAndSaysTheSame() throws IOException {
        var file = Bench.only(journal, "build.json");
        var old = JsonFiles.read(file);
        try (var open = Bench.open(journal)) {
            var build = open.journal().builds().get(0);
            open.journal().apply(Edit.change("layout", build, build.withLayout("delta, small")));
        }
        assertThat(errors(Files.readString(file), "build-2.json")).isEmpty();
        assertThat(JsonFiles.read(file)).isEqualTo(old.put("schema", 2).put("layout", "delta, small"));
        assertThat(minReader()).isEqualTo(3);
    }

    @Test
    void whatABuildOfSchemaOneCalledControlsIsKeptUnderAnotherName() throws IOException {
        var file = Bench.only(journal, "build.json");
        var text = Files.readString(file);
        Files.writeString(file, text.replaceFirst("\"panels\"", "\"controls\": \"two sticks\", \"panels\""));
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside()).isEmpty();
            var build = open.journal().builds().get(0);
            var wing = build.planform().orElseThrow().surfaces().get(0);
            assertThat(wing.controls()).isEmpty();
            open.journal()
                    .apply(Edit.change(
                            "shape",
                            build,
                            build.withPlanform(hinged(build.planform().orElseThrow()))));
        }
        assertThat(errors(Files.readString(file), "build-2.json")).isEmpty();
        var wing = JsonFiles.read(file).at("/planform/surfaces/0");
        assertThat(wing.get("controls of schema 1").textValue()).isEqualTo("two sticks");
        assertThat(wing.at("/controls/0/role").textValue()).isEqualTo("elevon");
        assertThat(wing.at("/controls/0/hinge").intValue()).isEqualTo(72);
    }

    private static Planform hinged(Planform shape) {
        var wing = shape.surfaces().get(0);
        var surfaces = new ArrayList<>(shape.surfaces());
        surfaces.set(
                0,
                new Planform.Surface(
                        wing.name(),
                        wing.x(),
                        wing.y(),
                        wing.z(),
                        wing.mirrored(),
                        wing.panels(),
                        List.of(new Planform.Control("elevons", Planform.Role.ELEVON, 0.2, 0.95, 0.72, 0.72))));
        return new Planform(surfaces, shape.bodies());
    }

    @Test
    void aTemplateShutsThemOutToo() throws IOException {
        try (var open = Bench.open(journal)) {
            open.journal().apply(Edit.add("template", Bench.full("procedure")));
        }
        assertThat(minReader()).isEqualTo(2);
    }

    @Test
    void wordsOfTheOwnerInTheReadmeStay() throws IOException {
        Files.writeString(journal.resolve("README.md"), "My own words.\n");
        change(FLIGHT);
        assertThat(journal.resolve("README.md")).hasContent("My own words.");
    }

    @Test
    void aHeadThatCannotBeWrittenKeepsTheRecordFromBeingWritten() throws IOException {
        var before = Files.readString(file(FLIGHT));
        try (var open = Bench.open(journal)) {
            Files.writeString(journal.resolve("journal.json"), "{ spoilt");
            var entry = entry(open, FLIGHT);
            Assertions.assertThatIOException()
                    .isThrownBy(() -> open.journal().apply(Edit.change("t", entry, entry.withTitle("changed"))))
                    .withMessageContaining("JSON");
            assertThat(entry(open, FLIGHT)).isEqualTo(entry);
        }
        assertThat(Files.readString(file(FLIGHT))).isEqualTo(before);
    }

    @Test
    void aDeletedEntryOfSchemaOneComesBackAsItWas() throws IOException {
        var before = Files.readString(file(FLIGHT));
        var file = file(FLIGHT);
        try (var open = Bench.open(journal)) {
            open.journal().apply(Edit.remove("delete", entry(open, FLIGHT)));
        }
        try (var open = Bench.open(journal)) {
            open.journal().apply(Edit.add("back", open.binned().get(0).record()));
        }
        assertThat(Files.readString(file)).isEqualTo(before);
    }

    /** Entry, build and head of format 1 meet the schemas of then, which are published still. */
    @Test
    void theKeptFilesMeetTheirSchemas() throws IOException {
        assertThat(errors(Files.readString(file(FLIGHT)), "entry-1.json")).isEmpty();
        assertThat(errors(Files.readString(file(REPAIR)), "entry-1.json")).isEmpty();
        assertThat(errors(Files.readString(Bench.only(journal, "build.json")), "build-1.json"))
                .isEmpty();
        assertThat(errors(Files.readString(journal.resolve("journal.json")), "journal-1.json"))
                .isEmpty();
        for (var schema : List.of("entry-1.json", "build-1.json", "journal-1.json")) {
            assertThat(journal.resolve("schema").resolve(schema))
                    .as("a published schema never changes")
                    .hasContent(schema(schema));
        }
    }

    private void change(String id) throws IOException {
        try (var open = Bench.open(journal)) {
            var entry = entry(open, id);
            open.journal().apply(Edit.change("title", entry, entry.withTitle("changed")));
        }
    }

    private void edit(String id, UnaryOperator<String> change) throws IOException {
        var text = Files.readString(file(id));
        assertThat(change.apply(text)).isNotEqualTo(text);
        Files.writeString(file(id), change.apply(text));
    }

    private static EntryRecord entry(JournalFolder open, String id) {
        return open.journal().builds().stream()
                .flatMap(build -> open.journal().entry(build.id(), id).stream())
                .findFirst()
                .orElseThrow();
    }

    private Path file(String id) throws IOException {
        return Bench.only(journal, id + ".json");
    }

    private int minReader() throws IOException {
        return JsonFiles.read(journal.resolve("journal.json")).get("minReader").intValue();
    }

    private TreeMap<String, String> everything() throws IOException {
        var all = new TreeMap<String, String>();
        try (Stream<Path> files = Files.walk(journal)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                if (!file.endsWith(".lock")) {
                    all.put(journal.relativize(file).toString(), Files.readString(file));
                }
            }
        }
        return all;
    }

    private static List<String> errors(String text, String schema) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema(schema), InputFormat.JSON)
                .validate(text, InputFormat.JSON)
                .stream()
                .map(Object::toString)
                .toList();
    }

    private static String schema(String name) throws IOException {
        try (var in = MigrationTest.class.getResourceAsStream("schema/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
