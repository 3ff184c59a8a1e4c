package planewright.app.ui.log;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.Timer;
import planewright.app.journal.EntryDraft;
import planewright.app.journal.EntryRecord;
import planewright.app.store.Drafts;
import planewright.app.store.KeptDraft;
import planewright.app.ui.common.Workroom;

/**
 * Keeps what is being written on disk, a few seconds after it was typed, and offers it again when the window is opened after a crash.
 * Nothing of it goes into the journal until somebody saves it.
 */
final class Drafting {
    private static final int PAUSE_MILLIS = 2000;

    private final Workroom room;
    private final Drafts drafts;
    private final Supplier<Collection<EntryEditor>> editors;
    private final Runnable changed;
    private final Timer timer = new Timer(PAUSE_MILLIS, event -> keep());
    /** What lies on disk of the entries that are being written, by their ids. */
    private final Map<String, Lying> kept = new HashMap<>();

    private final List<KeptDraft> offered = new ArrayList<>();

    private record Lying(EntryRecord begun, EntryDraft written) {}

    /**
     * @param editors what is being written now
     * @param changed runs when there is more or less to offer
     */
    Drafting(Workroom room, Supplier<Collection<EntryEditor>> editors, Runnable changed) {
        this.room = room;
        this.drafts = room.program().drafts();
        this.editors = editors;
        this.changed = changed;
        room.drafts().run(this::unsaved, found -> {
            offered.addAll(found);
            changed.run();
        });
        timer.start();
    }

    /** Keeps everything that has changed since it was kept last. */
    void keep() {
        for (var editor : editors.get()) {
            var written = editor.draft();
            var id = editor.begun().id();
            var lying = new Lying(editor.begun(), written);
            if (!editor.isChanged()) {
                drop(id);
            } else if (!lying.equals(kept.put(id, lying))) {
                var draft = new KeptDraft(room.now(), editor.begun(), editor.isSaved(), written);
                room.drafts()
                        .run(
                                () -> {
                                    drafts.keep(draft);
                                    return draft;
                                },
                                done -> {});
            }
        }
    }

    /** What was written of an entry is saved, or nobody wants it. */
    void done(String entryId) {
        drop(entryId);
    }

    void stop() {
        keep();
        timer.stop();
    }

    /** What to offer in the log of a build. */
    List<JComponent> offers(String buildId, DraftOffer.Choice choice) {
        return offered.stream()
                .filter(draft -> draft.begun().build().equals(buildId))
                .map(draft -> (JComponent) new DraftOffer(room, draft, choice))
                .toList();
    }

    /** Somebody goes on with a draft, in an entry of that id, so it is offered no more. */
    void taken(KeptDraft draft, String entryId) {
        offered.remove(draft);
        if (!draft.begun().id().equals(entryId)) {
            forget(draft.begun().id());
        }
        changed.run();
    }

    /** Throws a draft away. */
    void throwAway(KeptDraft draft) {
        offered.remove(draft);
        forget(draft.begun().id());
        changed.run();
    }

    /** What was kept and is not in the journal; what was saved before the end came is forgotten. */
    private List<KeptDraft> unsaved() throws IOException {
        var unsaved = new ArrayList<KeptDraft>();
        for (var draft : drafts.all()) {
            var saved = room.journal()
                    .entry(draft.begun().build(), draft.begun().id())
                    .map(EntryDraft::of);
            if (saved.filter(draft.written()::saysTheSameAs).isPresent()) {
                drafts.drop(draft.begun().id());
            } else {
                unsaved.add(draft);
            }
        }
        return unsaved;
    }

    private void drop(String entryId) {
        if (Optional.ofNullable(kept.remove(entryId)).isPresent()) {
            forget(entryId);
        }
    }

    private void forget(String entryId) {
        room.drafts()
                .run(
                        () -> {
                            drafts.drop(entryId);
                            return entryId;
                        },
                        gone -> {});
    }
}
