package planewright.app.ui.common;

import java.awt.Font;
import java.awt.KeyboardFocusManager;
import java.util.Arrays;
import java.util.function.Function;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;

/** Running words, labels beside their fields, and problems under them. */
public final class Words {
    private Words() {}

    /** Text that wraps. */
    public static JTextArea of(String text) {
        var area = new JTextArea() {
            private static final long serialVersionUID = 1L;

            @Override
            public void updateUI() {
                super.updateUI();
                setBorder(null);
                setMargin(null);
            }
        };
        area.setCaret(new StillCaret());
        area.setText(text);
        area.getAccessibleContext().setAccessibleName(text);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setEditable(false);
        area.setFocusable(false);
        area.setOpaque(false);
        return Look.sized(area, 1, Font.PLAIN);
    }

    /** A field over several lines, which wraps; Tab goes on to the next control, as from any field. */
    public static JTextArea field(String text, int rows, int columns) {
        var area = new JTextArea(text, rows, columns) {
            private static final long serialVersionUID = 1L;

            @Override
            public void updateUI() {
                super.updateUI();
                setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
                setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
            }
        };
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        return area;
    }

    /** Why something failed, as the builder is told. */
    public static String reason(Throwable failure) {
        return failure.getLocalizedMessage() == null ? failure.toString() : failure.getLocalizedMessage();
    }

    /** Text that wraps and matters less. */
    public static JTextArea quiet(String text) {
        return coloured(text, "quiet");
    }

    /** How wide a text would be if it did not wrap, px. */
    static int onOneLine(JTextArea text) {
        return text.getFontMetrics(text.getFont()).stringWidth(text.getText()) + 1;
    }

    /** How wide the longest word of a text is, px. */
    static int longestOf(JTextArea text) {
        var metrics = text.getFontMetrics(text.getFont());
        return Arrays.stream(text.getText().split(" "))
                        .mapToInt(metrics::stringWidth)
                        .max()
                        .orElse(0)
                + 1;
    }

    /** Text that wraps, in a colour of {@link Look#colour}. */
    public static JTextArea coloured(String text, String use) {
        var area = of(text);
        area.setForeground(Look.colour(use));
        area.addPropertyChangeListener("UI", event -> area.setForeground(Look.colour(use)));
        return area;
    }

    /** Where a problem will stand; hidden until there is one. */
    public static JTextArea problem() {
        var area = coloured("", "stop");
        area.setVisible(false);
        return area;
    }

    /** Shows a problem; an empty one hides its place. */
    public static void show(JTextArea place, String problem) {
        place.setText(problem);
        place.getAccessibleContext().setAccessibleName(problem);
        place.setVisible(!problem.isEmpty());
        place.revalidate();
    }

    /** Adds a label and its field, which get each other's name. */
    public static void labelled(JPanel form, String label, JComponent field, String name) {
        var words = new JLabel(label);
        words.setLabelFor(field);
        field.setName(name);
        field.getAccessibleContext().setAccessibleName(label);
        form.add(words);
        form.add(field, "growx, wmin 60");
    }

    /** A field's name for people who cannot see it, also shown while it is empty. */
    public static <T extends JComponent> T named(T field, String label, String name) {
        field.setName(name);
        field.putClientProperty("JTextField.placeholderText", label);
        field.getAccessibleContext().setAccessibleName(label);
        field.setToolTipText(label);
        return field;
    }

    /** Marks a field as wrong, with the reason on the pointer, or right again. */
    public static void mark(JComponent field, String problem) {
        field.putClientProperty("JComponent.outline", problem.isEmpty() ? null : "error");
        field.setToolTipText(problem.isEmpty() ? field.getAccessibleContext().getAccessibleName() : problem);
        field.getAccessibleContext().setAccessibleDescription(problem);
    }

    /** Shows what a list holds by its words. */
    public static ListCellRenderer<Object> choice(Function<Object, String> word) {
        return new DefaultListCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            public java.awt.Component getListCellRendererComponent(
                    javax.swing.JList<?> list, Object value, int index, boolean selected, boolean focused) {
                return super.getListCellRendererComponent(list, word.apply(value), index, selected, focused);
            }
        };
    }
}
