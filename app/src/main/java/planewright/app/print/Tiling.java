package planewright.app.print;

import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * How a drawing at true size is spread over pages. Neighbours show the same strip; along the middle of it they are joined. All
 * lengths are millimetres; on a page from its top left, on the whole from the top left of its first tile.
 *
 * @param bounds what is to be shown, in the drawing's own millimetres
 * @param pageWidth of the paper, as it is turned
 * @param pageHeight of the paper, as it is turned
 * @param columns pages beside each other
 * @param rows pages below each other
 */
record Tiling(Rectangle2D bounds, double pageWidth, double pageHeight, int columns, int rows) {
    /** What printers leave white, with some room. */
    static final double MARGIN = 10;

    /** Room for the line above a tile. */
    static final double HEAD = 8;

    /** Room for the rule and the plan of pages below a tile. */
    static final double FOOT = 20;

    static final double OVERLAP = 12;

    /** What a page of a tiling is. */
    record Tile(int column, int row) {}

    /** Upright or lying, whichever needs fewer pages. */
    static Tiling of(Rectangle2D bounds, Paper paper) {
        double width = paper.millimetresWide();
        double height = paper.millimetresHigh();
        return Stream.of(of(bounds, width, height), of(bounds, height, width))
                .min(Comparator.comparingLong(Tiling::pages))
                .orElseThrow();
    }

    private static Tiling of(Rectangle2D bounds, double width, double height) {
        return new Tiling(
                bounds,
                width,
                height,
                number(bounds.getWidth(), width - 2 * MARGIN),
                number(bounds.getHeight(), height - 2 * MARGIN - HEAD - FOOT));
    }

    private static int number(double length, double tile) {
        return length <= tile ? 1 : (int) Math.min(1e6, Math.ceil((length - OVERLAP) / (tile - OVERLAP)));
    }

    long pages() {
        return (long) columns * rows;
    }

    double tileWidth() {
        return pageWidth - 2 * MARGIN;
    }

    double tileHeight() {
        return pageHeight - 2 * MARGIN - HEAD - FOOT;
    }

    double stepAcross() {
        return tileWidth() - OVERLAP;
    }

    double stepDown() {
        return tileHeight() - OVERLAP;
    }

    /** The whole: all tiles with their overlaps laid on each other. */
    double width() {
        return columns * stepAcross() + OVERLAP;
    }

    /** The whole: all tiles with their overlaps laid on each other. */
    double height() {
        return rows * stepDown() + OVERLAP;
    }

    /** Where the drawing's least x lies on the whole: it stands in the middle. */
    double left() {
        return (width() - bounds.getWidth()) / 2;
    }

    /** Where the drawing's greatest y lies on the whole: it stands in the middle. */
    double top() {
        return (height() - bounds.getHeight()) / 2;
    }

    /** From a place on the whole to one on a page. */
    double onPageX(Tile tile, double x) {
        return MARGIN + x - tile.column() * stepAcross();
    }

    /** From a place on the whole to one on a page. */
    double onPageY(Tile tile, double y) {
        return MARGIN + HEAD + y - tile.row() * stepDown();
    }

    /** What a page is called: columns are letters, rows are numbers; {@code B1} is right of {@code A1}. */
    String name(Tile tile) {
        return letters(tile.column()) + (tile.row() + 1);
    }

    private static String letters(int column) {
        var last = String.valueOf((char) ('A' + column % 26));
        return column < 26 ? last : letters(column / 26 - 1) + last;
    }
}
