package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;

/** The keyboard where parts of a page are made anew: it stays with the part of the same name in the card of the same name. */
public final class KeyboardKept {
    private KeyboardKept() {}

    /**
     * Makes what is within anew. Where no part of that name is there any longer, as when a button has become its opposite, the
     * keyboard goes to one of the same kind in the same card.
     *
     * @param otherwise has the keyboard where there is none of these
     */
    public static void in(Container within, Component otherwise, Runnable anew) {
        var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean isWithin = owner != null && SwingUtilities.isDescendingFrom(owner, within);
        var cards = isWithin ? cards(owner, within) : List.<String>of();
        anew.run();
        if (isWithin) {
            var stayed =
                    SwingUtilities.isDescendingFrom(owner, within) ? Optional.of(owner) : after(owner, cards, within);
            stayed.orElse(otherwise).requestFocusInWindow();
        }
    }

    private static Optional<Component> after(Component owner, List<String> cards, Container within) {
        var beside =
                parts(within).filter(part -> cards.equals(cards(part, within))).toList();
        return beside.stream()
                .filter(part -> owner.getName() != null && owner.getName().equals(part.getName()))
                .findFirst()
                .or(() -> beside.stream()
                        .filter(part -> !cards.isEmpty() && part.getClass().equals(owner.getClass()))
                        .findFirst());
    }

    /** The names of what a part stands in, from the inside out. */
    private static List<String> cards(Component part, Container within) {
        return part == within
                ? List.of()
                : Stream.iterate(part.getParent(), container -> container != within, Container::getParent)
                        .map(Component::getName)
                        .filter(Objects::nonNull)
                        .toList();
    }

    private static Stream<Component> parts(Component of) {
        return Stream.concat(
                Stream.of(of),
                of instanceof Container container
                        ? Stream.of(container.getComponents()).flatMap(KeyboardKept::parts)
                        : Stream.empty());
    }
}
