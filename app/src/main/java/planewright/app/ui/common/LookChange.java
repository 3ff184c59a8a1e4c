package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Window;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JRootPane;
import javax.swing.JViewport;
import javax.swing.RootPaneContainer;
import javax.swing.SwingUtilities;

/**
 * Brings the new look to all components: at once to what is to be seen, and in short turns to what is not, for the pages behind are many
 * times as much.
 */
final class LookChange {
    private static LookChange latest;

    private final Deque<Component> later = new ArrayDeque<>();

    private LookChange() {}

    /**
     * Begins; a change that is still under way is left to the new one.
     *
     * @param outside components that belong to no window now
     */
    static void begin(Collection<? extends Component> outside) {
        var change = new LookChange();
        latest = change;
        for (var window : Window.getWindows()) {
            change.window(window);
        }
        change.later.addAll(outside);
        change.soon();
    }

    private void window(Window window) {
        if (!window.isShowing()) {
            later.addAll(inside(window));
            return;
        }
        for (var child : window.getComponents()) {
            if (child instanceof JRootPane root) {
                below(root);
            } else {
                now(child);
            }
        }
        if (window instanceof RootPaneContainer holder) {
            var root = holder.getRootPane();
            root.revalidate();
            root.repaint();
            // The ground of the window paints all of it at once, so it comes by itself.
            EventQueue.invokeLater(root::updateUI);
        }
    }

    private void now(Component component) {
        renew(component);
        below(component);
    }

    private void below(Component component) {
        for (var child : inside(component)) {
            if (isSeen(child)) {
                now(child);
            } else {
                later.add(child);
            }
        }
    }

    private static List<Component> inside(Component component) {
        if (component instanceof JMenu menu) {
            return List.of(menu.getPopupMenu());
        }
        return component instanceof Container container ? List.of(container.getComponents()) : List.of();
    }

    private static boolean isSeen(Component component) {
        if (!component.isVisible()) {
            return false;
        }
        return !(component.getParent().getParent() instanceof JViewport view)
                || component.getBounds().intersects(view.getViewRect());
    }

    private static void renew(Component component) {
        if (component instanceof JComponent drawn) {
            drawn.updateUI();
            if (drawn.getComponentPopupMenu() != null) {
                SwingUtilities.updateComponentTreeUI(drawn.getComponentPopupMenu());
            }
        }
    }

    private void soon() {
        if (!later.isEmpty()) {
            EventQueue.invokeLater(this::turn);
        }
    }

    private void turn() {
        var turn = new Turn();
        turn.begin();
        while (latest == this && !later.isEmpty() && turn.goesOn()) {
            var component = later.remove();
            renew(component);
            later.addAll(inside(component));
        }
        if (latest == this) {
            soon();
        }
    }
}
