package planewright.app.ui.common;

import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;

/** A panel that is as wide as its scroll pane, so that text wraps and only height scrolls. */
public final class Column extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;
    private static final int STEP = 24;

    public Column(LayoutManager layout) {
        super(layout);
        setOpaque(false);
    }

    /** This column in a scroll pane without an edge. */
    public JScrollPane scrolled() {
        var scroll = new JScrollPane(this);
        scroll.setBorder(null);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getViewport().setOpaque(false);
        scroll.setOpaque(false);
        return scroll;
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
