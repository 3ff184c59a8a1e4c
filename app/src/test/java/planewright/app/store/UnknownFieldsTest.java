package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.journal.Planform;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.SetUpRecord;
import planewright.shared.quantity.Written;

/** Files that hold more than this program knows, spelled as somebody else spelled them. */
class UnknownFieldsTest {
    private static final String BUILD = """
            {
              "owner": "the club",
              "schema": 2,
              "id": "01JBX00000000000000000HERN",
              "name": "Grey heron",
              "life": "flying",
              "begun": "2024-10-05",
              "parts": [
                {
                  "colour": "red",
                  "id": "aaaaaa",
                  "name": "left wing panel",
                  "mass": {
                    "value": "3 1/2",
                    "unit": "[oz_av]",
                    "scale": 0.850
                  },
                  "shelf": 3
                }
              ],
              "planform": {
                "unit": "[in_i]",
                "drawnBy": "hand",
                "surfaces": [
                  {
                    "name": "wing",
                    "panels": [
                      {
                        "rootChord": 10.50,
                        "tipChord": 7,
                        "span": 20,
                        "ribs": 9
                      }
                    ]
                  }
                ]
              }
            }
            """;
    private static final String ENTRY = """
            {
              "schema": 2,
              "weather": {
                "wind": 0.850,
                "gusts": []
              },
              "id": "01JBX000000000000000000001",
              "build": "01JBX00000000000000000HERN",
              "at": "2025-03-14T20:15:00",
              "kind": "work",
              "title": "Weighing",
              "measurements": [
                {
                  "id": "k3f9q2",
                  "name": "left wing panel",
                  "value": "212",
                  "unit": "g",
                  "seenBy": "two of us"
                },
                {
                  "id": "k3f9q3",
                  "name": "right wing panel",
                  "value": "219",
                  "unit": "g",
                  "damp": true
                }
              ],
              "setUp": [
                {
                  "name": "elevon",
                  "value": "8",
                  "unit": "mm",
                  "way": "up"
                },
                {
                  "name": "elevon",
                  "value": "6",
                  "unit": "mm",
                  "way": "down"
                }
              ],
              "mood": "fine"
            }
            """;

    @TempDir
    private Path temp;

    private Path journal;
    private Path buildFile;
    private Path entryFile;

    @BeforeEach
    void writeByHand() throws IOException {
        journal = temp.resolve("journal");
        JournalFolder.create(journal, "Loft");
        buildFile = journal.resolve("builds/grey-heron-00hern/build.json");
        entryFile = buildFile.resolveSibling("entries/2024/01JBX000000000000000000001.json");
        Files.createDirectories(entryFile.getParent());
        Files.writeString(buildFile, BUILD, StandardCharsets.UTF_8);
        Files.writeString(entryFile, ENTRY, StandardCharsets.UTF_8);
    }

