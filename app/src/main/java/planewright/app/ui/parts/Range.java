package planewright.app.ui.parts;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import planewright.api.quantity.Units;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.SetUpRecord;

/**
 * Where a build should balance by its set-up.
 *
 * @param from station, m
 * @param to station, m; not before {@code from}
 */
record Range(double from, double to) {
    private static final String FROM = "balance point from";
    private static final String TO = "balance point to";

    /** Empty where the set-up does not hold both ends. */
    static Optional<Range> of(List<EntryRecord> log) {
        var newest = SetUpRecord.newest(log);
        return station(newest, FROM)
                .flatMap(from -> station(newest, TO).map(to -> new Range(Math.min(from, to), Math.max(from, to))));
    }

    private static Optional<Double> station(List<SetUpRecord> values, String name) {
        return values.stream()
                .filter(value -> planewright.api.journal.JournalReader.sameName(value.name(), name))
                .map(SetUpRecord::value)
                .filter(value -> Units.alike(value.value().getUnit(), Units.METRE))
                .map(value -> value.asType(Length.class).in(Units.METRE))
                .findFirst();
    }
}
