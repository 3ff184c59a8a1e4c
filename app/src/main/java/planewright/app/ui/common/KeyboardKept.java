package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;

/** The keyboard where parts of a page are made anew: it stays with the part of the same name. */
public final class KeyboardKept {
    private KeyboardKept() {}

    /**
     * Makes what is within anew.
     *
     * @param otherwise has the keyboard where no part of that name is there any longer
     */
    public static void in(Container within, Component otherwise, Runnable anew) {
        var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean isWithin = owner != null && SwingUtilities.isDescendingFrom(owner, within);
        anew.run();
        if (isWithin) {
            Optional.ofNullable(owner.getName())
                    .flatMap(name -> parts(within)
                            .filter(part -> name.equals(part.getName()))
                            .findFirst())
                    .orElse(otherwise)
                    .requestFocusInWindow();
        }
    }

    private static Stream<Component> parts(Component of) {
        return Stream.concat(
                Stream.of(of),
                of instanceof Container container
                        ? Stream.of(container.getComponents()).flatMap(KeyboardKept::parts)
                        : Stream.empty());
    }
}
