package planewright.app.ui;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.KeyStroke;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.LookChoice;
import planewright.app.ui.common.SystemLook;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Workroom;

/** Light or dark, and how large words are: the whole window follows at once, and it is remembered. */
final class ViewMenu {
    private static final String LARGER = "ctrl PLUS";
    private static final String SMALLER = "ctrl MINUS";
    private static final String USUAL = "ctrl 0";

    /** On keyboards where the plus needs Shift, and on the block of digits. */
    private static final Map<String, List<String>> SAME = Map.of(
            LARGER, List.of("ctrl EQUALS", "ctrl shift EQUALS", "ctrl ADD"),
            SMALLER, List.of("ctrl SUBTRACT"),
            USUAL, List.of("ctrl NUMPAD0"));

    private final Workroom room;
    private final JButton button;

    ViewMenu(Workroom room) {
        this.room = room;
        button = Buttons.asSign(Icons.VIEW, Buttons.plain("view", Texts.VIEW.text(), this::open));
        button.setToolTipText(Texts.VIEW_HINT.text());
    }

    JButton button() {
        return button;
    }

    /** Makes the keys for larger and smaller words work anywhere in the window. */
    void keys(JComponent root) {
        key(root, LARGER, this::larger);
        key(root, SMALLER, this::smaller);
        key(root, USUAL, this::usual);
    }

    /** Where the window is to be as the system, looks how that is now. */
    void followSystem() {
        if (room.memory().look() == LookChoice.AS_SYSTEM) {
            room.background().run(SystemLook::isDark, dark -> {
                if (room.memory().look() == LookChoice.AS_SYSTEM && dark != Look.isDark()) {
                    room.memory().setSystemDark(dark);
                    change(Look.style().dark(dark));
                }
            });
        }
    }

    private static void key(JComponent root, String stroke, Runnable action) {
        Buttons.key(root, stroke, action);
        for (var same : SAME.get(stroke)) {
            root.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(same), stroke);
        }
    }

    private void open() {
        var menu = new JPopupMenu();
        var group = new ButtonGroup();
        names().forEach((choice, words) -> {
            var item = new JRadioButtonMenuItem(
                    words.text(), choice == room.memory().look());
            item.setName("look-" + choice);
            item.addActionListener(event -> choose(choice));
            group.add(item);
            menu.add(item);
        });
        menu.addSeparator();
        menu.add(item("text-larger", Texts.TEXT_LARGER, LARGER, this::larger));
        menu.add(item("text-smaller", Texts.TEXT_SMALLER, SMALLER, this::smaller));
        menu.add(item("text-usual", Texts.TEXT_USUAL, USUAL, this::usual));
        menu.show(button, button.getWidth() - menu.getPreferredSize().width, button.getHeight());
    }

    private static Map<LookChoice, Texts> names() {
        return new EnumMap<>(Map.of(
                LookChoice.AS_SYSTEM, Texts.AS_SYSTEM,
                LookChoice.LIGHT, Texts.LIGHT,
                LookChoice.DARK, Texts.DARK));
    }

    private static JMenuItem item(String name, Texts words, String stroke, Runnable action) {
        var item = new JMenuItem(words.text());
        item.setName(name);
        item.setAccelerator(KeyStroke.getKeyStroke(stroke));
        item.addActionListener(event -> action.run());
        return item;
    }

    private void choose(LookChoice choice) {
        room.memory().setLook(choice);
        change(room.memory().style());
        followSystem();
    }

    private void larger() {
        size(Look.style().larger());
    }

    private void smaller() {
        size(Look.style().smaller());
    }

    private void usual() {
        size(Look.style().usual());
    }

    private void size(Look.Style wanted) {
        room.memory().setTextSize(wanted.percent());
        change(wanted);
        room.say(Texts.TEXT_SIZE.text(wanted.percent()));
    }

    private void change(Look.Style wanted) {
        if (!wanted.equals(Look.style())) {
            Look.change(wanted);
        }
        room.remembered();
    }
}
