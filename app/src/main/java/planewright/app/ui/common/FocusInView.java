package planewright.app.ui.common;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;

/** Whoever goes on by the keyboard sees where they are: what gets the focus is scrolled into view. */
public final class FocusInView {
    private FocusInView() {}

    /** From now on, in every window. */
    public static void watch() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager()
                .addPropertyChangeListener("permanentFocusOwner", event -> {
                    if (event.getNewValue() instanceof Component focused && !scrollsItself(focused)) {
                        SwingUtilities.invokeLater(() -> show(focused));
                    }
                });
    }

    private static boolean scrollsItself(Component focused) {
        return focused instanceof JTable || focused instanceof JList || focused instanceof JTextArea;
    }

    private static void show(Component focused) {
        if (focused.getParent() instanceof JComponent parent) {
            parent.scrollRectToVisible(focused.getBounds());
        }
    }
}
