package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.util.stream.IntStream;
import javax.swing.JTextArea;

/**
 * Words and what belongs to them in two columns, a pair a row. The words wrap where the other column leaves them too little;
 * a cousin of {@link Stack}.
 */
public final class Pairs implements LayoutManager {
    private static final int BEFORE_FIRST_LAYOUT = 640;
    private static final int BETWEEN = 14;

    private final int gap;

    /**
     * @param gap between rows, px
     */
    public Pairs(int gap) {
        this.gap = gap;
    }

    /** Words that would get less than half of what they need, or that would break within one, stand above what belongs to them. */
    private static boolean isStacked(Container parent) {
        return 2 * left(parent) < longest(parent) || left(parent) < longestWord(parent);
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        int words = words(parent);
        int height = -gap;
        for (int row = 0; row < rows(parent); row++) {
            height += gap + height(parent, row, words);
        }
        int wide = isStacked(parent) ? Math.max(words, widest(parent)) : words + BETWEEN + widest(parent);
        return new Dimension(wide, Math.max(0, height));
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(0, preferredLayoutSize(parent).height);
    }

    @Override
    public void layoutContainer(Container parent) {
        int words = words(parent);
        int y = 0;
        for (int row = 0; row < rows(parent); row++) {
            var label = parent.getComponent(2 * row);
            var value = parent.getComponent(2 * row + 1);
            int high = Stack.heightAt(label, words);
            var size = value.getPreferredSize();
            if (isStacked(parent)) {
                label.setBounds(0, y, words, high);
                value.setBounds(0, y + high, Math.min(size.width, parent.getWidth()), size.height);
            } else {
                label.setBounds(0, y + below(value, size, label, words, high), words, high);
                value.setBounds(words + BETWEEN, y, size.width, size.height);
            }
            y += height(parent, row, words) + gap;
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

    private static int rows(Container parent) {
        return parent.getComponentCount() / 2;
    }

    /** The width of the words: what the longest needs, or what is left. */
    private static int words(Container parent) {
        return isStacked(parent) ? width(parent) : Math.min(longest(parent), left(parent));
    }

    private static int longest(Container parent) {
        return IntStream.range(0, rows(parent))
                .map(row -> Words.onOneLine((JTextArea) parent.getComponent(2 * row)))
                .max()
                .orElse(0);
    }

    private static int longestWord(Container parent) {
        return IntStream.range(0, rows(parent))
                .map(row -> Words.longestOf((JTextArea) parent.getComponent(2 * row)))
                .max()
                .orElse(0);
    }

    private static int left(Container parent) {
        return Math.max(0, width(parent) - BETWEEN - widest(parent));
    }

    private static int width(Container parent) {
        return parent.getWidth() > 0 ? parent.getWidth() : BEFORE_FIRST_LAYOUT;
    }

    /** The width of what belongs to the words. */
    private static int widest(Container parent) {
        return IntStream.range(0, rows(parent))
                .map(row -> parent.getComponent(2 * row + 1).getPreferredSize().width)
                .max()
                .orElse(0);
    }

    private static int height(Container parent, int row, int words) {
        var label = parent.getComponent(2 * row);
        var value = parent.getComponent(2 * row + 1);
        int high = Stack.heightAt(label, words);
        var size = value.getPreferredSize();
        if (isStacked(parent)) {
            return high + size.height;
        }
        return Math.max(size.height, below(value, size, label, words, high) + high);
    }

    /** How far the words stand below the top, so that both are written on one line. */
    private static int below(Component value, Dimension size, Component label, int width, int height) {
        return Math.max(0, value.getBaseline(size.width, size.height) - label.getBaseline(width, height));
    }
}
