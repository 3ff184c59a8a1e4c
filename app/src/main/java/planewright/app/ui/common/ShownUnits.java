package planewright.app.ui.common;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.Unit;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** In which unit the builder wants to see each quantity: masses in g or oz, lengths in mm or in. The journal keeps what was written. */
public final class ShownUnits {
    private static final String NAME = "unit ";
    private static final Map<Unit<?>, String> NAMES = new ConcurrentHashMap<>();

    private final WindowMemory memory;

    ShownUnits(WindowMemory memory) {
        this.memory = memory;
    }

    /** The unit chosen for what the given unit measures; empty for "as it was written". */
    public Optional<Unit<?>> preferred(Unit<?> kind) {
        return memory.get(name(kind)).flatMap(Units::ofCode).filter(unit -> Units.alike(unit, kind));
    }

    /** From now on what the given unit measures is shown in another one, or as it was written. */
    public void prefer(Unit<?> kind, Optional<Unit<?>> chosen) {
        memory.put(name(kind), chosen.map(Units::codeOf).orElse(""));
    }

    /** As it was written, or in the unit that was chosen. */
    public Written written(Written quantity) {
        return preferred(quantity.unit())
                .filter(unit -> !unit.equals(quantity.unit()))
                .map(unit -> Written.of(QuantityText.in(quantity.measured(), unit)))
                .orElse(quantity);
    }

    /** A computed value as it is, or in the unit that was chosen. */
    public Measured<?> measured(Measured<?> value) {
        return preferred(value.value().getUnit())
                .<Measured<?>>map(unit -> QuantityText.in(value, unit))
                .orElse(value);
    }

    /** As a bare number in a unit of the same kind, with its ±, 0 where none is known. */
    public static double[] numbers(Measured<?> value, Unit<?> unit) {
        var shown = QuantityText.in(value, unit);
        return new double[] {
            shown.value().getValue().doubleValue(),
            shown.plusMinus().map(spread -> spread.getValue().doubleValue()).orElse(0.0)
        };
    }

    /** The first unit in the table that measures the same stands for all of them. */
    private static String name(Unit<?> kind) {
        return NAMES.computeIfAbsent(
                kind, unit -> NAME + Units.alike(unit).get(0).code());
    }
}
