package planewright.ducts;

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

    String mm(double metres) {
        return language.quantity(1000 * metres, Units.MILLIMETRE, 1);
    }

    String squareMillimetres(double squareMetres) {
        return language.quantity(1e6 * squareMetres, Units.SQUARE_MILLIMETRE, 0);
    }

    String degrees(double radians) {
        return language.quantity(Math.toDegrees(radians), Units.DEGREE, 1);
    }

    String number(double number) {
        return language.number(number, 1);
    }

    String show(Measured<?> value) {
        return QuantityText.show(value, language);
    }
}
