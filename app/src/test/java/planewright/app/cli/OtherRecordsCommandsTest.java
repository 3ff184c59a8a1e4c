package planewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.Edit;
import planewright.app.journal.SetUpRecord;
import planewright.app.store.JournalFolder;
import planewright.app.store.JsonFiles;
import planewright.shared.quantity.Written;

/** Templates, calendar and materials on the command line. */
class OtherRecordsCommandsTest {
    private static final String FIN = "<svg xmlns='http://www.w3.org/2000/svg' width='80mm' height='40mm'"
            + " viewBox='0 0 80 40'><path d='M0 40 C 10 10 30 5 60 0 L 80 40 Z'/></svg>";

    @TempDir
    private Path folder;

    private CommandLineBench bench;

    @BeforeEach
    void journal() throws Exception {
        bench = new CommandLineBench(folder);
    }

    @Test
    void anOutlineComesInAndGoesOutAsItIs() throws Exception {
        var svg = bench.file("fin.svg", FIN);
        assertThat(done("template", "new", "Fin", "--outline", svg.toString(), "--from", "grey", "--tag", "fin"))
                .isEqualTo("Made outline 'Fin'\n");
        done("template", "flew", "fin", "--build", "Grebe", "--day", "2025-02-01");
        assertThat(done("template", "list")).contains("Fin", "outline", "Grey heron", "Grebe");
        assertThat(done("template", "show", "fin"))
                .contains("80 mm × 40 mm, 1 line", "came from: Grey heron", "flew on: Grebe, 2025-02-01");
        var shown = json("template", "show", "fin", "--json");
        assertThat(shown.at("/cameFrom/name").asText()).isEqualTo("Grey heron");
        assertThat(shown.at("/outline/hash").asText()).hasSize(64);
        var out = bench.path("out.svg");
        assertThat(done("take", "outline", "Fin", "--to", out.toString())).contains("Wrote", out.toString());
        assertThat(Files.readString(out)).isEqualTo(FIN);
        assertThat(bench.run("take", "outline", "Fin", "--to", out.toString()).err())
                .contains("there already");
    }

    @Test
    void aProcedureShowsTheUsualCautionsOfItsMaterials() throws Exception {
        done(
                "template",
                "new",
                "Core",
                "--step",
                "Cut with the hot wire",
                "--hands-on",
                "20 min",
                "--caution",
                "Mind the cat",
                "--step",
                "Skin it",
                "--material",
                "laminating epoxy",
                "--wait",
                "1 d",
                "--hands-on",
                "45");
        var shown = done("template", "show", "core");
        assertThat(shown)
                .containsSubsequence(
                        "1. Cut with the hot wire (hands on 20 min)",
                        "caution: Mind the cat",
                        "caution: The wire burns",
                        "2. Skin it (hands on 45 min, then wait 1 d)",
                        "materials: laminating epoxy",
                        "caution: Epoxy: gloves");
        var steps = json("template", "show", "core", "--json").path("steps");
        assertThat(steps).hasSize(2);
        assertThat(steps.at("/1/handsOn/unit").asText()).isEqualTo("min");
        assertThat(steps.at("/1/materials/0").asText()).isEqualTo("laminating epoxy");
    }

    @Test
    void aSetUpIsThatWhichTheBuildFliesWithNow() throws Exception {
        try (var opened = JournalFolder.open(bench.journal(), bench.settings().user())) {
            var heron = opened.journal().builds().stream()
                    .filter(build -> build.name().equals("Grey heron"))
                    .findFirst()
                    .orElseThrow();
            for (var number : List.of("8", "6")) {
                opened.journal()
                        .apply(Edit.add(
                                "throws",
                                Bench.entry(heron, number)
                                        .withSetUp(List.of(new SetUpRecord(
                                                "elevon", new Written(number, Units.MILLIMETRE, Optional.empty()))))));
            }
        }
        done("template", "new", "Now", "--set-up", "--from", "grey");
        assertThat(done("template", "show", "now")).contains("elevon: 6 mm").doesNotContain("8 mm");
        done("template", "new", "Slow", "--value", "elevon, low rate=3 1/2 mm", "--value", "balance point=70 mm");
        done("template", "new", "Slower", "--value", "elevon=2 mm", "--derived-from", "slow", "--note", "For wind.");
        assertThat(done("template", "show", "slower")).contains("made from: Slow", "elevon: 2 mm", "For wind.");
        assertThat(done("template", "show", "Slow")).contains("elevon, low rate: 3 1/2 mm", "balance point: 70 mm");
    }

    @Test
    void aTemplateGoesIntoTheBinAndComesBack() throws Exception {
        done("template", "new", "Slow", "--value", "elevon=2 mm");
        done("template", "remove", "slow");
        assertThat(done("template", "list")).doesNotContain("Slow");
        var id = json("bin", "--json").at("/deleted/0/id").asText();
        assertThat(done("bin")).contains("template", "Slow");
        done("bin", "--restore", id);
        assertThat(done("template", "list")).contains("Slow");
    }

