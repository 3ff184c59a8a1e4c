package planewright.ducts;

import java.util.Locale;

/** Numbers within a sentence. */
final class Words {
    private Words() {}

    static String mm(double metres) {
        return String.format(Locale.ROOT, "%.1f mm", 1000 * metres);
    }

    static String squareMillimetres(double squareMetres) {
        return String.format(Locale.ROOT, "%.0f mm²", 1e6 * squareMetres);
    }

    static String degrees(double radians) {
        return String.format(Locale.ROOT, "%.1f°", Math.toDegrees(radians));
    }

    static String number(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }
}
