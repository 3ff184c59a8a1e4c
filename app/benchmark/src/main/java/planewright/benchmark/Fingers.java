package planewright.benchmark;

import java.awt.Component;
import java.awt.Container;
import java.awt.Cursor;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/**
 * What a builder's fingers do in the window that is open. Every key, click and move is an event of its own, as they come from the
 * system; what looks for a component, or whether something is to be seen, is none that counts.
 */
final class Fingers {
    private static final long PATIENCE_NANOS = 60_000_000_000L;
    private static final long GLANCE_NANOS = 10_000_000;
    private static final long KEY_NANOS = 30_000_000;
    private static final long GLANCE_AT_WINDOW_NANOS = 150_000_000;
    private static final long FRAME_NANOS = 16_000_000;

    private Fingers() {}

    /** Does something on the event thread, as an event that counts, and waits for its end. */
    static void act(Runnable action) {
        var done = new CompletableFuture<Void>();
        EventQueue.invokeLater(() -> {
            try {
                action.run();
                done.complete(null);
            } catch (RuntimeException failure) {
                done.completeExceptionally(failure);
            }
        });
        done.join();
    }

    /** Looks at the window; no event that counts. */
    static <T> T look(Supplier<T> look) {
        var seen = new CompletableFuture<T>();
        Toolkit.getDefaultToolkit().getSystemEventQueue().postEvent(new EventTimes.Look(() -> {
            try {
                seen.complete(look.get());
            } catch (RuntimeException failure) {
                seen.completeExceptionally(failure);
            }
        }));
        return seen.join();
    }

    /** Waits until something is so. */
    static void until(String words, BooleanSupplier holds) {
        waitFor(words, () -> holds.getAsBoolean() ? Optional.of(true) : Optional.empty());
    }

    /** The first visible component of that name, once it is there. */
    static <T extends Component> T find(Class<T> type, String name) {
        return find(type, name, component -> name.equals(component.getName()));
    }

    static <T extends Component> T find(Class<T> type, String words, Predicate<T> wanted) {
        return waitFor(words, () -> first(type, wanted));
    }

    /** Whether such a component is to be seen now; on the event thread. */
    static <T extends Component> boolean isThere(Class<T> type, Predicate<T> wanted) {
        return first(type, wanted).isPresent();
    }

    static boolean isThere(String name) {
        return isThere(Component.class, component -> name.equals(component.getName()));
    }

    static void click(String button) {
        var found = find(AbstractButton.class, button);
        act(() -> found.doClick(0));
    }

    /** Replaces what a field holds, key by key. */
    static void type(String field, String text) {
        var found = find(JTextComponent.class, field);
        act(() -> {
            found.requestFocusInWindow();
            found.setText("");
        });
        for (char letter : text.toCharArray()) {
            act(() ->
                    found.dispatchEvent(new KeyEvent(found, KeyEvent.KEY_TYPED, 0, 0, KeyEvent.VK_UNDEFINED, letter)));
            LockSupport.parkNanos(KEY_NANOS);
        }
    }

    /** Turns to a page of the build. */
    static void page(String name) {
        var tabs = find(JTabbedPane.class, "pages");
        act(() -> {
            for (var page : tabs.getComponents()) {
                if (name.equals(page.getName())) {
                    tabs.setSelectedComponent(page);
                }
            }
        });
    }

    /** Presses a key on a component. */
    static void key(Component on, int code) {
        for (int kind : List.of(KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED)) {
            act(() -> on.dispatchEvent(new KeyEvent(on, kind, 0, 0, code, (char) code)));
        }
    }

    /** Presses and lets go the left button of the mouse. */
    static void press(Component on, int x, int y) {
        mouse(on, MouseEvent.MOUSE_PRESSED, x, y, InputEvent.BUTTON1_DOWN_MASK);
        mouse(on, MouseEvent.MOUSE_RELEASED, x, y, 0);
        mouse(on, MouseEvent.MOUSE_CLICKED, x, y, 0);
    }

    static void mouse(Component on, int kind, int x, int y, int modifiers) {
        act(() -> on.dispatchEvent(new MouseEvent(on, kind, 0, modifiers, x, y, 1, false, MouseEvent.BUTTON1)));
    }

    /** Drags a component's ground, or what lies there, a pixel a frame. */
    static void drag(Component on, int x, int y, int pixels) {
        mouse(on, MouseEvent.MOUSE_PRESSED, x, y, InputEvent.BUTTON1_DOWN_MASK);
        for (int i = 1; i <= pixels; i++) {
            mouse(on, MouseEvent.MOUSE_DRAGGED, x, y + i, InputEvent.BUTTON1_DOWN_MASK);
            LockSupport.parkNanos(FRAME_NANOS);
        }
        mouse(on, MouseEvent.MOUSE_RELEASED, x, y + pixels, 0);
    }