    @Test
    void theCalendarIsSetByKindsOfLines() throws Exception {
        assertThat(done("calendar", "show")).contains("no calendar yet");
        done("calendar", "set", "--session", "tuesday 19:00-21:30", "--session", "saturday 9:00-12:00");
        done(
                "calendar",
                "set",
                "--other-day",
                "2025-12-24 away",
                "--other-day",
                "2025-12-27 10:00-12:00 14:00-24:00 at last",
                "--shop",
                "15:00=18 °C",
                "--shop",
                "5:00=8");
        assertThat(done("calendar", "show"))
                .containsSubsequence(
                        "every tuesday 19:00-21:30",
                        "every saturday 09:00-12:00",
                        "2025-12-24 no session · away",
                        "2025-12-27 10:00-12:00, 14:00-00:00 · at last",
                        "shop at 05:00 8 °C",
                        "shop at 15:00 18 °C");
        assertThat(json("calendar", "show", "--json").at("/week/0/day").asText())
                .isEqualTo("tuesday");
        done("calendar", "remove");
        assertThat(done("calendar", "show")).contains("no calendar yet");
        done("bin", "--restore", "calendar");
        assertThat(done("calendar", "show")).contains("tuesday");
    }

    @Test
    void aMaterialKeepsWhatIsNotSaidAgain() throws Exception {
        done("material", "set", "tall tin", "--class", "laminating epoxy", "--hands-off", "10 h", "--at", "17 °C");
        done("material", "set", "Tall Tin", "--cured", "2 d", "--note", "slow");
        assertThat(done("material", "list")).contains("tall tin", "laminating epoxy", "10 h", "2 d", "17 °C", "slow");
        assertThat(json("material", "list", "--json").path("materials")).hasSize(1);
        done("material", "remove", "tall tin");
        assertThat(json("material", "list", "--json").has("materials")).isFalse();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            template new Fin                                     | 2 | what 'Fin' is is not clear
            template new Fin --set-up                            | 2 | a set-up has no values
            template new Fin --outline nowhere.svg               | 1 | nowhere.svg is not there
            template new Fin --value elevon                      | 2 | --value is 'elevon'
            template new Fin --step x --wait 5_g                 | 2 | --wait
            template new Fin --value a=1 --from nobody           | 1 | build 'nobody'
            template new Fin --value a=1 --derived-from nothing  | 1 | template 'nothing'
            template new Fin --value a=1 --day spring            | 2 | --day is 'spring'
            template show nothing                                | 1 | the journal has no templates yet
            template                                             | 2 | needs a second word
            calendar set                                         | 2 | nothing to set
            calendar set --session mondays                       | 2 | --session is 'mondays'
            calendar set --session monday_21:00-19:00            | 2 | 21:00 to 19:00
            calendar set --session monday_29:00-30:00            | 2 | 29:00
            calendar set --other-day tomorrow                    | 2 | --other-day is 'tomorrow'
            calendar set --shop 15:00=18_g                       | 2 | --shop
            calendar set --shop 15:00=99                         | 2 | 99.0 °C
            calendar remove                                      | 1 | no calendar
            material set tin --hands-off soon                    | 2 | --hands-off
            material set tin --hands-off 5_d --cured 1_d         | 2 | fully cured before
            material remove tin                                  | 1 | 'tin' is not in the list
            """)
    void whatIsWrongIsToldByName(String words, int code, String told) throws Exception {
        var before = bench.bytes();
        var said = bench.run(Stream.of(words.strip().split(" +"))
                .map(word -> word.replace('_', ' '))
                .toArray(String[]::new));
        assertThat(said.code()).as(said.err()).isEqualTo(code);
        assertThat(said.err()).contains(told);
        assertThat(bench.bytes()).isEqualTo(before);
    }

    @Test
    void checkTellsOfOutlinesThatAreMissingOrDamaged() throws Exception {
        var svg = bench.file("fin.svg", FIN);
        done("template", "new", "Fin", "--outline", svg.toString());
        assertThat(done("check")).contains("1 template", "0 files wrong");
        var hash = json("template", "show", "fin", "--json").at("/outline/hash").asText();
        var kept = bench.journal()
                .resolve("outlines")
                .resolve(hash.substring(0, 2))
                .resolve(hash + ".svg");
        Files.writeString(kept, FIN + " ");
        assertThat(bench.run("check").out()).contains("1 file wrong", hash, "not what its name says");
        Files.delete(kept);
        var said = bench.run("check");
        assertThat(said.out()).contains("outline of 'Fin'", "missing");
        assertThat(said.code()).isEqualTo(1);
    }

    private String done(String... words) {
        var said = bench.run(words);
        assertThat(said.code()).as(said.err()).isZero();
        return said.out();
    }

    private ObjectNode json(String... words) throws Exception {
        return JsonFiles.parse(done(words));
    }
}
