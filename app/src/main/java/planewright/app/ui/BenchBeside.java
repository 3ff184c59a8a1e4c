package planewright.app.ui;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import planewright.app.ui.bench.BenchRail;
import planewright.app.ui.common.Workroom;

/** The pages with the bench beside them, or where the window is too narrow for both, the bench in front of them. */
final class BenchBeside extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int BENCH_WIDTH = 270;
    private static final int LEAST_UNASKED = 1075;
    private static final int LEAST_FOR_BOTH = 700;
    private static final String BENCH = "bench";
    private static final String SHOWN = "shown";
    private static final String HIDDEN = "hidden";

    private final transient Workroom room;
    private final JPanel pages;
    private final BenchRail bench;
    private boolean inFront;

    BenchBeside(Workroom room, JPanel pages, BenchRail bench) {
        super(new MigLayout("insets 0, gap 0, fill, hidemode 3", "[grow,fill][pref!]", "[grow,fill]"));
        this.room = room;
        this.pages = pages;
        this.bench = bench;
        setMinimumSize(new Dimension());
        add(pages, "wmin 0");
        add(bench);
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                place();
            }
        });
        room.onChange(this::place);
        place();
    }

    /** Shows the bench, or hides it. */
    void toggle() {
        if (isNarrow()) {
            inFront = !inFront;
        } else {
            room.memory().put(BENCH, bench.isVisible() ? HIDDEN : SHOWN);
            room.remembered();
        }
        place();
    }

    /** A page is wanted: nothing stands in front of it any longer. */
    void showPages() {
        inFront = false;
        place();
    }

    private boolean isNarrow() {
        return getWidth() > 0 && getWidth() < UIScale.scale(LEAST_FOR_BOTH);
    }

    /** As the builder has chosen; before any choice, where there is room for it. */
    private void place() {
        boolean narrow = isNarrow();
        boolean chosen =
                room.memory().get(BENCH).map(SHOWN::equals).orElseGet(() -> getWidth() >= UIScale.scale(LEAST_UNASKED));
        boolean shown = narrow ? inFront : chosen;
        pages.setVisible(!(narrow && inFront));
        bench.setPreferredSize(new Dimension(narrow ? getWidth() : UIScale.scale(BENCH_WIDTH), 0));
        bench.setVisible(shown);
        revalidate();
    }
}
