package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Point;
import java.util.function.BiConsumer;

/** Side by side at their preferred sizes, in as many lines as the container's width asks for. */
public final class Wrapping implements LayoutManager {
    private static final int BEFORE_FIRST_LAYOUT = 640;

    private final int gap;
    private final int lineGap;

    /**
     * @param gap between neighbours and between lines, px
     */
    public Wrapping(int gap) {
        this(gap, gap);
    }

    /**
     * @param gap between neighbours, px
     * @param lineGap between lines, px
     */
    public Wrapping(int gap, int lineGap) {
        this.gap = gap;
        this.lineGap = lineGap;
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        int height = place(parent, (child, at) -> {});
        return new Dimension(parent.getWidth() > 0 ? parent.getWidth() : BEFORE_FIRST_LAYOUT, height);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(0, preferredLayoutSize(parent).height);
    }

    @Override
    public void layoutContainer(Container parent) {
        int widest = inner(parent);
        place(parent, (child, at) -> {
            var size = child.getPreferredSize();
            child.setBounds(at.x, at.y, Math.min(size.width, widest), size.height);
        });
    }

    @Override
    public void addLayoutComponent(String name, Component child) {
        // children carry no constraints
    }

    @Override
    public void removeLayoutComponent(Component child) {
        // nothing is remembered of children
    }

    private int place(Container parent, BiConsumer<Component, Point> placed) {
        var edge = parent.getInsets();
        int widest = inner(parent);
        int x = 0;
        int y = edge.top;
        int line = 0;
        for (var child : parent.getComponents()) {
            if (child.isVisible()) {
                var size = child.getPreferredSize();
                if (x > 0 && x + size.width > widest) {
                    x = 0;
                    y += line + lineGap;
                    line = 0;
                }
                placed.accept(child, new Point(edge.left + x, y));
                x += size.width + gap;
                line = Math.max(line, size.height);
            }
        }
        return y + line + edge.bottom;
    }

    private static int inner(Container parent) {
        var edge = parent.getInsets();
        return (parent.getWidth() > 0 ? parent.getWidth() : BEFORE_FIRST_LAYOUT) - edge.left - edge.right;
    }
}
