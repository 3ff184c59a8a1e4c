package planewright.app.journal;

import java.util.function.Function;
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
        return flight(flight, QuantityText::show);
    }

    /** The same with its quantities as somebody reads them. */
    public static String flight(FlightRecord flight, Function<Measured<?>, String> read) {
        return line(flight.duration().map(read).orElse(""), flight.conditions(), flight.behaviour());
    }

    /** What broke, why, how it was mended and what that weighs. */
    public static String repair(RepairRecord repair) {
        return repair(repair, QuantityText::show);
    }

    /** The same with its quantities as somebody reads them. */
    public static String repair(RepairRecord repair, Function<Measured<?>, String> read) {
        return line(
                repair.broke(),
                repair.cause(),
                repair.mended(),
                repair.massAdded()
                        .map(mass -> (mass.in(Units.GRAM) > 0 ? "+" : "") + read.apply(mass))
                        .orElse(""));
    }

    /** What was done and how long it took. */
    public static String task(TaskRecord task) {
        return task(task, QuantityText::show);
    }

    /** The same with its quantities as somebody reads them. */
    public static String task(TaskRecord task, Function<Measured<?>, String> read) {
        return line(task.name(), task.handsOn().map(read).orElse(""));
    }

    private static String line(String... parts) {
        return Stream.of(parts).filter(part -> !part.isBlank()).collect(Collectors.joining("; "));
    }
}
