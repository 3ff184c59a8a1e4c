package planewright.app.ui.help;

import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;

/** What each page is for, and every key of the window. */
public final class HelpPage extends JPanel {
    private static final long serialVersionUID = 1L;

    private record Line(Texts name, Texts words) {}

    private static final List<Line> PAGES = List.of(
            new Line(Texts.BUILDS, Texts.HELP_SHELF),
            new Line(Texts.LOG, Texts.HELP_LOG),
            new Line(Texts.PICTURES, Texts.HELP_PICTURES),
            new Line(Texts.MEASUREMENTS, Texts.HELP_MEASUREMENTS),
            new Line(Texts.PARTS, Texts.HELP_PARTS),
            new Line(Texts.PLANFORM, Texts.HELP_PLANFORM),
            new Line(Texts.SET_UP_PAGE, Texts.HELP_SET_UP),
            new Line(Texts.CALCULATORS, Texts.HELP_CALCULATORS),
            new Line(Texts.BENCH, Texts.HELP_BENCH),
            new Line(Texts.TEMPLATES, Texts.HELP_TEMPLATES),
            new Line(Texts.BESIDE, Texts.HELP_COMPARE),
            new Line(Texts.EXCHANGE, Texts.HELP_EXCHANGE),
            new Line(Texts.BIN, Texts.HELP_BIN));

    /** A key of the window and what it does. */
    public record Key(String stroke, Texts words) {}

    /** Every key that works anywhere in the window. */
    public static final List<Key> KEYS = List.of(
            new Key("F1", Texts.HELP),
            new Key("ctrl F", Texts.SEARCH),
            new Key("ctrl L", Texts.HELP_KEY_CAPTURE),
            new Key("ctrl N", Texts.NEW_ENTRY),
            new Key("ctrl B", Texts.START_FROM_HINT),
            new Key("ctrl T", Texts.TEMPLATES),
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

    public HelpPage() {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        setName("help");
        var column = new Column(10, 10);
        column.add(Words.quiet(Texts.HELP_HINT.text()));
        var pages = card(Texts.HELP_PAGES);
        PAGES.forEach(line -> add(pages, line.name().text(), line.words().text()));
        column.add(pages);
        var keys = card(Texts.HELP_KEYS);
        KEYS.forEach(key -> add(keys, Buttons.keyText(key.stroke()), key.words().text()));
        IN_PLACE.forEach(
                key -> add(keys, Buttons.keyText(key.stroke()), key.words().text()));
        column.add(keys);
        var onPictures = card(Texts.HELP_KEYS_PICTURES);
        ON_PICTURES.forEach(key ->
                add(onPictures, Buttons.keyText(key.stroke()), key.words().text()));
        column.add(onPictures);
        add(column.scrolled(), "wmin 0");
    }

    private static Card card(Texts heading) {
        var card = new Card(new MigLayout("insets 0, gap 14 4, wrap 2, fillx", "[][grow,fill]"));
        card.add(Look.heading(heading.text(), 1.1), "span 2");
        return card;
    }

    private static void add(Card card, String name, String words) {
        card.add(new JLabel(name), "aligny top");
        card.add(Words.of(words), "wmin 0");
    }
}
