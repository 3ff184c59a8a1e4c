package planewright.app.ui.common;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.util.function.BiConsumer;

/**
 * A wide component and then small ones in one line; where the line would leave the first one too little, it gets a line of its
 * own and the others follow in as many lines as they need.
 */
public final class FirstWide extends Lines {
    private static final int FILTER = 150;

    private final int gap;
    private final int least;

    /**
     * @param gap between neighbours and between lines, px
     * @param least what the first one needs in a line with others, px
     */
    public FirstWide(int gap, int least) {
        super(1200);
        this.gap = gap;
        this.least = least;
    }

    /** A field that filters, with what can be done with what it leaves. */
    public static FirstWide filter() {
        return new FirstWide(6, UIScale.scale(FILTER));
    }

    @Override
    int place(Container parent, int width, BiConsumer<Component, Rectangle> placed) {
        var edge = parent.getInsets();
        int others = 0;
        int line = 0;
        for (int i = 0; i < parent.getComponentCount(); i++) {
            var size = parent.getComponent(i).getPreferredSize();
            others += i == 0 ? 0 : gap + size.width;
            line = Math.max(line, size.height);
        }
        boolean together = width - others >= least;
        var first = parent.getComponent(0);
        int wide = together ? width - others : width;
        placed.accept(first, new Rectangle(edge.left, edge.top, wide, line));
        int x = together ? wide + gap : 0;
        int y = together ? edge.top : edge.top + line + gap;
        for (int i = 1; i < parent.getComponentCount(); i++) {
            var child = parent.getComponent(i);
            int needed = Math.min(child.getPreferredSize().width, width);
            if (x > 0 && x + needed > width) {
                x = 0;
                y += line + gap;
            }
            placed.accept(child, new Rectangle(edge.left + x, y, needed, line));
            x += needed + gap;
        }
        return y + line + edge.bottom;
    }
}
