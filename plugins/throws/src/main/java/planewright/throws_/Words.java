package planewright.throws_;

import java.util.Locale;

/** Numbers within a sentence. */
final class Words {
    private Words() {}

    static String degrees(double radians) {
        return String.format(Locale.ROOT, "%.1f°", Math.abs(Math.toDegrees(radians)));
    }

    static String mm(double metres) {
        return String.format(Locale.ROOT, "%.1f mm", 1000 * metres);
    }

    static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    /** An end point, rounded down so that it keeps clear of what it should. */
    static String endPoint(double percent) {
        return String.format(Locale.ROOT, "%.0f %%", Math.floor(percent));
    }
}
