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
import javax.swing.plaf.FontUIResource;
import planewright.app.figure.FigureColours;

/** Light and dark, how large words are, and the colours that components ask for by their use. */
public final class Look {
    /** Components that are taken out of their window and put back later. */
    private static final Set<JComponent> KEPT = Collections.newSetFromMap(new WeakHashMap<>());

    private static final String SIZE = "planewright.size";
    private static final String FONT = "defaultFont";
    private static Style style = new Style(false, Style.USUAL);

    private Look() {}

    /**
     * How the window looks.
     *
     * @param dark dark, else light
     * @param percent how large words are beside what the system has them, 80 to 200
     */
    public record Style(boolean dark, int percent) {
        /** As large as the system has them. */
        public static final int USUAL = 100;

        private static final int STEP = 10;
        private static final int LEAST = 80;
        private static final int MOST = 200;

        public Style {
            percent = Math.max(LEAST, Math.min(MOST, percent));
        }

        public Style larger() {
            return new Style(dark, percent + STEP);
        }

        public Style smaller() {
            return new Style(dark, percent - STEP);
        }

        public Style usual() {
            return new Style(dark, USUAL);
        }

        public Style dark(boolean changed) {
            return new Style(changed, percent);
        }
    }

    private record Size(double factor, int style) {}

    /** Before the first component is made. */
    public static void install(Style wanted) {
        FlatLaf.registerCustomDefaultsSource("planewright.app.ui");
        set(wanted);
    }

    /** Changes every window that is open, and soon what waits behind or outside of them to be shown again. */
    public static void change(Style wanted) {
        set(wanted);
        LookChange.begin(KEPT.stream()
                .filter(each -> SwingUtilities.getWindowAncestor(each) == null)
                .toList());
    }

    /** Has a component follow the look also while it belongs to no window. */
    public static <T extends JComponent> T kept(T component) {
        KEPT.add(component);
        return component;
    }

    /** How the window looks now. */
    public static Style style() {
        return style;
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

    /** Larger or smaller than text; follows when the size of text is changed. */
    public static <T extends JComponent> T sized(T component, double factor, int style) {
        if (component.getClientProperty(SIZE) == null) {
            component.addPropertyChangeListener("UI", event -> fit(component));
        }
        component.putClientProperty(SIZE, new Size(factor, style));
        fit(component);
        return component;
    }

    private static void fit(JComponent component) {
        if (component.getClientProperty(SIZE) instanceof Size size) {
            var font = UIManager.getFont("Label.font");
            component.setFont(font.deriveFont(size.style(), (float) (font.getSize2D() * size.factor())));
        }
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

    private static void set(Style wanted) {
        style = wanted;
        UIManager.put(FONT, null);
        if (wanted.dark()) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        if (wanted.percent() != Style.USUAL) {
            var usual = UIManager.getFont(FONT);
            float size = Math.round(usual.getSize2D() * wanted.percent() / Style.USUAL);
            UIManager.put(FONT, new FontUIResource(usual.deriveFont(size)));
        }
    }
}
