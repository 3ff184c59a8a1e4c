package planewright.app.ui.notices;

import java.awt.Font;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import planewright.app.calc.PluginProblem;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** Files that were set aside, plugins that cannot be used, and what went wrong since the window was opened. */
public final class NoticesPage extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final transient IntConsumer counted;
    private final Column column = new Column(10, 10);
    private transient List<PluginProblem> plugins = List.of();

    /**
     * @param counted hears how many there are
     */
    public NoticesPage(Workroom room, IntConsumer counted) {
        super(new MigLayout("insets 10 6 0 10, fill", "[grow,fill]", "[grow,fill]"));
        this.room = room;
        this.counted = counted;
        setName("notices");
        add(column.scrolled());
        room.onChange(this::fill);
        room.background().run(() -> room.program().plugins().join().problems(), problems -> {
            plugins = problems;
            fill();
        });
        fill();
    }

    private void fill() {
        column.removeAll();
        column.add(Look.heading(Texts.NOTICES_PAGE.text(), 1.3));
        var readOnly = room.program().folder().readOnly();
        readOnly.ifPresent(reason -> notice(Texts.NOTICE_READ_ONLY.text(), reason, ""));
        var aside = room.program().folder().setAside();
        aside.forEach(file -> notice(file.file().toString(), file.reason(), Texts.NOTICE_FILE.text()));
        var clashes = room.program().folder().clashes();
        clashes.forEach(
                clash -> notice(clash.file().toString(), Texts.CLASH.text(String.join(", ", clash.fields())), ""));
        plugins.forEach(plugin -> notice(plugin.file().toString(), plugin.reason(), Texts.NOTICE_PLUGIN.text()));
        room.failures().forEach(failure -> notice(Texts.NOTICE_FAILURE.text(), failure, ""));
        int count = (readOnly.isPresent() ? 1 : 0)
                + aside.size()
                + clashes.size()
                + plugins.size()
                + room.failures().size();
        if (count == 0) {
            column.add(Words.quiet(Texts.NO_NOTICES.text()));
        }
        counted.accept(count);
        column.revalidate();
        column.repaint();
    }

    private void notice(String thing, String reason, String wayOut) {
        var card = new Card(new Stack(4));
        card.add(Look.sized(new JLabel(thing), 1, Font.BOLD));
        card.add(Words.of(reason));
        if (!wayOut.isEmpty()) {
            card.add(Words.quiet(wayOut));
        }
        column.add(card);
    }
}
