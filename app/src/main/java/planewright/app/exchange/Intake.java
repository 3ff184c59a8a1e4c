package planewright.app.exchange;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Slow;

/** What would come in: looked at, and nothing written yet. */
public final class Intake {
    private final List<Row> rows;
    private final List<LeftOut> known;
    private final List<LeftOut> leftOut;
    private final Writing writing;

    /**
     * An entry that would be written.
     *
     * @param entry as it would be
     * @param joins what it stands in the log as already; empty for a new one
     * @param things what would come into it, in words
     */
    public record Row(EntryRecord entry, Optional<EntryRecord> joins, List<String> things) {
        public Row {
            things = List.copyOf(things);
        }
    }

    /** Makes it so. */
    interface Writing {
        /** Writes all of it or nothing. */
        void write(Watch watch) throws IOException;
    }

    Intake(List<Row> rows, List<LeftOut> known, List<LeftOut> leftOut, Writing writing) {
        this.rows = rows.stream()
                .sorted(Comparator.comparing(row -> row.entry().at()))
                .toList();
        this.known = List.copyOf(known);
        this.leftOut = List.copyOf(leftOut);
        this.writing = writing;
    }

    /** The rows of an edit that would be made. */
    static List<Row> rows(Edit edit, Function<EntryRecord, List<String>> things) {
        return edit.changes().stream()
                .map(change -> new Row(
                        (EntryRecord) change.subject(),
                        change.before().map(EntryRecord.class::cast),
                        things.apply((EntryRecord) change.subject())))
                .toList();
    }

    /** The entries that would be written, in order of time. */
    public List<Row> rows() {
        return rows;
    }

    /** What the journal has already. */
    public List<LeftOut> known() {
        return known;
    }

    /** What is refused. */
    public List<LeftOut> leftOut() {
        return leftOut;
    }

    /**
     * Writes it into the journal, as one edit.
     *
     * @param watch may end it, and then nothing of it is written
     */
    public Brought write(Watch watch) throws IOException {
        Slow.work("bringing in");
        if (!rows.isEmpty()) {
            writing.write(watch);
        }
        return new Brought(rows.stream().mapToInt(row -> row.things().size()).sum(), rows.size(), known, leftOut);
    }

    /** Nothing is written because of what is refused. */
    Brought refused() {
        return new Brought(0, 0, known, leftOut);
    }
}
