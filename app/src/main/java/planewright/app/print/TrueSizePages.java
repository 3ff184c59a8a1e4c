package planewright.app.print;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawerDefaultFonts;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import planewright.api.figure.Drawing;
import planewright.app.figure.DrawingPicture;
import planewright.app.figure.FigureColours;

/** Drawings at true size on pages of their own, each with a rule to check the printer by, and signs to join the pages by. */
final class TrueSizePages {
    /** A stack of more pages than this is for a printing shop. */
    static final int MOST = 60;

    private static final double POINTS_PER_MM = 72 / 25.4;

    /** Room for words around what is drawn, mm. */
    private static final double WORDS = 8;

    private final PDDocument document;
    private final Paper paper;
    private final String title;

    TrueSizePages(PDDocument document, Paper paper, String title) {
        this.document = document;
        this.paper = paper;
        this.title = title;
    }

    /** Adds the pages of a drawing; none where it is empty or needs too many, which is told by {@code false}. */
    boolean add(Drawing drawing) throws IOException {
        var bounds = DrawingPicture.bounds(drawing);
        if (bounds.isEmpty()) {
            return true;
        }
        var covered = bounds.get();
        var tiling = Tiling.of(
                new Rectangle2D.Double(
                        covered.getX() - WORDS,
                        covered.getY() - WORDS,
                        covered.getWidth() + 2 * WORDS,
                        covered.getHeight() + 2 * WORDS),
                paper);
        if (tiling.pages() > MOST) {
            return false;
        }
        for (int row = 0; row < tiling.rows(); row++) {
            for (int column = 0; column < tiling.columns(); column++) {
                add(drawing, tiling, new Tiling.Tile(column, row));
            }
        }
        return true;
    }

    private void add(Drawing drawing, Tiling tiling, Tiling.Tile tile) throws IOException {
        float width = (float) (tiling.pageWidth() * POINTS_PER_MM);
        float height = (float) (tiling.pageHeight() * POINTS_PER_MM);
        var page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        var g = new PdfBoxGraphics2D(document, width, height);
        g.setFontTextDrawer(new PdfBoxGraphics2DFontTextDrawerDefaultFonts());
        g.scale(POINTS_PER_MM, POINTS_PER_MM);
        paint(drawing, g, tiling, tile);
        var frame = new PageFrame(g, tiling, tile);
        frame.head(title.equals(drawing.title()) ? title : title + " · " + drawing.title());
        frame.joins();
        frame.rule();
        frame.plan(drawing);
        g.dispose();
        try (var content = new PDPageContentStream(document, page)) {
            content.drawForm(g.getXFormObject());
        }
    }

    private static void paint(Drawing drawing, PdfBoxGraphics2D g, Tiling tiling, Tiling.Tile tile) {
        var clip = g.getClip();
        g.clip(new Rectangle2D.Double(
                Tiling.MARGIN, Tiling.MARGIN + Tiling.HEAD, tiling.tileWidth(), tiling.tileHeight()));
        var whole = new Rectangle2D.Double(
                tiling.onPageX(tile, 0), tiling.onPageY(tile, 0), tiling.width(), tiling.height());
        DrawingPicture.paintTrueSize(
                drawing,
                g,
                tiling.onPageX(tile, tiling.left() + WORDS),
                tiling.onPageY(tile, tiling.top() + WORDS),
                whole,
                FigureColours.onPaper());
        g.setClip(clip);
    }
}
