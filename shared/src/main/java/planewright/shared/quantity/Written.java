package planewright.shared.quantity;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import tech.units.indriya.quantity.Quantities;

/**
 * A quantity with its numbers kept as they were written.
 *
 * @param number readable by {@link NumberText}
 * @param unit of both numbers
 * @param plusMinus the ± as written, in the same unit; empty where none was given
 */
public record Written(String number, Unit<?> unit, Optional<String> plusMinus) {
    private static final Map<Locale, Character> SIGNS = new ConcurrentHashMap<>();

    public Written {
        require(number);
        plusMinus.ifPresent(Written::require);
    }

    /** A computed value with as many digits as its ± deserves. */
    public static Written of(Measured<?> value) {
        return new Written(
                QuantityText.digits(value),
                value.value().getUnit(),
                value.plusMinus()
                        .map(spread -> QuantityText.roundedSpread(
                                in(spread, value.value().getUnit()))));
    }

    /** What it stands for. */
    public Measured<?> measured() {
        return measured(unit);
    }

    /** The text that gives it back: {@code 3 1/2 in ± 1/16 in}. */
    public String text() {
        var symbol = QuantityText.joined(Units.symbolOf(unit));
        return number
                + symbol
                + plusMinus.map(spread -> " ± " + spread + symbol).orElse("");
    }

    /** As {@link #text()}, with the decimal sign of a language, and with one sign for what is below 0. */
    public String text(Locale locale) {
        return new Written(in(number, locale), unit, plusMinus.map(spread -> in(spread, locale))).text();
    }

    private static String in(String number, Locale locale) {
        char sign = SIGNS.computeIfAbsent(
                locale, each -> DecimalFormatSymbols.getInstance(each).getDecimalSeparator());
        var plain = number.replace('−', '-');
        return sign == ',' ? plain.replace('.', sign) : plain.replace(',', '.');
    }

    private <Q extends Quantity<Q>> Measured<Q> measured(Unit<Q> known) {
        return new Measured<>(
                Quantities.getQuantity(NumberText.parse(number).orElseThrow(), known),
                plusMinus.map(
                        text -> Quantities.getQuantity(NumberText.parse(text).orElseThrow(), known)));
    }

    private static <Q extends Quantity<Q>> double in(Quantity<?> spread, Unit<Q> unit) {
        @SuppressWarnings("unchecked") // a Measured's value and spread are of one kind
        var same = (Quantity<Q>) spread;
        return same.to(unit).getValue().doubleValue();
    }

    private static void require(String number) {
        if (NumberText.parse(number).isEmpty()) {
            throw new IllegalArgumentException(
                    "'" + number + "' is not a number; accepted: 212, 0.85, 3,5, 3 1/2, 1/8");
        }
    }
}
