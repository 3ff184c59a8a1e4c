package planewright.cure;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
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

    /** {@code Tuesday 18 March}; {@code Dienstag, 18. März}. */
    String day(LocalDate date) {
        var pattern = language.locale().getLanguage().equals("de") ? "EEEE, d. MMMM" : "EEEE d MMMM";
        return DateTimeFormatter.ofPattern(pattern, language.locale()).format(date);
    }

    /** Of temperatures the degrees count, not where their 0 is, so a ± stays in kelvins. */
    <Q extends Quantity<Q>> String spread(double size, Unit<Q> unit) {
        Measured<Q> spread = Measured.of(size, unit);
        return unit.equals(Units.KELVIN) ? QuantityText.show(spread, language.locale()) : show(spread);
    }

    /** A number of a table, whose unit stands beside it; some have one that nobody chooses. */
    String figure(double value, Optional<Unit<?>> unit) {
        return unit.filter(told -> !language.unit(told).equals(told))
                .map(told -> language.number(value, told, 1))
                .orElseGet(() -> show(Measured.of(value, Units.NUMBER)));
    }

    String show(Measured<?> value) {
        return QuantityText.show(value, language);
    }
}
