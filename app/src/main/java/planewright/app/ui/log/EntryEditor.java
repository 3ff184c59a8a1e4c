package planewright.app.ui.log;

import com.formdev.flatlaf.util.UIScale;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import planewright.api.journal.Entry;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryDraft;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.FlightRecord;
import planewright.app.journal.JointRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.RepairRecord;
import planewright.app.journal.TaskRecord;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.FootedCard;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.PictureIntake;
import planewright.app.ui.common.RowFields;
import planewright.app.ui.common.Saves;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** An entry to write. Nothing typed is lost: what cannot be understood stays as it is, marked, until it can. */
public final class EntryEditor extends FootedCard {
    private static final long serialVersionUID = 1L;
    private static final int TEXT_LINES = 5;
    private static final int MOST_TEXT_LINES = 18;
    /** About so many letters stand in a line of text. */
    private static final int LINE_LETTERS = 120;

    private final transient Workroom room;
    private final transient Ending ending;
    private transient EntryRecord begun;
    private transient Optional<EntryRecord> saved;
    private transient EntryDraft first;

    private final JTextField when = new JTextField();
    private final JComboBox<Entry.Kind> kind = new JComboBox<>(Entry.Kind.values());
    private final JTextField title = new JTextField();
    private final JTextArea text = Words.field("", TEXT_LINES, 20);
    private final JTextField tags = new JTextField();
    private final RowFields measurements;
    private final RowFields joints;
    private final RowFields setUp;
    private final RowFields flights;
    private final RowFields repairs;
    private final RowFields tasks;
    private final PictureRows pictures;
    private final JTextArea problem = Words.problem();
    private final JButton delete =
            Buttons.with(Icons.REMOVE, Buttons.plain("delete-entry", Texts.DELETE.text(), this::delete));
    private final transient Saves<EntryDraft> saves;
    private boolean judged;
    private boolean discarded;

    /**
     * @param begun what it begins with
     * @param saved the same where it stands in the log already; empty for a new entry
     * @param written what is written so far
     * @param ending hears when the editor has done its work
     */
    EntryEditor(Workroom room, EntryRecord begun, Optional<EntryRecord> saved, EntryDraft written, Ending ending) {
        super(10);
        this.room = room;
        this.begun = begun;
        this.saved = saved;
        this.ending = ending;
        setName("editor");
        Look.kept(this);
        setMarked(true);
        measurements = new RowFields(
                "measurements",
                Texts.MEASUREMENTS.text(),
                List.of(
                        new RowFields.Column("name", Texts.MEASUREMENT_NAME.text()),
                        new RowFields.Column("quantity", Texts.QUANTITY.text()),
                        new RowFields.Column("method", Texts.METHOD.text())),
                this::judge);
        joints = new RowFields(
                "joints",
                Texts.JOINTS.text(),
                List.of(
                        new RowFields.Column("name", Texts.JOINT_NAME.text()),
                        new RowFields.Column("material", Texts.JOINT_MATERIAL.text()),
                        new RowFields.Column("start", Texts.JOINT_START.text()),
                        new RowFields.Column("handsOff", Texts.JOINT_HANDS_OFF.text()),
                        new RowFields.Column("cured", Texts.JOINT_CURED.text())),
                this::judge);
        setUp = new RowFields(
                "setUp",
                Texts.SET_UP.text(),
                List.of(
                        new RowFields.Column("name", Texts.SET_UP_NAME.text()),
                        new RowFields.Column("quantity", Texts.QUANTITY.text())),
                this::judge);
        flights = new RowFields(
                "flights",
                Texts.FLIGHTS.text(),
                List.of(
                        new RowFields.Column("duration", Texts.FLIGHT_DURATION.text()),
                        new RowFields.Column("conditions", Texts.FLIGHT_CONDITIONS.text()),
                        new RowFields.Column("behaviour", Texts.FLIGHT_BEHAVIOUR.text())),
                this::judge);
        repairs = new RowFields(
                "repairs",
                Texts.REPAIRS.text(),
                List.of(
                        new RowFields.Column("broke", Texts.REPAIR_BROKE.text()),
                        new RowFields.Column("cause", Texts.REPAIR_CAUSE.text()),
                        new RowFields.Column("mended", Texts.REPAIR_MENDED.text()),
                        new RowFields.Column("massAdded", Texts.REPAIR_MASS.text())),
                this::judge);
        tasks = new RowFields(
                "tasks",
                Texts.TASKS.text(),
                List.of(
                        new RowFields.Column("name", Texts.TASK_NAME.text()),
                        new RowFields.Column("handsOn", Texts.TASK_HANDS_ON.text())),
                this::judge);
        saves = new Saves<>(room, problem, this::draft, this::saveNow);
        pictures = new PictureRows(room, saves, this::say);
        fill(written);
        layOut();
        var untouched = EntryDraft.of(begun);
        first = written.equals(untouched) ? draft() : untouched;
        for (var place : List.of(this, text, title, when, tags)) {
            PictureIntake.on(place, pictures::takeFiles, pictures::takePasted);
        }
    }

