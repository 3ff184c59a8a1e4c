package planewright.app.journal;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The entries of one build in order of time: always their lines, their records while somebody needs them. */
final class Log {
    private final String build;
    private final List<EntryLine> lines;
    private volatile Optional<List<EntryRecord>> records;

    private Log(String build, List<EntryLine> lines, Optional<List<EntryRecord>> records) {
        this.build = build;
        this.lines = lines;
        this.records = records;
    }

    /**
     * A log of which only the lines are known yet.
     *
     * @param lines in order of time
     */
    static Log unread(String build, List<EntryLine> lines) {
        return new Log(build, List.copyOf(lines), Optional.empty());
    }

    /** A log that is wholly in memory. */
    static Log read(String build, List<EntryRecord> entries) {
        var sorted = sorted(entries.stream());
        return new Log(
                build,
                sorted.stream()
                        .map(entry -> EntryLine.of(entry, entry.hashCode()))
                        .toList(),
                Optional.of(sorted));
    }

    String build() {
        return build;
    }

    List<EntryLine> lines() {
        return lines;
    }

    /** The records, where they are in memory. */
    Optional<List<EntryRecord>> records() {
        return records;
    }

    /** Takes the records into memory. */
    List<EntryRecord> hold(List<EntryRecord> read) {
        var sorted = sorted(read.stream());
        records = Optional.of(sorted);
        return sorted;
    }

    /** Gives up the records; they are read again when somebody needs them. */
    void forget() {
        records = Optional.empty();
    }

    /** The log once there is news of its entries. */
    Log with(News news) {
        var now = new HashMap<String, News.Present>();
        for (var each : news.present()) {
            if (each.record() instanceof EntryRecord entry && entry.build().equals(build)) {
                now.put(entry.id(), each);
            }
        }
        var moved = new HashSet<>(now.keySet());
        news.gone().forEach(gone -> moved.add(gone.id()));
        var others = lines.stream().filter(line -> !moved.contains(line.id()));
        return new Log(
                build,
                sortedLines(Stream.concat(others, now.values().stream().map(Log::line))),
                records.map(held -> with(held, moved, now)));
    }

    private static List<EntryRecord> with(
            List<EntryRecord> held, HashSet<String> moved, Map<String, News.Present> now) {
        return sorted(Stream.concat(
                held.stream().filter(entry -> !moved.contains(entry.id())),
                now.values().stream().map(each -> (EntryRecord) each.record())));
    }

    private static EntryLine line(News.Present present) {
        return EntryLine.of((EntryRecord) present.record(), present.stamp());
    }

    private static List<EntryLine> sortedLines(Stream<EntryLine> lines) {
        return lines.sorted(Comparator.comparing(EntryLine::at).thenComparing(EntryLine::id))
                .toList();
    }

    private static List<EntryRecord> sorted(Stream<EntryRecord> entries) {
        return entries.sorted(Comparator.comparing(EntryRecord::at).thenComparing(EntryRecord::id))
                .toList();
    }
}
