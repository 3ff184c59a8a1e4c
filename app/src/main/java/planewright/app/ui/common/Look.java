package planewright.app.ui.common;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.awt.Font;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.UIManager;
import planewright.app.figure.FigureColours;

/** Light and dark, and the colours that components ask for by their use. */
public final class Look {
    private Look() {}

    /** Before the first component is made. */
    public static void install(boolean dark) {
        FlatLaf.registerCustomDefaultsSource("planewright.app.ui");
        set(dark);
    }

    /** Changes every window that is open. */
    public static void change(boolean dark) {
        set(dark);
        FlatLaf.updateUI();
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
