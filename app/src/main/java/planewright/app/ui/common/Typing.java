package planewright.app.ui.common;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import javax.swing.undo.UndoManager;

/** Takes back, step by step, what is being typed into a text. Where there is nothing left of it, the keys for it are the journal's. */
public final class Typing {
    private static final String MEMORY = "planewright.typing";

    private Typing() {}

    /** From now on every text remembers what is typed into it. */
    public static void watch() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager()
                .addPropertyChangeListener("permanentFocusOwner", event -> rememberInFocus());
    }

    private static void rememberInFocus() {
        if (inFocus() instanceof JTextComponent text && text.isEditable()) {
            if (text.getClientProperty(MEMORY) == null) {
                var memory = new UndoManager();
                text.putClientProperty(MEMORY, memory);
                text.getDocument().addUndoableEditListener(memory);
            } else if (text.getParent() instanceof JTable) {
                forget(text);
            }
        }
    }

    /** What was typed so far is done with. */
    public static void forget(JTextComponent text) {
        if (text.getClientProperty(MEMORY) instanceof UndoManager memory) {
            memory.discardAllEdits();
        }
    }

    /** Takes a step back in the text that has the keyboard; where it has none, runs what is given. */
    public static void undoOr(Runnable otherwise) {
        step(UndoManager::canUndo, UndoManager::undo, otherwise);
    }

    /** Makes a step again in the text that has the keyboard; where it has none, runs what is given. */
    public static void redoOr(Runnable otherwise) {
        step(UndoManager::canRedo, UndoManager::redo, otherwise);
    }

    private static void step(Predicate<UndoManager> can, Consumer<UndoManager> step, Runnable otherwise) {
        if (inFocus() instanceof JTextComponent text
                && text.getClientProperty(MEMORY) instanceof UndoManager memory
                && can.test(memory)) {
            step.accept(memory);
        } else {
            otherwise.run();
        }
    }

    private static Component inFocus() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
    }
}
