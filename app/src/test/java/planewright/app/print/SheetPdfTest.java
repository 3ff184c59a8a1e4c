package planewright.app.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.figure.Chart;
import planewright.app.figure.Figures;

/** Sheets as PDF, read back with the library's own reader. */
class SheetPdfTest {
    @TempDir
    private Path folder;

    @Test
    void textCanBeSearchedAndCopied() throws Exception {
        var text = text(new Sheet(
                "Build book",
                List.of(
                        new Sheet.Heading(1, "Grey heron"),
                        new Sheet.Paragraph("Sanded the leading edge to 3½ mm ± 0.2 mm."),
                        new Sheet.Remark("look again", "The tail is heavy."),
                        new Sheet.Table(
                                List.of("Part", "Mass"),
                                List.of(false, true),
                                List.of(List.of("left wing panel", "212 g"))))));
        assertThat(text)
                .contains(
                        "Build book",
                        "Grey heron",
                        "Sanded the leading edge to 3½ mm ± 0.2 mm.",
                        "look again",
                        "The tail is heavy.",
                        "Part Mass",
                        "left wing panel 212 g",
                        "1 / 1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u0000\u0007\u001b", "日本語", "🌼", "Ω ≤ ⅛ → Δ", "ﬁ\u00ad\u200b", "\ud800", "\t\n\r", ""})
    void oddCharactersStopNothing(String odd) throws Exception {
        var text = text(new Sheet(
                "T" + odd,
                List.of(
                        new Sheet.Heading(2, odd),
                        new Sheet.Paragraph("before " + odd + " after"),
                        new Sheet.Remark(odd, odd),
                        new Sheet.Table(List.of(odd), List.of(true), List.of(List.of(odd))))));
        assertThat(text).contains("before", "after");
    }

    @Test
    void signsOfTheTradeAreSpelledOut() throws Exception {
        assertThat(text(new Sheet("s", List.of(new Sheet.Paragraph("12 Ω, 3⅛ in, ⅞ in, −5 mm, ≥ 2")))))
                .contains("12 ohm, 3 1/8 in, 7/8 in, -5 mm, >= 2");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void longLogBreaksOnPagesAndLosesNothing(Paper paper) throws Exception {
        var blocks = new ArrayList<Sheet.Block>();
        for (int i = 0; i < 150; i++) {
            blocks.add(new Sheet.Heading(2, "Evening " + i));
            blocks.add(new Sheet.Paragraph("Sanded. ".repeat(1 + i % 90) + "done" + i + "."));
            blocks.add(new Sheet.Table(
                    List.of("Part", "Mass"), List.of(false, true), List.of(List.of("panel " + i, i + " g"))));
        }
        var pdf = folder.resolve("log.pdf");
        SheetPdf.write(new Sheet("Build book", blocks), paper, pdf);
        try (var document = Loader.loadPDF(pdf.toFile())) {
            int pages = document.getNumberOfPages();
            assertThat(pages).isGreaterThan(10);
            var text = new PDFTextStripper().getText(document);
            for (int i = 0; i < 150; i++) {
                assertThat(text).contains("Evening " + i, "done" + i + ".", "panel " + i);
            }
            assertThat(text).contains("1 / " + pages, pages + " / " + pages);
            for (int page = 1; page <= pages; page++) {
                assertOnPage(document, page);
                assertThat(Pages.words(document, page).get(0).text()).isEqualTo("Build book");
            }
        }
    }

    @Test
    void longWordsCellsAndTitlesStayOnThePage() throws Exception {
        var longWord = "x".repeat(700);
        var pdf = write(new Sheet(
                "Title " + "long ".repeat(60),
                List.of(
                        new Sheet.Heading(1, longWord),
                        new Sheet.Paragraph(longWord),
                        new Sheet.Remark("look again", longWord),
                        new Sheet.Table(
                                List.of("A", "B", "C", "D"),
                                List.of(false, true, false, false),
                                List.of(List.of(longWord, "1 g", "word ".repeat(80), longWord))))));
        try (var document = Loader.loadPDF(pdf.toFile())) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                assertOnPage(document, page);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 12, 20, 26})
    void labelsOfACrowdedDrawingDoNotCoverEachOther(int parts) throws Exception {
        var pdf = write(new Sheet("s", List.of(new Sheet.DrawingBlock(Figures.crowded(parts)))));
        try (var document = Loader.loadPDF(pdf.toFile())) {
            var words = Pages.words(document, 1);
            assertThat(words).extracting(Pages.Words::text).contains("balances here", "target", "48 mm", "part A");
            for (int i = 0; i < words.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(words.get(i).box().intersects(words.get(j).box()))
                            .as("%s covers %s", words.get(i), words.get(j))
                            .isFalse();
                }
            }
        }
    }

    @Test
    void barsOfOneNameAreAllThere() throws Exception {
        var bars = List.of(new Chart.Bar("servo", 9, 0), new Chart.Bar("servo", 12, 0), new Chart.Bar("pack", 186, 0));
        var chart = new Chart.Bars("Masses", "Part", new Chart.Axis("Mass", "g"), bars);
        assertThat(text(new Sheet("s", List.of(new Sheet.ChartBlock(chart)))))
                .containsOnlyOnce("pack")
                .containsPattern("(?s)servo.*servo");
    }

    @Test
    void everyFigureIsPrinted() throws Exception {
        var blocks = new ArrayList<Sheet.Block>();
        Figures.charts().forEach(chart -> blocks.add(new Sheet.ChartBlock(chart)));
        Figures.drawings().forEach(drawing -> blocks.add(new Sheet.DrawingBlock(drawing)));
        Figures.drawings().forEach(drawing -> blocks.add(new Sheet.TrueSize(drawing)));
        assertThat(text(new Sheet("s", blocks))).contains("Masses", "Plan", "balances here");
    }

    @Test
    void photoIsPrintedAboveItsCaption() throws Exception {
        var photo = folder.resolve("photo.png");
        ImageIO.write(new BufferedImage(900, 2400, BufferedImage.TYPE_INT_RGB), "png", photo.toFile());
        var pdf = write(new Sheet("s", List.of(new Sheet.Photo(photo, "the launch"), new Sheet.Photo(photo, ""))));
        assertThat(textOf(pdf)).contains("the launch");
        try (var document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getPage(0).getResources().getXObjectNames()).isNotEmpty();
        }
    }

    @Test
    void photoThatIsGoneLeavesTheFileAsItWas() throws Exception {
        var pdf = Files.writeString(folder.resolve("sheet.pdf"), "before");
        var sheet = new Sheet("s", List.of(new Sheet.Photo(folder.resolve("gone.png"), "c")));
        assertThatThrownBy(() -> SheetPdf.write(sheet, Paper.A4, pdf)).isInstanceOf(IOException.class);
        assertThat(pdf).hasContent("before");
        assertThat(IntStream.of(folder.toFile().list().length).sum()).isEqualTo(1);
    }

    private static void assertOnPage(PDDocument document, int page) throws IOException {
        var box = document.getPage(page - 1).getMediaBox();
        var paper = new Rectangle2D.Double(0, 0, box.getWidth(), box.getHeight());
        for (var words : Pages.words(document, page)) {
            assertThat(paper.contains(words.box()))
                    .as("on page %d: %s", page, words)
                    .isTrue();
        }
    }

    private Path write(Sheet sheet) throws IOException {
        var pdf = folder.resolve("sheet.pdf");
        SheetPdf.write(sheet, Paper.A4, pdf);
        return pdf;
    }

    private String text(Sheet sheet) throws IOException {
        return textOf(write(sheet));
    }

    private static String textOf(Path pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }
}
