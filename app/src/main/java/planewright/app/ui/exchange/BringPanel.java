package planewright.app.ui.exchange;

import com.formdev.flatlaf.util.UIScale;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import planewright.app.exchange.ArchiveIntake;
import planewright.app.exchange.Brought;
import planewright.app.exchange.CsvForm;
import planewright.app.exchange.CsvMeasurements;
import planewright.app.exchange.DatedNotes;
import planewright.app.exchange.ExchangeRefused;
import planewright.app.exchange.Intake;
import planewright.app.exchange.PictureFolder;
import planewright.app.exchange.Unpacked;
import planewright.app.exchange.Watch;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.Files;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.WatchedWork;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** Brings things in: first it shows what would be written, then it writes that and nothing else. */
final class BringPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final JComboBox<BringKind> kind = new JComboBox<>(BringKind.values());
    private final JTextArea hint = Words.quiet(BringKind.PICTURES.hint());
    private final PlaceField from;
    private final BuildChoice build;
    private final JTextField day = new JTextField();
    private final PlaceField folder;
    private final CsvOptions csv = new CsvOptions(this::forget);
    private final JPanel dayRow = row(Texts.BRING_DAY.text(), day);
    private final JPanel buildRow;
    private final JPanel folderRow;
    private final JPanel seen = new JPanel(new Stack(8));
    private final JButton look = Buttons.of("bring-look", Texts.LOOK.text(), this::look);
    private final JButton bring = Buttons.of("bring", Texts.BRING.text(), this::bring);
    private final JButton undo;
    private final WatchedWork work;
    private final transient Background.Latest undoable;
    private transient Optional<Intake> intake = Optional.empty();
    private transient Runnable dropLook = () -> {};
    /** What was brought in last, as long as it is shown. */
    private transient Optional<Edit> broughtIn = Optional.empty();

    private record Written(Brought told, Optional<Edit> edit) {}

    /** A table as far as it can be understood. */
    private record SeenTable(List<String> headers, Optional<Intake> intake, String problem) {}

    BringPanel(Workroom room) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        this.room = room;
        work = new WatchedWork(room, "bring", this::allow);
        undoable = room.background().latest();
        undo = Buttons.plain("bring-undo", Texts.UNDO.text(), this::undo);
        from = new PlaceField("bring-from", Texts.BRING_FROM.text(), this::choose, this::forget);
        folder =
                new PlaceField("bring-folder", Texts.BRING_FOLDER.text(), () -> Files.chooseFolder(this), this::forget);
        build = new BuildChoice(room, false, this::forget);
        buildRow = row(Texts.BRING_INTO.text(), build);
        folderRow = row(Texts.BRING_FOLDER.text(), folder);
        kind.setName("bring-kind");
        kind.getAccessibleContext().setAccessibleName(Texts.BRING_WHAT.text());
        kind.setRenderer(Words.choice(each -> ((BringKind) each).word()));
        kind.addActionListener(event -> changeKind());
        build.setName("bring-build");
        build.getAccessibleContext().setAccessibleName(Texts.BRING_INTO.text());
        day.setName("bring-day");
        day.getAccessibleContext().setAccessibleName(Texts.BRING_DAY.text());
        day.putClientProperty("JTextField.placeholderText", Texts.BRING_DAY_HINT.text());
        Buttons.onEdit(day, this::forget);
        seen.setOpaque(false);
        add(laidOut().scrolled());
        changeKind();
        room.onChange(this::offerUndo);
    }

    void stop() {
        work.stop();
    }

    private Column laidOut() {
        var column = new Column(10, 10);
        column.add(row(Texts.BRING_WHAT.text(), kind));
        column.add(hint);
        column.add(row(Texts.BRING_FROM.text(), from));
        column.add(buildRow);
        column.add(dayRow);
        column.add(folderRow);
        column.add(csv);
        var buttons = new JPanel(new MigLayout("insets 0", "[][][]"));
        buttons.setOpaque(false);
        buttons.add(look);
        buttons.add(bring);
        buttons.add(undo, "hidemode 3");
        undo.setVisible(false);
        column.add(buttons);
        column.add(work);
        column.add(seen);
        return column;
    }

    static JPanel row(String label, javax.swing.JComponent field) {
        var row = new JPanel(new MigLayout("insets 0, fillx", "[" + UIScale.scale(220) + "!,left][grow,fill]"));
        row.setOpaque(false);
        var words = new javax.swing.JLabel(label);
        words.setLabelFor(field);
        row.add(words);
        row.add(field, "wmin 60");
        return row;
    }

    private BringKind kind() {
        return (BringKind) kind.getSelectedItem();
    }

    private void changeKind() {
        hint.setText(kind().hint());
        hint.getAccessibleContext().setAccessibleName(kind().hint());
        dayRow.setVisible(kind() == BringKind.PICTURES);
        csv.setVisible(kind() == BringKind.MEASUREMENTS);
        buildRow.setVisible(kind() != BringKind.JOURNAL);
        folderRow.setVisible(kind() == BringKind.JOURNAL);
        look.setVisible(kind() != BringKind.JOURNAL);
        forget();
    }

    private Optional<Path> choose() {
        return switch (kind()) {
            case PICTURES -> Files.chooseFolder(this);
            case MEASUREMENTS -> Files.chooseFile(this, "csv", "txt");
            case NOTES -> Files.chooseFileOrFolder(this);
            case JOURNAL -> Files.chooseFile(this, "zip");
        };
    }

    /** What was looked at is no longer what is asked for. */
    private void forget() {
        dropLook.run();
        intake = Optional.empty();
        seen.removeAll();
        withdrawUndo();
        work.say("");
        allow();
    }

    private void allow() {
        boolean said = from.place().isPresent();
        look.setEnabled(!work.isBusy() && said && build.chosen().isPresent());
        bring.setEnabled(!work.isBusy()
                && (kind() == BringKind.JOURNAL
                        ? said && folder.place().isPresent()
                        : intake.filter(found -> !found.rows().isEmpty() && mayWrite(found))
                                .isPresent()));
        revalidate();
        repaint();
    }

    private boolean mayWrite(Intake found) {
        return kind() != BringKind.MEASUREMENTS || found.leftOut().isEmpty() || csv.skipsBad();
    }

    private void look() {
        var place = from.place().orElseThrow();
        var into = build.chosen().orElseThrow();
        seen.removeAll();
        try {
            switch (kind()) {
                case PICTURES -> dropLook = lookAtPictures(place, into);
                case MEASUREMENTS -> dropLook = lookAtTable(place, into);
                default ->
                    dropLook = work.look(watch -> DatedNotes.look(room.journal(), into, place, watch), this::show);
            }
        } catch (IllegalArgumentException wrong) {
            work.say(wrong.getLocalizedMessage());
        }
    }

    private Runnable lookAtPictures(Path place, BuildRecord into) {
        var otherwise = day();
        var now = room.now();
        return work.look(
                watch -> PictureFolder.look(room.program().folder(), into, place, otherwise, now, watch), this::show);
    }

    private Optional<LocalDate> day() {
        var typed = day.getText().strip();
        try {
            return typed.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(typed));
        } catch (DateTimeException wrong) {
            throw new IllegalArgumentException(Texts.BRING_DAY_WRONG.text(typed), wrong);
        }
    }

    private Runnable lookAtTable(Path place, BuildRecord into) {
        var form = csv.form();
        return work.look(watch -> table(place, into, form, watch), table -> {
            csv.show(table.headers());
            table.intake().ifPresent(this::show);
            work.say(table.problem());
        });
    }

    private SeenTable table(Path place, BuildRecord into, CsvForm form, Watch watch) throws java.io.IOException {
        var headers = CsvMeasurements.headers(place, form.separator());
        var builds = CsvMeasurements.buildsOf(room.journal(), Optional.of(into));
        try {
            var found = CsvMeasurements.look(room.journal(), place, form, builds, watch);
            return new SeenTable(headers, Optional.of(found), "");
        } catch (ExchangeRefused refused) {
            return new SeenTable(headers, Optional.empty(), refused.getLocalizedMessage());
        }
    }

    private void show(Intake found) {
        intake = Optional.of(found);
        seen.add(new IntakePreview(
                found, id -> room.journal().build(id).map(BuildRecord::name).orElse("")));
    }

    private void bring() {
        if (kind() == BringKind.JOURNAL) {
            var archive = from.place().orElseThrow();
            var target = folder.place().orElseThrow();
            work.look(
                    watch -> ArchiveIntake.bring(archive, target, room.program().user(), watch),
                    done -> unpacked(done, target));
        } else {
            var looked = intake.orElseThrow();
            work.write(watch -> new Written(looked.write(watch), room.journal().lastDone()), this::brought);
        }
    }

    private void brought(Written written) {
        forget();
        var words = Texts.BROUGHT.text(written.told().things(), written.told().entries());
        seen.add(Words.of(words));
        broughtIn = written.edit();
        offerUndo();
        room.say(words);
    }

    /** What was brought in is taken back here as long as it is the journal's last edit. */
    private void offerUndo() {
        broughtIn.ifPresent(edit -> undoable.ask(
                () -> room.journal().lastDone().filter(edit::equals).isPresent(), undo::setVisible));
    }

    private void withdrawUndo() {
        broughtIn = Optional.empty();
        undoable.drop();
        undo.setVisible(false);
    }

    private void undo() {
        broughtIn.ifPresent(room::undo);
        withdrawUndo();
        seen.removeAll();
        allow();
    }

    private void unpacked(Unpacked done, Path target) {
        seen.removeAll();
        seen.add(Words.of(Texts.UNPACKED.text(done.name(), done.builds(), done.entries(), target)));
        Stream.of(done.wrong(), done.leftOut())
                .flatMap(List::stream)
                .forEach(each -> seen.add(Words.quiet(each.what() + ": " + each.reason())));
    }
}
