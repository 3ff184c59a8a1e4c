package planewright.app.ui.bin;

import java.awt.Font;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.store.Binned;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Beside;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.KeyboardKept;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** Deleted entries and builds: each can be brought back, or thrown away for good. */
public final class BinPage extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT);

    private final transient Workroom room;
    private final transient Background.Latest questions;
    private final Column column = new Column(10, 10);

    public BinPage(Workroom room) {
        super(new MigLayout("insets 10 6 0 10, fill", "[grow,fill]", "[grow,fill]"));
        this.room = room;
        this.questions = room.background().latest();
        setName("bin");
        add(column.scrolled());
        room.onChange(() -> {
            if (isShowing()) {
                refresh();
            }
        });
    }

    /** Looks into the bin anew. */
    public void refresh() {
        questions.ask(() -> room.program().folder().binned(), this::show);
    }

    private void show(List<Binned> deleted) {
        KeyboardKept.in(column, column, () -> fill(deleted));
        column.revalidate();
        column.repaint();
    }

    private void fill(List<Binned> deleted) {
        column.removeAll();
        column.add(Look.heading(Texts.BIN.text(), 1.3));
        column.add(Words.quiet(deleted.isEmpty() ? Texts.BIN_EMPTY.text() : Texts.BIN_HINT.text()));
        deleted.forEach(each -> column.add(card(each)));
    }

    private Card card(Binned deleted) {
        var words = new JPanel(new Stack(3));
        words.setOpaque(false);
        words.add(Look.sized(Words.of(title(deleted)), 1.1, Font.BOLD));
        words.add(Words.quiet(origin(deleted)));
        var card = new Card(new Beside(6, 0));
        card.setName("binned-" + deleted.record().id());
        card.add(words);
        card.add(Buttons.of("restore", Texts.RESTORE.text(), () -> restore(deleted)));
        card.add(Buttons.plain("throw-away", Texts.THROW_AWAY.text(), () -> throwAway(deleted)));
        return card;
    }

    private static String title(Binned deleted) {
        return deleted.name().orElseGet(() -> Terms.of(deleted.word()));
    }

    private String origin(Binned deleted) {
        var when = WHEN.format(LocalDateTime.ofInstant(
                deleted.deleted(), room.program().clock().getZone()));
        if (deleted.record() instanceof EntryRecord entry) {
            var build =
                    room.journal().build(entry.build()).map(BuildRecord::name).orElse("");
            return Texts.BINNED_ENTRY.text(build, WHEN.format(entry.at()), when);
        }
        return Texts.BINNED_RECORD.text(Terms.of(deleted.kind()), when);
    }

    private void restore(Binned deleted) {
        room.edit(Edit.add(Texts.RESTORE_EDIT.text(title(deleted)), deleted.record()), this::refresh);
    }

    /** The one thing that cannot be undone, so the one that asks. */
    private void throwAway(Binned deleted) {
        Object[] choices = {Texts.BACK.text(), Texts.THROW_AWAY.text()};
        int chosen = JOptionPane.showOptionDialog(
                this,
                Texts.THROW_AWAY_ASK.text(title(deleted)),
                Texts.PRODUCT.text(),
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.WARNING_MESSAGE,
                null,
                choices,
                choices[0]);
        if (chosen == 1) {
            room.background()
                    .run(
                            () -> {
                                room.program().folder().forget(deleted);
                                return deleted;
                            },
                            gone -> {
                                room.say(Texts.THROWN_AWAY.text(title(gone)));
                                refresh();
                            });
        }
    }
}
