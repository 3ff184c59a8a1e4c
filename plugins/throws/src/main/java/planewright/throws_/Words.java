package planewright.throws_;

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
    String say(String english, Object... values) {
        return language.say(english, values);
    }

    /** Without its sign. */
    String degrees(double radians) {
        return language.quantity(Math.abs(Math.toDegrees(radians)), Units.DEGREE, 1);
    }

    String mm(double metres) {
        return language.quantity(1000 * metres, Units.MILLIMETRE, 1);
    }

    String percent(double share) {
        return language.number(100 * share, 0) + " %";
    }

    /** An end point, rounded down so that it keeps clear of what it should. */
    String endPoint(double percent) {
        return language.number(Math.floor(percent), 0) + " %";
    }

    String show(Measured<?> value) {
        return QuantityText.show(value, language);
    }
}
