package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import java.util.function.BiConsumer;

/** A layout in lines: how many there are follows from the width of the container. */
abstract class Lines implements LayoutManager {
    private final int widthAtFirst;
    /** At which width another height was asked for, so that one that is not granted is not asked for again and again. */
    private int widthAsked = -1;

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

    /** Where another width asks for another height than was given, the parent is asked for it anew. */
    @Override
    public final void layoutContainer(Container parent) {
        int needed = place(parent, inner(parent), Component::setBounds);
        if (needed == parent.getHeight()) {
            widthAsked = -1;
        } else if (parent.getWidth() != widthAsked) {
            widthAsked = parent.getWidth();
            EventQueue.invokeLater(parent::revalidate);
        }
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
