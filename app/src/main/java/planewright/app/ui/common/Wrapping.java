package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.util.function.BiConsumer;

/** Side by side at their preferred sizes, in as many lines as the container's width asks for. */
public final class Wrapping extends Lines {
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
        super(640);
        this.gap = gap;
        this.lineGap = lineGap;
    }

    @Override
    int place(Container parent, int width, BiConsumer<Component, Rectangle> placed) {
        var edge = parent.getInsets();
        int x = 0;
        int y = edge.top;
        int line = 0;
        for (var child : parent.getComponents()) {
            if (child.isVisible()) {
                var size = child.getPreferredSize();
                if (x > 0 && x + size.width > width) {
                    x = 0;
                    y += line + lineGap;
                    line = 0;
                }
                placed.accept(child, new Rectangle(edge.left + x, y, Math.min(size.width, width), size.height));
                x += size.width + gap;
                line = Math.max(line, size.height);
            }
        }
        return y + line + edge.bottom;
    }
}
