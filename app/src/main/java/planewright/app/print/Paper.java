package planewright.app.print;

import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Sizes of paper: ISO 216 A4 and ANSI/ASME Y14.1 A (letter). */
public enum Paper {
    A4(210, 297),
    LETTER(215.9, 279.4);

    private static final double POINTS_PER_MM = 72 / 25.4;

    private final double wide;
    private final double high;

    Paper(double wide, double high) {
        this.wide = wide;
        this.high = high;
    }

    double millimetresWide() {
        return wide;
    }

    double millimetresHigh() {
        return high;
    }

    PDRectangle size() {
        return new PDRectangle((float) (wide * POINTS_PER_MM), (float) (high * POINTS_PER_MM));
    }
}
