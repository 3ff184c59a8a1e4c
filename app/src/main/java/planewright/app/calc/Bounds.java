package planewright.app.calc;

import java.util.Optional;
import java.util.StringJoiner;
import javax.measure.Unit;
import planewright.api.calculator.Language;
import planewright.api.quantity.Measured;
import planewright.shared.quantity.QuantityText;
import tech.units.indriya.AbstractUnit;

/**
 * What values of an input are accepted, and which are usual. All of the input's own kind of quantity.
 *
 * @param above refused unless greater
 * @param atLeast refused where smaller
 * @param atMost refused where greater
 * @param usuallyFrom smaller is unusual
 * @param usuallyTo greater is unusual
 */
public record Bounds(
        Optional<Measured<?>> above,
        Optional<Measured<?>> atLeast,
        Optional<Measured<?>> atMost,
        Optional<Measured<?>> usuallyFrom,
        Optional<Measured<?>> usuallyTo) {
    static final Bounds NONE =
            new Bounds(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** The same in another unit of the same kind. */
    Bounds in(Unit<?> unit) {
        return new Bounds(
                in(above, unit), in(atLeast, unit), in(atMost, unit), in(usuallyFrom, unit), in(usuallyTo, unit));
    }

    private static Optional<Measured<?>> in(Optional<Measured<?>> bound, Unit<?> unit) {
        return bound.map(value -> QuantityText.in(value, unit));
    }

    /** Whether a value is accepted. */
    boolean accept(Measured<?> value) {
        double si = si(value);
        return above.map(bound -> si > si(bound)).orElse(true)
                && atLeast.map(bound -> si >= si(bound)).orElse(true)
                && atMost.map(bound -> si <= si(bound)).orElse(true);
    }

    /** Whether a value is as values usually are. */
    boolean usual(Measured<?> value) {
        double si = si(value);
        return usuallyFrom.map(bound -> si >= si(bound)).orElse(true)
                && usuallyTo.map(bound -> si <= si(bound)).orElse(true);
    }

    /** What is accepted, in words: {@code above 0 g, at most 50 kg}. */
    String accepted(Language language) {
        var words = new StringJoiner(", ");
        above.ifPresent(bound -> words.add(language.say("above {0}", QuantityText.show(bound, language.locale()))));
        atLeast.ifPresent(
                bound -> words.add(language.say("at least {0}", QuantityText.show(bound, language.locale()))));
        atMost.ifPresent(bound -> words.add(language.say("at most {0}", QuantityText.show(bound, language.locale()))));
        return words.toString();
    }

    /** What is usual, in words: {@code from 5 g to 5 kg}. */
    String usually(Language language) {
        var words = new StringJoiner(" ");
        usuallyFrom.ifPresent(
                bound -> words.add(language.say("from {0}", QuantityText.show(bound, language.locale()))));
        usuallyTo.ifPresent(bound -> words.add(language.say("up to {0}", QuantityText.show(bound, language.locale()))));
        return words.toString();
    }

    static double si(Measured<?> value) {
        var unit = (AbstractUnit<?>) value.value().getUnit();
        return unit.getSystemConverter().convert(value.value().getValue().doubleValue());
    }
}
