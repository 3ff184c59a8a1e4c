package planewright.app.journal;

import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.UnitChoice;

/** What is known of a part, each as a text to show and to type. */
public enum PartColumn {
    NAME("name", Units.NUMBER, part -> Optional.empty()),
    GROUP("group", Units.NUMBER, part -> Optional.empty()),
    MASS("mass", Units.GRAM, PartRecord::mass),
    X("x, aft of datum", Units.MILLIMETRE, PartRecord::x),
    Y("y, to the right", Units.MILLIMETRE, PartRecord::y),
    Z("z, up", Units.MILLIMETRE, PartRecord::z),
    LENGTH("length", Units.MILLIMETRE, PartRecord::length),
    WIDTH("width", Units.MILLIMETRE, PartRecord::width),
    HEIGHT("height", Units.MILLIMETRE, PartRecord::height);

    private final String label;
    private final Unit<?> unit;
    private final Function<PartRecord, Optional<? extends Measured<?>>> reading;

    PartColumn(String label, Unit<?> unit, Function<PartRecord, Optional<? extends Measured<?>>> reading) {
        this.label = label;
        this.unit = unit;
        this.reading = reading;
    }

    /** What it is called. */
    public String label() {
        return Said.say(label);
    }

    /** As a text in the unit that somebody prefers; empty where it is not known. */
    public String text(PartRecord part, UnitChoice units) {
        return switch (this) {
            case NAME -> part.name();
            case GROUP -> part.group();
            default ->
                reading.apply(part)
                        .map(value -> Said.text(units.written(value)))
                        .orElse("");
        };
    }

    /**
     * The part with what was typed; an empty text means not known. A number alone is taken in the unit that stands there.
     *
     * @throws QuantityProblem if it is not understood
     * @throws IllegalArgumentException if the name would be empty, or a mass or extent not above 0
     */
    public PartRecord write(PartRecord part, String typed, UnitChoice units) throws QuantityProblem {
        var shown = reading.apply(part)
                .<Unit<?>>map(value -> units.measured(value).value().getUnit())
                .orElseGet(() -> units.shown(unit));
        return new PartRecord(
                part.id(),
                this == NAME ? typed : part.name(),
                this == GROUP ? typed.strip() : part.group(),
                this == MASS ? above(typed, shown, Mass.class) : part.mass(),
                this == X ? read(typed, shown, Length.class) : part.x(),
                this == Y ? read(typed, shown, Length.class) : part.y(),
                this == Z ? read(typed, shown, Length.class) : part.z(),
                this == LENGTH ? above(typed, shown, Length.class) : part.length(),
                this == WIDTH ? above(typed, shown, Length.class) : part.width(),
                this == HEIGHT ? above(typed, shown, Length.class) : part.height(),
                part.carried() && this != MASS);
    }

    private <Q extends Quantity<Q>> Optional<Measured<Q>> above(String typed, Unit<?> shown, Class<Q> type)
            throws QuantityProblem {
        var value = read(typed, shown, type);
        if (value.isPresent() && !(value.get().value().getValue().doubleValue() > 0)) {
            throw new IllegalArgumentException(
                    Said.say("{0} is '{1}'; accepted: above 0, or nothing", label(), typed.strip()));
        }
        return value;
    }

    private static <Q extends Quantity<Q>> Optional<Measured<Q>> read(String typed, Unit<?> shown, Class<Q> type)
            throws QuantityProblem {
        return typed.isBlank()
                ? Optional.empty()
                : Optional.of(QuantityText.parseLike(typed, shown).measured().asType(type));
    }
}
