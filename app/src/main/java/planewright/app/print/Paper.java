package planewright.app.print;

import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Sizes of paper: ISO 216 A4 and ANSI/ASME Y14.1 A (letter). */
public enum Paper {
    A4(PDRectangle.A4),
    LETTER(PDRectangle.LETTER);

    private final PDRectangle size;

    Paper(PDRectangle size) {
        this.size = size;
    }

    PDRectangle size() {
        return size;
    }
}