    /** How the writing may end. */
    interface Ending {
        /** It is saved, or nobody wants to save it. */
        void closed(EntryEditor editor);

        /** Somebody else has saved the entry meanwhile; nothing of what is written here is. */
        void overtaken(EntryEditor editor, EntryRecord now);
    }

    String entryId() {
        return begun.id();
    }

    EntryRecord begun() {
        return begun;
    }

    /** Whether what it began with stands in the log. */
    boolean isSaved() {
        return saved.isPresent();
    }

    /** Says something about what is written. */
    void say(String words) {
        Words.show(problem, words);
    }

    /** What is being written, for people: a title, else its day. */
    public String heading() {
        return title.getText().isBlank() ? when.getText() : title.getText().strip();
    }

    /** Whether anything differs from what it began with, or is still to come. */
    public boolean isChanged() {
        return saves.isHeld() || !draft().saysTheSameAs(first);
    }

    /** Whether it was closed with changes that nobody has saved. */
    boolean isDiscarded() {
        return discarded && isChanged();
    }

    private void discard() {
        discarded = true;
        saves.drop();
        ending.closed(this);
    }

    void focus() {
        title.requestFocusInWindow();
    }

    /** Saves, or shows what cannot be understood. */
    public void save() {
        discarded = false;
        saves.ask();
    }

    private void saveNow() {
        judged = true;
        var checked = draft().check(begun);
        show(checked);
        checked.entry().ifPresent(this::save);
    }

    private void save(EntryRecord entry) {
        var now = room.journal().entry(begun.build(), begun.id());
        if (now.isPresent() && !now.equals(saved)) {
            ending.overtaken(this, now.get());
        } else if (saved.filter(entry::equals).isPresent()) {
            ending.closed(this);
        } else {
            stand(entry);
            var edit = saved.map(before -> Edit.change(Texts.ENTRY_EDIT.text(), before, entry))
                    .orElseGet(() -> Edit.add(Texts.NEW_ENTRY_EDIT.text(), entry));
            saves.edit(edit, sent -> goOn(entry, sent), () -> ending.closed(this));
        }
    }

    private void stand(EntryRecord entry) {
        measurements.stand(entry.measurements(), MeasurementRecord::id);
        joints.stand(entry.joints(), JointRecord::id);
        flights.stand(entry.flights(), FlightRecord::id);
        repairs.stand(entry.repairs(), RepairRecord::id);
        tasks.stand(entry.tasks(), TaskRecord::id);
    }

    private void goOn(EntryRecord entry, EntryDraft sent) {
        begun = entry;
        saved = Optional.of(entry);
        first = sent;
        delete.setVisible(true);
        judge();
    }

    private void delete() {
        saves.drop();
        saved.ifPresentOrElse(
                before -> room.edit(Edit.remove(Texts.DELETE_ENTRY_EDIT.text(), before), () -> ending.closed(this)),
                () -> ending.closed(this));
    }

    private void fill(EntryDraft draft) {
        when.setText(draft.when());
        kind.setSelectedItem(draft.kind());
        title.setText(draft.title());
        text.setText(draft.text());
        text.setCaretPosition(0);
        tags.setText(draft.tags());
        draft.measurements()
                .forEach(row -> measurements.add(row.id(), List.of(row.name(), row.quantity(), row.method())));
        draft.joints()
                .forEach(row -> joints.add(
                        row.id(), List.of(row.name(), row.material(), row.start(), row.handsOff(), row.cured())));
        draft.setUp().forEach(row -> setUp.add("", List.of(row.name(), row.quantity())));
        draft.pictures().forEach(pictures::add);
        draft.flights()
                .forEach(row -> flights.add(row.id(), List.of(row.duration(), row.conditions(), row.behaviour())));
        draft.repairs()
                .forEach(
                        row -> repairs.add(row.id(), List.of(row.broke(), row.cause(), row.mended(), row.massAdded())));
        draft.tasks().forEach(row -> tasks.add(row.id(), List.of(row.name(), row.handsOn())));
    }

