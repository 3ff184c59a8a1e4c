package planewright.app.ui.common;

import java.awt.EventQueue;
import java.util.Iterator;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JComponent;

/**
 * Fills a column a few components at a time, the first ones at once: a long list is there to be read while the rest of it is made, and
 * never holds up the event thread.
 */
public final class Gradually {
    /** Cards take a few milliseconds each. */
    public static final int AT_ONCE = 5;

    private final Column column;
    private Iterator<Supplier<JComponent>> left =
            Stream.<Supplier<JComponent>>empty().iterator();

    public Gradually(Column column) {
        this.column = column;
    }

    /** Adds components to the column; what another list has still to come is dropped. */
    public void fill(Stream<Supplier<JComponent>> components) {
        left = components.iterator();
        goOn(left);
    }

    /** Adds no more. */
    public void drop() {
        fill(Stream.empty());
    }

    private void goOn(Iterator<Supplier<JComponent>> mine) {
        if (mine != left) {
            return;
        }
        for (int i = 0; i < AT_ONCE && mine.hasNext(); i++) {
            column.add(mine.next().get());
        }
        column.revalidate();
        column.repaint();
        if (mine.hasNext()) {
            EventQueue.invokeLater(() -> goOn(mine));
        }
    }
}
