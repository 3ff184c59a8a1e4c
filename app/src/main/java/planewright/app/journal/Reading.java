package planewright.app.journal;

import java.util.List;
import java.util.stream.Stream;
import planewright.api.journal.JournalReader;
import planewright.api.quantity.Units;

/** A measurement and the entry that it stands in. */
public record Reading(EntryRecord entry, MeasurementRecord measurement) {
    /** Everything that was measured, in the order of the log. */
    public static List<Reading> of(List<EntryRecord> log) {
        return all(log).toList();
    }

    /** Whatever was measured under the same name and in the same kind of unit, in the order of the log. */
    public static List<Reading> history(List<EntryRecord> log, MeasurementRecord of) {
        return all(log).filter(each -> JournalReader.sameName(each.measurement.name(), of.name()))
                .filter(each -> Units.alike(
                        each.measurement.quantity().unit(), of.quantity().unit()))
                .toList();
    }

    private static Stream<Reading> all(List<EntryRecord> log) {
        return log.stream().flatMap(entry -> entry.measurements().stream().map(each -> new Reading(entry, each)));
    }

    /** Whether it is the same measurement, be it as it was or changed since. */
    public boolean isSame(Reading other) {
        return entry.id().equals(other.entry.id()) && measurement.id().equals(other.measurement.id());
    }
}
