package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Dimension;
import java.util.HashSet;
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

    /** Shows these; those that are shown already and keep their order stay untouched, so that whoever types in one types on. */
    public void fill(List<? extends Component> all) {
        var wanted = new HashSet<Component>(all);
        for (int i = getComponentCount() - 1; i >= 0; i--) {
            if (!wanted.contains(getComponent(i))) {
                remove(i);
            }
        }
        for (int i = 0; i < all.size(); i++) {
            if (i >= getComponentCount() || getComponent(i) != all.get(i)) {
                add(all.get(i), i);
            }
        }
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
