package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;

/** The keyboard where parts of a page are made anew: it stays with the part of the same name in the card of the same name. */
public final class KeyboardKept {
    /** What has asked for the keyboard and has not got it yet. */
    private static Optional<Component> expected = Optional.empty();

    private KeyboardKept() {}

    /**
     * Makes what is within anew; on the event thread. Where no part of that name is there any longer, as when a button has become
     * its opposite, the keyboard goes to one of the same kind in the same card.
     *
     * @param otherwise has the keyboard where there is none of these
     */
    public static void in(Container within, Component otherwise, Runnable anew) {
        var owner = Stream.of(expected, owner(within))
                .flatMap(Optional::stream)
                .filter(part -> SwingUtilities.isDescendingFrom(part, within))
                .findFirst();
        var cards = owner.map(part -> cards(part, within)).orElse(List.of());
        anew.run();
        owner.map(part -> SwingUtilities.isDescendingFrom(part, within)
                        ? part
                        : after(part, cards, within).orElse(otherwise))
                .ifPresent(KeyboardKept::give);
    }

    /** What has the keyboard, or will have it once its window comes to the front. */
    private static Optional<Component> owner(Container within) {
        return Optional.ofNullable(SwingUtilities.getWindowAncestor(within)).map(Window::getMostRecentFocusOwner);
    }

    /** The keyboard comes with events that follow; until then, what is made anew once more asks for it again. */
    private static void give(Component part) {
        boolean isOnItsWay = part.requestFocusInWindow() && !part.isFocusOwner();
        expected = Optional.of(part).filter(asked -> isOnItsWay);
        if (isOnItsWay) {
            part.addFocusListener(new FocusAdapter() {
                @Override
                public void focusGained(FocusEvent event) {
                    part.removeFocusListener(this);
                    expected = expected.filter(other -> other != part);
                }
            });
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
