package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;

/**
 * Side by side from the top: one child gets all the width that the others leave, and the height that belongs to it. The
 * sister of {@link Stack}.
 */
public final class Beside implements LayoutManager {
    private static final int BEFORE_FIRST_LAYOUT = 640;

    private final int gap;
    private final int filling;

    /**
     * @param gap between neighbours, px
     * @param filling the position of the child that gets the width left over
     */
    public Beside(int gap, int filling) {
        this.gap = gap;
        this.filling = filling;
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        var edge = parent.getInsets();
        int height = 0;
        for (int i = 0; i < parent.getComponentCount(); i++) {
            height = Math.max(height, sized(parent, i).height);
        }
        return new Dimension(width(parent) + edge.left + edge.right, height + edge.top + edge.bottom);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(0, preferredLayoutSize(parent).height);
    }

    @Override
    public void layoutContainer(Container parent) {
        var edge = parent.getInsets();
        int x = edge.left;
        for (int i = 0; i < parent.getComponentCount(); i++) {
            var size = sized(parent, i);
            parent.getComponent(i).setBounds(x, edge.top, size.width, size.height);
            x += parent.getComponent(i).isVisible() ? size.width + gap : 0;
        }
    }

    @Override
    public void addLayoutComponent(String name, Component child) {
        // children carry no constraints
    }

    @Override
    public void removeLayoutComponent(Component child) {
        // nothing is remembered of children
    }

    private Dimension sized(Container parent, int position) {
        var child = parent.getComponent(position);
        if (position != filling) {
            return child.isVisible() ? child.getPreferredSize() : new Dimension();
        }
        int rest = width(parent);
        for (int i = 0; i < parent.getComponentCount(); i++) {
            if (i != filling && parent.getComponent(i).isVisible()) {
                rest -= parent.getComponent(i).getPreferredSize().width + gap;
            }
        }
        return new Dimension(Math.max(0, rest), Stack.heightAt(child, Math.max(0, rest)));
    }

    private static int width(Container parent) {
        var edge = parent.getInsets();
        return (parent.getWidth() > 0 ? parent.getWidth() : BEFORE_FIRST_LAYOUT) - edge.left - edge.right;
    }
}
