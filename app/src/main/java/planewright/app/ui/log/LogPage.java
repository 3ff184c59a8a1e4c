package planewright.app.ui.log;

import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import planewright.api.journal.Entry;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryDraft;
import planewright.app.journal.EntryRecord;
import planewright.app.print.Sheets;
import planewright.app.store.KeptDraft;
import planewright.app.store.MergedDraft;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.Files;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.PictureIntake;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.WhenShown;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/**
 * The log of the build that is shown, the newest entry on top. An entry is edited in its own place; what is being written
 * stays where it is while other builds are looked at.
 */
public final class LogPage extends JPanel implements DraftOffer.Choice, EntryEditor.Ending {
    private static final long serialVersionUID = 1L;
    private static final int AT_ONCE = 20;
    private static final int EDGE = 10;

    private final transient Workroom room;
    private final Column column = new Column(EDGE, EDGE);
    private final transient LogCards cards;
    /** What was closed with changes and not saved, by build. */
    private final transient Map<String, EntryEditor> discarded = new HashMap<>();

    /** What is being written, by build. */
    private final transient Map<String, EntryEditor> editors = new LinkedHashMap<>();

    private final transient Drafting drafting;
    private final transient PicturesIn pictures;
    private transient Runnable wanted = () -> {};

    private final JButton begin =
            Buttons.with(Icons.ADD, Buttons.of("new-entry", Texts.NEW_ENTRY.text(), this::newEntry));

    private transient Optional<String> shown = Optional.empty();
    private transient Optional<String> marked = Optional.empty();
    private int limit = AT_ONCE;
    private transient List<JComponent> above = List.of();
    private boolean laying;
    /** What is still to be scrolled to, once it is there. */
    private transient Optional<Reveal> revealing = Optional.empty();

    /** An entry to be scrolled to: to the top, as far as that goes, or just as far as it needs. */
    private record Reveal(String entry, boolean onTop) {}

    public LogPage(Workroom room) {
        super(new MigLayout("insets 6 0 0 0, gap 6, fill", "[grow,fill]", "[][grow,fill]"));
        this.room = room;
        cards = new LogCards(room, entry -> edit(entry, Optional.of(entry)));
        setName("log");
        pictures = new PicturesIn(room, this::showPreview, this::refresh);
        var bar = new JPanel(new MigLayout("insets 0 10 0 10, fillx", "[]8:push[][]"));
        bar.add(Buttons.hint(begin, Texts.NEW_ENTRY.text(), "ctrl N"));
        var card = Buttons.with(
                Icons.PICTURES,
                Buttons.plain(
                        "pictures-from-card",
                        Texts.CARD_BUTTON.text(),
                        () -> Files.chooseFolder(this).ifPresent(folder -> takeFiles(List.of(folder)))));
        card.setToolTipText(Texts.CARD_HINT.text());
        bar.add(card);
        bar.add(Buttons.hint(
                Buttons.with(Icons.PRINT, Buttons.plain("print-log", Texts.PRINT_LOG.text(), this::print)),
                Texts.PRINT_AS.text(),
                "ctrl P"));
        add(bar, "wrap");
        add(column.scrolled());
        PictureIntake.on(column, this::takeFiles, this::takePasted);
        drafting = new Drafting(room, editors::values, this::refresh);
        WhenShown.refresh(this, room, this::refresh);
        room.onEntryWanted(this::showEntry);
    }

    /** Begins an entry, or goes on with the one that is being written. */
    public void newEntry() {
        room.build()
                .ifPresent(build -> edit(EntryRecord.blank(build.id(), Entry.Kind.WORK, room.now()), Optional.empty()));
    }

    /** What is being written and not yet saved, over all builds. */
    public Collection<EntryEditor> unsaved() {
        return editors.values().stream().filter(EntryEditor::isChanged).toList();
    }

    /** Keeps what is being written on disk, for the window closes. */
    public void keepDrafts() {
        drafting.stop();
    }

