package planewright.acceptance.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;

/**
 * A builder's hands and eyes on the windows that are open: they find components by name, act through the event queue, and
 * wait for what they expect to see, never for a time.
 */
final class Hands {
    private static final long PATIENCE_NANOS = 30_000_000_000L;
    private static final long GLANCE_NANOS = 1_000_000;

    private Hands() {}

    /** The visible component of that name, once it is there. */
    static <T extends Component> T find(Class<T> type, String name) {
        return find(type, "called '" + name + "'", component -> name.equals(component.getName()));
    }

    /** The first visible component of a kind, once it is there. */
    static <T extends Component> T find(Class<T> type, String words, Predicate<T> wanted) {
        return waitFor(
                type.getSimpleName() + " " + words,
                () -> all(type).stream().filter(wanted).findFirst());
    }

    /** Whether there is a visible component of that name now. */
    static boolean isThere(String name) {
        return onEventThread(
                () -> all(Component.class).stream().anyMatch(component -> name.equals(component.getName())));
    }

    /** Waits until something holds, looking on the event thread. */
    static void waitUntil(String words, Callable<Boolean> holds) {
        waitFor(words, () -> holds.call() ? Optional.of(true) : Optional.empty());
    }

    /** Clicks the button that is there at that moment: a page may be made anew between the look and the click. */
    static void click(String button) {
        var found = find(AbstractButton.class, button);
        EventQueue.invokeLater(
                () -> named(AbstractButton.class, button).orElse(found).doClick(0));
    }

    /** Replaces what a field holds, key by key. */
    static void type(String field, String text) {
        atKeyboard(field, found -> {
            found.setText("");
            for (char letter : text.toCharArray()) {
                found.dispatchEvent(new KeyEvent(
                        found, KeyEvent.KEY_TYPED, System.currentTimeMillis(), 0, KeyEvent.VK_UNDEFINED, letter));
            }
        });
        waitUntil(
                "'" + text + "' in " + field,
                () -> named(JTextComponent.class, field)
                        .filter(there -> there.getText().equals(text))
                        .isPresent());
    }

    /** Presses Enter in a field. */
    static void enter(String field) {
        atKeyboard(field, found -> {
            for (int kind : List.of(KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED)) {
                found.dispatchEvent(new KeyEvent(found, kind, System.currentTimeMillis(), 0, KeyEvent.VK_ENTER, '\n'));
            }
        });
    }

    /** Presses a key where the keyboard is: {@code ctrl Z}. */
    static void key(String stroke) {
        var key = KeyStroke.getKeyStroke(stroke);
        onEventThread(() -> {
            var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            for (int kind : List.of(KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED)) {
                owner.dispatchEvent(new KeyEvent(
                        owner,
                        kind,
                        System.currentTimeMillis(),
                        key.getModifiers(),
                        key.getKeyCode(),
                        KeyEvent.CHAR_UNDEFINED));
            }
            return key;
        });
    }

    /** Takes the keyboard to a component, and waits until it is there. */
    static void focus(String name) {
        atKeyboard(Component.class, name, found -> {});
    }

    /** Waits until a component of that name has the keyboard. */
    static void hasKeyboard(String name) {
        waitUntil(
                "the keyboard at " + name,
                () -> all(Component.class).stream()
                        .anyMatch(component -> name.equals(component.getName()) && component.isFocusOwner()));
    }

    /** Does what a key does on a component that has the focus: {@code ctrl A}. */
    static void press(JComponent component, String stroke) {
        onEventThread(() -> {
            var action = component.getActionMap().get(component.getInputMap().get(KeyStroke.getKeyStroke(stroke)));
            action.actionPerformed(new ActionEvent(component, ActionEvent.ACTION_PERFORMED, stroke));
            return action;
        });
    }

    /** Clicks with the left button of the mouse. */
    static void press(Component component, int x, int y) {
        onEventThread(() -> {
            for (int kind : List.of(MouseEvent.MOUSE_PRESSED, MouseEvent.MOUSE_RELEASED, MouseEvent.MOUSE_CLICKED)) {
                component.dispatchEvent(new MouseEvent(
                        component, kind, System.currentTimeMillis(), 0, x, y, 1, false, MouseEvent.BUTTON1));
            }
            return component;
        });
    }

    /** Lets the mouse rest on a component. */
    static void rest(Component component) {
        onEventThread(() -> {
            for (int kind : List.of(MouseEvent.MOUSE_ENTERED, MouseEvent.MOUSE_MOVED)) {
                component.dispatchEvent(new MouseEvent(component, kind, System.currentTimeMillis(), 0, 4, 4, 0, false));
            }
            return component;
        });
    }

