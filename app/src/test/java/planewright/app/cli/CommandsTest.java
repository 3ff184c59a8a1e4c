package planewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.app.Settings;
import planewright.app.journal.Edit;
import planewright.app.store.JournalFolder;
import planewright.app.store.JsonFiles;

/** The commands do what they say, for people and as JSON. */
class CommandsTest {
    @TempDir
    private Path folder;

    private CommandLineBench bench;

    @BeforeEach
    void journal() throws Exception {
        bench = new CommandLineBench(folder);
    }

    @Test
    void journalAndBuildAreBegun() throws Exception {
        var place = bench.path("second").toString();
        assertThat(done("new", "Cellar", "--in", place).out()).isEqualTo("Began journal 'Cellar' in " + place + "\n");
        done("new", "Teal", "--journal", place, "--life", "on the bench", "--layout", "canard", "--datum", "the nose");
        var shown = json("show", "teal", "--journal", place, "--json");
        assertThat(shown.path("name").asText()).isEqualTo("Teal");
        assertThat(shown.path("life").asText()).isEqualTo("on the bench");
        assertThat(shown.path("layout").asText()).isEqualTo("canard");
        assertThat(shown.path("datum").asText()).isEqualTo("the nose");
        assertThat(shown.path("begun").asText()).isEqualTo("2025-03-14");
    }

    @Test
    void linesBecomeMeasurementJointAndText() throws Exception {
        var said = done(
                "add",
                "--build",
                "grebe",
                "left wing panel 3 1/2 oz",
                "fin joint contact adhesive 12 h",
                "Sanded the edge",
                "--tag",
                "wing",
                "--at",
                "2025-03-10T19:00",
                "--measurement",
                "fin height=3 1/2 in ± 1/16 in");
        assertThat(said.out())
                .contains(
                        "left wing panel: 3 1/2 oz",
                        "fin height: 3 1/2 in ± 1/16 in",
                        "fin joint, contact adhesive, cured from 2025-03-11 07:00",
                        "Sanded the edge");
        var entry = json("show", "grebe", "--json").at("/log/0");
        assertThat(entry.path("at").asText()).isEqualTo("2025-03-10T19:00");
        assertThat(entry.at("/measurements/0/unit").asText()).isEqualTo("[in_i]");
        assertThat(entry.at("/measurements/1/value").asText()).isEqualTo("3 1/2");
        assertThat(entry.at("/joints/0/fullyCured").asText()).isEqualTo("2025-03-11T07:00");
        assertThat(entry.at("/tags/0").asText()).isEqualTo("wing");
    }

    @Test
    void wordsThatLookLikeFilesOfWordsAreWords() throws Exception {
        var trap = bench.file("trap.txt", "--title stolen");
        done("add", "--build", "grebe", "@" + trap);
        assertThat(json("show", "grebe", "--json").at("/log/0/text/0").asText()).isEqualTo("@" + trap);
    }

    @Test
    void entryWithoutTitleIsListedByWhatItHolds() throws Exception {
        done("add", "--build", "grebe", "spinner 12 g");
        var id = json("find", "spinner", "--json").at("/hits/0/entry").asText().substring(18);
        assertThat(done("show", "grebe").out()).contains("2025-03-14  work  spinner 12 g  " + id);
        assertThat(done("find", "spinner").out())
                .contains("1 entry", "Grebe  spinner 12 g  (" + id + ")", "»spinner« 12 g");
        assertThat(done("show", "grebe", id).out()).contains("2025-03-14 20:15 · work", "spinner: 12 g");
    }

    @Test
    void answerIsComputedFromTheJournal() throws Exception {
        // moments about the datum: (62 g × 40 mm − 186 g × 20 mm) / 248 g = −5 mm, by hand
        var answer = json("calc", "bench.station", "--build", "grey", "--json");
        assertThat(answer.at("/results/mass/value").doubleValue()).isCloseTo(248, within(1e-9));
        assertThat(answer.at("/results/x/value").doubleValue()).isCloseTo(-5, within(1e-9));
        assertThat(answer.path("build").asText()).isEqualTo("Grey heron");
        assertThat(answer.at("/origins/parts[0].mass/place").asText()).isEqualTo("mass ledger");
        assertThat(done("calc", "bench.station", "--build", "grey").out())
                .contains(
                        "Where is its middle?  Grey heron",
                        "Mass in all  248 g",
                        "Station      -5 mm",
                        "Propeller off.");
    }

