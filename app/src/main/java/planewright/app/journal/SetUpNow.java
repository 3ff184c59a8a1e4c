package planewright.app.journal;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import planewright.api.journal.Entry;
import planewright.api.journal.JournalReader;
import planewright.shared.quantity.Written;

/** What a build flies with now, and what it flew with before: every set-up value of its log. */
public final class SetUpNow {
    private SetUpNow() {}

    /** A value and the entry that set it. */
    public record Set(EntryRecord entry, SetUpRecord what) {}

    /**
     * A value of the set-up through its time.
     *
     * @param sets in order of time, at least one
     */
    public record Value(List<Set> sets) {
        public Value {
            sets = List.copyOf(sets);
        }

        /** What holds now. */
        public Set now() {
            return sets.get(sets.size() - 1);
        }

        /** As it was written last. */
        public String name() {
            return now().what().name();
        }
    }

    /** Every value of a log, by name; letter case and outer spaces aside. */
    public static List<Value> of(List<EntryRecord> log) {
        var values = new ArrayList<List<Set>>();
        for (var entry : log) {
            for (var what : entry.setUp()) {
                var set = new Set(entry, what);
                values.stream()
                        .filter(each ->
                                JournalReader.sameName(each.get(0).what().name(), what.name()))
                        .findFirst()
                        .ifPresentOrElse(known -> known.add(set), () -> values.add(new ArrayList<>(List.of(set))));
            }
        }
        return values.stream()
                .map(Value::new)
                .sorted(Comparator.comparing(Value::name, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    /**
     * The edit that sets a value now: in the day's entry, or in a new one where the day's entry is older than the one that the
     * value stands in, so that the new value holds.
     *
     * @param what what is done, in a few words
     */
    public static Edit setting(
            OpenJournal journal, String build, LocalDateTime now, String what, String name, Written quantity) {
        var record = new SetUpRecord(name, quantity);
        var edit = DayEntry.writing(journal, build, now, what, entry -> with(entry, record));
        var last = of(journal.log(build)).stream()
                .filter(value -> JournalReader.sameName(value.name(), name))
                .map(value -> value.now().entry())
                .findFirst();
        boolean overtaken = last.filter(entry ->
                        isAfter(entry, (EntryRecord) edit.changes().get(0).subject()))
                .isPresent();
        return overtaken ? Edit.add(what, with(EntryRecord.blank(build, Entry.Kind.WORK, now), record)) : edit;
    }

    private static boolean isAfter(EntryRecord one, EntryRecord other) {
        return !one.id().equals(other.id())
                && Comparator.comparing(EntryRecord::at)
                                .thenComparing(EntryRecord::id)
                                .compare(one, other)
                        > 0;
    }

    private static EntryRecord with(EntryRecord entry, SetUpRecord record) {
        return entry.withSetUp(Stream.concat(
                        entry.setUp().stream().filter(each -> !JournalReader.sameName(each.name(), record.name())),
                        Stream.of(record))
                .toList());
    }
}
