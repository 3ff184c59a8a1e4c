package planewright.samples.pictures;

import java.awt.BasicStroke;
import java.awt.Graphics2D;

/** Digits of seven bars, as scales show them; y runs up. */
final class Segments {
    private static final int[] BARS = {0x3f, 0x06, 0x5b, 0x4f, 0x66, 0x6d, 0x7d, 0x07, 0x7f, 0x6f};

    private Segments() {}

    /** Writes right-aligned digits, points and a minus from the right edge. */
    static void write(Graphics2D g, String digits, double right, double y, double height) {
        double h = height / 2;
        double w = height * 0.5;
        g.setStroke(new BasicStroke((float) (height * 0.11), BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL));
        double x = right;
        for (int i = digits.length() - 1; i >= 0; i--) {
            char c = digits.charAt(i);
            if (c == '.') {
                Tools.line(g, x - height * 0.04, y, x - height * 0.04, y + height * 0.1);
                x -= height * 0.16;
                continue;
            }
            digit(g, c == '-' ? 0x40 : BARS[c - '0'], x - w, y, w, h);
            x -= w + height * 0.2;
        }
    }

    private static void digit(Graphics2D g, int bars, double x, double y, double w, double h) {
        double[][] ends = {
            {0, 2, 1, 2}, {1, 2, 1, 1}, {1, 1, 1, 0}, {0, 0, 1, 0}, {0, 1, 0, 0}, {0, 2, 0, 1}, {0, 1, 1, 1}
        };
        for (int i = 0; i < 7; i++) {
            if ((bars >> i & 1) == 1) {
                var e = ends[i];
                Tools.line(g, x + e[0] * w, y + e[1] * h, x + e[2] * w, y + e[3] * h);
            }
        }
    }
}
