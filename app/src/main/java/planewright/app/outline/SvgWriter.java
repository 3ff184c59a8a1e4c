package planewright.app.outline;

import java.math.BigDecimal;
import java.math.RoundingMode;
import planewright.api.figure.Outline;
import planewright.api.figure.Point;

/** Writes an outline as SVG 1.1 with millimetres, its numbers to a ten-thousandth of one. */
final class SvgWriter {
    private static final int DECIMALS = 4;

    private final Outline outline;
    private final StringBuilder svg = new StringBuilder();

    private SvgWriter(Outline outline) {
        this.outline = outline;
    }

    /**
     * The text of the file.
     *
     * @param title what it shows
     */
    static String write(Outline outline, String title) {
        return new SvgWriter(outline).write(title);
    }

    private String write(String title) {
        var width = number(outline.width());
        var height = number(outline.height());
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "mm\" height=\"" + height
                + "mm\" viewBox=\"0 0 " + width + " " + height + "\">\n");
        svg.append("<title>" + escaped(title) + "</title>\n");
        svg.append("<g fill=\"none\" stroke=\"#000000\" stroke-width=\"0.2\">\n");
        outline.paths().forEach(this::path);
        return svg.append("</g>\n</svg>\n").toString();
    }

    private void path(Outline.Path path) {
        svg.append("<path d=\"M ");
        point(path.start());
        for (var piece : path.pieces()) {
            if (piece instanceof Outline.Curve curve) {
                svg.append(" C ");
                point(curve.first());
                svg.append(' ');
                point(curve.second());
                svg.append(' ');
            } else {
                svg.append(" L ");
            }
            point(piece.end());
        }
        svg.append(path.closed() ? " Z\"/>\n" : "\"/>\n");
    }

    private void point(Point point) {
        svg.append(number(point.x())).append(' ').append(number(outline.height() - point.y()));
    }

    private static String number(double value) {
        var rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String escaped(String text) {
        return text.replaceAll("[\\p{Cntrl}\\x{FFFE}\\x{FFFF}]", " ")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;");
    }
}
