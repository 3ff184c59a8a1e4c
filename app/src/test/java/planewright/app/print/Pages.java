package planewright.app.print;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What stands on the pages of a PDF: words with their places, lines with their ends. All in points from the top left. */
final class Pages {
    private Pages() {}

    /** Words that were written in one go, and the box of their letters. */
    record Words(String text, Rectangle2D box) {}

    /** A straight line. */
    record Line(Point2D from, Point2D to) {
        double length() {
            return from.distance(to);
        }
    }

    /** Words of a page in the order in which they were written. */
    static List<Words> words(PDDocument document, int page) throws IOException {
        var words = new ArrayList<Words>();
        var stripper = new PDFTextStripper() {
            private final List<TextPosition> letters = new ArrayList<>();

            @Override
            protected void processTextPosition(TextPosition letter) {
                letters.add(letter);
            }

            @Override
            protected void showText(byte[] text) throws IOException {
                letters.clear();
                super.showText(text);
                if (!letters.isEmpty()) {
                    words.add(together(letters));
                }
            }
        };
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.getText(document);
        return words;
    }

    private static Words together(List<TextPosition> letters) {
        var text = new StringBuilder();
        var box = new Rectangle2D.Double(
                letters.get(0).getXDirAdj(), letters.get(0).getYDirAdj(), 0, 0);
        for (var letter : letters) {
            text.append(letter.getUnicode());
            box.add(letter.getXDirAdj(), letter.getYDirAdj() - 0.7 * letter.getFontSizeInPt());
            box.add(letter.getXDirAdj() + letter.getWidthDirAdj(), letter.getYDirAdj());
        }
        return new Words(text.toString(), box);
    }

    /** Straight lines that a page strokes. */
    static List<Line> lines(PDPage page) throws IOException {
        var engine = new Strokes(page);
        engine.processPage(page);
        return engine.stroked;
    }

    private static final class Strokes extends PDFGraphicsStreamEngine {
        private final List<Line> stroked = new ArrayList<>();
        private final List<Line> path = new ArrayList<>();
        private Point2D start = new Point2D.Double();
        private Point2D at = new Point2D.Double();

        Strokes(PDPage page) {
            super(page);
        }

        @Override
        public void moveTo(float x, float y) {
            start = new Point2D.Double(x, y);
            at = start;
        }

        @Override
        public void lineTo(float x, float y) {
            var to = new Point2D.Double(x, y);
            path.add(new Line(at, to));
            at = to;
        }

        @Override
        public void closePath() {
            path.add(new Line(at, start));
            at = start;
        }

        @Override
        public void strokePath() {
            stroked.addAll(path);
            path.clear();
        }

        @Override
        public void fillAndStrokePath(int windingRule) {
            strokePath();
        }

        @Override
        public void endPath() {
            path.clear();
        }

        @Override
        public void fillPath(int windingRule) {
            path.clear();
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            at = new Point2D.Double(x3, y3);
        }

        @Override
        public Point2D getCurrentPoint() {
            return at;
        }

        @Override
        public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
            path.addAll(List.of(new Line(p0, p1), new Line(p1, p2), new Line(p2, p3), new Line(p3, p0)));
        }

        @Override
        public void clip(int windingRule) {
            getGraphicsState();
        }

        @Override
        public void drawImage(PDImage image) {
            path.clear();
        }

        @Override
        public void shadingFill(COSName name) {
            path.clear();
        }
    }
}