    /** Turns the wheel over a component that scrolls. */
    static void scroll(Component over, int turns) {
        scroll(look(() -> bar(over)), turns);
    }

    /** Turns the wheel over the first component of a page that scrolls. */
    static void scrollPage(String name, int turns) {
        var page = find(Container.class, name);
        var pane = waitFor(
                "what scrolls in " + name,
                () -> all(JScrollPane.class).stream().filter(page::isAncestorOf).findFirst());
        scroll(pane.getVerticalScrollBar(), turns);
    }

    private static void scroll(JScrollBar bar, int turns) {
        int turn = (turns < 0 ? -3 : 3) * bar.getUnitIncrement(1);
        for (int i = 0; i < Math.abs(turns); i++) {
            by(bar, turn);
        }
    }

    /** Clicks a button if it is there: a short log shows everything at once. */
    static void clickIfThere(String button) {
        glance();
        if (look(() -> isThere(button))) {
            click(button);
        }
    }

    /** The moment that a builder looks at what has come. */
    static void glance() {
        LockSupport.parkNanos(GLANCE_AT_WINDOW_NANOS);
    }

    /** Marks a place of a picture, so far from its middle. */
    static void mark(JComponent view, int across, int down) {
        press(view, view.getWidth() / 2 + across, view.getHeight() / 2 + down);
    }

    /** Where a handle of the shape lies, the lowest near the middle. */
    static Point handle(JComponent drawing) {
        for (int y = drawing.getHeight() - 1; y > 0; y -= 2) {
            for (int x = drawing.getWidth() / 4; x < drawing.getWidth() * 3 / 4; x += 4) {
                drawing.dispatchEvent(new MouseEvent(drawing, MouseEvent.MOUSE_MOVED, 0, 0, x, y, 0, false));
                if (drawing.getCursor().getType() == Cursor.HAND_CURSOR) {
                    return new Point(x, y);
                }
            }
        }
        throw new IllegalStateException("no handle is to be seen");
    }

    /** Does what a key does on a component that has the focus. */
    static void stroke(JComponent on, String stroke) {
        act(() -> on.getActionMap()
                .get(on.getInputMap().get(KeyStroke.getKeyStroke(stroke)))
                .actionPerformed(new ActionEvent(on, 0, stroke)));
    }

    /** Chooses one after the other. */
    static void choose(String box, int several) {
        JComboBox<?> choice = find(JComboBox.class, box);
        for (int i = 0; i < Math.min(several, look(choice::getItemCount)); i++) {
            int chosen = i;
            act(() -> choice.setSelectedIndex(chosen));
            glance();
            glance();
        }
    }

    /** Waits until the status strip tells something. */
    static void said(String words) {
        until(
                "that it said " + words,
                () -> isThere(
                        JLabel.class,
                        label -> "status".equals(label.getName())
                                && label.getText().contains(words)));
    }

    /** Moves a bar in one frame. */
    static void by(JScrollBar bar, int way) {
        act(() -> bar.setValue(bar.getValue() + way));
        LockSupport.parkNanos(FRAME_NANOS);
    }

    /** The upright bar of the pane in which a component lies. */
    static JScrollBar bar(Component inside) {
        return ((JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, inside)).getVerticalScrollBar();
    }

    private static <T> T waitFor(String words, Supplier<Optional<T>> look) {
        long end = System.nanoTime() + PATIENCE_NANOS;
        for (var seen = look(look); ; seen = look(look)) {
            if (seen.isPresent()) {
                return seen.get();
            }
            if (System.nanoTime() > end) {
                throw new IllegalStateException("waited for " + words + " in vain");
            }
            LockSupport.parkNanos(GLANCE_NANOS);
        }
    }

    private static <T extends Component> Optional<T> first(Class<T> type, Predicate<T> wanted) {
        return all(type).stream().filter(wanted).findFirst();
    }

    /** All visible components of a kind; on the event thread. */
    static <T extends Component> List<T> all(Class<T> type) {
        var found = new ArrayList<T>();
        for (var window : Window.getWindows()) {
            collect(window, type, found);
        }
        return found;
    }

    private static <T extends Component> void collect(Component component, Class<T> type, List<T> found) {
        if (!component.isVisible()) {
            return;
        }
        if (type.isInstance(component)) {
            found.add(type.cast(component));
        }
        if (component instanceof Container container) {
            for (var child : container.getComponents()) {
                collect(child, type, found);
            }
        }
    }
}
