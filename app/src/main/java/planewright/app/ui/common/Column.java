package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
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

    /** Shows these; the first ones that are shown already stay untouched, so that whoever types in one types on. */
    public void fill(List<? extends Component> all) {
        int same = 0;
        while (same < Math.min(all.size(), getComponentCount()) && getComponent(same) == all.get(same)) {
            same++;
        }
        while (getComponentCount() > same) {
            remove(getComponentCount() - 1);
        }
        all.subList(same, all.size()).forEach(this::add);
        revalidate();
        repaint();
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
