package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.app.Bench;
import planewright.app.journal.BuildDayRecord;
import planewright.app.journal.CalendarRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.Kept;
import planewright.app.journal.MaterialRecord;
import planewright.app.journal.MaterialsRecord;
import planewright.app.journal.TemplateContent;
import planewright.app.journal.TemplateRecord;

/** Templates, calendar and materials on disk. */
class OtherRecordsTest {
    @TempDir
    private Path temp;

    private Path journal;

    @BeforeEach
    void fullJournal() throws IOException {
        journal = temp.resolve("journal");
        try (var open = Bench.newJournal(journal)) {
            var build = Bench.fullBuild();
            open.journal().apply(Edit.add("build", build));
            for (var record : Bench.fullOthers(build)) {
                open.journal().apply(Edit.add("other", record));
            }
        }
    }

    @Test
    void theyLieWhereTheJournalsReadmeSays() throws IOException {
        var files = new ArrayList<>(Bench.records(journal).keySet());
        files.removeIf(file -> file.startsWith("builds"));
        assertThat(files)
                .satisfiesExactly(
                        file -> assertThat(file).isEqualTo("calendar.json"),
                        file -> assertThat(file).isEqualTo("materials.json"),
                        file -> assertThat(file).matches("templates/calm-air-[0-9a-z]{6}\\.json"),
                        file -> assertThat(file).matches("templates/fairing-[0-9a-z]{6}\\.json"),
                        file -> assertThat(file).matches("templates/fin-[0-9a-z]{6}\\.json"));
        assertThat(Files.readString(journal.resolve("README.md")))
                .contains("templates/", "outlines/", "calendar.json", "materials.json");
    }

