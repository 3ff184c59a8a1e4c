package planewright.cure;

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

    String celsius(double kelvin) {
        return show(Measured.of(Math.round((kelvin - Curing.ZERO_CELSIUS) * 10) / 10.0, Units.CELSIUS));
    }

    String length(double millimetres) {
        return show(Measured.of(millimetres, Units.MILLIMETRE));
    }

    String show(Measured<?> value) {
        return QuantityText.show(value, language.locale());
    }
}
