package planewright.app.ui.common;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import javax.swing.Icon;
import javax.swing.JMenuItem;
import javax.swing.UIManager;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.swing.FontIcon;

/**
 * The signs on controls, one for each meaning. They stand beside words, or alone where a control has a name for those who cannot
 * see it; their colour is that of the words, their size follows the text's.
 */
public enum Icons implements Icon {
    ACROSS(Feather.TRENDING_UP),
    ADD(Feather.PLUS),
    AS_TAKEN(Feather.DOWNLOAD),
    BENCH(Feather.CLOCK),
    BIN(Feather.TRASH),
    CALCULATORS(Feather.PERCENT),
    COMPARE(Feather.COLUMNS),
    COPY(Feather.COPY),
    EDIT(Feather.EDIT_2),
    ENTRY(Feather.CORNER_UP_RIGHT),
    EXCHANGE(Feather.REPEAT),
    FIT(Feather.MAXIMIZE),
    GRID(Feather.GRID),
    HELP(Feather.HELP_CIRCLE),
    JOURNALS(Feather.BOOK),
    KEYS(Feather.COMMAND),
    LOG(Feather.BOOK_OPEN),
    MEASURE(Feather.CROSSHAIR),
    MEASUREMENTS(Feather.THERMOMETER),
    NEXT(Feather.CHEVRON_RIGHT),
    NOTICES(Feather.INFO),
    PARTS(Feather.PACKAGE),
    PICTURES(Feather.IMAGE),
    PLANFORM(Feather.NAVIGATION_2),
    PREVIOUS(Feather.CHEVRON_LEFT),
    PRINT(Feather.PRINTER),
    REDO(Feather.CORNER_UP_RIGHT),
    REMOVE(Feather.TRASH_2),
    SAVE(Feather.SAVE),
    SEARCH(Feather.SEARCH),
    SET_UP(Feather.SLIDERS),
    TEMPLATES(Feather.LAYERS),
    TURN_LEFT(Feather.ROTATE_CCW),
    TURN_RIGHT(Feather.ROTATE_CW),
    UNDO(Feather.CORNER_UP_LEFT),
    VIEW(Feather.EYE);

    private static final float TO_TEXT = 1.2f;

    private final Feather sign;
    private FontIcon drawn;

    Icons(Feather sign) {
        this.sign = sign;
    }

    /** Has the signs read by the time it returns, so that whoever may not wait for a file can draw them afterwards. */
    public static void prepare() {
        FontIcon.of(Feather.PLUS);
    }

    @Override
    public void paintIcon(Component on, Graphics g, int x, int y) {
        var icon = drawn();
        icon.setIconColor(ink(on));
        icon.paintIcon(on, g, x, y);
    }

    @Override
    public int getIconWidth() {
        return size();
    }

    @Override
    public int getIconHeight() {
        return size();
    }

    private FontIcon drawn() {
        if (drawn == null) {
            drawn = FontIcon.of(sign);
        }
        if (drawn.getIconSize() != size()) {
            drawn.setIconSize(size());
        }
        return drawn;
    }

    private static int size() {
        return Math.round(UIManager.getFont("Label.font").getSize2D() * TO_TEXT);
    }

    private static Color ink(Component on) {
        if (!on.isEnabled()) {
            return UIManager.getColor("Label.disabledForeground");
        }
        return on instanceof JMenuItem item && item.getModel().isArmed()
                ? UIManager.getColor("MenuItem.selectionForeground")
                : on.getForeground();
    }
}
