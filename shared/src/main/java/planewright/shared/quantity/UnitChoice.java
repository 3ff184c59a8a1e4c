package planewright.shared.quantity;

import java.util.Optional;
import javax.measure.Unit;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** In which unit a reader wants to see what a unit measures. */
@FunctionalInterface
public interface UnitChoice {
    /** All as it was written or computed. */
    UnitChoice NONE = kind -> Optional.empty();

    /** The unit chosen for what the given unit measures; empty for none. */
    Optional<Unit<?>> preferred(Unit<?> kind);

    /**
     * The unit for what is computed or asked for in the given one: that which is chosen, or itself. A bare number stays one, and
     * what is told in metres, as how high one flies, is told in feet and not in inches.
     */
    default Unit<?> shown(Unit<?> kind) {
        if (kind.equals(Units.METRE)) {
            return preferred(kind)
                    .filter(unit -> unit.equals(Units.INCH) || unit.equals(Units.FOOT))
                    .<Unit<?>>map(inches -> Units.FOOT)
                    .orElse(kind);
        }
        return chosen(kind).orElse(kind);
    }

    /** As it was written, or in the unit that was chosen: in the figures then that a builder can use. */
    default Written written(Written quantity) {
        return chosen(quantity.unit())
                .filter(unit -> !unit.equals(quantity.unit()))
                .map(unit -> QuantityText.useful(QuantityText.in(quantity.measured(), unit)))
                .orElse(quantity);
    }

    /** A known value to be read: {@link #written(Written)} of it. */
    default Written written(Measured<?> value) {
        return chosen(value.value().getUnit())
                .filter(unit -> !unit.equals(value.value().getUnit()))
                .map(unit -> QuantityText.useful(QuantityText.in(value, unit)))
                .orElseGet(() -> Written.of(value));
    }

    /** A computed value as it is, or in the unit that was chosen. */
    default Measured<?> measured(Measured<?> value) {
        return chosen(value.value().getUnit())
                .<Measured<?>>map(unit -> QuantityText.in(value, unit))
                .orElse(value);
    }

    /** A bare number and percent are alike, but nobody who reads percent wants every ratio in it. */
    private Optional<Unit<?>> chosen(Unit<?> kind) {
        return kind.equals(Units.NUMBER) ? Optional.empty() : preferred(kind);
    }
}