    @Test
    void openingChangesNoByte() throws IOException {
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside()).isEmpty();
            assertThat(open.journal().builds()).hasSize(1);
        }
        assertThat(buildFile).hasContent(BUILD);
        assertThat(entryFile).hasContent(ENTRY);
    }

    @Test
    void anEditChangesItsOwnLineAndNoOther() throws IOException {
        edit(entry -> entry.withTitle("Weighing again"));
        assertThat(entryFile).hasContent(ENTRY.replace("\"Weighing\"", "\"Weighing again\""));
    }

    @Test
    void aNewFieldTakesItsPlaceAndMovesNoOther() throws IOException {
        edit(entry -> entry.withTags(List.of("wing")));
        assertThat(entryFile)
                .hasContent(ENTRY.replace(
                        "  \"measurements\": [", "  \"tags\": [\n    \"wing\"\n  ],\n  \"measurements\": ["));
    }

    @Test
    void aRowKeepsWhatWeDoNotKnowOfIt() throws IOException {
        edit(entry -> {
            var rows = new ArrayList<>(entry.measurements());
            var first = rows.get(0);
            rows.set(0, new MeasurementRecord(first.id(), first.name(), grams("213"), ""));
            return entry.withMeasurements(rows);
        });
        assertThat(entryFile).hasContent(ENTRY.replace("\"212\"", "\"213\""));
    }

    @Test
    void rowsThatChangePlacesTakeTheirFieldsAlong() throws IOException {
        edit(entry -> entry.withMeasurements(
                List.of(entry.measurements().get(1), entry.measurements().get(0))));
        var rows = JsonFiles.read(entryFile).get("measurements");
        assertThat(rows.get(0).get("damp").asBoolean()).isTrue();
        assertThat(rows.get(1).get("seenBy").asText()).isEqualTo("two of us");
    }

    @Test
    void rowsOfOneNameStayApart() throws IOException {
        edit(entry -> {
            var rows = new ArrayList<>(entry.setUp());
            rows.add(new SetUpRecord("rudder", new Written("12", Units.MILLIMETRE, Optional.empty())));
            return entry.withSetUp(rows);
        });
        try (var open = Bench.open(journal)) {
            assertThat(open.journal()
                            .entry("01JBX00000000000000000HERN", "01JBX000000000000000000001")
                            .orElseThrow()
                            .setUp())
                    .extracting(row -> row.name() + " " + row.written())
                    .containsExactly("elevon 8", "elevon 6", "rudder 12");
        }
        assertThat(entryFile).content().contains("\"way\": \"up\"", "\"way\": \"down\"");
    }

    @Test
    void removingAnEntryAndUndoingGivesEveryByteBack() throws IOException {
        try (var open = Bench.open(journal)) {
            var entry = open.journal()
                    .entry("01JBX00000000000000000HERN", "01JBX000000000000000000001")
                    .orElseThrow();
            open.journal().apply(Edit.remove("remove entry", entry));
            assertThat(entryFile).doesNotExist();
            open.journal().undo();
        }
        assertThat(entryFile).hasContent(ENTRY);
    }

    @Test
    void removingARowAndUndoingGivesEveryByteBack() throws IOException {
        try (var open = Bench.open(journal)) {
            var entry = open.journal()
                    .entry("01JBX00000000000000000HERN", "01JBX000000000000000000001")
                    .orElseThrow();
            open.journal().apply(Edit.change("remove", entry, entry.withMeasurements(List.of())));
            assertThat(entryFile).content().doesNotContain("k3f9q2");
            open.journal().undo();
        }
        assertThat(entryFile).hasContent(ENTRY);
    }

    @Test
    void aBuildsLedgerKeepsItsSpelling() throws IOException {
        editBuild(build -> build.withLayout("tailless"));
        assertThat(buildFile).hasContent(BUILD.replace("  \"begun\"", "  \"layout\": \"tailless\",\n  \"begun\""));
    }

    @Test
    void aPlanformDrawnInInchesHasTheSameShapeAfterAnEditOfOnePanel() throws IOException {
        editBuild(build -> {
            var wing = build.planform().orElseThrow().surfaces().get(0);
            var panel = wing.panels().get(0);
            var longer = new Planform.Panel(panel.rootChord(), panel.tipChord(), 0.6, 0, 0, 0);
            return new BuildRecord(
                    build.id(),
                    build.name(),
                    build.life(),
                    build.layout(),
                    build.datum(),
                    build.begun(),
                    build.notes(),
                    build.parts(),
                    Optional.of(new Planform(
                            List.of(new Planform.Surface("wing", 0, 0, 0, false, List.of(longer))), List.of())));
        });
        try (var open = Bench.open(journal)) {
            var panel = open.journal()
                    .builds()
                    .get(0)
                    .planform()
                    .orElseThrow()
                    .surfaces()
                    .get(0)
                    .panels()
                    .get(0);
            assertThat(panel.span()).isCloseTo(0.6, Assertions.within(1e-9));
            // 10.50 in at 25.4 mm
            assertThat(panel.rootChord()).isCloseTo(0.2667, Assertions.within(1e-9));
        }
        assertThat(buildFile).content().contains("\"drawnBy\": \"hand\"", "\"ribs\": 9");
    }

    private void edit(UnaryOperator<EntryRecord> change) throws IOException {
        try (var open = Bench.open(journal)) {
            var entry = open.journal()
                    .entry("01JBX00000000000000000HERN", "01JBX000000000000000000001")
                    .orElseThrow();
            open.journal().apply(Edit.change("edit", entry, change.apply(entry)));
        }
    }

    private void editBuild(UnaryOperator<BuildRecord> change) throws IOException {
        try (var open = Bench.open(journal)) {
            var build = open.journal().builds().get(0);
            open.journal().apply(Edit.change("edit", build, change.apply(build)));
        }
    }

    private static Written grams(String number) {
        return new Written(number, Units.GRAM, Optional.empty());
    }
}