    /** Types into a cell of a table and leaves it. */
    static void typeCell(JTable table, int row, int column, String text) {
        boolean taken = onEventThread(() -> {
            if (table.isEditing()) {
                table.getCellEditor().stopCellEditing();
            }
            table.editCellAt(row, column);
            ((JTextComponent) table.getEditorComponent()).setText(text);
            return table.getCellEditor().stopCellEditing();
        });
        if (!taken) {
            throw new AssertionError("the table did not take '" + text + "'; status: " + text("status"));
        }
    }

    /** Chooses a file in the chooser of that name. */
    static void chooseFile(String chooser, Path file) {
        var found = find(JFileChooser.class, chooser);
        EventQueue.invokeLater(() -> {
            found.setSelectedFile(file.toFile());
            if (found.isMultiSelectionEnabled()) {
                found.setSelectedFiles(new java.io.File[] {file.toFile()});
            }
            found.approveSelection();
        });
    }

    /** Chooses what a box offers by the words that stand for it. */
    static void choose(String box, String words) {
        JComboBox<?> found = find(JComboBox.class, box);
        waitUntil(words + " in " + box, () -> {
            for (int i = 0; i < found.getItemCount(); i++) {
                if (words.equals(String.valueOf(found.getItemAt(i)))) {
                    found.setSelectedIndex(i);
                    return true;
                }
            }
            return false;
        });
    }

    /** What a label or text shows. */
    static String text(String name) {
        return waitFor(
                "Component called '" + name + "'",
                () -> named(Component.class, name).map(Hands::shown));
    }

    private static String shown(Component component) {
        return component instanceof JTextComponent text
                ? text.getText()
                : component instanceof AbstractButton button
                        ? button.getText()
                        : ((javax.swing.JLabel) component).getText();
    }

    private static void atKeyboard(String field, Consumer<JTextComponent> act) {
        atKeyboard(JTextComponent.class, field, act);
    }

    /**
     * Takes the keyboard to a component and acts on it in the turn of the event thread in which it has it: pages are made
     * anew in between, and keys that come before the keyboard does go astray.
     */
    private static <T extends Component> void atKeyboard(Class<T> type, String name, Consumer<T> act) {
        waitFor("the keyboard at " + name, () -> {
            var there = named(type, name);
            there.filter(found -> !found.isFocusOwner()).ifPresent(Component::requestFocus);
            var ready = there.filter(Component::isFocusOwner);
            ready.ifPresent(act);
            return ready;
        });
    }

    /** The first visible component of that name. On the event thread. */
    private static <T extends Component> Optional<T> named(Class<T> type, String name) {
        return all(type).stream().filter(each -> name.equals(each.getName())).findFirst();
    }

    /** Visible components of a kind, those of the newest window first. On the event thread. */
    static <T extends Component> List<T> all(Class<T> type) {
        var found = new ArrayList<T>();
        var windows = new ArrayList<>(Arrays.asList(Window.getWindows()));
        Collections.reverse(windows);
        for (var window : windows) {
            if (window.isShowing()) {
                collect(window, type, found);
            }
        }
        return found;
    }

    static <T> T onEventThread(Callable<T> work) {
        if (EventQueue.isDispatchThread()) {
            throw new IllegalStateException("already on the event thread");
        }
        var answer = new CompletableFuture<T>();
        try {
            EventQueue.invokeAndWait(() -> {
                try {
                    answer.complete(work.call());
                } catch (Exception failure) {
                    answer.completeExceptionally(failure);
                }
            });
            return answer.get();
        } catch (InvocationTargetException | ExecutionException failure) {
            throw new AssertionError(failure.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(stopped);
        }
    }

    /** Between two looks, so that what is looked at gets on. */
    static void pause() {
        LockSupport.parkNanos(GLANCE_NANOS);
    }

    private static <T> T waitFor(String words, Callable<Optional<T>> look) {
        long end = System.nanoTime() + PATIENCE_NANOS;
        Optional<T> seen = onEventThread(look);
        while (seen.isEmpty()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("waited for " + words + " in vain; to be seen are:\n" + tree());
            }
            pause();
            seen = onEventThread(look);
        }
        return seen.get();
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

    private static String tree() {
        return onEventThread(() -> {
            var lines = new StringBuilder("with the keyboard: ")
                    .append(KeyboardFocusManager.getCurrentKeyboardFocusManager()
                            .getFocusOwner())
                    .append('\n');
            for (var component : all(Component.class)) {
                if (component.getName() != null) {
                    lines.append(component.getClass().getSimpleName())
                            .append(' ')
                            .append(component.getName());
                    if (component instanceof JTextComponent text) {
                        lines.append(" = ").append(text.getText());
                    } else if (component instanceof javax.swing.JLabel label) {
                        lines.append(" = ").append(label.getText());
                    }
                    lines.append('\n');
                }
            }
            return lines.toString();
        });
    }
}
