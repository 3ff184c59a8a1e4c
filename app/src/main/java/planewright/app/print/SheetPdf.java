package planewright.app.print;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.app.figure.ChartPicture;
import planewright.app.figure.DrawingPicture;
import planewright.app.figure.FigureColours;
import planewright.app.figure.FittedPicture;
import planewright.app.files.SafeFile;
import planewright.app.journal.Slow;
import planewright.app.pictures.PictureShelf;

/** Sets a sheet on pages. */
public final class SheetPdf {
    private static final double TEXT = 10;
    private static final double LEADING = 14;
    private static final double CELL = 9;
    /** Title and axis of a chart, and one bar of it; points. */
    private static final double CHART_FRAME = 80;

    private static final double DOTS = 0.7;
    private static final double BAR = 20;
    private static final int PHOTO_PIXELS = 1400;

    private final PDDocument document;
    private final PageFlow flow;
    private final TrueSizePages trueSize;

    private SheetPdf(PDDocument document, PageFlow flow, TrueSizePages trueSize) {
        this.document = document;
        this.flow = flow;
        this.trueSize = trueSize;
    }

    /**
     * Writes a sheet as PDF; may take long, so not on the event thread.
     *
     * @throws IOException if a picture cannot be read or the file not be written; then the file is as it was
     */
    public static void write(Sheet sheet, Paper paper, Path pdf) throws IOException {
        Slow.work("printing");
        if (Files.isDirectory(pdf)) {
            throw new IOException(
                    "file " + pdf + " is a folder; accepted: a file to write, such as " + pdf.resolve("sheet.pdf"));
        }
        try (var document = new PDDocument()) {
            document.getDocumentInformation().setTitle(sheet.title());
            var preferences =
                    new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
            preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
            document.getDocumentCatalog().setViewerPreferences(preferences);
            try (var flow = new PageFlow(document, paper, sheet.title())) {
                var setter = new SheetPdf(document, flow, new TrueSizePages(document, paper, sheet.title()));
                for (var block : sheet.blocks()) {
                    setter.set(block);
                }
            }
            var bytes = new ByteArrayOutputStream();
            document.save(bytes);
            SafeFile.write(pdf.toAbsolutePath(), bytes.toByteArray());
        }
    }

    private void set(Sheet.Block block) throws IOException {
        if (block instanceof Sheet.Heading heading) {
            heading(heading);
        } else if (block instanceof Sheet.Paragraph paragraph) {
            paragraph(paragraph.text(), Lettering.PLAIN, TEXT, false);
            flow.space(4);
        } else if (block instanceof Sheet.Remark remark) {
            remark(remark);
        } else if (block instanceof Sheet.Table table) {
            table(table);
        } else if (block instanceof Sheet.Photo photo) {
            photo(photo);
        } else if (block instanceof Sheet.ChartBlock chart) {
            chart(chart.chart());
        } else if (block instanceof Sheet.FittedBlock dots) {
            var area = new Rectangle2D.Double(0, 0, flow.width(), DOTS * flow.width());
            flow.figure(
                    area.getHeight() + 8, g -> FittedPicture.paint(dots.fitted(), g, area, FigureColours.onPaper()));
        } else if (block instanceof Sheet.DrawingBlock drawing) {
            fitted(drawing.drawing());
        } else if (block instanceof Sheet.TrueSize trueSize) {
            trueSize(trueSize.drawing());
        }
    }

    private void heading(Sheet.Heading heading) throws IOException {
        double size = heading.level() == 1 ? 18 : heading.level() == 2 ? 13 : 10.5;
        flow.need(size + 6 * LEADING);
        flow.space(heading.level() == 1 ? 0 : 8);
        paragraph(heading.text(), Lettering.BOLD, size, false);
        flow.space(3);
    }

    private void remark(Sheet.Remark remark) throws IOException {
        double indent = 74;
        var lines = Lettering.PLAIN.lines(remark.text(), TEXT, flow.width() - indent);
        flow.need(LEADING);
        flow.write(remark.word(), Lettering.BOLD, TEXT, 0, false);
        for (var line : lines) {
            flow.need(LEADING);
            flow.write(line, Lettering.PLAIN, TEXT, indent, false);
            flow.space(LEADING);
        }
    }

