package planewright.app.ui.planform;

import java.awt.Dimension;
import java.awt.LayoutManager;
import planewright.app.ui.common.UpAndDown;

/** As high as its scroll pane, but never lower than what it holds can be used in. */
public final class Tall extends UpAndDown {
    private static final long serialVersionUID = 1L;

    private int least;

    public Tall(LayoutManager layout) {
        super(layout);
    }

    /** How high it is at the least, px. */
    public void setLeast(int height) {
        if (height != least) {
            least = height;
            revalidate();
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(super.getPreferredSize().width, least);
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent().getHeight() >= least;
    }
}
