package planewright.app.ui.common;

import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;

/** What scrolls up and down only, as wide as its scroll pane. */
public abstract class UpAndDown extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;
    private static final int STEP = 24;

    protected UpAndDown(LayoutManager layout) {
        super(layout);
        setOpaque(false);
    }

    /** This in a scroll pane without an edge. */
    public final JScrollPane scrolled() {
        var scroll = new JScrollPane(this);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getViewport().setOpaque(false);
        scroll.setOpaque(false);
        return scroll;
    }

    @Override
    public final Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public final int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return STEP;
    }

    @Override
    public final int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height - STEP;
    }

    @Override
    public final boolean getScrollableTracksViewportWidth() {
        return true;
    }
}
