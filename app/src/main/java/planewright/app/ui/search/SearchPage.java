package planewright.app.ui.search;

import java.awt.Cursor;
import java.awt.EventQueue;
import java.awt.Font;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.io.IOException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import planewright.app.index.Hits;
import planewright.app.index.Question;
import planewright.app.index.SearchIndex;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.JointRecord;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Beside;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.Gradually;
import planewright.app.ui.common.KeyboardKept;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Markup;
import planewright.app.ui.common.PictureTile;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Times;
import planewright.app.ui.common.WhenShown;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** What was found, each with the words in their place, and the filters that narrow it. */
public final class SearchPage extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM);
    private static final int AT_ONCE = 30;
    private static final int EXCERPTS = 4;
    private static final int BEGINNING = 200;
    private static final int PICTURE_HEIGHT = 72;
    private static final int REST_MILLIS = 150;

    private final transient Workroom room;
    private final transient Background.Latest questions;
    private final Column column = new Column(10, 10);
    private final transient Gradually gradually = new Gradually(column);
    private final JLabel told = Look.sized(new JLabel(" "), 1, Font.BOLD);
    private final FilterBar filters;
    private final Timer rest = new Timer(REST_MILLIS, event -> ask());
    private String typed = "";
    private boolean waiting;
    private int limit = AT_ONCE;

    public SearchPage(Workroom room) {
        super(new MigLayout("insets 10 6 0 10, gap 6, fill, wrap 1", "[grow,fill]", "[][][grow,fill]"));
        this.room = room;
        this.questions = room.background().latest();
        this.filters = new FilterBar(id -> buildName(room, id), () -> find(typed));
        rest.setRepeats(false);
        setName("search-page");
        told.setName("found");
        add(filters, "wmin 0");
        add(told, "wmin 0, gapleft 10, gaptop 4");
        add(column.scrolled());
        room.onChange(this::again);
        WhenShown.onHide(this, this::forget);
        room.program().onIndexing((done, all) -> EventQueue.invokeLater(() -> wait(done, all)));
    }

    /** Looks for words; the newest question counts. What is found is shown at once, counted when the typing rests. */
    public void find(String words) {
        limit = AT_ONCE;
        typed = words;
        if (words.isBlank()) {
            ask();
        } else {
            ask(SearchIndex::glance);
            rest.restart();
        }
    }

    /** Whether a filter is set, so that there is something to find without words. */
    public boolean isFiltered() {
        return !filters.filter().isNone();
    }

    private void again() {
        if (isShowing()) {
            ask();
        }
    }

    /** Nobody sees the hits: they are found anew when the page comes to the front. */
    private void forget() {
        rest.stop();
        questions.drop();
        gradually.drop();
        column.removeAll();
    }

    private interface Asking {
        Hits put(SearchIndex index, Question question) throws IOException;
    }

    private void ask() {
        rest.stop();
        ask(SearchIndex::find);
    }

    private void ask(Asking asking) {
        if (told.getText().isBlank()) {
            waiting = true;
            told.setText(Texts.SEARCHING.text());
        }
        var question = new Question(typed, filters.filter(), limit);
        questions.ask(() -> asking.put(room.program().index().join(), question), hits -> show(question, hits));
    }

    private void wait(int done, int all) {
        if (waiting) {
            told.setText(Texts.INDEXING.text(done, all));
        }
    }

    private void show(Question question, Hits hits) {
        waiting = false;
        told.setText(told(question, hits));
        if (!hits.tally().counts().isEmpty()) {
            filters.show(hits);
        }
        KeyboardKept.in(column, column, () -> fill(hits));
    }

    private void fill(Hits hits) {
        column.removeAll();
        gradually.fill(Stream.concat(
                hits.hits().stream().<Supplier<JComponent>>map(hit -> () -> card(hit, hit.entry())),
                Stream.of(hits.total() - hits.hits().size())
                        .filter(left -> left > 0)
                        .map(left -> () -> more(left))));
    }

    private static String told(Question question, Hits hits) {
        if (hits.total() == 0 && !question.filter().isNone()) {
            return Texts.FOUND_NONE_PASSES.text();
        }
        if (question.words().isBlank()) {
            return Texts.FOUND_ALL.text(hits.total());
        }
        if (!hits.tally().exact()) {
            return Texts.FOUND_AT_LEAST.text(hits.total());
        }
        return hits.total() == 0
                ? Texts.FOUND_NOTHING.text()
                : (hits.forgiving() ? Texts.FOUND_NEARLY : Texts.FOUND).text(hits.total());
    }

    private JPanel more(int left) {
        var more = new JPanel(new MigLayout("insets 0, fillx", "[center]"));
        more.setOpaque(false);
        more.add(Buttons.of("more-hits", Texts.MORE_HITS.text(left), () -> {
            limit += AT_ONCE;
            ask();
        }));
        return more;
    }

    private static String buildName(Workroom room, String id) {
        return room.journal().build(id).map(BuildRecord::name).orElse("");
    }

    private JPanel card(Hits.Hit hit, EntryRecord entry) {
        var words = new JPanel(new Stack(4));
        words.setOpaque(false);
        var build = buildName(room, entry.build());
        words.add(Look.sized(
                Words.quiet(build + "  ·  " + DAY.format(entry.at()) + "  ·  "
                        + Terms.of(entry.kind().word())),
                0.92,
                Font.PLAIN));
        var title =
                hit.excerpts().stream().filter(SearchPage::isTitle).findFirst().map(Markup::title);
        if (title.isPresent()) {
            words.add(title.get());
        } else if (!entry.title().isEmpty()) {
            words.add(Look.sized(Words.of(entry.title()), 1, Font.BOLD));
        }
        hit.excerpts().stream()
                .filter(excerpt -> !isTitle(excerpt))
                .limit(EXCERPTS)
                .forEach(excerpt -> words.add(Markup.of(
                        excerpt, hit.joint(excerpt).map(SearchPage::held).orElse(""))));
        if (hit.excerpts().isEmpty()) {
            entry.text().stream().findFirst().ifPresent(first -> words.add(Words.of(beginning(first))));
        }
        var card = new Card(new Beside(12, 0));
        card.setName("hit-" + entry.id());
        card.getAccessibleContext().setAccessibleName(build + ", " + DAY.format(entry.at()) + ", " + entry.title());
        card.add(words);
        entry.pictures().stream()
                .findFirst()
                .ifPresent(picture -> card.add(PictureTile.of(room, entry, picture, PICTURE_HEIGHT)));
        opensOn(card, entry);
        return card;
    }

    /** How long it was left alone, and how long it took to cure. */
    private static String held(JointRecord joint) {
        return Stream.of(
                        joint.handsOffUntil().map(end -> Texts.JOINT_LEFT_ALONE.text(span(joint, end))),
                        joint.fullyCured().map(end -> Texts.JOINT_CURED_AFTER.text(span(joint, end))))
                .flatMap(Optional::stream)
                .map(words -> " · " + words)
                .collect(Collectors.joining());
    }

    private static String span(JointRecord joint, LocalDateTime end) {
        return Times.span(Duration.between(joint.start(), end));
    }

    private static String beginning(String text) {
        return text.codePointCount(0, text.length()) > BEGINNING
                ? text.substring(0, text.offsetByCodePoints(0, BEGINNING)) + "…"
                : text;
    }

    private static boolean isTitle(Hits.Excerpt excerpt) {
        return excerpt.where().equals("title");
    }

    /** A click, or Enter where the card has the focus, shows the entry in its log. */
    private void opensOn(JComponent card, EntryRecord entry) {
        Runnable open = () -> room.showEntry(entry.build(), entry.id());
        card.setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        card.setFocusable(true);
        card.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "open");
        card.getActionMap().put("open", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                open.run();
            }
        });
        var click = new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                open.run();
            }
        };
        listen(card, click);
    }

    private static void listen(JComponent component, MouseAdapter click) {
        if (component instanceof PictureTile) {
            return;
        }
        component.addMouseListener(click);
        for (var child : component.getComponents()) {
            if (child instanceof JComponent inner) {
                listen(inner, click);
            }
        }
    }
}
