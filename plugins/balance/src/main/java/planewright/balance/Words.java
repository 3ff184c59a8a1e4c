package planewright.balance;

import java.util.Locale;

/** Numbers within a sentence. */
final class Words {
    /** Smaller differences show as 0.0 g or 0.0 mm; in kg or m. */
    private static final double LEAST_SHOWN = 0.05e-3;

    private Words() {}

    static String mm(double metres) {
        return String.format(Locale.ROOT, "%.1f mm", 1000 * metres);
    }

    static String grams(double kilograms) {
        return String.format(Locale.ROOT, "%.1f g", 1000 * kilograms);
    }

    /** Whether a difference, in kg or m, would be told as 0. */
    static boolean isNone(double difference) {
        return Math.abs(difference) < LEAST_SHOWN;
    }
}
