package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import java.awt.event.HierarchyEvent;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.event.ChangeListener;

/** A card in a column that scrolls. Its foot stays in view while more of its body lies below: what ends the work is at hand. */
public class FootedCard extends Card {
    private static final long serialVersionUID = 1L;

    private final JPanel body;
    private final JPanel foot;
    private final int gap;
    private transient JViewport viewport;
    private final transient ChangeListener scrolled = event -> place();

    /**
     * @param gap between neighbours, px
     */
    public FootedCard(int gap) {
        super(null);
        this.gap = gap;
        foot = new Foot(gap);
        body = new Body(gap);
        setLayout(new Below());
        add(foot);
        add(body);
        addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.PARENT_CHANGED) != 0) {
                follow();
            }
        });
    }

    /** What scrolls. */
    protected final JPanel body() {
        return body;
    }

    /** What stays in view. */
    protected final JPanel foot() {
        return foot;
    }

    private void follow() {
        if (viewport != null) {
            viewport.removeChangeListener(scrolled);
        }
        viewport = (JViewport) SwingUtilities.getAncestorOfClass(JViewport.class, this);
        if (viewport != null) {
            viewport.addChangeListener(scrolled);
        }
    }

    /** The foot may stand in front of the body. */
    @Override
    public final boolean isOptimizedDrawingEnabled() {
        return false;
    }

    private void place() {
        var edge = getInsets();
        int below = getHeight() - edge.bottom - foot.getHeight();
        var seen = getVisibleRect();
        int inView = seen.isEmpty() ? below : seen.y + seen.height - foot.getHeight();
        foot.setLocation(edge.left, Math.max(edge.top, Math.min(below, inView)));
    }

    /** Body over foot, each as high as it needs to be. */
    private final class Below implements LayoutManager {
        @Override
        public Dimension preferredLayoutSize(Container parent) {
            var edge = getInsets();
            int width = getWidth() - edge.left - edge.right;
            return new Dimension(
                    getWidth(), edge.top + Stack.heightAt(body, width) + Stack.heightAt(foot, width) + edge.bottom);
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return new Dimension(0, preferredLayoutSize(parent).height);
        }

        @Override
        public void layoutContainer(Container parent) {
            var edge = getInsets();
            int width = getWidth() - edge.left - edge.right;
            body.setBounds(edge.left, edge.top, width, Stack.heightAt(body, width));
            foot.setSize(width, Stack.heightAt(foot, width));
            place();
        }

        @Override
        public void addLayoutComponent(String name, Component child) {
            // children carry no constraints
        }

        @Override
        public void removeLayoutComponent(Component child) {
            // nothing is remembered of children
        }
    }

    /** Whatever is to be seen of the body is to be seen above the foot. */
    private final class Body extends JPanel {
        private static final long serialVersionUID = 1L;

        Body(int gap) {
            super(new Stack(gap));
            setOpaque(false);
        }

        @Override
        public void scrollRectToVisible(Rectangle wanted) {
            super.scrollRectToVisible(
                    new Rectangle(wanted.x, wanted.y, wanted.width, wanted.height + foot.getHeight()));
        }
    }

    private final class Foot extends JPanel {
        private static final long serialVersionUID = 1L;

        Foot(int gap) {
            super(new Stack(gap));
            setBorder(BorderFactory.createEmptyBorder(gap, 0, gap / 2, 0));
        }

        @Override
        protected void paintComponent(Graphics g) {
            g.setColor(Look.colour("card"));
            g.fillRect(0, 0, getWidth(), getHeight());
            if (getY() < body.getY() + body.getHeight()) {
                g.setColor(Look.colour("line"));
                g.drawLine(0, 0, getWidth(), 0);
            }
        }
    }
}
