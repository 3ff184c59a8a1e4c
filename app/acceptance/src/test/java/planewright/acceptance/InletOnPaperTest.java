package planewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;
import planewright.api.figure.Drawing;
import planewright.app.Settings;
import planewright.app.calc.Calculation;
import planewright.app.calc.Outcome;
import planewright.app.calc.PluginHost;
import planewright.app.calc.ResultView;
import planewright.app.calc.Runs;
import planewright.app.cli.CommandLineProgram;
import planewright.app.print.Paper;
import planewright.app.print.Sheet;
import planewright.app.print.SheetPdf;
import planewright.app.store.JsonFiles;
import planewright.app.store.UserFolders;

/** The packaged inlet, printed and measured: on paper it is what the answer says, to a tenth of a millimetre. */
class InletOnPaperTest {
    private static final double TENTH = 0.1;
    private static final int DOTS_PER_MM = 20;

    /** How wide a line to cut along is drawn, mm. */
    private static final double CUT = 0.28;

    /** No ink for so many millimetres parts the plan from the section, and both from rule and title. */
    private static final double GAP = 5;

    @TempDir
    private Path temp;

    /** The cut lines alone, so that nothing else is measured. They end bluntly, where they are not closed, as at the apex. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void planAndSectionMeasureOnPaperWhatTheAnswerSays(Paper paper) throws Exception {
        var pdf = temp.resolve("cut.pdf");
        var results = printCuts(paper, pdf);
        var image = render(pdf);
        var bands = bands(image);
        assertThat(bands).as("title, plan, section, rule").hasSizeGreaterThanOrEqualTo(4);
        var plan = extent(image, bands.get(1));
        assertThat(plan[0] - CUT / 2).isCloseTo(millimetres(results, "length"), within(TENTH));
        assertThat(plan[1] - CUT).isCloseTo(millimetres(results, "width"), within(TENTH));
        var section = extent(image, bands.get(2));
        assertThat(section[0]).isCloseTo(millimetres(results, "room"), within(TENTH));
        assertThat(section[1] - CUT).isCloseTo(millimetres(results, "floor"), within(TENTH));
    }

    /** The whole page as a builder gets it: its longest upright lines are the lip's edge and its measure. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void pageOfTheCommandLineIsTrue(Paper paper) throws Exception {
        var pdf = temp.resolve("inlet.pdf");
        var answer = calc("--width", "40 mm", "--print", pdf.toString(), "--true-size", "--paper", paper.name());
        assertThat(millimetres(answer.path("results"), "width")).isEqualTo(40);
        assertThat(longestUpright(render(pdf)) - CUT).isCloseTo(40, within(TENTH));
    }

    @Test
    void linesForAMachineAreTheSameSize() throws Exception {
        var svg = temp.resolve("inlet.svg");
        var results = calc("--area", "400 mm2", "--svg", svg.toString()).path("results");
        var paths = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(svg.toFile())
                .getElementsByTagName("path");
        assertThat(paths.getLength()).isEqualTo(4);
        var plan = ((Element) paths.item(1)).getAttribute("d");
        assertThat(extent(plan, 0)).isCloseTo(millimetres(results, "length"), within(0.002));
        assertThat(extent(plan, 1)).isCloseTo(millimetres(results, "width"), within(0.002));
    }

    private JsonNode printCuts(Paper paper, Path pdf) throws Exception {
        var inputs = (ObjectNode) calc("--width", "40 mm").path("inputs");
        try (var plugins = PluginHost.open(Workplace.pluginZips(), temp.resolve("unpacked"))) {
            var inlet = plugins.calculator("ducts.inlet").orElseThrow();
            var answered = (Outcome.Answered)
                    Calculation.run(inlet, inputs, Runs.unwatched(null, LocalDateTime.of(2025, 3, 14, 20, 15)));
            var cuts = ResultView.of(inlet, answered).drawings().stream()
                    .map(InletOnPaperTest::cuts)
                    .filter(drawing -> !drawing.layers().isEmpty())
                    .<Sheet.Block>map(Sheet.TrueSize::new)
                    .toList();
            assertThat(cuts).hasSize(1);
            SheetPdf.write(new Sheet("Inlet", cuts), paper, pdf);
            return answered.json();
        }
    }

    private static Drawing cuts(Drawing drawing) {
        return new Drawing(
                drawing.title(),
                drawing.layers().stream()
                        .filter(layer -> layer.use() == Drawing.Use.CUT)
                        .toList());
    }

    private JsonNode calc(String... more) throws Exception {
        var out = new StringWriter();
        var err = new StringWriter();
        var settings = new Settings(UserFolders.under(temp.resolve("user")), Workplace.pluginZips(), Optional.empty());
        var words = Stream.concat(Stream.of("calc", "ducts.inlet", "--json"), Stream.of(more))
                .toArray(String[]::new);
        int code = new CommandLineProgram(settings, Clock.systemUTC(), new PrintWriter(out), new PrintWriter(err))
                .run(words);
        assertThat(code).as(err.toString()).isZero();
        return JsonFiles.parse(out.toString());
    }

    private static double millimetres(JsonNode results, String name) {
        assertThat(results.path(name).path("unit").textValue()).isEqualTo("mm");
        return results.path(name).path("value").doubleValue();
    }

    private static BufferedImage render(Path pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            return new PDFRenderer(document).renderImageWithDPI(0, (float) (DOTS_PER_MM * 25.4), ImageType.GRAY);
        }
    }

    /** First and last rows of what stands on the page with white above and below. */
    private static List<int[]> bands(BufferedImage image) {
        var bands = new ArrayList<int[]>();
        for (int y = 0; y < image.getHeight(); y++) {
            boolean ink = false;
            for (int x = 0; x < image.getWidth() && !ink; x++) {
                ink = dark(image, x, y);
            }
            if (ink) {
                var last = bands.isEmpty() ? null : bands.get(bands.size() - 1);
                if (last != null && y - last[1] < GAP * DOTS_PER_MM) {
                    last[1] = y;
                } else {
                    bands.add(new int[] {y, y});
                }
            }
        }
        return bands;
    }

    /** Width and height of the ink between two rows, mm. */
    private static double[] extent(BufferedImage image, int[] band) {
        int first = image.getWidth();
        int last = 0;
        for (int y = band[0]; y <= band[1]; y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if (dark(image, x, y)) {
                    first = Math.min(first, x);
                    last = Math.max(last, x);
                }
            }
        }
        return new double[] {(last + 1.0 - first) / DOTS_PER_MM, (band[1] + 1.0 - band[0]) / DOTS_PER_MM};
    }

    private static double longestUpright(BufferedImage image) {
        int longest = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            int run = 0;
            for (int y = 0; y < image.getHeight(); y++) {
                run = dark(image, x, y) ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
        }
        return (double) longest / DOTS_PER_MM;
    }

    private static boolean dark(BufferedImage image, int x, int y) {
        return (image.getRGB(x, y) & 0xff) < 128;
    }

    private static double extent(String path, int which) {
        var numbers = Stream.of(path.replaceAll("[MLZ]", "").strip().split("\\s+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (int i = which; i < numbers.length; i += 2) {
            least = Math.min(least, numbers[i]);
            most = Math.max(most, numbers[i]);
        }
        return most - least;
    }
}
