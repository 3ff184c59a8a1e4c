package planewright.app.journal;

import java.time.LocalDateTime;
import java.util.function.UnaryOperator;
import planewright.api.journal.Entry;

/** Writes into what was already written that day, so that an evening's lines and pictures stand together. */
public final class DayEntry {
    private DayEntry() {}

    /**
     * The edit that writes something into the day's last entry of work or notes, or into a new one where there is none.
     *
     * @param at the day; a new entry gets this time
     * @param what what is written, in a few words
     */
    public static Edit writing(
            OpenJournal journal, String build, LocalDateTime at, String what, UnaryOperator<EntryRecord> writing) {
        return journal.log(build).stream()
                .filter(entry -> entry.at().toLocalDate().equals(at.toLocalDate()))
                .filter(entry -> entry.kind() == Entry.Kind.WORK || entry.kind() == Entry.Kind.NOTE)
                .reduce((earlier, later) -> later)
                .map(entry -> Edit.change(what, entry, writing.apply(entry)))
                .orElseGet(() -> Edit.add(what, writing.apply(EntryRecord.blank(build, Entry.Kind.WORK, at))));
    }
}
