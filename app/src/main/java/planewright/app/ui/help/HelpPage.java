package planewright.app.ui.help;

import java.awt.Component;
import java.awt.Rectangle;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Markup;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** The guide, a chapter for each page, and every key of the window. */
public final class HelpPage extends JPanel {
    private static final long serialVersionUID = 1L;

    /** A key of the window and what it does. */
    public record Key(String stroke, Texts words) {}

    /** Every key that works anywhere in the window. */
    public static final List<Key> KEYS = List.of(
            new Key("F1", Texts.HELP),
            new Key("ctrl 1", Texts.LOG),
            new Key("ctrl 2", Texts.PICTURES),
            new Key("ctrl 3", Texts.MEASUREMENTS),
            new Key("ctrl 4", Texts.PARTS),
            new Key("ctrl 5", Texts.PLANFORM),
            new Key("ctrl 6", Texts.SET_UP_PAGE),
            new Key("ctrl 7", Texts.CALCULATORS),
            new Key("ctrl J", Texts.BENCH_BUTTON_HINT),
            new Key("ctrl F", Texts.SEARCH),
            new Key("ctrl L", Texts.HELP_KEY_CAPTURE),
            new Key("ctrl N", Texts.NEW_ENTRY),
            new Key("ctrl B", Texts.START_FROM_HINT),
            new Key("ctrl T", Texts.TEMPLATES),
            new Key("ctrl shift B", Texts.ACROSS),
            new Key("ctrl O", Texts.JOURNALS_BUTTON_HINT),
            new Key("ctrl Z", Texts.UNDO_HINT),
            new Key("ctrl Y", Texts.REDO_HINT),
            new Key("ctrl P", Texts.PRINT_LOG),
            new Key("ctrl PLUS", Texts.TEXT_LARGER),
            new Key("ctrl MINUS", Texts.TEXT_SMALLER),
            new Key("ctrl 0", Texts.TEXT_USUAL),
            new Key("ESCAPE", Texts.HELP_KEY_ESCAPE));

    private static final List<Key> IN_PLACE = List.of(
            new Key("TAB", Texts.HELP_KEY_TAB),
            new Key("ENTER", Texts.HELP_KEY_ENTER),
            new Key(Buttons.SAVE, Texts.HELP_KEY_SAVE),
            new Key("DOWN", Texts.HELP_KEY_COMPLETION),
            new Key("shift F10", Texts.HELP_KEY_MENU));

    private static final List<Key> ON_PICTURES = List.of(
            new Key("F2", Texts.EDIT_CAPTION),
            new Key("LEFT", Texts.PREVIOUS),
            new Key("RIGHT", Texts.NEXT),
            new Key("PLUS", Texts.ZOOM_IN),
            new Key("MINUS", Texts.ZOOM_OUT),
            new Key("0", Texts.FIT_HINT),
            new Key("1", Texts.ONE_TO_ONE_HINT),
            new Key("R", Texts.TURN_RIGHT),
            new Key("ctrl LEFT", Texts.HELP_KEY_MOVE),
            new Key("SPACE", Texts.HELP_KEY_MARK));

    private final transient Workroom room;
    private final transient Background.Latest reading;
    private final JList<Page> pages = new JList<>();
    private final Column column = new Column(10, 10);
    private transient Optional<Chapter> wanted = Optional.of(Chapter.SHELF);
    private transient Look.Style style = Look.style();

    /** A row of the list: a chapter, or the keys, which stand behind them all. */
    private record Page(Optional<Chapter> chapter, String title) {}

    public HelpPage(Workroom room) {
        super(new MigLayout("insets 10, gap 8, fill", "[shrink 0,fill][grow,fill]", "[grow,fill]"));
        this.room = room;
        reading = room.background().latest();
        setName("help");
        pages.setName("chapters");
        pages.getAccessibleContext().setAccessibleName(Texts.HELP_PAGES.text());
        pages.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        pages.setCellRenderer(new Row());
        pages.addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting() && pages.getSelectedValue() != null) {
                wanted = pages.getSelectedValue().chapter();
                read();
            }
        });
        add(
                new JScrollPane(
                        pages,
                        ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS,
                        ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER),
                "wmin 0, wmax 280");
        add(column.scrolled(), "wmin 0");
        room.background().run(HelpPage::titles, this::list);
        room.onChange(this::follow);
    }

    /** Brings a chapter to the front. */
    public void show(Chapter chapter) {
        wanted = Optional.of(chapter);
        choose();
    }

    private static List<Page> titles() throws IOException {
        var titles = new ArrayList<Page>();
        for (var chapter : Chapter.values()) {
            titles.add(new Page(Optional.of(chapter), Guide.title(chapter, Locale.getDefault())));
        }
        titles.add(new Page(Optional.empty(), Texts.HELP_KEYS.text()));
        return titles;
    }

    private void list(List<Page> titles) {
        pages.setListData(titles.toArray(Page[]::new));
        revalidate();
        choose();
    }

    private void choose() {
        for (int i = 0; i < pages.getModel().getSize(); i++) {
            if (pages.getModel().getElementAt(i).chapter().equals(wanted)) {
                pages.setSelectedIndex(i);
                pages.ensureIndexIsVisible(i);
            }
        }
    }

    private void follow() {
        if (!style.equals(Look.style())) {
            style = Look.style();
            read();
        }
    }

    private void read() {
        wanted.ifPresentOrElse(
                chapter -> reading.ask(() -> Guide.read(chapter, Locale.getDefault()), this::fill), () -> {
                    reading.drop();
                    fillKeys();
                });
    }

    private void fill(Guide guide) {
        column.removeAll();
        column.add(Look.heading(guide.title(), 1.4));
        for (var piece : guide.pieces()) {
            column.add(piece.picture()
                    .<JComponent>map(picture -> new GuidePicture(picture, piece.words()))
                    .orElseGet(() -> Markup.of(List.of(piece.words()))));
        }
        shown();
    }

    private void fillKeys() {
        column.removeAll();
        var keys = card(Texts.HELP_KEYS);
        KEYS.forEach(key -> add(keys, key));
        IN_PLACE.forEach(key -> add(keys, key));
        column.add(keys);
        var onPictures = card(Texts.HELP_KEYS_PICTURES);
        ON_PICTURES.forEach(key -> add(onPictures, key));
        column.add(onPictures);
        shown();
    }

    private void shown() {
        column.revalidate();
        column.repaint();
        column.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
    }

    private static Card card(Texts heading) {
        var card = new Card(new MigLayout("insets 0, gap 14 4, wrap 2, fillx", "[][grow,fill]"));
        card.add(Look.heading(heading.text(), 1.1), "span 2");
        return card;
    }

    private static void add(Card card, Key key) {
        card.add(new JLabel(Buttons.keyText(key.stroke())), "aligny top");
        card.add(Words.of(key.words().text()), "wmin 0");
    }

    /** A chapter's sign and title. */
    private static final class Row extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object page, int index, boolean selected, boolean focused) {
            super.getListCellRendererComponent(list, ((Page) page).title(), index, selected, focused);
            setIcon(((Page) page).chapter().map(Chapter::sign).orElse(Icons.KEYS));
            setBorder(BorderFactory.createEmptyBorder(4, 6, 4, 6));
            return this;
        }
    }
}
