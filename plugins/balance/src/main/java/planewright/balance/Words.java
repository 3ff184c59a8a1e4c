package planewright.balance;

import planewright.api.calculator.Language;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.quantity.QuantityText;

/**
 * Sentences, and numbers within them, as the builder reads them.
 *
 * @param language the builder's
 */
record Words(Language language) {
    /** Smaller differences show as 0.0 g or 0.0 mm; in kg or m. */
    private static final double LEAST_SHOWN = 0.05e-3;

    String say(String english, Object... values) {
        return language.say(english, values);
    }

    String number(double value, int decimals) {
        return language.number(value, decimals);
    }

    String mm(double metres) {
        return mm(metres, 1);
    }

    String mm(double metres, int decimals) {
        return language.quantity(1000 * metres, Units.MILLIMETRE, decimals);
    }

    String grams(double kilograms) {
        return grams(kilograms, 1);
    }

    String grams(double kilograms, int decimals) {
        return language.quantity(1000 * kilograms, Units.GRAM, decimals);
    }

    String metres(double metres) {
        return language.quantity(metres, Units.METRE, 0);
    }

    String speed(double metresPerSecond) {
        return language.quantity(metresPerSecond, Units.METRE_PER_SECOND, 1);
    }

    String degrees(double radians) {
        return degrees(radians, 1);
    }

    String degrees(double radians, int decimals) {
        return language.quantity(Math.toDegrees(radians), Units.DEGREE, decimals);
    }

    String percent(double share, int decimals) {
        return number(100 * share, decimals) + " %";
    }

    String show(Measured<?> value) {
        return QuantityText.show(value, language);
    }

    /** Whether a difference, in kg or m, would be told as 0. */
    static boolean isNone(double difference) {
        return Math.abs(difference) < LEAST_SHOWN;
    }
}
