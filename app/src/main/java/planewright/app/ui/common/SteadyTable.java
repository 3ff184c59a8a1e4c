package planewright.app.ui.common;

import javax.swing.JTable;
import javax.swing.JViewport;
import javax.swing.event.ChangeEvent;
import javax.swing.table.TableModel;

/**
 * A table in which a cell stays open with what was typed when columns get other widths, as when the window is resized. It is as
 * wide as its place; where that is too narrow for its columns it scrolls instead of cutting them.
 */
public final class SteadyTable extends JTable {
    private static final long serialVersionUID = 1L;

    private transient Runnable closed = () -> {};

    public SteadyTable(TableModel model) {
        super(model);
    }

    /** Hears when a cell that was open is not any more, and what was typed has been taken or dropped. */
    public void onClosed(Runnable listener) {
        closed = listener;
    }

    @Override
    public void removeEditor() {
        boolean open = isEditing();
        super.removeEditor();
        if (open) {
            closed.run();
        }
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() instanceof JViewport view && getPreferredSize().width <= view.getWidth();
    }

    @Override
    public void columnMarginChanged(ChangeEvent event) {
        if (isEditing()) {
            resizeAndRepaint();
        } else {
            super.columnMarginChanged(event);
        }
    }
}
