package planewright.app.ui.common;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.Scrollable;

/** What scrolls up and down only: a stack as wide as its scroll pane. */
public final class Column extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;
    private static final int STEP = 24;

    /**
     * @param gap between neighbours, px
     * @param edge around all of them, px
     */
    public Column(int gap, int edge) {
        super(new Stack(gap));
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(edge, edge, edge, edge));
    }

    /** This column in a scroll pane without an edge. */
    public JScrollPane scrolled() {
        var scroll = new JScrollPane(this);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getViewport().setOpaque(false);
        scroll.setOpaque(false);
        return scroll;
    }

    @Override
    public Dimension getPreferredSize() {
        if (getParent() instanceof JViewport view && view.getWidth() > 0 && view.getWidth() != getWidth()) {
            setSize(view.getWidth(), getHeight());
        }
        return super.getPreferredSize();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return STEP;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height - STEP;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
