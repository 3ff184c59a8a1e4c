package planewright.app.print;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import planewright.api.figure.Drawing;
import planewright.app.figure.FigureColours;

/** What stands around a tile at true size: its name, where it joins its neighbours, a rule, and which page of all it is. */
final class PageFrame {
    /** What the rule measures, mm. */
    static final double RULE = 100;

    private static final BasicStroke FINE = new BasicStroke(0.15f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);

    private static final double DIVISION = 10;
    private static final double LETTERS = 3.2;
    private static final double SMALL = 2.4;
    private static final double CROSS = 3;

    /** How far the crosses stand from the ends of a joining line, mm. */
    private static final double INSET = 18;

    private static final double PLAN_WIDTH = 70;

    private final Graphics2D g;
    private final Tiling tiling;
    private final Tiling.Tile tile;
    private final FigureColours colours = FigureColours.onPaper();

    PageFrame(Graphics2D g, Tiling tiling, Tiling.Tile tile) {
        this.g = g;
        this.tiling = tiling;
        this.tile = tile;
        g.setStroke(FINE);
        g.setColor(colours.ink());
    }

    void head(String words) {
        var page = tiling.pages() == 1
                ? PrintWords.say("true size")
                : PrintWords.say(
                        "true size, page {0}, {1} of {2}",
                        tiling.name(tile), tile.row() * tiling.columns() + tile.column() + 1, tiling.pages());
        double right = tiling.pageWidth() - Tiling.MARGIN;
        double from = right - Lettering.PLAIN.width(page, LETTERS);
        words(page, from, Tiling.MARGIN + LETTERS, LETTERS);
        var lines = Lettering.PLAIN.lines(words, LETTERS, from - Tiling.MARGIN - 2 * LETTERS);
        words(lines.get(0) + (lines.size() > 1 ? "..." : ""), Tiling.MARGIN, Tiling.MARGIN + LETTERS, LETTERS);
    }

    /** Pages lie right where line lies on line and cross on cross. */
    void joins() {
        double left = Tiling.MARGIN;
        double top = Tiling.MARGIN + Tiling.HEAD;
        double right = left + tiling.tileWidth();
        double bottom = top + tiling.tileHeight();
        for (int side : new int[] {tile.column() > 0 ? -1 : 0, tile.column() + 1 < tiling.columns() ? 1 : 0}) {
            if (side != 0) {
                double x = side < 0 ? left + Tiling.OVERLAP / 2 : right - Tiling.OVERLAP / 2;
                join(x, top, x, bottom);
                cross(x, top + INSET);
                cross(x, bottom - INSET);
                neighbour(new Tiling.Tile(tile.column() + side, tile.row()), x, top + INSET);
            }
        }
        for (int side : new int[] {tile.row() > 0 ? -1 : 0, tile.row() + 1 < tiling.rows() ? 1 : 0}) {
            if (side != 0) {
                double y = side < 0 ? top + Tiling.OVERLAP / 2 : bottom - Tiling.OVERLAP / 2;
                join(left, y, right, y);
                cross(left + INSET, y);
                cross(right - INSET, y);
                neighbour(new Tiling.Tile(tile.column(), tile.row() + side), left + INSET, y);
            }
        }
    }

    private void join(double fromX, double fromY, double toX, double toY) {
        g.setColor(colours.quiet());
        g.setStroke(new BasicStroke(0.15f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL, 1, new float[] {2, 1}, 0));
        g.draw(new Line2D.Double(fromX, fromY, toX, toY));
        g.setStroke(FINE);
        g.setColor(colours.ink());
    }

    private void cross(double x, double y) {
        g.draw(new Line2D.Double(x - CROSS, y, x + CROSS, y));
        g.draw(new Line2D.Double(x, y - CROSS, x, y + CROSS));
        g.draw(new Ellipse2D.Double(x - CROSS / 2, y - CROSS / 2, CROSS, CROSS));
    }

    /** Below a cross. */
    private void neighbour(Tiling.Tile other, double x, double y) {
        var words = PrintWords.say("joins {0}", tiling.name(other));
        words(words, x - Lettering.PLAIN.width(words, SMALL) / 2, y + CROSS + SMALL, SMALL);
    }

