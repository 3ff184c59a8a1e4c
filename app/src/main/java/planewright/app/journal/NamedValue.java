package planewright.app.journal;

import java.util.ArrayList;
import java.util.List;
import planewright.shared.quantity.Written;

/**
 * A value in an entry under a name.
 *
 * @param where {@code measurement}, {@code set-up}, {@code flight}, {@code repair} or {@code task}
 * @param name what it is of
 * @param quantity the value
 */
public record NamedValue(String where, String name, Written quantity) {
    /** All values of an entry. */
    public static List<NamedValue> of(EntryRecord entry) {
        var values = new ArrayList<NamedValue>();
        entry.measurements().forEach(each -> values.add(new NamedValue("measurement", each.name(), each.quantity())));
        entry.setUp().forEach(each -> values.add(new NamedValue("set-up", each.name(), each.quantity())));
        for (var flight : entry.flights()) {
            flight.duration()
                    .ifPresent(duration -> values.add(new NamedValue("flight", "flight", Written.of(duration))));
        }
        for (var repair : entry.repairs()) {
            repair.massAdded()
                    .ifPresent(mass -> values.add(new NamedValue("repair", repair.broke(), Written.of(mass))));
        }
        for (var task : entry.tasks()) {
            task.handsOn().ifPresent(time -> values.add(new NamedValue("task", task.name(), Written.of(time))));
        }
        return values;
    }
}
