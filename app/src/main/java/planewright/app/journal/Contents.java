package planewright.app.journal;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import planewright.api.journal.JournalReader;

/**
 * All that a journal holds at one instant; never changes.
 *
 * @param byId builds by their ids
 * @param logs entries in order of time, by the id of their build
 * @param others all other records
 */
record Contents(Map<String, BuildRecord> byId, Map<String, List<EntryRecord>> logs, Others others)
        implements JournalReader {
    static Contents of(
            Collection<BuildRecord> builds, Collection<EntryRecord> entries, Collection<? extends Kept> others) {
        var logs = new HashMap<String, List<EntryRecord>>();
        entries.stream()
                .collect(Collectors.groupingBy(EntryRecord::build))
                .forEach((build, log) -> logs.put(build, sorted(log.stream())));
        return new Contents(
                builds.stream().collect(Collectors.toMap(BuildRecord::id, build -> build)), logs, Others.of(others));
    }

    @Override
    public List<BuildRecord> builds() {
        return byId.values().stream()
                .sorted(Comparator.comparing(BuildRecord::begun)
                        .thenComparing(BuildRecord::id)
                        .reversed())
                .toList();
    }

    @Override
    public List<EntryRecord> log(String buildId) {
        return logs.getOrDefault(buildId, List.of());
    }

    @Override
    public Optional<BuildRecord> build(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    @Override
    public List<TemplateRecord> templates() {
        return others.templates();
    }

    @Override
    public Optional<CalendarRecord> calendar() {
        return others.calendar();
    }

    @Override
    public List<MaterialRecord> materials() {
        return others.materials().map(MaterialsRecord::materials).orElse(List.of());
    }

    /** The record of the same kind and id as another one. */
    Optional<? extends Kept> current(Kept like) {
        if (like instanceof BuildRecord) {
            return build(like.id());
        }
        return like instanceof EntryRecord ? entry(like.id()) : others.record(like.id());
    }

    Optional<EntryRecord> entry(String id) {
        return logs.values().stream()
                .flatMap(List::stream)
                .filter(entry -> entry.id().equals(id))
                .findFirst();
    }

    /** What the journal holds once an edit is made. */
    Contents with(Edit edit) {
        var changed = new Contents(new HashMap<>(byId), new HashMap<>(logs), others);
        edit.changes().forEach(changed::take);
        return new Contents(changed.byId, changed.logs, others.with(edit));
    }

    private void take(Edit.Change change) {
        if (change.subject() instanceof BuildRecord build) {
            if (change.after().isPresent()) {
                byId.put(build.id(), build);
            } else {
                byId.remove(build.id());
            }
        } else if (change.subject() instanceof EntryRecord entry) {
            var others = log(entry.build()).stream().filter(kept -> !kept.id().equals(entry.id()));
            logs.put(
                    entry.build(),
                    change.after().isPresent() ? sorted(Stream.concat(others, Stream.of(entry))) : others.toList());
        }
    }

    private static List<EntryRecord> sorted(Stream<EntryRecord> entries) {
        return entries.sorted(Comparator.comparing(EntryRecord::at).thenComparing(EntryRecord::id))
                .toList();
    }
}
