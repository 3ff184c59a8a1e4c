package planewright.app.ui.common;

import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.util.function.Function;
import java.util.stream.Stream;

/** Pages one behind the other that are asked for their size only while they are in front: nobody waits for pages that nobody sees. */
public final class Cards extends CardLayout {
    private static final long serialVersionUID = 1L;

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        return size(parent, Component::getPreferredSize);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return size(parent, Component::getMinimumSize);
    }

    private static Dimension size(Container parent, Function<Component, Dimension> of) {
        var edge = parent.getInsets();
        var size = Stream.of(parent.getComponents())
                .filter(Component::isVisible)
                .findFirst()
                .map(of)
                .orElseGet(Dimension::new);
        return new Dimension(size.width + edge.left + edge.right, size.height + edge.top + edge.bottom);
    }
}
