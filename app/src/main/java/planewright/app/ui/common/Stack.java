package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;

/**
 * One below the other, each as wide as the container and as high as it needs to be at that width. Text and wrapped rows get
 * the height that belongs to the width they really have, at any depth; a grid layout asks for heights at a width of yesterday.
 */
public final class Stack implements LayoutManager {
    private static final int BEFORE_FIRST_LAYOUT = 640;

    private final int gap;

    /**
     * @param gap between neighbours, px
     */
    public Stack(int gap) {
        this.gap = gap;
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        var edge = parent.getInsets();
        int width = (parent.getWidth() > 0 ? parent.getWidth() : BEFORE_FIRST_LAYOUT) - edge.left - edge.right;
        int height = 0;
        for (var child : parent.getComponents()) {
            if (child.isVisible()) {
                height += (height == 0 ? 0 : gap) + heightAt(child, width);
            }
        }
        return new Dimension(width + edge.left + edge.right, height + edge.top + edge.bottom);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(0, preferredLayoutSize(parent).height);
    }

    @Override
    public void layoutContainer(Container parent) {
        var edge = parent.getInsets();
        int width = parent.getWidth() - edge.left - edge.right;
        int y = edge.top;
        for (var child : parent.getComponents()) {
            if (child.isVisible()) {
                int height = heightAt(child, width);
                child.setBounds(edge.left, y, width, height);
                y += height + gap;
            }
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

    /** The height of a component at a width. */
    static int heightAt(Component child, int width) {
        if (child.getWidth() != width) {
            child.setSize(width, Math.max(1, child.getHeight()));
        }
        return child.getPreferredSize().height;
    }
}
