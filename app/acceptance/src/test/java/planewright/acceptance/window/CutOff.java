package planewright.acceptance.window;

import java.awt.Component;
import java.awt.Container;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JViewport;
import planewright.app.ui.common.MeasurementChip;

/** What of the window's words cannot be read. On the event thread. */
final class CutOff {
    private CutOff() {}

    /**
     * Words that are shortened where the pointer does not tell the rest, on a button and in an answer whether or not it does;
     * controls and labels that lie partly beside what holds them; parts of a page that lie on each other.
     */
    static Optional<String> look(JComponent component) {
        if (component instanceof JPanel panel && panel.isOptimizedDrawingEnabled()) {
            return overlap(panel).map(name -> told(component, "has on each other: " + name));
        }
        var words = component instanceof JLabel label
                ? label.getText()
                : component instanceof AbstractButton button ? button.getText() : null;
        if (words == null || words.isBlank() || component.getWidth() == 0 || component instanceof MeasurementChip) {
            return Optional.empty();
        }
        int wanted = component.getPreferredSize().width - 1;
        boolean whole = component instanceof JButton
                || component.getToolTipText() == null
                || String.valueOf(component.getName()).startsWith("value-");
        if (component.getWidth() < wanted && whole) {
            return Optional.of(told(component, "'" + words + "' has " + component.getWidth() + " px of " + wanted));
        }
        return outside(component).map(where -> told(component, "'" + words + "' has " + where));
    }

    private static Optional<String> outside(Component component) {
        for (var inner = component; inner.getParent() instanceof JComponent outer; inner = outer) {
            if (outer instanceof JViewport) {
                return Optional.empty();
            }
            if (inner.getX() < 0 || inner.getX() + inner.getWidth() > outer.getWidth() + 1) {
                return Optional.of((outer.getWidth() - inner.getX()) + " px of " + inner.getWidth() + " in "
                        + outer.getClass().getSimpleName() + " '" + outer.getName() + "'");
            }
        }
        return Optional.empty();
    }

    private static Optional<String> overlap(Container panel) {
        var children = Stream.of(panel.getComponents())
                .filter(child -> child.isVisible() && child.getWidth() > 0 && child.getHeight() > 0)
                .toList();
        for (int i = 0; i < children.size(); i++) {
            for (int j = i + 1; j < children.size(); j++) {
                var common =
                        children.get(i).getBounds().intersection(children.get(j).getBounds());
                if (common.width > 1 && common.height > 1) {
                    return Optional.of(children.get(i).getClass().getSimpleName() + " '"
                            + children.get(i).getName() + "' and "
                            + children.get(j).getClass().getSimpleName() + " '"
                            + children.get(j).getName() + "'");
                }
            }
        }
        return Optional.empty();
    }

    private static String told(Component component, String problem) {
        return component.getClass().getSimpleName() + " '" + component.getName() + "' " + problem;
    }
}
