package planewright.app.ui.log;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import planewright.app.journal.EntryDraft;
import planewright.app.journal.EntryRecord;
import planewright.app.store.KeptDraft;
import planewright.app.store.MergedDraft;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** A half-written entry that was kept when the program ended, with what can be done with it. */
final class DraftOffer extends Card {
    private static final long serialVersionUID = 1L;
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT);

    private final transient KeptDraft draft;
    private final transient Choice choice;

    /** What the builder may decide. */
    interface Choice {
        /**
         * Opens an editor.
         *
         * @param begun the entry it begins with
         * @param saved the same where it stands in the log
         * @param written what stands in the editor
         * @param told what both sides have changed
         */
        void goOn(
                KeptDraft draft, EntryRecord begun, Optional<EntryRecord> saved, EntryDraft written, List<String> told);

        void throwAway(KeptDraft draft);
    }

    DraftOffer(Workroom room, KeptDraft draft, Choice choice) {
        super(new Stack(8));
        this.draft = draft;
        this.choice = choice;
        setName("draft-offer");
        setMarked(true);
        var now = room.journal().entry(draft.begun().build(), draft.begun().id());
        var buttons = new JPanel(new MigLayout("insets 0", "[][][]"));
        buttons.setOpaque(false);
        add(Words.of(Texts.DRAFT_OFFER.text(heading(), WHEN.format(draft.kept()))));
        if (isAsBegun(now)) {
            buttons.add(Buttons.of("draft-go-on", Texts.DRAFT_GO_ON.text(), () -> goOn(now)));
        } else {
            add(Words.quiet((now.isPresent() ? Texts.DRAFT_SAVED_SINCE : Texts.DRAFT_DELETED_SINCE).text()));
            now.ifPresent(
                    saved -> buttons.add(Buttons.of("draft-merge", Texts.DRAFT_MERGE.text(), () -> merge(saved))));
            buttons.add(Buttons.of("draft-apart", Texts.DRAFT_APART.text(), this::goOnApart));
        }
        buttons.add(Buttons.plain("draft-throw-away", Texts.THROW_AWAY.text(), () -> choice.throwAway(draft)));
        add(buttons);
    }

    private String heading() {
        var written = draft.written();
        return written.title().isBlank() ? written.when() : written.title().strip();
    }

    /** Whether the entry stands in the log as it did when the writing began. */
    private boolean isAsBegun(Optional<EntryRecord> now) {
        return draft.saved()
                ? now.filter(saved -> EntryDraft.of(saved).saysTheSameAs(EntryDraft.of(draft.begun())))
                        .isPresent()
                : now.isEmpty();
    }

    private void goOn(Optional<EntryRecord> saved) {
        choice.goOn(draft, saved.orElse(draft.begun()), saved, draft.written(), List.of());
    }

    private void merge(EntryRecord saved) {
        var merged = MergedDraft.of(EntryDraft.of(draft.begun()), draft.written(), EntryDraft.of(saved));
        choice.goOn(draft, saved, Optional.of(saved), merged.draft(), merged.told());
    }

    private void goOnApart() {
        var own = EntryRecord.blank(
                draft.begun().build(), draft.written().kind(), draft.begun().at());
        choice.goOn(draft, own, Optional.empty(), draft.written(), List.of());
    }
}
