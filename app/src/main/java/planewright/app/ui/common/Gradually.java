package planewright.app.ui.common;

import java.awt.EventQueue;
import java.util.Iterator;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JComponent;

/**
 * Fills a column a turn at a time, the first one at once: a long list is there to be read while the rest of it is made, and
 * never holds up the event thread.
 */
public final class Gradually {
    private final Column column;
    private final Turn turn = new Turn();
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
        turn.begin();
        while (mine.hasNext() && turn.goesOn()) {
            column.add(mine.next().get());
        }
        column.revalidate();
        column.repaint();
        if (mine.hasNext()) {
            EventQueue.invokeLater(() -> goOn(mine));
        }
    }
}