    @Override
    public void goOn(
            KeptDraft draft, EntryRecord entry, Optional<EntryRecord> saved, EntryDraft written, List<String> told) {
        open(entry, saved, written).ifPresent(editor -> {
            if (!told.isEmpty()) {
                editor.say(Texts.DRAFT_BOTH.text(String.join(", ", told)));
            }
            drafting.keep();
            drafting.taken(draft, entry.id());
        });
    }

    @Override
    public void throwAway(KeptDraft draft) {
        drafting.throwAway(draft);
    }

    /** Prints the whole log. */
    public void print() {
        room.build()
                .ifPresent(build -> Files.print(
                        this,
                        room,
                        build.name(),
                        () -> Sheets.log(
                                build,
                                room.journal().log(build.id()),
                                room.program().pictures())));
    }

    /** Takes pictures into the entry of the day each was taken, or of today; folders and many files are shown before. */
    public void takeFiles(List<Path> files) {
        room.build().ifPresent(build -> pictures.take(build, files));
    }

    /** Takes a picture that comes from no file into the entry of today. */
    public void takePasted(BufferedImage image) {
        room.build().ifPresent(build -> pictures.paste(build, image));
    }

    /** Hears when the log has something to be looked at. */
    public void onWanted(Runnable listener) {
        wanted = listener;
    }

    private void showPreview() {
        wanted.run();
        column.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
    }

    private void edit(EntryRecord entry, Optional<EntryRecord> saved) {
        open(entry, saved, EntryDraft.of(entry));
    }

    private Optional<EntryEditor> open(EntryRecord entry, Optional<EntryRecord> saved, EntryDraft written) {
        var open = editors.get(entry.build());
        if (open != null && open.isChanged()) {
            room.say(Texts.FINISH_FIRST.text());
            open.focus();
            return Optional.empty();
        }
        var editor = new EntryEditor(room, entry, saved, written, this);
        editors.put(entry.build(), editor);
        refresh();
        column.scrollRectToVisible(new Rectangle(0, editor.getY(), 1, 1));
        SwingUtilities.invokeLater(editor::focus);
        return Optional.of(editor);
    }

    @Override
    public void closed(EntryEditor editor) {
        boolean atHand = editor.isAncestorOf(
                KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner());
        editors.values().remove(editor);
        drafting.done(editor.entryId());
        room.build().filter(build -> editor.isDiscarded()).ifPresent(build -> discarded.put(build.id(), editor));
        reveal(editor.entryId(), false);
        if (atHand) {
            begin.requestFocusInWindow();
        }
    }

    @Override
    public void overtaken(EntryEditor editor, EntryRecord now) {
        var merged = MergedDraft.of(EntryDraft.of(editor.begun()), editor.draft(), EntryDraft.of(now));
        editors.values().remove(editor);
        open(now, Optional.of(now), merged.draft())
                .ifPresent(together -> together.say(Texts.DRAFT_OVERTAKEN.text(String.join(", ", merged.told()))));
    }

    private void showEntry(String id) {
        marked = Optional.of(id);
        reveal(id, true);
    }

    private void reveal(String id, boolean onTop) {
        var log = newestFirst();
        for (int i = 0; i < log.size(); i++) {
            if (log.get(i).id().equals(id)) {
                limit = Math.max(limit, i + AT_ONCE / 2);
            }
        }
        revealing = Optional.of(new Reveal(id, onTop));
        refresh();
    }

    private void reveal(JComponent card, boolean onTop) {
        validate();
        int seen = column.getVisibleRect().height;
        column.scrollRectToVisible(
                new Rectangle(0, card.getY() - EDGE, 1, onTop ? seen : Math.min(seen, card.getHeight() + 2 * EDGE)));
    }

    private void refresh() {
        cards.changed();
        var build = room.build();
        if (!build.map(BuildRecord::id).equals(shown)) {
            shown = build.map(BuildRecord::id);
            limit = AT_ONCE;
            marked = Optional.empty();
            revealing = Optional.empty();
            cards.clear();
            column.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
        }
        above = build.map(this::above).orElse(List.of());
        lay();
    }