    @Test
    void whatWasSavedIsReadBackWhole() throws IOException {
        List<Kept> saved = new ArrayList<>();
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside()).isEmpty();
            saved.addAll(open.journal().templates());
            saved.add(open.journal().calendar().orElseThrow());
            saved.add(open.journal().materialsRecord().orElseThrow());
            assertThat(open.journal().materials()).hasSize(1);
            assertThat(open.journal().asOfNow().templates())
                    .isEqualTo(open.journal().templates());
        }
        assertThat(saved).hasSize(5);
        for (var record : saved) {
            var text = JsonFiles.text(RecordFiles.json(record));
            assertThat(RecordFiles.read(JsonFiles.parse(text), record)).isEqualTo(record);
            assertThat(Bench.records(journal)).containsValue(text);
        }
        assertThat(Bench.records(journal))
                .allSatisfy((file, text) -> assertThat(text)
                        .doesNotContain("\r", "null")
                        .startsWith("{\n  \"schema\": ")
                        .endsWith("\n}\n"));
    }

    /** An edit of one thing leaves every other byte, also of what this program does not know. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            templates/fin-       | "name": "Fin"                            | "name": "Rudder"
            templates/fairing-   | "name": "Fairing"                        | "name": "Rudder"
            templates/calm-air-  | "name": "Calm air"                       | "name": "Rudder"
            calendar.json        | "note": "away"                           | "note": "Rudder"
            materials.json       | "note": "slower than its sheet says"     | "note": "Rudder"
            """)
    void unknownFieldsSurviveAnEdit(String place, String before, String after) throws IOException {
        var file = file(place);
        var strange = JsonFiles.text(JsonFiles.parse(Files.readString(file)
                .replaceFirst("\\n  \"", "\n  \"mood\": {\n    \"wind\": 0.850\n  },\n  \"")
                .replace(before, before + ",\n      \"odd\": 1.50")));
        assertThat(strange).contains("mood", "odd");
        Files.writeString(file, strange);
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside()).isEmpty();
            edit(open, "Rudder");
            var expected = strange.replace(before, after);
            assertThat(Files.readString(file)).isEqualTo(expected);
            open.journal().undo();
            assertThat(Files.readString(file)).isEqualTo(strange);
        }
    }

    /** Renames, or notes, whatever of the journal holds the field that this program does not know. */
    private static void edit(JournalFolder open, String word) throws IOException {
        for (var template : open.journal().templates()) {
            if (strange(open, template)) {
                open.journal().apply(Edit.change("name", template, template.withName(word)));
                return;
            }
        }
        var calendar = open.journal().calendar().orElseThrow();
        if (strange(open, calendar)) {
            var days = new ArrayList<>(calendar.otherDays());
            days.set(
                    0,
                    new CalendarRecord.OtherDayRecord(
                            days.get(0).date(), days.get(0).sessions(), word));
            open.journal().apply(Edit.change("note", calendar, calendar.withOtherDays(days)));
            return;
        }
        var materials = open.journal().materialsRecord().orElseThrow();
        var each = materials.materials().get(0);
        var noted = new MaterialRecord(
                each.id(),
                each.name(),
                each.material(),
                each.workingTime(),
                each.flashOff(),
                each.handsOff(),
                each.fullyCured(),
                each.at(),
                word);
        open.journal().apply(Edit.change("note", materials, new MaterialsRecord(List.of(noted))));
    }

    private static boolean strange(JournalFolder open, Kept record) throws IOException {
        return Files.readString(open.fileOf(record)).contains("mood");
    }

    @Test
    void rowsKeepWhatIsNotKnownOfThemWhereverTheyGo() throws IOException {
        var file = file("templates/fairing-");
        Files.writeString(
                file,
                Files.readString(file)
                        .replace(
                                "\"text\": \"Sand the core\"",
                                "\"text\": \"Sand the core\",\n      \"tool\": \"block\""));
        try (var open = Bench.open(journal)) {
            var before = template(open, "Fairing");
            var steps = new ArrayList<>(before.steps());
            steps.add(0, ((TemplateRecord) Bench.full("procedure")).steps().get(0));
            open.journal().apply(Edit.change("step", before, before.withContent(new TemplateContent.Procedure(steps))));
        }
        var steps = JsonFiles.read(file).get("steps");
        assertThat(steps).hasSize(2);
        assertThat(steps.get(0).has("tool")).isFalse();
        assertThat(steps.get(1).get("tool").textValue()).isEqualTo("block");
    }

    @Test
    void anotherFlightIsWrittenIntoTheLineageAndNothingElse() throws IOException {
        var file = file("templates/fin-");
        var before = Files.readAllLines(file);
        try (var open = Bench.open(journal)) {
            var fin = template(open, "Fin");
            var flown = new BuildDayRecord(Bench.build("Teal").id(), "Teal", Bench.EVENING.toLocalDate());
            open.journal()
                    .apply(Edit.change(
                            "flew", fin, fin.withLineage(fin.lineage().flownOn(flown))));
            assertThat(template(open, "Fin").flewOn()).hasSize(2);
        }
        var after = new ArrayList<>(Files.readAllLines(file));
        after.removeAll(before);
        assertThat(after)
                .filteredOn(line -> line.contains("\""))
                .hasSize(2)
                .allMatch(line -> line.contains("build") || line.contains("Teal"));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void whatIsDeletedLiesInTheBinAndComesBackByteForByte(int which) throws IOException {
        var before = Bench.records(journal);
        try (var open = Bench.open(journal)) {
            open.journal().apply(Edit.remove("delete", records(open).get(which)));
            assertThat(Bench.records(journal)).hasSize(before.size() - 1);
        }
        try (var open = Bench.open(journal)) {
            assertThat(records(open)).hasSize(4);
            var binned = open.binned().get(0);
            assertThat(binned.kind()).isIn("template", "calendar", "materials");
            assertThat(binned.title()).isNotBlank();
            open.journal().apply(Edit.add("back", binned.record()));
            assertThat(open.binned()).isEmpty();
            open.journal().undo();
            open.journal().redo();
        }
        assertThat(Bench.records(journal)).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({
        "templates/fin-, '\"kind\": \"outline\"', '\"kind\": \"shape\"', kind",
        "templates/fin-, cdcd, CDCD, hexadecimal",
        "templates/fairing-, '\"value\": \"20\"', '\"value\": \"long\"', long",
        "templates/calm-air-, '\"unit\": \"mm\"', '\"unit\": \"stone\"', stone",
        "calendar.json, '\"to\": \"21:30\"', '\"to\": \"18:30\"', 19:00 to 18:30",
        "materials.json, '\"unit\": \"Cel\"', '\"unit\": \"g\"', unit",
        "materials.json, '\"value\": \"2\"', '\"value\": \"0.1\"', fully cured before",
        "materials.json, '\"value\": \"35\"', '\"value\": \"-35\"', above 0"
    })
    void whatCannotBeReadIsSetAsideAndTheRestOpens(String place, String part, String instead, String told)
            throws IOException {
        var file = file(place);
        Files.writeString(file, Files.readString(file).replaceFirst(part, instead));
        var before = Files.readString(file);
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside()).singleElement().satisfies(aside -> {
                assertThat(aside.file()).isEqualTo(file);
                assertThat(aside.reason()).contains(told);
            });
            assertThat(records(open)).hasSize(4);
        }
        assertThat(Files.readString(file)).isEqualTo(before);
    }

    /** One that cannot be read is not overwritten by a new one of its kind. */
    @Test
    void aBrokenCalendarIsNotOverwritten() throws IOException {
        Files.writeString(journal.resolve("calendar.json"), "{ mine");
        try (var open = Bench.open(journal)) {
            assertThat(open.journal().calendar()).isEmpty();
            Assertions.assertThatIOException()
                    .isThrownBy(() -> open.journal().apply(Edit.put("set", Optional.empty(), CalendarRecord.EMPTY)))
                    .withMessageContaining("calendar.json");
        }
        assertThat(journal.resolve("calendar.json")).hasContent("{ mine");
    }

    @Test
    void twoTemplatesOfOneIdAreNotBothShown() throws IOException {
        var file = file("templates/fin-");
        Files.copy(file, file.resolveSibling("copy.json"));
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside())
                    .singleElement()
                    .satisfies(aside -> assertThat(aside.file()).hasFileName("copy.json"));
            assertThat(open.journal().templates()).hasSize(3);
        }
    }

    @Test
    void aNewerTemplateIsShownAndCannotBeChanged() throws IOException {
        var file = file("templates/fin-");
        Files.writeString(file, Files.readString(file).replace("\"schema\": 1", "\"schema\": 9"));
        try (var open = Bench.open(journal)) {
            var fin = template(open, "Fin");
            Assertions.assertThatExceptionOfType(JournalRefused.class)
                    .isThrownBy(() -> open.journal().apply(Edit.change("name", fin, fin.withName("x"))))
                    .withMessageContainingAll("newer version", "schema is 9", "up to 1");
        }
    }

    private static TemplateRecord template(JournalFolder open, String name) {
        return open.journal().templates().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<Kept> records(JournalFolder open) {
        var records = new ArrayList<Kept>(open.journal().templates());
        open.journal().calendar().ifPresent(records::add);
        open.journal().materialsRecord().ifPresent(records::add);
        return records;
    }

    private Path file(String place) throws IOException {
        return new TreeMap<>(Bench.records(journal))
                .keySet().stream()
                        .filter(file -> file.startsWith(place))
                        .map(journal::resolve)
                        .findFirst()
                        .orElseThrow();
    }
}
