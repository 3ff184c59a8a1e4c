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
            var schema = file.endsWith("build.json") ? "build-1.json" : "entry-1.json";
            assertMeets(journal.resolve(file), journal.resolve("schema").resolve(schema));
            checked++;
        }
        assertThat(checked).isEqualTo(2 + Life.values().length * (1 + Entry.Kind.values().length));
    }

    @ParameterizedTest
    @CsvSource({
        "'\"3 1/2\"', 3.5",
        "'\"kind\": \"flight\"', '\"kind\": \"FLIGHT\"'",
        "'\"at\": \"2025-03-14T20:15\"', '\"at\": \"2025-03-14\"'",
        "'\"title\":', '\"title\": 7, \"old\":'",
        "'\"schema\": 1', '\"schema\": 0'",
        "'\"unit\": \"[in_i]\"', '\"unit\": null'",
        "abab, ABAB"
    })
    void theSchemaRefusesWhatTheReaderRefuses(String part, String instead) throws IOException {
        var text = JsonFiles.text(RecordFiles.json(Bench.fullEntry(Bench.fullBuild())));
        assertThat(text).contains(part);
        var spoilt = text.replaceFirst(Pattern.quote(part), instead);
        assertThat(errors(spoilt, schema("entry-1.json"))).isNotEmpty();
        Assertions.assertThatExceptionOfType(Unreadable.class)
                .isThrownBy(() -> EntryFile.read(JsonFiles.parse(spoilt)));
    }

    @Test
    void unknownFieldsAreAllowed() throws IOException {
        var tree = RecordFiles.json(Bench.fullEntry(Bench.fullBuild()));
        tree.put("weather", "fine");
        assertThat(errors(JsonFiles.text(tree), schema("entry-1.json"))).isEmpty();
    }

    private void assertMeets(Path file, Path schema) throws IOException {
        assertThat(errors(Files.readString(file), Files.readString(schema)))
                .as("%s", file)
                .isEmpty();
    }

    private List<String> errors(String text, String schema) {
        return registry.getSchema(schema, InputFormat.JSON).validate(text, InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }

    private static String schema(String name) throws IOException {
        try (var in = SchemasTest.class.getResourceAsStream("schema/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
