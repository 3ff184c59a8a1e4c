package planewright.app.ui.planform;

import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;

/** As wide as its scroll pane, and as high, but never lower than what it holds can be used in. */
final class Tall extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;
    private static final int STEP = 24;

    private int least;

    Tall(LayoutManager layout) {
        super(layout);
        setOpaque(false);
    }

    /** How high it is at the least, px. */
    void setLeast(int height) {
        if (height != least) {
            least = height;
            revalidate();
        }
    }

    JScrollPane scrolled() {
        var scroll = new JScrollPane(this);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        return scroll;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(super.getPreferredSize().width, least);
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
        return getParent().getHeight() >= least;
    }
}
