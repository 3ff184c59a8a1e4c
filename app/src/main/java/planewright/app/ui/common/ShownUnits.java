package planewright.app.ui.common;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.Unit;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.UnitChoice;

/** In which unit the builder wants to see each quantity: masses in g or oz, lengths in mm or in. The journal keeps what was written. */
public final class ShownUnits implements UnitChoice {
    private static final String NAME = "unit ";
    private static final Map<Unit<?>, String> NAMES = new ConcurrentHashMap<>();

    private final WindowMemory memory;

    ShownUnits(WindowMemory memory) {
        this.memory = memory;
    }

    @Override
    public Optional<Unit<?>> preferred(Unit<?> kind) {
        return memory.get(name(kind)).flatMap(Units::ofCode).filter(unit -> Units.alike(unit, kind));
    }

    /** From now on what the given unit measures is shown in another one, or as it was written. */
    public void prefer(Unit<?> kind, Optional<Unit<?>> chosen) {
        memory.put(name(kind), chosen.map(Units::codeOf).orElse(""));
    }

    /** What is chosen now, whatever is chosen later. */
    public UnitChoice asNow() {
        var chosen = new HashMap<String, Unit<?>>();
        Units.all().forEach(coded -> preferred(coded.unit()).ifPresent(unit -> chosen.put(name(coded.unit()), unit)));
        return new Fixed(Map.copyOf(chosen));
    }

    private record Fixed(Map<String, Unit<?>> chosen) implements UnitChoice {
        @Override
        public Optional<Unit<?>> preferred(Unit<?> kind) {
            return Optional.ofNullable(chosen.get(name(kind)));
        }
    }

    /** As a bare number in a unit of the same kind, with its ±, 0 where none is known. */
    public static double[] numbers(Measured<?> value, Unit<?> unit) {
        var shown = QuantityText.in(value, unit);
        return new double[] {
            shown.value().getValue().doubleValue(),
            shown.plusMinus().map(spread -> spread.getValue().doubleValue()).orElse(0.0)
        };
    }

    /**
     * The first unit in the table that measures the same stands for all of them; not so for cloth, whose mass is told in g/m² by
     * those too who want a wing's loading in another unit.
     */
    private static String name(Unit<?> kind) {
        return NAMES.computeIfAbsent(
                kind,
                unit -> NAME
                        + (unit.equals(Units.GRAM_PER_SQUARE_METRE)
                                ? "cloth"
                                : Units.alike(unit).get(0).code()));
    }
}
