package planewright.app.ui.common;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import javax.swing.undo.UndoManager;

/** Takes back, step by step, what is being typed into a text. The keys for it are the journal's only where no text is being written. */
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

    /**
     * Takes a step back in the text that has the keyboard.
     *
     * @param otherwise runs where no text is being written
     * @param exhausted runs where nothing of what was typed is left to take back
     */
    public static void undoOr(Runnable otherwise, Runnable exhausted) {
        step(UndoManager::canUndo, UndoManager::undo, otherwise, exhausted);
    }

    /** Makes a step again in the text that has the keyboard; else as {@link #undoOr}. */
    public static void redoOr(Runnable otherwise, Runnable exhausted) {
        step(UndoManager::canRedo, UndoManager::redo, otherwise, exhausted);
    }

    private static void step(
            Predicate<UndoManager> can, Consumer<UndoManager> step, Runnable otherwise, Runnable exhausted) {
        if (inFocus() instanceof JTextComponent text
                && text.getClientProperty(MEMORY) instanceof UndoManager memory
                && isBeingWritten(text, memory)) {
            if (can.test(memory)) {
                step.accept(memory);
            } else {
                exhausted.run();
            }
        } else {
            otherwise.run();
        }
    }

    private static boolean isBeingWritten(JTextComponent text, UndoManager memory) {
        return memory.canUndo()
                || memory.canRedo()
                || text.getDocument().getLength() > 0
                || text.getParent() instanceof JTable;
    }

    private static Component inFocus() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
    }
}