    private void paragraph(String text, Lettering lettering, double size, boolean quiet) throws IOException {
        for (var line : lettering.lines(text, size, flow.width())) {
            flow.need(size * 1.4);
            flow.write(line, lettering, size, 0, quiet);
            flow.space(size * 1.4);
        }
    }

    private void table(Sheet.Table table) throws IOException {
        var widths = columns(table);
        row(table.headings(), table.numeric(), widths, Lettering.BOLD);
        flow.rule();
        flow.space(3);
        for (var row : table.rows()) {
            row(row, table.numeric(), widths, Lettering.PLAIN);
        }
        flow.space(6);
    }

    private void row(List<String> cells, List<Boolean> numeric, double[] widths, Lettering lettering)
            throws IOException {
        var wrapped = new ArrayList<List<String>>();
        int height = 1;
        for (int i = 0; i < cells.size(); i++) {
            wrapped.add(lettering.lines(cells.get(i), CELL, widths[i] - 6));
            height = Math.max(height, wrapped.get(i).size());
        }
        flow.need(height * CELL * 1.3 + 2);
        for (int line = 0; line < height; line++) {
            double left = 0;
            for (int i = 0; i < cells.size(); i++) {
                if (line < wrapped.get(i).size()) {
                    var text = wrapped.get(i).get(line);
                    double shift = numeric.get(i) ? widths[i] - 6 - lettering.width(text, CELL) : 0;
                    flow.write(text, lettering, CELL, left + shift, false);
                }
                left += widths[i];
            }
            flow.space(CELL * 1.3);
        }
        flow.space(2);
    }

    /** As wide as the widest cell; where that is too much in all, the wide ones give way in proportion. */
    private double[] columns(Sheet.Table table) {
        var widths = new double[table.headings().size()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Lettering.BOLD.width(table.headings().get(i), CELL) + 8;
            for (var row : table.rows()) {
                widths[i] = Math.max(widths[i], Lettering.PLAIN.width(row.get(i), CELL) + 8);
            }
        }
        double total = Arrays.stream(widths).sum();
        if (total > flow.width()) {
            double fair = flow.width() / widths.length;
            double narrow = Arrays.stream(widths).filter(width -> width <= fair).sum();
            double shrink = (flow.width() - narrow) / (total - narrow);
            for (int i = 0; i < widths.length; i++) {
                widths[i] = widths[i] <= fair ? widths[i] : widths[i] * shrink;
            }
        }
        return widths;
    }

    private void photo(Sheet.Photo photo) throws IOException {
        BufferedImage image = PictureShelf.view(photo.file(), PHOTO_PIXELS);
        double scale = Math.min(flow.width() / image.getWidth(), 0.42 * flow.height() / image.getHeight());
        double height = image.getHeight() * scale;
        flow.need(height + 2 * LEADING);
        flow.image(JPEGFactory.createFromImage(document, image, 0.85f), image.getWidth() * scale, height);
        flow.space(2);
        if (!photo.caption().isEmpty()) {
            paragraph(photo.caption(), Lettering.PLAIN, 8.5, true);
        }
        flow.space(6);
    }

    /** Bars keep room for their names; other charts have the shape of half a sheet. */
    private void chart(Chart chart) throws IOException {
        double height = chart instanceof Chart.Bars bars
                ? Math.min(0.9 * flow.height(), CHART_FRAME + BAR * bars.bars().size())
                : 0.5 * flow.width();
        var area = new Rectangle2D.Double(0, 0, flow.width(), height);
        flow.figure(height + 8, g -> ChartPicture.paint(chart, g, area, FigureColours.onPaper()));
    }

    private void fitted(Drawing drawing) throws IOException {
        var area = new Rectangle2D.Double(0, 0, flow.width(), 0.46 * flow.height());
        flow.figure(area.getHeight() + 8, g -> DrawingPicture.paint(drawing, g, area, FigureColours.onPaper()));
    }

    private void trueSize(Drawing drawing) throws IOException {
        flow.endPage();
        if (!trueSize.add(drawing)) {
            set(new Sheet.Paragraph(PrintWords.say(
                    "{0} would need more than {1} pages of this paper at true size; it is shown smaller.",
                    drawing.title(), TrueSizePages.MOST)));
            fitted(drawing);
        }
    }
}
