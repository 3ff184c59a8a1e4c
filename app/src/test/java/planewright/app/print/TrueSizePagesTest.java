package planewright.app.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;
import planewright.app.figure.Figures;

/**
 * Drawings at true size, measured in the rendered page. Paper: ISO 216 A4 is 210 mm × 297 mm, ANSI/ASME Y14.1 A is 8.5 in × 11
 * in. Nothing is off by more than a tenth of a millimetre.
 */
class TrueSizePagesTest {
    private static final double TENTH = 0.1;

    /** How wide a line to cut along is drawn, mm. */
    private static final double CUT = 0.28;

    private static final double RULE = 0.15;
    private static final double MM_PER_POINT = 25.4 / 72;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(Paper.class)
    void pageIsAsLargeAsThePaperAndNotScaledByViewers(Paper paper) throws Exception {
        try (var document = print(Figures.rectangle(100, 50), paper)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            var box = document.getPage(0).getMediaBox();
            assertThat(box.getWidth() * MM_PER_POINT).isCloseTo(paper == Paper.A4 ? 210 : 8.5 * 25.4, within(0.01));
            assertThat(box.getHeight() * MM_PER_POINT).isCloseTo(paper == Paper.A4 ? 297 : 11 * 25.4, within(0.01));
            assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo(COSName.NONE.getName());
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void cutLinesAreTrueToATenth(Paper paper) throws Exception {
        try (var document = print(Figures.rectangle(123.4, 56.7), paper)) {
            var ink = Rendered.of(document, 0).ink(20, 30);
            assertThat(ink.getWidth() - CUT).isCloseTo(123.4, within(TENTH));
            assertThat(ink.getHeight() - CUT).isCloseTo(56.7, within(TENTH));
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void ruleIsAHundredMillimetresLongOnEveryPage(Paper paper) throws Exception {
        try (var document = print(Figures.rectangle(350, 300), paper)) {
            assertThat(document.getNumberOfPages()).isGreaterThan(1);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                assertThat(Rendered.of(document, page).longestRunBelow(30) - RULE)
                        .isCloseTo(100, within(TENTH));
                assertThat(text(document, page)).contains("100 mm: lay a rule on it", "cross on cross");
            }
        }
    }

    /** From the left edge to the first cross, from cross to cross on the pages between, from the last to the right edge. */
    @ParameterizedTest
    @CsvSource({"A4, 300, 150, 2", "A4, 650, 140, 3", "LETTER, 300, 150, 2", "LETTER, 650, 120, 3"})
    void pagesBesideEachOtherJoinToTheWholeWidth(Paper paper, double width, double height, int pages) throws Exception {
        try (var document = print(Figures.rectangle(width, height), paper)) {
            assertThat(document.getNumberOfPages()).isEqualTo(pages);
            double whole = 0;
            for (int page = 0; page < pages; page++) {
                var crosses = crosses(document, page).stream()
                        .map(Point2D::getX)
                        .sorted()
                        .toList();
                double from = page == 0 ? Rendered.of(document, page).firstInkAcross() + CUT / 2 : crosses.get(0);
                double to = page == pages - 1
                        ? Rendered.of(document, page).lastInkAcross() - CUT / 2
                        : crosses.get(crosses.size() - 1);
                whole += to - from;
            }
            assertThat(whole).isCloseTo(width, within(TENTH));
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void lineThatCrossesAJoinGoesOnWhereItStopped(Paper paper) throws Exception {
        try (var document = print(slanted(500, 400), paper)) {
            int joins = 0;
            for (int page = 0; page + 1 < document.getNumberOfPages(); page++) {
                var name = name(document, page);
                if (name.charAt(0) == name(document, page + 1).charAt(0) - 1) {
                    assertThat(heightAtJoin(document, page, true))
                            .as(name)
                            .isCloseTo(heightAtJoin(document, page + 1, false), within(TENTH / 2));
                    joins++;
                }
            }
            assertThat(joins).isGreaterThan(1);
        }
    }

    /** What two neighbours both show is the same on both, apart from the neighbour's name and dots on the edges of lines. */
    @Test
    void overlapsShowTheSame() throws Exception {
        try (var document = print(slanted(300, 150), Paper.A4)) {
            var left = Rendered.of(document, 0);
            var right = Rendered.of(document, 1);
            double shift = crosses(document, 0).get(0).getX()
                    - crosses(document, 1).get(0).getX();
            assertThat(left.unlike(right, shift, crosses(document, 0).get(0).getX(), 4))
                    .isLessThan(0.5);
            assertThat(left.unlike(right, shift + 1, crosses(document, 0).get(0).getX(), 4))
                    .isGreaterThan(1);
        }
    }

    @Test
    void pagesAreNamedAndNeighboursAreTold() throws Exception {
        try (var document = print(Figures.rectangle(500, 400), Paper.A4)) {
            assertThat(IntStream.range(0, document.getNumberOfPages()).mapToObj(page -> name(document, page)))
                    .containsExactly("A1", "B1", "C1", "A2", "B2", "C2");
            assertThat(text(document, 0))
                    .contains("joins B1", "joins A2", "1 of 6")
                    .doesNotContain("joins C1");
            assertThat(text(document, 4)).contains("joins A2", "joins C2", "joins B1");
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void paperIsTurnedWhereThatSavesAPage(Paper paper) throws Exception {
        try (var document = print(Figures.rectangle(230, 100), paper)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            var box = document.getPage(0).getMediaBox();
            assertThat(box.getWidth()).isGreaterThan(box.getHeight());
        }
    }

    @Test
    void drawingForHundredsOfPagesIsSaidToBeSmaller() throws Exception {
        try (var document = print(Figures.rectangle(9000, 500), Paper.A4)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(text(document, 0)).contains("Former would need more than 60 pages");
        }
    }

    @Test
    void pagesStandBetweenWhatIsBeforeAndAfter() throws Exception {
        var pdf = folder.resolve("sheet.pdf");
        SheetPdf.write(
                new Sheet(
                        "s",
                        List.of(
                                new Sheet.Paragraph("before"),
                                new Sheet.TrueSize(Figures.rectangle(100, 50)),
                                new Sheet.Paragraph("after"))),
                Paper.A4,
                pdf);
        try (var document = Loader.loadPDF(pdf.toFile())) {
            assertThat(text(document, 0)).contains("before", "1 / 3").doesNotContain("after");
            assertThat(text(document, 1)).contains("true size").doesNotContain("2 / 3");
            assertThat(text(document, 2)).contains("after", "3 / 3");
        }
    }

    private static Drawing slanted(double width, double height) {
        var line = new Drawing.Path(List.of(new Point(0, 0), new Point(width, height)), false);
        return new Drawing("Slant", List.of(new Drawing.Layer(Drawing.Use.CUT, List.of(line))));
    }

    /** How far above the lower cross of its right or left join the slanted line is there, mm. */
    private static double heightAtJoin(PDDocument document, int page, boolean right) throws IOException {
        var crosses = crosses(document, page);
        var side = Comparator.comparingDouble(Point2D::getX);
        double x = (right ? crosses.stream().max(side) : crosses.stream().min(side))
                .orElseThrow()
                .getX();
        double y = crosses.stream()
                .filter(cross -> Math.abs(cross.getX() - x) < 0.01)
                .mapToDouble(Point2D::getY)
                .min()
                .orElseThrow();
        var line = Pages.lines(document.getPage(page)).stream()
                .max(Comparator.comparingDouble(Pages.Line::length))
                .orElseThrow();
        double slope = (line.to().getY() - line.from().getY())
                / (line.to().getX() - line.from().getX());
        return (line.from().getY() + slope * (x / MM_PER_POINT - line.from().getX())) * MM_PER_POINT - y;
    }

    /** Where upright and level strokes of 6 mm cross, mm from the lower left. */
    private static List<Point2D> crosses(PDDocument document, int page) throws IOException {
        var arms = Pages.lines(document.getPage(page)).stream()
                .filter(line -> Math.abs(line.length() * MM_PER_POINT - 6) < 0.01)
                .toList();
        return arms.stream()
                .flatMap(one -> arms.stream()
                        .filter(other -> other != one && middle(one).distance(middle(other)) < 0.01)
                        .map(other -> middle(one)))
                .distinct()
                .toList();
    }

    private static Point2D middle(Pages.Line line) {
        return new Point2D.Double(
                (line.from().getX() + line.to().getX()) / 2 * MM_PER_POINT,
                (line.from().getY() + line.to().getY()) / 2 * MM_PER_POINT);
    }

    private static String name(PDDocument document, int page) {
        try {
            return Stream.of(text(document, page).split("\\s+"))
                    .filter(word -> word.matches("[A-Z]\\d+,"))
                    .findFirst()
                    .orElseThrow()
                    .replace(",", "");
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static String text(PDDocument document, int page) throws IOException {
        var stripper = new PDFTextStripper();
        stripper.setStartPage(page + 1);
        stripper.setEndPage(page + 1);
        return stripper.getText(document);
    }

    private PDDocument print(Drawing drawing, Paper paper) throws IOException {
        var pdf = folder.resolve("true-size.pdf");
        SheetPdf.write(new Sheet("s", List.of(new Sheet.TrueSize(drawing))), paper, pdf);
        return Loader.loadPDF(pdf.toFile());
    }
}
