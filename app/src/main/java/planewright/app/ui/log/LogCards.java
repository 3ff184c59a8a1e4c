package planewright.app.ui.log;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.JComponent;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Turn;
import planewright.app.ui.common.Workroom;

/** The cards of a log and the headings of its days. A few are made at a time, so that nobody waits for the whole of a long log. */
final class LogCards {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofLocalizedDate(FormatStyle.FULL);

    private final Workroom room;
    private final Consumer<EntryRecord> edit;
    private final Map<String, EntryCard> cards = new HashMap<>();
    private final Map<LocalDate, JComponent> days = new HashMap<>();
    /** Entries whose cards show what is so now. */
    private final Set<String> fresh = new HashSet<>();

    private final Turn turn = new Turn();
    private boolean isMore;

    /**
     * @param edit begins to edit an entry
     */
    LogCards(Workroom room, Consumer<EntryRecord> edit) {
        this.room = room;
        this.edit = edit;
    }

    /** Another log is shown. */
    void clear() {
        cards.clear();
        days.clear();
        changed();
    }

    /** Something has changed: each card is looked at again. */
    void changed() {
        fresh.clear();
    }

    /** A few more may be made. */
    void begin() {
        turn.begin();
        isMore = false;
    }

    /** Whether more were wanted than might be made. */
    boolean isMore() {
        return isMore;
    }

    /** The card of an entry; where too many were made already an older one, or none yet. */
    Optional<EntryCard> card(BuildRecord build, EntryRecord entry) {
        var id = entry.id();
        if (fresh.contains(id)
                || known(id).filter(card -> card.stillShows(build, entry)).isPresent()) {
            fresh.add(id);
        } else if (turn.goesOn()) {
            cards.put(id, Look.kept(new EntryCard(room, build, entry, () -> edit.accept(entry))));
            fresh.add(id);
        } else {
            isMore = true;
        }
        return known(id);
    }

    /** The card of an entry that was made, if any. */
    Optional<EntryCard> known(String id) {
        return Optional.ofNullable(cards.get(id));
    }

    JComponent heading(LocalDate day) {
        return days.computeIfAbsent(day, date -> Look.heading(DAY.format(date), 1.05));
    }
}
