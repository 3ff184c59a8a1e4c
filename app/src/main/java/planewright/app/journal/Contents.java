package planewright.app.journal;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import planewright.api.figure.Outline;
import planewright.api.journal.JournalReader;
import planewright.api.journal.Template;

/**
 * All that a journal holds at one instant. An entry that is read only later is read as it is then.
 *
 * @param byId builds by their ids
 * @param logs by the ids of their builds
 * @param others all other records
 * @param memory reads what is not in memory
 */
record Contents(Map<String, BuildRecord> byId, Map<String, Log> logs, Others others, Memory memory)
        implements JournalReader {
    /** A journal that is wholly in memory. */
    static Contents read(Collection<? extends Kept> records) {
        var logs = new HashMap<String, Log>();
        of(EntryRecord.class, records)
                .collect(Collectors.groupingBy(EntryRecord::build))
                .forEach((build, log) -> logs.put(build, Log.read(build, log)));
        return new Contents(byId(records), logs, Others.of(records), Memory.ofEverything());
    }

    /** A journal of whose entries only the lines are known, by the ids of their builds. */
    static Contents unread(Collection<? extends Kept> records, Map<String, List<EntryLine>> lines, Archive archive) {
        var logs = new HashMap<String, Log>();
        lines.forEach((build, log) -> logs.put(build, Log.unread(build, log)));
        return new Contents(byId(records), logs, Others.of(records), Memory.of(archive));
    }

    private static Map<String, BuildRecord> byId(Collection<? extends Kept> records) {
        return of(BuildRecord.class, records).collect(Collectors.toMap(BuildRecord::id, build -> build));
    }

    private static <T> Stream<T> of(Class<T> kind, Collection<? extends Kept> records) {
        return records.stream().filter(kind::isInstance).map(kind::cast);
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
        return found(buildId).map(memory::records).orElse(List.of());
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
    public Optional<Outline> outline(Template template) {
        return template.outline().flatMap(memory::outline);
    }

    @Override
    public Optional<CalendarRecord> calendar() {
        return others.calendar();
    }

    @Override
    public List<MaterialRecord> materials() {
        return others.materials().map(MaterialsRecord::materials).orElse(List.of());
    }

    List<EntryLine> lines(String buildId) {
        return found(buildId).map(Log::lines).orElse(List.of());
    }

    Optional<EntryRecord> entry(String buildId, String id) {
        return found(buildId).flatMap(log -> memory.record(log, id));
    }

    List<EntryRecord> entries(String buildId, Collection<String> ids) {
        return found(buildId).map(log -> memory.records(log, ids)).orElse(List.of());
    }

    Optional<? extends Kept> record(Kept like) {
        return like instanceof BuildRecord ? build(like.id()) : others.record(like.id());
    }

    boolean holds(Kept like) {
        if (like instanceof EntryRecord entry) {
            return lines(entry.build()).stream().anyMatch(line -> line.id().equals(entry.id()));
        }
        return record(like).isPresent();
    }

    /** Whether a build's log can be had without waiting. */
    boolean isAtHand(String buildId) {
        return found(buildId).map(log -> log.records().isPresent()).orElse(true);
    }

    /** What the journal holds once there is news. */
    Contents with(News news) {
        var changed = new Contents(new HashMap<>(byId), new HashMap<>(logs), others.with(news), memory);
        changed.takeBuilds(news);
        for (var build : touched(news)) {
            var log = changed.found(build)
                    .orElseGet(() -> Log.read(build, List.of()))
                    .with(news);
            changed.logs.put(build, log);
            log.records().ifPresent(held -> memory.note(log));
        }
        return changed;
    }

    private void takeBuilds(News news) {
        for (var each : news.present()) {
            if (each.record() instanceof BuildRecord build) {
                byId.put(build.id(), build);
            }
        }
        news.gone().forEach(gone -> byId.remove(gone.id()));
    }

    /** The builds whose logs have changed. */
    private static Set<String> touched(News news) {
        var touched = new HashSet<String>();
        for (var each : news.present()) {
            if (each.record() instanceof EntryRecord entry) {
                touched.add(entry.build());
            }
        }
        news.gone().stream()
                .filter(gone -> !gone.build().equals(gone.id()))
                .map(News.Gone::build)
                .forEach(touched::add);
        return touched;
    }

    private Optional<Log> found(String buildId) {
        return Optional.ofNullable(logs.get(buildId));
    }
}
