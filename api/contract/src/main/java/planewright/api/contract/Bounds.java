package planewright.api.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.measure.Unit;
import planewright.api.calculator.Input;
import planewright.api.quantity.Units;
import tech.units.indriya.AbstractUnit;

/**
 * The hard bounds of a quantity or a whole number, in units of the SI.
 *
 * @param above refused unless greater
 * @param atLeast refused where smaller
 * @param atMost refused where greater
 */
record Bounds(Optional<Double> above, Optional<Double> atLeast, Optional<Double> atMost) {
    private static final Pattern TEXT = Pattern.compile("([-+]?\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?)\\s*(\\S*)");

    /** @throws AssertionError where a bound cannot be read, or measures something else */
    static Bounds of(String place, Input input, Unit<?> unit) {
        return new Bounds(
                read(place, input.above(), unit),
                read(place, input.atLeast(), unit),
                read(place, input.atMost(), unit));
    }

    boolean accept(double value) {
        return above.map(bound -> value > bound).orElse(true)
                && atLeast.map(bound -> value >= bound).orElse(true)
                && atMost.map(bound -> value <= bound).orElse(true);
    }

    /** All that there are. */
    List<Double> edges() {
        var edges = new ArrayList<Double>();
        above.ifPresent(edges::add);
        atLeast.ifPresent(edges::add);
        atMost.ifPresent(edges::add);
        return edges;
    }

    /** The quantity that a text such as {@code 12 mm} stands for, in the unit of the SI; empty for an empty text. */
    static Optional<Double> read(String place, String text, Unit<?> like) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        var parts = TEXT.matcher(text.strip());
        Checks.require(parts.matches(), place + ": '" + text + "' is no quantity; accepted: a number and a unit");
        var unit = unit(place, parts.group(2));
        Checks.require(Units.alike(unit, like), place + ": '" + text + "' measures something else than " + like);
        return Optional.of(si(Double.parseDouble(parts.group(1)), unit));
    }

    static double si(double value, Unit<?> unit) {
        return ((AbstractUnit<?>) unit).getSystemConverter().convert(value);
    }

    static double in(double si, Unit<?> unit) {
        return ((AbstractUnit<?>) unit).getSystemConverter().inverse().convert(si);
    }

    private static Unit<?> unit(String place, String name) {
        if (name.isEmpty()) {
            return Units.NUMBER;
        }
        return Units.all().stream()
                .filter(coded -> coded.code().equals(name) || coded.symbol().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError(place + ": '" + name + "' is not in the API's table of units"))
                .unit();
    }
}
