package planewright.app.ui.common;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.awt.Font;
import java.util.Collections;
import java.util.Set;
import java.util.WeakHashMap;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import planewright.app.figure.FigureColours;

/** Light and dark, and the colours that components ask for by their use. */
public final class Look {
    /** Components that are taken out of their window and put back later. */
    private static final Set<JComponent> KEPT = Collections.newSetFromMap(new WeakHashMap<>());

    private Look() {}

    /** Before the first component is made. */
    public static void install(boolean dark) {
        FlatLaf.registerCustomDefaultsSource("planewright.app.ui");
        set(dark);
    }

    /** Changes every window that is open, and what waits outside of them to be shown again. */
    public static void change(boolean dark) {
        set(dark);
        FlatLaf.updateUI();
        KEPT.stream()
                .filter(each -> SwingUtilities.getWindowAncestor(each) == null)
                .forEach(SwingUtilities::updateComponentTreeUI);
    }

    /** Has a component follow the look also while it belongs to no window. */
    public static <T extends JComponent> T kept(T component) {
        KEPT.add(component);
        return component;
    }

    public static boolean isDark() {
        return FlatLaf.isLafDark();
    }

    /** A colour of the properties files beside this package's parent: {@code quiet}, {@code line}, {@code mark}, … */
    public static Color colour(String use) {
        return UIManager.getColor("Planewright." + use);
    }

    /** Charts and drawings in the window's colours. */
    public static FigureColours figures() {
        return new FigureColours(
                colour("card"),
                UIManager.getColor("Label.foreground"),
                colour("quiet"),
                UIManager.getColor("Component.accentColor"),
                colour("second"),
                UIManager.getFont("Label.font"));
    }

    /** A label larger or smaller than text; the size follows the system's. */
    public static <T extends JComponent> T sized(T component, double factor, int style) {
        var font = UIManager.getFont("Label.font");
        component.setFont(font.deriveFont(style, (float) (font.getSize2D() * factor)));
        return component;
    }

    /** Words that matter less. */
    public static JLabel quiet(String text) {
        var label = new JLabel(text) {
            private static final long serialVersionUID = 1L;

            @Override
            public void updateUI() {
                super.updateUI();
                setForeground(colour("quiet"));
            }
        };
        label.setForeground(colour("quiet"));
        return label;
    }

    /** A heading. */
    public static JLabel heading(String text, double factor) {
        return sized(new JLabel(text), factor, Font.BOLD);
    }

    private static void set(boolean dark) {
        if (dark) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
    }
}
