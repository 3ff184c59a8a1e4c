package planewright.app.ui.exchange;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import planewright.app.exchange.JournalArchive;
import planewright.app.exchange.JournalPages;
import planewright.app.exchange.MeasurementTable;
import planewright.app.exchange.PictureForm;
import planewright.app.exchange.Taken;
import planewright.app.exchange.Watch;
import planewright.app.journal.BuildRecord;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.Files;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.WatchedWork;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** Takes the journal, or one build, out: as an archive, as pages for a browser, as a table. */
final class TakePanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final JComboBox<TakeKind> kind = new JComboBox<>(TakeKind.values());
    private final BuildChoice build;
    private final PlaceField to;
    private final JCheckBox withLocation = new JCheckBox(Texts.TAKE_WITH_LOCATION.text());
    private final JCheckBox replace = new JCheckBox(Texts.TAKE_REPLACE.text());
    private final JTextArea what = Words.quiet(" ");
    private final JButton take = Buttons.of("take", Texts.TAKE.text(), this::take);
    private final JPanel done = new JPanel(new Stack(6));
    private final WatchedWork work;

    private enum TakeKind {
        JOURNAL(Texts.TAKE_JOURNAL, "zip"),
        PAGES(Texts.TAKE_PAGES, ""),
        MEASUREMENTS(Texts.TAKE_MEASUREMENTS, "csv");

        private final Texts word;
        private final String ending;

        TakeKind(Texts word, String ending) {
            this.word = word;
            this.ending = ending;
        }
    }

    TakePanel(Workroom room) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        this.room = room;
        work = new WatchedWork(room, "take", this::allow);
        build = new BuildChoice(room, true, this::tellWhat);
        to = new PlaceField("take-to", Texts.TAKE_TO.text(), this::choose, this::tellWhat);
        kind.setName("take-kind");
        kind.getAccessibleContext().setAccessibleName(Texts.TAKE_WHAT.text());
        kind.setRenderer(Words.choice(each -> ((TakeKind) each).word.text()));
        kind.addActionListener(event -> tellWhat());
        build.setName("take-build");
        build.getAccessibleContext().setAccessibleName(Texts.BUILD.text());
        withLocation.setName("take-with-location");
        withLocation.setOpaque(false);
        withLocation.addActionListener(event -> tellWhat());
        replace.setName("take-replace");
        replace.setOpaque(false);
        done.setOpaque(false);
        what.setName("take-what");
        add(laidOut().scrolled());
        room.onChange(this::tellWhat);
        tellWhat();
    }

    void stop() {
        work.stop();
    }

    private Column laidOut() {
        var column = new Column(10, 10);
        column.add(BringPanel.row(Texts.TAKE_WHAT.text(), kind));
        column.add(BringPanel.row(Texts.TAKE_BUILDS.text(), build));
        column.add(BringPanel.row(Texts.TAKE_TO.text(), to));
        column.add(withLocation);
        column.add(replace);
        column.add(what);
        var buttons = new JPanel(new MigLayout("insets 0", "[]"));
        buttons.setOpaque(false);
        buttons.add(take);
        column.add(buttons);
        column.add(work);
        column.add(done);
        return column;
    }

    private TakeKind kind() {
        return (TakeKind) kind.getSelectedItem();
    }

    private List<BuildRecord> builds() {
        return build.chosen().map(List::of).orElseGet(room.journal()::builds);
    }

    private Optional<Path> choose() {
        return kind() == TakeKind.PAGES
                ? Files.chooseFolder(this)
                : Files.chooseTarget(
                        this,
                        Texts.TAKE.text(),
                        build.chosen().map(BuildRecord::name).orElseGet(room.journal()::name),
                        kind().ending);
    }

    /** Says what would be written. */
    private void tellWhat() {
        int entries = builds().stream()
                .mapToInt(each -> room.journal().lines(each.id()).size())
                .sum();
        withLocation.setVisible(kind() == TakeKind.JOURNAL);
        var tells = switch (kind()) {
            case JOURNAL -> withLocation.isSelected() ? Texts.TAKE_TELLS_AS_TAKEN : Texts.TAKE_TELLS_PLAIN;
            case PAGES -> Texts.TAKE_TELLS_PAGES;
            case MEASUREMENTS -> Texts.TAKE_TELLS_TABLE;
        };
        var words = tells.text(builds().size(), entries);
        what.setText(words);
        what.getAccessibleContext().setAccessibleName(words);
        allow();
    }

    private void allow() {
        take.setEnabled(!work.isBusy() && to.place().isPresent());
        revalidate();
        repaint();
    }

    private void take() {
        done.removeAll();
        var target = to.place().orElseThrow();
        var chosen = kind();
        var form = withLocation.isSelected() ? PictureForm.AS_TAKEN : PictureForm.PLAIN;
        boolean again = replace.isSelected();
        var one = build.chosen();
        var several = builds();
        work.look(
                watch -> switch (chosen) {
                    case JOURNAL -> archive(one, form, target, again, watch);
                    case PAGES -> JournalPages.take(room.program().folder(), several, target, again, watch);
                    case MEASUREMENTS -> MeasurementTable.take(room.journal(), several, target, again, watch);
                },
                taken -> tell(taken, chosen, form, target));
    }

    private Taken archive(Optional<BuildRecord> one, PictureForm form, Path target, boolean again, Watch watch)
            throws java.io.IOException {
        var folder = room.program().folder();
        return one.isPresent()
                ? JournalArchive.take(folder, one.get(), form, target, again, watch)
                : JournalArchive.take(folder, form, target, again, watch);
    }

    private void tell(Taken taken, TakeKind chosen, PictureForm form, Path target) {
        var words = Texts.TAKEN.text(taken.things(), target);
        room.say(words);
        done.add(Words.of(words));
        if (taken.tellPlace() > 0 && chosen != TakeKind.MEASUREMENTS) {
            boolean told = chosen == TakeKind.JOURNAL && form == PictureForm.AS_TAKEN;
            done.add(Words.of((told ? Texts.TAKEN_WITH_PLACE : Texts.TAKEN_WITHOUT_PLACE).text(taken.tellPlace())));
        }
        taken.leftOut().forEach(each -> done.add(Words.quiet(each.what() + ": " + each.reason())));
    }
}
