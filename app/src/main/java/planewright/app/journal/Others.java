package planewright.app.journal;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a journal holds beside builds and entries; never changes.
 *
 * @param byId records by their ids
 */
record Others(Map<String, Kept> byId) {
    Others {
        byId = Map.copyOf(byId);
    }

    static Others of(Collection<? extends Kept> records) {
        var byId = new HashMap<String, Kept>();
        records.stream().filter(Others::isOther).forEach(record -> byId.put(record.id(), record));
        return new Others(byId);
    }

    Optional<Kept> record(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** By name. */
    List<TemplateRecord> templates() {
        return byId.values().stream()
                .filter(TemplateRecord.class::isInstance)
                .map(TemplateRecord.class::cast)
                .sorted(Comparator.comparing(TemplateRecord::name, String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(TemplateRecord::id))
                .toList();
    }

    Optional<CalendarRecord> calendar() {
        return record(CalendarRecord.ID).map(CalendarRecord.class::cast);
    }

    Optional<MaterialsRecord> materials() {
        return record(MaterialsRecord.ID).map(MaterialsRecord.class::cast);
    }

    /** What is held once there is news. */
    Others with(News news) {
        var changed = new HashMap<>(byId);
        news.gone().forEach(gone -> changed.remove(gone.id()));
        news.present().stream()
                .map(News.Present::record)
                .filter(Others::isOther)
                .forEach(record -> changed.put(record.id(), record));
        return new Others(changed);
    }

    private static boolean isOther(Kept record) {
        return !(record instanceof BuildRecord) && !(record instanceof EntryRecord);
    }
}
