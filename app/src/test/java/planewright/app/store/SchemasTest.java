package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.journal.Entry;
import planewright.api.journal.Life;
import planewright.app.Bench;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;

/** The files against the JSON Schemas (draft 2020-12) that every journal carries. */
class SchemasTest {
    private final SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    @TempDir
    private Path temp;

    @Test
    void everyFileWrittenMeetsTheSchemaOfItsJournal() throws IOException {
        var journal = temp.resolve("journal");
        try (var open = Bench.newJournal(journal)) {
            var full = Bench.fullBuild();
            for (var record : Bench.fullOthers(full)) {
                open.journal().apply(Edit.add("other", record));
            }
            open.journal().apply(Edit.add("build", full));
            open.journal().apply(Edit.add("entry", Bench.fullEntry(full)));
            for (var life : Life.values()) {
                var bare = Bench.build(life.word()).withLife(life);
                open.journal().apply(Edit.add("build", bare));
                for (var kind : Entry.Kind.values()) {
                    open.journal().apply(Edit.add("entry", EntryRecord.blank(bare.id(), kind, Bench.EVENING)));
                }
            }
        }
        assertMeets(journal.resolve("journal.json"), journal.resolve("schema/journal-1.json"));
        int checked = 0;
        for (var file : Bench.records(journal).keySet()) {
            assertMeets(journal.resolve(file), journal.resolve("schema").resolve(schemaOf(file)));
            checked++;
        }
        assertThat(checked).isEqualTo(7 + Life.values().length * (1 + Entry.Kind.values().length));
    }

    @ParameterizedTest
    @CsvSource({
        "entry, '\"3 1/2\"', 3.5",
        "entry, '\"kind\": \"flight\"', '\"kind\": \"FLIGHT\"'",
        "entry, '\"at\": \"2025-03-14T20:15\"', '\"at\": \"2025-03-14\"'",
        "entry, '\"title\":', '\"title\": 7, \"old\":'",
        "entry, '\"schema\": 2', '\"schema\": 0'",
        "entry, '\"unit\": \"[in_i]\"', '\"unit\": null'",
        "entry, abab, ABAB",
        "entry, '\"broke\": \"fin at the root\"', '\"broke\": \" \"'",
        "entry, '\"massAdded\": {', '\"massAdded\": 7, \"old\": {'",
        "entry, '\"tasks\": [', '\"tasks\": {}, \"old\": ['",
        "build, '\"life\": \"flying\"', '\"life\": \"flown\"'",
        "build, '\"begun\": \"2024-10-05\"', '\"begun\": \"5 October\"'",
        "build, '\"role\": \"elevon\"', '\"role\": \"spoon\"'",
        "build, '\"hinge\": 75', '\"hinge\": 100'",
        "build, '\"hinge\": 75', '\"old\": 75'",
        "build, '\"hingeTo\": 70', '\"hingeTo\": \"70 %\"'",
        "build, '\"from\": 25', '\"from\": -1'",
        "outline, '\"outline\": {', '\"outline\": \"fin.svg\", \"old\": {'",
        "outline, cdcd, CDCD",
        "outline, '\"kind\": \"outline\"', '\"kind\": \"procedure\"'",
        "procedure, '\"steps\":', '\"old\":'",
        "procedure, '\"text\": \"Sand', '\"old\": \"Sand'",
        "procedure, '\"made\": \"2025-03-14\"', '\"made\": \"spring\"'",
        "set-up, '\"values\": [', '\"values\": [], \"old\": ['",
        "set-up, '\"name\": \"Grey heron\"', '\"name\": 7'",
        "calendar, '\"day\": \"tuesday\"', '\"day\": \"2\"'",
        "calendar, '\"from\": \"19:00\"', '\"from\": \"7 pm\"'",
        "calendar, '\"date\": \"2025-12-24\"', '\"old\": 1'",
        "materials, '\"material\": \"laminating epoxy\"', '\"material\": \" \"'",
        "materials, '\"fullyCured\": {', '\"fullyCured\": \"a day\", \"old\": {'"
    })
    void theSchemaRefusesWhatTheReaderRefuses(String which, String part, String instead) throws IOException {
        var record = Bench.full(which);
        var kind = FileKind.of(record);
        var text = JsonFiles.text(RecordFiles.json(record));
        var newest = kind.schemaFiles().get(kind.schema() - 1);
        assertThat(errors(text, schema(newest))).isEmpty();
        assertThat(text).contains(part);
        var spoilt = text.replaceFirst(Pattern.quote(part), instead);
        assertThat(errors(spoilt, schema(newest))).isNotEmpty();
        Assertions.assertThatExceptionOfType(Unreadable.class).isThrownBy(() -> kind.read(JsonFiles.parse(spoilt)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"entry", "build", "outline", "procedure", "set-up", "calendar", "materials"})
    void unknownFieldsAreAllowed(String which) throws IOException {
        var record = Bench.full(which);
        var kind = FileKind.of(record);
        var tree = RecordFiles.json(record);
        tree.put("weather", "fine");
        assertThat(errors(JsonFiles.text(tree), schema(kind.schemaFiles().get(kind.schema() - 1))))
                .isEmpty();
        assertThat(RecordFiles.json(kind.read(tree))).isEqualTo(RecordFiles.json(record));
    }

    private static String schemaOf(String file) {
        var name = file.substring(file.lastIndexOf('/') + 1);
        if (file.startsWith(RecordFiles.TEMPLATES)) {
            return "template-1.json";
        }
        return switch (name) {
            case "calendar.json", "materials.json" -> name.replace(".json", "-1.json");
            case "build.json" -> "build-2.json";
            default -> "entry-2.json";
        };
    }

    private void assertMeets(Path file, Path schema) throws IOException {
        assertThat(errors(Files.readString(file), Files.readString(schema)))
                .as("%s", file)
                .isEmpty();
    }

    private List<String> errors(String text, String schema) {
        return registry
                .getSchema(schema, InputFormat.JSON)
                .validate(
                        text,
                        InputFormat.JSON,
                        run -> run.executionConfig(config -> config.formatAssertionsEnabled(true)))
                .stream()
                .map(Object::toString)
                .toList();
    }

    private static String schema(String name) throws IOException {
        try (var in = SchemasTest.class.getResourceAsStream("schema/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
