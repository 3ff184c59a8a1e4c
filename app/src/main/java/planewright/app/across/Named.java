package planewright.app.across;

import java.util.List;
import java.util.Locale;
import javax.measure.Unit;
import planewright.api.journal.JournalReader;
import planewright.api.quantity.Units;
import planewright.app.index.MeasuredRange;

/**
 * A thing of which builds have values.
 *
 * @param name what builders call it
 * @param kind one of the units it may be in
 * @param builds how many have a value of it
 */
public record Named(String name, Unit<?> kind, int builds) {
    private static final List<Unit<?>> AMOUNTS = List.of(
            Units.KILOGRAM,
            Units.SQUARE_METRE,
            Units.CUBIC_METRE,
            Units.SECOND,
            Units.KILOGRAM_PER_CUBIC_METRE,
            Units.GRAM_PER_SQUARE_METRE);

    /** Whether a value of that name and unit is one of it. */
    public boolean is(String other, Unit<?> unit) {
        return JournalReader.sameName(name, other) && Units.alike(kind, unit);
    }

    /** Whether it is of a kind that has no values below 0: a mass has none, a station has. */
    boolean isOfAmount() {
        return AMOUNTS.stream().anyMatch(unit -> Units.alike(unit, kind));
    }

    /** The name with a unit that tells its kind: {@code left wing panel (g)}. */
    public String text() {
        return text(MeasuredRange.benchUnit(kind));
    }

    /** The name with a unit of its kind. */
    public String text(Unit<?> unit) {
        var symbol = Units.symbolOf(unit);
        return symbol.isEmpty() ? name : name + " (" + symbol + ")";
    }

    /** That one of many that somebody calls so, by its name or its {@link #text()}; or several, or none. */
    public static List<Named> called(String words, List<Named> all) {
        var wanted = words.strip().toLowerCase(Locale.ROOT);
        var exact = all.stream()
                .filter(each -> each.name().equalsIgnoreCase(wanted)
                        || each.text().toLowerCase(Locale.ROOT).equals(wanted))
                .toList();
        return exact.isEmpty()
                ? all.stream()
                        .filter(each -> each.name().toLowerCase(Locale.ROOT).contains(wanted))
                        .toList()
                : exact;
    }
}