    /** A hundred millimetres, which a printer that fits the page to its paper makes shorter. */
    void rule() {
        double x = Tiling.MARGIN;
        double y = tiling.pageHeight() - Tiling.MARGIN - 12;
        g.draw(new Line2D.Double(x, y, x + RULE, y));
        for (double at = 0; at <= RULE; at += DIVISION) {
            double tick = at % (5 * DIVISION) == 0 ? 3 : 1.8;
            g.draw(new Line2D.Double(x + at, y - tick, x + at, y));
        }
        words(PrintWords.say("100 mm: lay a rule on it before you cut."), x, y + LETTERS + 0.8, LETTERS);
        words(
                PrintWords.say("If it is off, print again at 100 %, not fitted to the page."),
                x,
                y + 2 * LETTERS + 1.2,
                SMALL);
        if (tiling.pages() > 1) {
            words(
                    PrintWords.say(
                            "Cut one page along the dashed line and lay it on the next: line on line, cross on cross."),
                    x,
                    y + 3 * LETTERS + 1.2,
                    SMALL);
        }
    }

    /** All pages in small, this one shaded. */
    void plan(Drawing drawing) {
        if (tiling.pages() == 1) {
            return;
        }
        double height = Tiling.FOOT - 2;
        double scale = Math.min(PLAN_WIDTH / tiling.width(), height / tiling.height());
        double left = tiling.pageWidth() - Tiling.MARGIN - scale * tiling.width();
        double top = tiling.pageHeight() - Tiling.MARGIN - scale * tiling.height();
        for (int row = 0; row < tiling.rows(); row++) {
            for (int column = 0; column < tiling.columns(); column++) {
                tile(new Tiling.Tile(column, row), left, top, scale);
            }
        }
        g.setStroke(new BasicStroke(0.12f));
        for (var layer : drawing.layers()) {
            for (var shape : layer.shapes()) {
                if (layer.use() != Drawing.Use.MARK && shape instanceof Drawing.Path path) {
                    g.draw(small(path, left, top, scale));
                }
            }
        }
        g.setStroke(FINE);
    }

    /** Its cell of the plan reaches to the joining lines. */
    private void tile(Tiling.Tile other, double left, double top, double scale) {
        double half = Tiling.OVERLAP / 2;
        double fromX = other.column() == 0 ? 0 : other.column() * tiling.stepAcross() + half;
        double toX = other.column() + 1 == tiling.columns()
                ? tiling.width()
                : (other.column() + 1) * tiling.stepAcross() + half;
        double fromY = other.row() == 0 ? 0 : other.row() * tiling.stepDown() + half;
        double toY = other.row() + 1 == tiling.rows() ? tiling.height() : (other.row() + 1) * tiling.stepDown() + half;
        var cell = new Rectangle2D.Double(
                left + scale * fromX, top + scale * fromY, scale * (toX - fromX), scale * (toY - fromY));
        if (other.equals(tile)) {
            g.setColor(colours.faint(colours.accent(), 60));
            g.fill(cell);
        }
        g.setColor(colours.quiet());
        g.draw(cell);
        var name = tiling.name(other);
        if (cell.height > SMALL + 0.6 && cell.width > Lettering.PLAIN.width(name, SMALL) + 0.6) {
            words(name, cell.x + 0.4, cell.getMaxY() - 0.5, SMALL);
        }
        g.setColor(colours.ink());
    }

    private Path2D small(Drawing.Path path, double left, double top, double scale) {
        var bounds = tiling.bounds();
        var line = new Path2D.Double();
        for (var point : path.points()) {
            double x = left + scale * (tiling.left() + point.x() - bounds.getMinX());
            double y = top + scale * (tiling.top() + bounds.getMaxY() - point.y());
            if (line.getCurrentPoint() == null) {
                line.moveTo(x, y);
            } else {
                line.lineTo(x, y);
            }
        }
        if (path.closed()) {
            line.closePath();
        }
        return line;
    }

    private void words(String text, double x, double y, double size) {
        g.setFont(colours.font().deriveFont((float) size));
        g.drawString(Lettering.PLAIN.printable(text), (float) x, (float) y);
    }
}
