package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import java.util.function.BiConsumer;

/** A layout in lines: how many there are follows from the width of the container. */
abstract class Lines implements LayoutManager {
    private final int widthAtFirst;

    /**
     * @param widthAtFirst what the container is taken to be wide before it has been laid out, px
     */
    Lines(int widthAtFirst) {
        this.widthAtFirst = widthAtFirst;
    }

    /**
     * Finds each visible child its place.
     *
     * @param width between the edges of the container, px
     * @return height of the container with its edges, px
     */
    abstract int place(Container parent, int width, BiConsumer<Component, Rectangle> placed);

    @Override
    public final Dimension preferredLayoutSize(Container parent) {
        return new Dimension(width(parent), place(parent, inner(parent), (child, at) -> {}));
    }

    @Override
    public final Dimension minimumLayoutSize(Container parent) {
        return new Dimension(0, preferredLayoutSize(parent).height);
    }

    @Override
    public final void layoutContainer(Container parent) {
        place(parent, inner(parent), Component::setBounds);
    }

    @Override
    public final void addLayoutComponent(String name, Component child) {
        // children carry no constraints
    }

    @Override
    public final void removeLayoutComponent(Component child) {
        // nothing is remembered of children
    }

    private int width(Container parent) {
        return parent.getWidth() > 0 ? parent.getWidth() : widthAtFirst;
    }

    private int inner(Container parent) {
        var edge = parent.getInsets();
        return width(parent) - edge.left - edge.right;
    }
}
