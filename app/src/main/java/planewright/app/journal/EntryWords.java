package planewright.app.journal;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.quantity.QuantityText;

/** What stands in an entry, each in a line. */
public final class EntryWords {
    private EntryWords() {}

    /** Its title, or what kind of entry it is. */
    public static String heading(EntryRecord entry) {
        return entry.title().isEmpty() ? entry.kind().word() : entry.title();
    }

    /** How long, in what weather, how it went. */
    public static String flight(FlightRecord flight) {
        return line(shown(flight.duration()), flight.conditions(), flight.behaviour());
    }

    /** What broke, why, how it was mended and what that weighs. */
    public static String repair(RepairRecord repair) {
        return line(
                repair.broke(),
                repair.cause(),
                repair.mended(),
                repair.massAdded()
                        .map(mass -> (mass.in(Units.GRAM) > 0 ? "+" : "") + QuantityText.show(mass))
                        .orElse(""));
    }

    /** What was done and how long it took. */
    public static String task(TaskRecord task) {
        return line(task.name(), shown(task.handsOn()));
    }

    private static String shown(Optional<? extends Measured<?>> value) {
        return value.map(QuantityText::show).orElse("");
    }

    private static String line(String... parts) {
        return Stream.of(parts).filter(part -> !part.isBlank()).collect(Collectors.joining("; "));
    }
}
