package planewright.app.ui.common;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JPanel;

/**
 * Controls side by side. Where they would need a second line, those that have a sign leave out their words, from the first on and
 * as many as it takes; the pointer and those who read with their ears still get them.
 */
public final class SignBar extends JPanel {
    private static final long serialVersionUID = 1L;

    private final int gap;
    private final transient Map<AbstractButton, String> words = new LinkedHashMap<>();

    /**
     * @param gap between neighbours, px
     */
    public SignBar(int gap) {
        super(new Wrapping(gap, 2));
        this.gap = gap;
    }

    /** Adds a control; whether a button has a sign is asked now. */
    public void put(JComponent control) {
        if (control instanceof AbstractButton button && button.getIcon() != null && button.getText() != null) {
            words.put(button, button.getText());
            button.getAccessibleContext().setAccessibleName(button.getText());
            button.setToolTipText(Objects.requireNonNullElse(button.getToolTipText(), button.getText()));
        }
        add(control);
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean resized = width != getWidth();
        super.setBounds(x, y, width, height);
        if (resized) {
            words.forEach(AbstractButton::setText);
            for (var button : words.keySet()) {
                if (onOneLine() > width) {
                    button.setText(null);
                }
            }
        }
    }

    private int onOneLine() {
        return Stream.of(getComponents())
                        .mapToInt(each -> each.getPreferredSize().width + gap)
                        .sum()
                - gap;
    }
}
