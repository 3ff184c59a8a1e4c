package planewright.app.index;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.quantity.Units;
import planewright.shared.quantity.NumberText;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/**
 * A measurement or set-up value of some name between two values, whatever units it was taken in.
 *
 * @param name words that its name bears; blank for any name
 * @param unit one of the units it may be in; empty for any
 * @param atLeast the least value, of that kind
 * @param atMost the greatest value, of that kind
 */
public record MeasuredRange(String name, Optional<Unit<?>> unit, Optional<Written> atLeast, Optional<Written> atMost) {
    /** Words that say what is measured, and the unit of a number that comes without one. */
    private static final Map<String, Unit<?>> KINDS = Map.ofEntries(
            Map.entry("mass", Units.GRAM),
            Map.entry("weight", Units.GRAM),
            Map.entry("length", Units.MILLIMETRE),
            Map.entry("area", Units.SQUARE_DECIMETRE),
            Map.entry("angle", Units.DEGREE),
            Map.entry("time", Units.MINUTE),
            Map.entry("duration", Units.MINUTE),
            Map.entry("temperature", Units.CELSIUS),
            Map.entry("speed", Units.METRE_PER_SECOND),
            Map.entry("current", Units.AMPERE),
            Map.entry("voltage", Units.VOLT),
            Map.entry("resistance", Units.OHM),
            Map.entry("power", Units.WATT),
            Map.entry("density", Units.KILOGRAM_PER_CUBIC_METRE));

    private static final Map<Unit<?>, String> CODES = new ConcurrentHashMap<>();
    private static final Map<Unit<?>, Line> BASES = new ConcurrentHashMap<>();

    /**
     * Reads {@code wing mass}, {@code 300 g} and {@code 14 oz}. A last word such as <i>mass</i> says what is measured and
     * need not be in the name.
     *
     * @throws QuantityProblem if a bound is no quantity, or not of the kind that the name or the other bound says, or the
     *     least is above the greatest
     */
    public static MeasuredRange parse(String name, Optional<String> atLeast, Optional<String> atMost)
            throws QuantityProblem {
        var words = List.of(name.strip().split("\\s+"));
        var kind = Optional.<Unit<?>>ofNullable(
                KINDS.get(words.get(words.size() - 1).toLowerCase(Locale.ROOT)));
        var named = kind.isEmpty() ? name.strip() : String.join(" ", words.subList(0, words.size() - 1));
        var unit = kind.or(() -> unitOf(atLeast)).or(() -> unitOf(atMost));
        var least = bound(atLeast, unit);
        var greatest = bound(atMost, unit);
        if (named.isEmpty() && unit.isEmpty()) {
            throw new QuantityProblem(
                    "no measurement is named",
                    "words of its name, such as 'wing mass', or one of {0}",
                    KINDS.keySet().stream().sorted().collect(Collectors.joining(", ")));
        }
        if (least.isPresent() && greatest.isPresent() && base(least.get()) > base(greatest.get())) {
            throw new QuantityProblem(
                    "at least {0} and at most {1} leaves nothing",
                    "a least value that is not above the greatest",
                    least.get().text(),
                    greatest.get().text());
        }
        return new MeasuredRange(named, unit, least, greatest);
    }

    /** For people: {@code wing, 300 g to 14 oz}. */
    public String text() {
        var bounds = atLeast.map(Written::text).map(least -> "≥ " + least).orElse("")
                + (atLeast.isPresent() && atMost.isPresent() ? ", " : "")
                + atMost.map(Written::text).map(most -> "≤ " + most).orElse("");
        var kind = bounds.isEmpty() ? unit.map(Units::symbolOf).orElse("") : bounds;
        return (name + " " + kind).strip();
    }

    /** A value in the system unit of its kind. */
    static double base(Written quantity) {
        return BASES.computeIfAbsent(quantity.unit(), Line::toSystemUnit)
                .at(NumberText.parse(quantity.number()).orElseThrow());
    }

    /** How values of a unit become values of its system unit: all units of the table go by a factor and a zero. */
    private record Line(double zero, double factor) {
        static Line toSystemUnit(Unit<?> unit) {
            double zero = toSystemUnit(unit, 0);
            return new Line(zero, toSystemUnit(unit, 1) - zero);
        }

        private static <Q extends Quantity<Q>> double toSystemUnit(Unit<Q> unit, double value) {
            return unit.getConverterTo(unit.getSystemUnit()).convert(value);
        }

        double at(double value) {
            return value * factor + zero;
        }
    }

    /** What tells one kind of quantity from another: the code of the first unit of the kind. */
    public static String kindOf(Unit<?> unit) {
        return CODES.computeIfAbsent(unit, first -> Units.alike(first).get(0).code());
    }

    /** The unit in which builders think of a kind of quantity: g of masses, mm of lengths. */
    public static Unit<?> benchUnit(Unit<?> kind) {
        return KINDS.values().stream()
                .filter(unit -> Units.alike(unit, kind))
                .findFirst()
                .orElse(kind);
    }

    private static Optional<Unit<?>> unitOf(Optional<String> bound) {
        try {
            return bound.isEmpty()
                    ? Optional.empty()
                    : Optional.<Unit<?>>of(QuantityText.parse(bound.get(), Units.NUMBER)
                                    .unit())
                            .filter(unit -> !unit.equals(Units.NUMBER));
        } catch (QuantityProblem toldWhenRead) {
            return Optional.empty();
        }
    }

    private static Optional<Written> bound(Optional<String> text, Optional<Unit<?>> unit) throws QuantityProblem {
        return text.isEmpty()
                ? Optional.empty()
                : Optional.of(QuantityText.parseLike(text.get(), unit.orElse(Units.NUMBER)));
    }
}
