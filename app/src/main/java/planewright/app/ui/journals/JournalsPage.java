package planewright.app.ui.journals;

import java.awt.Font;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import planewright.app.ui.common.Beside;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.Files;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;

/** The journals that were open before, one to open, and a new one to begin. */
public final class JournalsPage extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient RecentJournals recent;
    private final transient Opener opener;
    private final Column column = new Column(10, 10);
    private final JTextField name = new JTextField(20);
    private final JTextArea problem = Words.problem();
    private transient Optional<Path> open = Optional.empty();

    /** Opens journals. */
    public interface Opener {
        /** Opens the journal in a folder. */
        void open(Path journal);

        /** Begins a journal in an empty folder and opens it. */
        void begin(Path folder, String name);

        /** Keeps the list of recent journals on disk. */
        void remember();
    }

    public JournalsPage(RecentJournals recent, Opener opener) {
        super(new MigLayout("insets 10 6 0 10, gap 6, fill, wrap 1", "[grow,fill]", "[grow,fill]"));
        this.recent = recent;
        this.opener = opener;
        setName("journals");
        problem.setName("journals-problem");
        Words.named(Look.kept(name), Texts.JOURNAL_NAME.text(), "new-journal-name");
        Buttons.onEdit(name, () -> Words.show(problem, ""));
        add(column.scrolled(), "wmin 0");
    }

    /** Shows what there is to choose from. */
    public void show(Optional<Path> now) {
        open = now.map(path -> path.toAbsolutePath().normalize());
        Words.show(problem, "");
        fill();
    }

    /** Says why a journal was not opened. */
    public void refuse(String words) {
        Words.show(problem, words);
        revalidate();
    }

    private void fill() {
        column.removeAll();
        column.add(Look.heading(Texts.JOURNALS.text(), 1.3));
        column.add(Words.quiet((recent.all().isEmpty() ? Texts.JOURNALS_FIRST : Texts.JOURNALS_HINT).text()));
        column.add(problem);
        column.add(beginning());
        recent.all().forEach(journal -> column.add(card(journal)));
        column.revalidate();
        column.repaint();
    }

    private Card beginning() {
        var card = new Card(new MigLayout("insets 0, gap 8, fillx", "[120:280:,fill][]8:push[]"));
        card.setName("new-journal");
        card.add(name);
        card.add(Buttons.of("begin-journal", Texts.JOURNAL_BEGIN.text(), this::begin));
        card.add(Buttons.of(
                "open-journal",
                Texts.JOURNAL_OPEN_OTHER.text(),
                () -> Files.chooseFolder(this).ifPresent(opener::open)));
        return card;
    }

    private void begin() {
        var called = name.getText().strip();
        if (called.isEmpty()) {
            refuse(Texts.JOURNAL_NAME_NEEDED.text());
            name.requestFocusInWindow();
        } else {
            Files.chooseFolder(this).ifPresent(folder -> opener.begin(folder, called));
        }
    }

    private Card card(Path journal) {
        var words = new JPanel(new Stack(2));
        words.setOpaque(false);
        words.add(Look.sized(Words.of(recent.name(journal)), 1.1, Font.BOLD));
        words.add(Words.quiet(journal.toString()));
        var card = new Card(new Beside(8, 0));
        card.setName("journal-" + journal.getFileName());
        card.add(words);
        if (open.filter(journal::equals).isPresent()) {
            card.setMarked(true);
            card.add(Words.quiet(Texts.JOURNAL_IS_OPEN.text()));
        } else {
            card.add(named(Buttons.of("open-recent", Texts.JOURNAL_OPEN.text(), () -> opener.open(journal)), journal));
            card.add(named(
                    Buttons.plain("forget-recent", Texts.JOURNAL_FORGET.text(), () -> {
                        recent.forget(journal);
                        opener.remember();
                        fill();
                    }),
                    journal));
        }
        return card;
    }

    private JButton named(JButton button, Path journal) {
        button.getAccessibleContext().setAccessibleName(button.getText() + " " + recent.name(journal));
        return button;
    }
}
