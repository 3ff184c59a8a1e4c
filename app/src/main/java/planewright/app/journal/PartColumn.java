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

/** What is known of a part, each as a text to show and to type. */
public enum PartColumn {
    NAME("name", PartRecord::name),
    GROUP("group", PartRecord::group),
    MASS("mass", part -> show(part.mass())),
    X("x, aft of datum", part -> show(part.x())),
    Y("y, to the right", part -> show(part.y())),
    Z("z, up", part -> show(part.z())),
    LENGTH("length", part -> show(part.length())),
    WIDTH("width", part -> show(part.width())),
    HEIGHT("height", part -> show(part.height()));

    private final String label;
    private final Function<PartRecord, String> reading;

    PartColumn(String label, Function<PartRecord, String> reading) {
        this.label = label;
        this.reading = reading;
    }

    /** What it is called. */
    public String label() {
        return Said.say(label);
    }

    /** As a text; empty where it is not known. */
    public String text(PartRecord part) {
        return reading.apply(part);
    }

    /**
     * The part with what was typed; an empty text means not known. A number alone is taken in g or mm.
     *
     * @throws QuantityProblem if it is not understood
     * @throws IllegalArgumentException if the name would be empty, or a mass or extent not above 0
     */
    public PartRecord write(PartRecord part, String typed) throws QuantityProblem {
        return new PartRecord(
                part.id(),
                this == NAME ? typed : part.name(),
                this == GROUP ? typed.strip() : part.group(),
                this == MASS ? above(typed, Units.GRAM, Mass.class) : part.mass(),
                this == X ? read(typed, Units.MILLIMETRE, Length.class) : part.x(),
                this == Y ? read(typed, Units.MILLIMETRE, Length.class) : part.y(),
                this == Z ? read(typed, Units.MILLIMETRE, Length.class) : part.z(),
                this == LENGTH ? above(typed, Units.MILLIMETRE, Length.class) : part.length(),
                this == WIDTH ? above(typed, Units.MILLIMETRE, Length.class) : part.width(),
                this == HEIGHT ? above(typed, Units.MILLIMETRE, Length.class) : part.height(),
                part.carried() && this != MASS);
    }

    private static String show(Optional<? extends Measured<?>> value) {
        return value.map(QuantityText::show).orElse("");
    }

    private <Q extends Quantity<Q>> Optional<Measured<Q>> above(String typed, Unit<Q> unit, Class<Q> type)
            throws QuantityProblem {
        var value = read(typed, unit, type);
        if (value.isPresent() && !(value.get().in(unit) > 0)) {
            throw new IllegalArgumentException(
                    Said.say("{0} is '{1}'; accepted: above 0, or nothing", label(), typed.strip()));
        }
        return value;
    }

    private static <Q extends Quantity<Q>> Optional<Measured<Q>> read(String typed, Unit<Q> unit, Class<Q> type)
            throws QuantityProblem {
        return typed.isBlank()
                ? Optional.empty()
                : Optional.of(QuantityText.parseLike(typed, unit).measured().asType(type));
    }
}
