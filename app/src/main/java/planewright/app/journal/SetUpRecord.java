package planewright.app.journal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import planewright.api.journal.SetUpValue;
import planewright.api.quantity.Measured;
import planewright.shared.quantity.Written;

/** A value of the set-up as the journal holds it. */
public record SetUpRecord(String name, Written quantity) implements SetUpValue {
    public SetUpRecord {
        name = Checks.notBlank("name of a set-up value", name);
    }

    @Override
    public Measured<?> value() {
        return quantity.measured();
    }

    @Override
    public String written() {
        return quantity.number();
    }

    /**
     * What a build flies with: the newest value of each name.
     *
     * @param log in order of time
     */
    public static List<SetUpRecord> newest(List<EntryRecord> log) {
        Map<String, SetUpRecord> newest = new LinkedHashMap<>();
        log.forEach(entry ->
                entry.setUp().forEach(value -> newest.put(value.name().toLowerCase(Locale.ROOT), value)));
        return List.copyOf(newest.values());
    }
}
