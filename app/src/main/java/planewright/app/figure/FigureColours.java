package planewright.app.figure;

import java.awt.Color;
import java.awt.Font;
import java.util.List;

/**
 * How figures look.
 *
 * @param paper the ground
 * @param ink words and sharp lines
 * @param quiet grid, outlines, scale
 * @param accent bars, parts
 * @param second a second kind of thing: targets, limits
 * @param font of words, at 1×
 */
public record FigureColours(Color paper, Color ink, Color quiet, Color accent, Color second, Font font) {
    private static final Font SANS = new Font(Font.SANS_SERIF, Font.PLAIN, 11);

    /** For printing. */
    public static FigureColours onPaper() {
        return new FigureColours(
                Color.WHITE,
                new Color(0x1f, 0x24, 0x28),
                new Color(0x9a, 0xa0, 0xa4),
                new Color(0x2f, 0x6f, 0x73),
                new Color(0xb0, 0x5a, 0x2c),
                SANS);
    }

    /** The colour of the first, second, … line or group of a chart. */
    Color of(int place) {
        return List.of(accent, second, ink, quiet).get(place % 4);
    }

    /** A colour that lets through what lies below; 255 lets nothing through. */
    public Color faint(Color colour, int alpha) {
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), alpha);
    }
}
