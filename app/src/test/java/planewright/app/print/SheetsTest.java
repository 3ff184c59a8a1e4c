package planewright.app.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.figure.Chart;
import planewright.app.Bench;
import planewright.app.journal.KeptResult;
import planewright.app.pictures.PictureShelf;
import planewright.app.store.JsonFiles;

/** What stands on a sheet. */
class SheetsTest {
    @TempDir
    private Path folder;

    @Test
    void entryIsPrintedWithAllThatIsInIt() {
        var build = Bench.fullBuild();
        var entry = Bench.fullEntry(build);
        var sheet = Sheets.entry(build, entry, shelf());
        assertThat(sheet.title()).isEqualTo("Grey heron · 14 March 2025, 20:15");
        assertThat(words(sheet))
                .contains(
                        "First hand launch \"over\" tall grass",
                        "14 March 2025, 20:15, flight · balance, wing",
                        "Nose heavy, by a",
                        "left wing panel|3 1/2 in ± 1/16 in|steel rule",
                        "balance point|0.850 ft",
                        "fin to centre line, solvent-based contact adhesive, from 14 March 2025, 20:15, hands off until 14 March 2025, 20:25, cured from 15 March 2025, 08:15",
                        "7 min; calm; slow to roll");
        assertThat(sheet.blocks())
                .contains(new Sheet.Photo(shelf().file(entry.pictures().get(0)), "the launch"));
    }

    @Test
    void logBeginsWithTheBuildAndKeepsTheOrder() {
        var build = Bench.fullBuild();
        var first = Bench.entry(build, "Cut the cores");
        var second = Bench.entry(build, "").withText(List.of("Sanded the *edge*."));
        var sheet = Sheets.log(build, List.of(first, second), shelf());
        assertThat(sheet.blocks().get(0)).isEqualTo(new Sheet.Heading(1, "Grey heron"));
        assertThat(words(sheet))
                .containsSubsequence(
                        "tailless with elevons",
                        "begun 5 Oct 2024, flying",
                        "Stations are measured from: wing leading edge at the centre line",
                        "Drawn on the back of a calendar.",
                        "Cut the cores",
                        "work",
                        "Sanded the");
    }

    @Test
    void keptResultIsPrintedWithItsFigures() throws Exception {
        var build = Bench.fullBuild();
        var results = JsonFiles.parse("""
                {"chart": {"kind": "bars", "title": "Mass by group", "categories": "Group",
                           "values": {"label": "Mass", "unit": "g"},
                           "bars": [{"name": "radio", "value": 19, "plusMinus": 0.5}]},
                 "drawing": {"kind": "drawing", "title": "From above", "unit": "mm",
                             "layers": [{"use": "outline", "shapes": [
                                 {"kind": "path", "closed": false, "points": [[0, 0], [10, 5]]}]}]},
                 "mass": 19}""");
        var entry = Bench.entry(build, "Ledger")
                .withKeptResult(new KeptResult("balance.ledger", "1", JsonFiles.object(), JsonFiles.object(), results));
        assertThat(Sheets.entry(build, entry, shelf()).blocks())
                .contains(new Sheet.ChartBlock(new Chart.Bars(
                        "Mass by group",
                        "Group",
                        new Chart.Axis("Mass", "g"),
                        List.of(new Chart.Bar("radio", 19, 0.5)))))
                .filteredOn(Sheet.DrawingBlock.class::isInstance)
                .hasSize(1);
    }

    private PictureShelf shelf() {
        return new PictureShelf(folder.resolve("photos"), folder.resolve("thumbnails"), () -> {});
    }

    private static String words(Sheet sheet) {
        return sheet.blocks().stream().map(SheetsTest::words).collect(Collectors.joining("\n"));
    }

    private static String words(Sheet.Block block) {
        if (block instanceof Sheet.Heading heading) {
            return heading.text();
        } else if (block instanceof Sheet.Paragraph paragraph) {
            return paragraph.text();
        } else if (block instanceof Sheet.Remark remark) {
            return remark.word() + " " + remark.text();
        } else if (block instanceof Sheet.Table table) {
            return table.rows().stream().map(row -> String.join("|", row)).collect(Collectors.joining("\n"));
        }
        return "";
    }
}
