package planewright.app.print;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A page as dots, measured in millimetres from its top left. */
record Rendered(BufferedImage image) {
    private static final float DOTS_PER_INCH = 508;
    private static final double MM = 25.4 / DOTS_PER_INCH;
    private static final int DARK = 128;

    /** At twenty dots a millimetre. */
    static Rendered of(PDDocument document, int page) throws IOException {
        return new Rendered(new PDFRenderer(document).renderImageWithDPI(page, DOTS_PER_INCH, ImageType.GRAY));
    }

    /** What is covered by ink, apart from what is nearer to the upper and the lower edge than given. */
    Rectangle2D ink(double fromTop, double fromBottom) {
        var ink = new Rectangle2D.Double(0, 0, -1, -1);
        for (int y = dots(fromTop); y < image.getHeight() - dots(fromBottom); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if (dark(x, y)) {
                    var dot = new Rectangle2D.Double(x * MM, y * MM, MM, MM);
                    if (ink.width < 0) {
                        ink.setRect(dot);
                    } else {
                        ink.add(dot);
                    }
                }
            }
        }
        return ink;
    }

    /** The longest level line in what is as near to the lower edge as given. */
    double longestRunBelow(double fromBottom) {
        int longest = 0;
        for (int y = image.getHeight() - dots(fromBottom); y < image.getHeight(); y++) {
            int run = 0;
            for (int x = 0; x < image.getWidth(); x++) {
                run = dark(x, y) ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
        }
        return longest * MM;
    }

    /** Where ink begins in the row that runs a little above the middle. */
    double firstInkAcross() {
        int x = 0;
        while (!dark(x, row())) {
            x++;
        }
        return x * MM;
    }

    double lastInkAcross() {
        int x = image.getWidth() - 1;
        while (!dark(x, row())) {
            x--;
        }
        return (x + 1) * MM;
    }

    /** How many dots differ from another page shifted to the right, over those with ink, in a strip around a place. */
    double unlike(Rendered other, double shift, double middle, double half) {
        int unlike = 0;
        int inked = 0;
        for (int y = dots(20); y < image.getHeight() - dots(32); y++) {
            for (int x = dots(middle - half); x < dots(middle + half); x++) {
                unlike += dark(x, y) == other.dark(x - dots(shift), y) ? 0 : 1;
                inked += dark(x, y) ? 1 : 0;
            }
        }
        return (double) unlike / inked;
    }

    private int row() {
        return (int) (0.45 * image.getHeight());
    }

    private boolean dark(int x, int y) {
        return (image.getRGB(x, y) & 0xff) < DARK;
    }

    private static int dots(double millimetres) {
        return (int) Math.round(millimetres / MM);
    }
}