    /** Shows what is there, and goes on soon where cards are still to be made. */
    private void lay() {
        cards.begin();
        var all = new ArrayList<>(above);
        room.build()
                .filter(build -> shown.filter(build.id()::equals).isPresent())
                .ifPresent(build -> fill(build, all));
        column.fill(all);
        if (cards.isMore()) {
            layMore();
        } else if (revealing.isPresent()) {
            var wanted = revealing.get();
            revealing = Optional.empty();
            SwingUtilities.invokeLater(() -> cards.known(wanted.entry())
                    .filter(card -> card.getParent() == column)
                    .ifPresent(card -> reveal(card, wanted.onTop())));
        }
    }

    private void layMore() {
        if (!laying) {
            laying = true;
            SwingUtilities.invokeLater(() -> {
                laying = false;
                lay();
            });
        }
    }

    /** What stands above the entries. */
    private List<JComponent> above(BuildRecord build) {
        var log = room.journal().log(build.id());
        var editor = Optional.ofNullable(editors.get(build.id()));
        var all = new ArrayList<>(drafting.offers(build.id(), this));
        pictures.preview(build.id()).ifPresent(all::add);
        editor.filter(open -> log.stream().noneMatch(entry -> entry.id().equals(open.entryId())))
                .ifPresent(all::add);
        if (editor.isEmpty() && discarded.containsKey(build.id())) {
            all.add(bringBack(build, discarded.get(build.id())));
        }
        if (log.isEmpty() && editor.isEmpty()) {
            all.add(Words.quiet(Texts.EMPTY_LOG.text()));
        }
        return all;
    }

    private void fill(BuildRecord build, List<JComponent> all) {
        var log = newestFirst();
        var editor = Optional.ofNullable(editors.get(build.id()));
        Optional<LocalDate> day = Optional.empty();
        for (var entry : log.subList(0, Math.min(limit, log.size()))) {
            var edited = editor.filter(open -> open.entryId().equals(entry.id()));
            var card = edited.isPresent() ? edited : card(build, entry);
            if (card.isEmpty()) {
                return;
            }
            var date = entry.at().toLocalDate();
            if (day.filter(date::equals).isEmpty()) {
                day = Optional.of(date);
                all.add(cards.heading(date));
            }
            all.add(card.get());
        }
        if (log.size() > limit) {
            all.add(older(log.size() - limit));
        }
    }

    private Optional<? extends JComponent> card(BuildRecord build, EntryRecord entry) {
        boolean wanted = marked.filter(entry.id()::equals).isPresent();
        var card = cards.card(build, entry);
        card.ifPresent(each -> {
            each.setMarked(wanted);
            each.tellWhen(wanted);
        });
        return card;
    }

    private JPanel older(int left) {
        var older = new JPanel(new MigLayout("insets 0, fillx", "[center]"));
        older.setOpaque(false);
        older.add(Buttons.of("older", Texts.OLDER.text(left), () -> {
            limit += AT_ONCE;
            refresh();
        }));
        return older;
    }

    /** What was discarded by a slip of the finger is not gone until something else is discarded. */
    private JPanel bringBack(BuildRecord build, EntryEditor editor) {
        var row = new JPanel(new MigLayout("insets 0", "[]10[]"));
        row.setOpaque(false);
        row.add(Look.quiet(Texts.DISCARDED.text(editor.heading())));
        row.add(Buttons.plain("bring-back", Texts.RESTORE.text(), () -> {
            discarded.remove(build.id());
            editors.put(build.id(), editor);
            refresh();
        }));
        return row;
    }

    private List<EntryRecord> newestFirst() {
        var log = new ArrayList<>(
                room.build().map(build -> room.journal().log(build.id())).orElse(List.of()));
        java.util.Collections.reverse(log);
        return log;
    }
}