    private void layOut() {
        var head = new JPanel(new MigLayout(
                "insets 0, gap 6, fillx",
                "[][" + UIScale.scale(150) + "!][][" + UIScale.scale(130) + "!][][grow,fill]"));
        head.setOpaque(false);
        kind.setRenderer(Words.choice(each -> Terms.of(((Entry.Kind) each).word())));
        Words.labelled(head, Texts.ENTRY_WHEN.text(), when, "entry-when");
        Words.labelled(head, Texts.KIND.text(), kind, "entry-kind");
        Words.labelled(head, Texts.ENTRY_TAGS.text(), tags, "entry-tags");
        body().add(head);
        body().add(Words.named(title, Texts.ENTRY_TITLE.text(), "entry-title"));
        Words.named(text, Texts.ENTRY_TEXT.text(), "entry-text");
        body().add(Look.quiet(Texts.ENTRY_TEXT_HINT.text()));
        text.setToolTipText(null);
        body().add(new JScrollPane(text));
        Buttons.onEdit(text, this::grow);
        grow();
        body().add(measurements);
        body().add(joints);
        body().add(setUp);
        body().add(flights);
        body().add(repairs);
        body().add(tasks);
        body().add(pictures);
        foot().add(problem);
        foot().add(actions());
        kind.addActionListener(event -> offerRow());
        offerRow();
        Buttons.onEdit(when, this::judge);
    }

    /** The text is as high as its words, within reason. */
    private void grow() {
        int lines = text.getLineCount() + text.getText().length() / LINE_LETTERS;
        text.setRows(Math.max(TEXT_LINES, Math.min(MOST_TEXT_LINES, lines + 1)));
    }

    /** An entry of a flight or repair has room for one at once. */
    private void offerRow() {
        if (kind.getSelectedItem() == Entry.Kind.FLIGHT) {
            flights.offer();
        } else if (kind.getSelectedItem() == Entry.Kind.REPAIR) {
            repairs.offer();
        }
    }

    private JPanel actions() {
        var actions = new JPanel(new MigLayout("insets 0", "[][][]8:push[]"));
        actions.setOpaque(false);
        actions.add(Buttons.save("save-entry", this, this::save));
        actions.add(Buttons.of("discard-entry", Texts.DISCARD.text(), this::discard));
        actions.add(
                Buttons.with(Icons.PICTURES, Buttons.of("add-picture", Texts.ADD_PICTURE.text(), pictures::choose)));
        delete.setVisible(saved.isPresent());
        actions.add(delete, "hidemode 3");
        return actions;
    }

    /** Everything as it is typed. */
    EntryDraft draft() {
        return new EntryDraft(
                when.getText(),
                (Entry.Kind) kind.getSelectedItem(),
                title.getText(),
                text.getText(),
                tags.getText(),
                measurements.rows().stream()
                        .map(row -> new EntryDraft.Measuring(row.id(), row.text(0), row.text(1), row.text(2)))
                        .toList(),
                joints.rows().stream()
                        .map(row -> new EntryDraft.Joining(
                                row.id(), row.text(0), row.text(1), row.text(2), row.text(3), row.text(4)))
                        .toList(),
                setUp.rows().stream()
                        .map(row -> new EntryDraft.Setting(row.text(0), row.text(1)))
                        .toList(),
                pictures.records(),
                flights.rows().stream()
                        .map(row -> new EntryDraft.Flying(row.id(), row.text(0), row.text(1), row.text(2)))
                        .toList(),
                repairs.rows().stream()
                        .map(row ->
                                new EntryDraft.Mending(row.id(), row.text(0), row.text(1), row.text(2), row.text(3)))
                        .toList(),
                tasks.rows().stream()
                        .map(row -> new EntryDraft.Doing(row.id(), row.text(0), row.text(1)))
                        .toList());
    }

    /** After a first attempt to save, what is wrong is shown as it changes. */
    private void judge() {
        if (judged) {
            show(draft().check(begun));
        }
    }

    private void show(EntryDraft.Checked checked) {
        Map<String, String> problems = checked.problems();
        Words.mark(when, problems.getOrDefault("when", ""));
        measurements.mark(problems);
        joints.mark(problems);
        setUp.mark(problems);
        flights.mark(problems);
        repairs.mark(problems);
        tasks.mark(problems);
        Words.show(problem, EntryDraft.lines(checked));
    }
}
