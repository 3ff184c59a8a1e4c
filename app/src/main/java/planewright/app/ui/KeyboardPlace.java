package planewright.app.ui;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Optional;
import javax.swing.SwingUtilities;

/** Who had the keyboard before a page was laid over the build, so that it comes back once that page goes. */
final class KeyboardPlace {
    private final Container bar;
    private final Runnable otherwise;
    private Optional<Component> before = Optional.empty();
    private boolean covered;

    /**
     * @param bar what pages are called from; whoever has the keyboard there has it for a moment only
     * @param otherwise runs where what had the keyboard is gone
     */
    KeyboardPlace(Container bar, Runnable otherwise) {
        this.bar = bar;
        this.otherwise = otherwise;
        for (var each : bar.getComponents()) {
            each.addFocusListener(new FocusAdapter() {
                @Override
                public void focusGained(FocusEvent event) {
                    note(event.getOppositeComponent());
                }
            });
        }
    }

    /** The build is about to be covered. */
    void cover() {
        note(owner());
        covered = true;
    }

    /** The build is to be seen again. */
    void uncover() {
        covered = false;
    }

    /** Gives the keyboard back to what had it, where it is in the bar or with something that is not to be seen any longer. */
    void giveBack() {
        var owner = owner();
        if (owner == null || !owner.isShowing() || bar.isAncestorOf(owner)) {
            before.filter(Component::isShowing).ifPresentOrElse(Component::requestFocusInWindow, otherwise);
        }
    }

    private void note(Component owner) {
        if (!covered
                && owner != null
                && !bar.isAncestorOf(owner)
                && SwingUtilities.getRoot(owner) == SwingUtilities.getRoot(bar)) {
            before = Optional.of(owner);
        }
    }

    private static Component owner() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
    }
}
