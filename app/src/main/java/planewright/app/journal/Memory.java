package planewright.app.journal;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import planewright.api.figure.Outline;

/** Reads logs when they are wanted and keeps a few of them, so that a journal of any length fits into memory. */
final class Memory {
    /** About as many as a workshop writes in five years. */
    private static final int MOST_ENTRIES = 4000;

    private final Archive archive;
    private final int most;
    private final Deque<Log> held = new ArrayDeque<>();
    private volatile Set<String> kept = Set.of();

    private Memory(Archive archive, int most) {
        this.archive = archive;
        this.most = most;
    }

    static Memory of(Archive archive) {
        return new Memory(archive, MOST_ENTRIES);
    }

    /** Where there is no place to read from, everything is kept. */
    static Memory ofEverything() {
        return new Memory((build, ids) -> List.of(), Integer.MAX_VALUE);
    }

    /** The logs of these builds stay in memory until others are to be kept. */
    void keep(Set<String> builds) {
        kept = Set.copyOf(builds);
    }

    List<EntryRecord> records(Log log) {
        var known = log.records();
        if (known.isPresent()) {
            return known.get();
        }
        Slow.work("reading a log");
        var read = log.hold(archive.read(
                log.build(), log.lines().stream().map(EntryLine::id).toList()));
        note(log);
        return read;
    }

    /** Some entries of a log, without reading the others. */
    List<EntryRecord> records(Log log, Collection<String> ids) {
        var known = log.records();
        if (known.isPresent()) {
            var wanted = Set.copyOf(ids);
            return known.get().stream()
                    .filter(entry -> wanted.contains(entry.id()))
                    .toList();
        }
        if (ids.isEmpty()) {
            return List.of();
        }
        Slow.work("reading entries");
        return archive.read(log.build(), ids);
    }

    /** One entry of a log, without reading the others. */
    Optional<EntryRecord> record(Log log, String id) {
        return log.lines().stream().anyMatch(line -> line.id().equals(id))
                ? records(log, List.of(id)).stream().findFirst()
                : Optional.empty();
    }

    long settled(long stamp) {
        return archive.settled(stamp);
    }

    Optional<Outline> outline(String hash) {
        return archive.outline(hash);
    }

    /** A log has come into memory; those that came first leave it. */
    synchronized void note(Log log) {
        held.removeIf(other -> other.build().equals(log.build()));
        int entries = held.stream().mapToInt(other -> other.lines().size()).sum()
                + log.lines().size();
        for (var oldest = held.iterator(); entries > most && oldest.hasNext(); ) {
            var leaving = oldest.next();
            if (!kept.contains(leaving.build())) {
                entries -= leaving.lines().size();
                leaving.forget();
                oldest.remove();
            }
        }
        held.add(log);
    }
}