    @Test
    void optionsWinOverFileAndFileOverJournal() throws Exception {
        var file = bench.file(
                "in.json", "{\"inputs\": {\"targetX\": \"10 mm\", \"parts\": [{\"mass\": \"1 g\", \"x\": \"7 mm\"}]}}");
        var answer = json(
                "calc",
                "bench.station",
                "--build",
                "grey",
                "--inputs",
                file.toString(),
                "--target-x",
                "-20 mm",
                "--json");
        assertThat(answer.at("/results/x/value").doubleValue()).isCloseTo(7, within(1e-9));
        assertThat(answer.at("/inputs/targetX/value").doubleValue()).isCloseTo(-20, within(1e-9));
        assertThat(answer.path("origins")).isEmpty();
    }

    @Test
    void rowsAreTypedWithoutAnyBuild() throws Exception {
        var answer = json(
                "calc",
                "bench.station",
                "--json",
                "--parts",
                "name=motor, mass=62 g, x=40 mm",
                "--parts",
                "name=pack, mass=186 g, x=-2 cm");
        assertThat(answer.at("/results/x/value").doubleValue()).isCloseTo(-5, within(1e-9));
        assertThat(answer.has("build")).isFalse();
    }

    @Test
    void keptAnswerIsFoundPrintedAndTakenAsMeasurement() throws Exception {
        var pdf = bench.path("answer.pdf");
        var said = done("calc", "bench.station", "--build", "grey", "--keep", "--print", pdf.toString());
        assertThat(said.out()).contains("Printed to " + pdf, "Kept in the log of 'Grey heron'");
        var entry = json("show", "grey", "--json").at("/log/0");
        assertThat(entry.path("kind").asText()).isEqualTo("kept result");
        assertThat(entry.at("/keptResult/calculator").asText()).isEqualTo("bench.station");
        assertThat(entry.at("/measurements/0/name").asText()).isEqualTo("balance point");
        assertThat(json("find", "station", "--json").path("total").intValue()).isEqualTo(1);
        try (var document = Loader.loadPDF(pdf.toFile())) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("Where is its middle?", "-5 mm", "Propeller off.");
        }
    }

    @Test
    void descriptionIsASchemaThatTheAnswerObeys() throws Exception {
        var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(json("calc", "bench.station", "--describe"));
        assertThat(schema.validate(json("calc", "bench.station", "--build", "grey", "--json")).stream()
                        .filter(error -> error.getInstanceLocation().getNameCount() > 0))
                .isEmpty();
        assertThat(schema.validate(JsonFiles.parse("{\"inputs\": {\"targetX\": true}}")))
                .isNotEmpty();
    }

    @Test
    void calculatorsAreListedWithPluginsThatCannotBeUsed() throws Exception {
        var sick = bench.file("plugins-sick.zip", "this is no zip");
        var settings = new Settings(
                bench.settings().user(),
                List.of(bench.settings().pluginPlaces().get(0), sick),
                bench.settings().journal());
        var out = new StringWriter();
        int code = new CommandLineProgram(
                        settings, CommandLineBench.clock(), new PrintWriter(out), new PrintWriter(out))
                .run("calc");
        assertThat(code).isZero();
        assertThat(out.toString())
                .contains("bench.station  Where is its middle?  plugin bench 1.2.0", "Cannot be used: " + sick);
    }

    @Test
    void logIsPrinted() throws Exception {
        done("add", "--build", "grebe", "Sanded the edge");
        var pdf = bench.path("log.pdf");
        assertThat(json("print", "grebe", "--to", pdf.toString(), "--paper", "letter", "--json")
                        .path("file")
                        .asText())
                .isEqualTo(pdf.toString());
        try (var document = Loader.loadPDF(pdf.toFile())) {
            assertThat(new PDFTextStripper().getText(document)).contains("Grebe", "Sanded the edge");
            // ANSI/ASME Y14.1: size A is 8.5 in × 11 in
            assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(8.5f * 72);
        }
    }

    @Test
    void checkCountsAndFindsAPictureThatWasChanged() throws Exception {
        var picture = bench.path("good.png");
        ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), "png", picture.toFile());
        done("add", "--build", "grebe", "--picture", picture.toString());
        assertThat(done("check").out()).isEqualTo("2 builds, 1 entry, 0 files wrong\n");
        try (var files = Files.walk(bench.journal().resolve("photos"))) {
            Files.writeString(files.filter(Files::isRegularFile).findFirst().orElseThrow(), "scratched");
        }
        var said = bench.run("check", "--json");
        assertThat(said.code()).isEqualTo(1);
        assertThat(JsonFiles.parse(said.out()).at("/wrong/0/reason").asText()).contains("not what its name says");
    }

    @ParameterizedTest
    @ValueSource(strings = {"new", "add", "find", "show", "calc", "print", "check", "open"})
    void everyCommandHelps(String command) {
        var help = done(command, "--help");
        assertThat(help.out())
                .contains("Usage: planewright " + command, "--help")
                .doesNotContain("null");
        assertThat(help.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(done("--help").out()).contains("\n  " + command + " ");
        assertThat(done("help", command).out()).isEqualTo(help.out());
        assertThat(done().out()).isEqualTo(done("--help").out());
    }

    @Test
    void tourGoesThroughTheMainJob() {
        var out = new StringWriter();
        var err = new StringWriter();
        int code =
                new Tour(bench.settings(), CommandLineBench.clock(), new PrintWriter(out), new PrintWriter(err)).run();
        assertThat(err.toString()).isEmpty();
        assertThat(code).isZero();
        assertThat(out.toString())
                .contains(
                        "$ ./planewright show 'Grey heron'",
                        "$ ./planewright calc bench.station --build 'Grey heron' --keep",
                        "Kept in the log of 'Grey heron'",
                        "$ ./planewright find Station",
                        "0 files wrong");
    }

    private CommandLineBench.Said done(String... words) {
        var said = bench.run(words);
        assertThat(said.err()).isEmpty();
        assertThat(said.code()).isZero();
        return said;
    }

    private ObjectNode json(String... words) throws Exception {
        return JsonFiles.parse(done(words).out());
    }

    @Test
    void whatWasDeletedIsListedBroughtBackAndThrownAway() throws IOException {
        bench.run("add", "--build", "Grebe", "--title", "Hull sanded");
        try (var open = JournalFolder.open(bench.journal(), bench.settings().user())) {
            var build = open.journal().builds().stream()
                    .filter(each -> each.name().equals("Grebe"))
                    .findFirst()
                    .orElseThrow();
            open.journal()
                    .apply(Edit.remove("delete", open.journal().log(build.id()).get(0)));
        }
        var listed = bench.run("bin");
        assertThat(listed.out()).contains("1 thing").contains("entry").contains("Hull sanded");
        var id = listed.out().lines().skip(1).findFirst().orElseThrow().split(" ")[0];
        assertThat(bench.run("bin", "--restore", "zz9").code()).isEqualTo(1);
        assertThat(bench.run("bin", "--restore", id).out()).isEqualTo("Brought back: entry 'Hull sanded'\n");
        assertThat(bench.run("show", "Grebe").out()).contains("Hull sanded");
        assertThat(bench.run("bin").out()).contains("The bin is empty.");
    }

    @Test
    void inputsAreSetByTheirNamesInJson() {
        var set = bench.run("calc", "bench.station", "--build", "Grey heron", "--set", "targetX=1 mm");
        assertThat(set.out())
                .isEqualTo(bench.run("calc", "bench.station", "--build", "Grey heron", "--target-x", "1 mm")
                        .out())
                .contains("off the target");
        var wrong = bench.run("calc", "bench.station", "--build", "Grey heron", "--set", "target=1 mm");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).contains("--set is 'target=1 mm'", "parts, targetX");
    }

    @Test
    void everyBuildIsComputedALineEach() {
        var said = bench.run("calc", "bench.station", "--every-build");
        assertThat(said.code()).isZero();
        assertThat(said.out())
                .containsPattern("BUILD +MASS IN ALL +STATION +REMARKS")
                .containsPattern("Grey heron +\\d+")
                .contains("Not computed:", "Grebe: Parts is empty; accepted: 1 or more. Weigh the parts");
        assertThat(bench.run("calc", "bench.station", "--every-build", "--json").out())
                .contains("\"build\": \"Grebe\"", "\"problem\": \"Parts is empty");
        assertThat(bench.run("calc", "bench.station", "--every-build", "--keep").err())
                .contains("--every-build goes with inputs and --json only");
    }
}
