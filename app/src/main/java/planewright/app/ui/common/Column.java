package planewright.app.ui.common;

import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JViewport;

/** A stack that scrolls. */
public final class Column extends UpAndDown {
    private static final long serialVersionUID = 1L;

    /**
     * @param gap between neighbours, px
     * @param edge around all of them, px
     */
    public Column(int gap, int edge) {
        super(new Stack(gap));
        setBorder(BorderFactory.createEmptyBorder(edge, edge, edge, edge));
    }

    @Override
    public Dimension getPreferredSize() {
        if (getParent() instanceof JViewport view && view.getWidth() > 0 && view.getWidth() != getWidth()) {
            setSize(view.getWidth(), getHeight());
        }
        return super.getPreferredSize();
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
