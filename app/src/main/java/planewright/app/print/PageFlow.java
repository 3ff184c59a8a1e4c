package planewright.app.print;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawerDefaultFonts;
import java.awt.Color;
import java.awt.Graphics2D;
import java.io.IOException;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

/**
 * Fills pages from the top; what does not fit goes to the next. A page is begun when something {@linkplain #need needs} room on
 * it. Lengths are points, 1/72 inch.
 */
final class PageFlow implements AutoCloseable {
    static final double MARGIN = 54;
    private static final double HEAD = 26;
    private static final Color INK = new Color(0x1f, 0x24, 0x28);
    private static final Color QUIET = new Color(0x70, 0x76, 0x7a);

    private final PDDocument document;
    private final PDRectangle size;
    private final String title;
    private final Set<PDPage> pages = new HashSet<>();
    private PDPageContentStream page;
    private double y;

    PageFlow(PDDocument document, Paper paper, String title) {
        this.document = document;
        this.size = paper.size();
        this.title = title;
    }

    double width() {
        return size.getWidth() - 2 * MARGIN;
    }

    /** The height of an empty page. */
    double height() {
        return size.getHeight() - 2 * MARGIN - HEAD;
    }

    /** Begins a new page unless so much height is left. */
    void need(double height) throws IOException {
        if (page == null || y - height < MARGIN) {
            turn();
        }
    }

    /** Ends the page, so that what comes next begins another. */
    void endPage() throws IOException {
        if (page != null) {
            page.close();
            page = null;
        }
    }

    void space(double height) {
        y -= height;
    }

    /** Writes a line whose top is where the flow stands, without moving on. */
    void write(String text, Lettering lettering, double size, double left, boolean quiet) throws IOException {
        page.beginText();
        page.setNonStrokingColor(quiet ? QUIET : INK);
        page.setFont(lettering.font(), (float) size);
        page.newLineAtOffset((float) (MARGIN + left), (float) (y - size));
        page.showText(lettering.printable(text));
        page.endText();
    }

    /** Draws a fine line across, where the flow stands. */
    void rule() throws IOException {
        page.setStrokingColor(QUIET);
        page.setLineWidth(0.5f);
        page.moveTo((float) MARGIN, (float) y);
        page.lineTo((float) (MARGIN + width()), (float) y);
        page.stroke();
    }

    /** Lets a figure be painted into a box as wide as the page, as vectors, and moves on below it. */
    void figure(double height, Consumer<Graphics2D> painter) throws IOException {
        need(height);
        var graphics = new PdfBoxGraphics2D(document, (float) width(), (float) height);
        graphics.setFontTextDrawer(new PdfBoxGraphics2DFontTextDrawerDefaultFonts());
        painter.accept(graphics);
        graphics.dispose();
        page.saveGraphicsState();
        page.transform(Matrix.getTranslateInstance((float) MARGIN, (float) (y - height)));
        page.drawForm(graphics.getXFormObject());
        page.restoreGraphicsState();
        space(height);
    }

    void image(PDImageXObject image, double width, double height) throws IOException {
        page.drawImage(image, (float) MARGIN, (float) (y - height), (float) width, (float) height);
        space(height);
    }

    /** Ends the last page and writes page numbers under its own; a sheet without anything has one page. */
    @Override
    public void close() throws IOException {
        if (document.getNumberOfPages() == 0) {
            turn();
        }
        endPage();
        int number = 0;
        for (var each : document.getPages()) {
            number++;
            if (!pages.contains(each)) {
                continue;
            }
            try (var foot =
                    new PDPageContentStream(document, each, PDPageContentStream.AppendMode.APPEND, true, true)) {
                var text = number + " / " + document.getNumberOfPages();
                foot.beginText();
                foot.setNonStrokingColor(QUIET);
                foot.setFont(Lettering.PLAIN.font(), 8);
                foot.newLineAtOffset(
                        (float) (size.getWidth() - MARGIN - Lettering.PLAIN.width(text, 8)), (float) (MARGIN - 24));
                foot.showText(text);
                foot.endText();
            }
        }
    }

    private void turn() throws IOException {
        endPage();
        var next = new PDPage(size);
        document.addPage(next);
        pages.add(next);
        page = new PDPageContentStream(document, next);
        y = size.getHeight() - MARGIN;
        var lines = Lettering.PLAIN.lines(title, 8, width() - 8);
        write(lines.get(0) + (lines.size() > 1 ? "…" : ""), Lettering.PLAIN, 8, 0, true);
        space(12);
        rule();
        space(HEAD - 12);
    }
}
