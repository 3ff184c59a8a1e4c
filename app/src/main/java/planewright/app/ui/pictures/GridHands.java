package planewright.app.ui.pictures;

import java.awt.event.InputEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Locale;
import java.util.function.IntUnaryOperator;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;

/** Keys and mouse on the grid. */
final class GridHands {
    private static final int DRAG_FROM = 6;
    private static final int LAST = Integer.MAX_VALUE;
    private static final long TYPED_TOGETHER_MILLIS = 1200;

    private final PictureGrid grid;
    private final Runnable open;
    private final Runnable mayDrag;

    private GridHands(PictureGrid grid, Runnable open, Runnable mayDrag) {
        this.grid = grid;
        this.open = open;
        this.mayDrag = mayDrag;
    }

    /**
     * @param open shows the chosen picture large
     * @param mayDrag runs when a drag of what is chosen may begin
     */
    static void on(PictureGrid grid, Runnable open, Runnable mayDrag) {
        var hands = new GridHands(grid, open, mayDrag);
        hands.keys();
        grid.addKeyListener(new Ahead(grid));
        var mouse = hands.new Mouse();
        grid.addMouseListener(mouse);
        grid.addMouseMotionListener(mouse);
    }

    private void keys() {
        moving("LEFT", place -> place - 1);
        moving("RIGHT", place -> place + 1);
        moving("UP", place -> grid.rows().above(place));
        moving("DOWN", place -> grid.rows().below(place));
        moving("HOME", place -> 0);
        moving("END", place -> LAST);
        moving("PAGE_UP", place -> lines(place, -1));
        moving("PAGE_DOWN", place -> lines(place, 1));
        key("ENTER", open);
        key("ctrl A", () -> grid.chosen().all(grid.pictures().size()));
        key("ctrl SPACE", () -> {
            if (grid.chosen().lead() >= 0) {
                grid.chosen().toggle(grid.chosen().lead());
            }
        });
        key(
                "ctrl C",
                () -> TransferHandler.getCopyAction()
                        .actionPerformed(
                                new java.awt.event.ActionEvent(grid, java.awt.event.ActionEvent.ACTION_PERFORMED, "")));
        key(
                "ctrl V",
                () -> TransferHandler.getPasteAction()
                        .actionPerformed(
                                new java.awt.event.ActionEvent(grid, java.awt.event.ActionEvent.ACTION_PERFORMED, "")));
    }

    private int lines(int place, int way) {
        int at = place;
        int cell = grid.rows().cell(place).height;
        for (int line = Math.max(1, grid.getVisibleRect().height / cell); line > 0; line--) {
            at = way < 0 ? grid.rows().above(at) : grid.rows().below(at);
        }
        return at;
    }

    /** Alone the key chooses another picture; with Shift all up to it. */
    private void moving(String stroke, IntUnaryOperator to) {
        key(stroke, () -> go(to, false));
        key("shift " + stroke, () -> go(to, true));
    }

    private void go(IntUnaryOperator to, boolean extend) {
        int count = grid.pictures().size();
        if (count == 0) {
            return;
        }
        int lead = grid.chosen().lead();
        int wanted = to.applyAsInt(Math.max(0, lead));
        int place = lead < 0 && wanted != LAST ? 0 : Math.max(0, Math.min(count - 1, wanted));
        if (extend) {
            grid.chosen().extendTo(place);
        } else {
            grid.chosen().only(place);
        }
        grid.reveal();
    }

    private void key(String stroke, Runnable action) {
        grid.getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
        grid.getActionMap().put(stroke, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(java.awt.event.ActionEvent event) {
                action.run();
            }
        });
    }

    /** Letters that are typed one after the other choose the next picture whose words hold them. */
    private static final class Ahead extends KeyAdapter {
        private final PictureGrid grid;
        private String typed = "";
        private long last;

        Ahead(PictureGrid grid) {
            this.grid = grid;
        }

        @Override
        public void keyTyped(KeyEvent event) {
            if (Character.isISOControl(event.getKeyChar())
                    || (event.getModifiersEx() & (InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK)) != 0) {
                return;
            }
            boolean together = event.getWhen() - last < TYPED_TOGETHER_MILLIS;
            last = event.getWhen();
            typed = (together ? typed : "") + String.valueOf(event.getKeyChar()).toLowerCase(Locale.ROOT);
            int count = grid.pictures().size();
            int from = Math.max(0, grid.chosen().lead()) + (typed.length() == 1 ? 1 : 0);
            for (int i = 0; i < count; i++) {
                int place = (from + i) % count;
                if (grid.pictures().get(place).bears(List.of(typed))) {
                    grid.chosen().only(place);
                    grid.reveal();
                    return;
                }
            }
        }
    }

    private final class Mouse extends MouseAdapter {
        private MouseEvent pressed;

        @Override
        public void mousePressed(MouseEvent event) {
            grid.requestFocusInWindow();
            pressed = null;
            int place = grid.rows().at(event.getX(), event.getY());
            if (place < 0 || !SwingUtilities.isLeftMouseButton(event)) {
                return;
            }
            pressed = event;
            if (event.isShiftDown()) {
                grid.chosen().extendTo(place);
            } else if (event.isControlDown()) {
                grid.chosen().toggle(place);
            } else if (!grid.chosen().has(place)) {
                grid.chosen().only(place);
            }
            mayDrag.run();
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            if (pressed != null && pressed.getPoint().distance(event.getPoint()) > DRAG_FROM) {
                var from = pressed;
                pressed = null;
                grid.getTransferHandler().exportAsDrag(grid, from, TransferHandler.COPY);
            }
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            int place = grid.rows().at(event.getX(), event.getY());
            if (pressed != null && place >= 0 && !event.isShiftDown() && !event.isControlDown()) {
                grid.chosen().only(place);
            }
            pressed = null;
        }

        @Override
        public void mouseClicked(MouseEvent event) {
            if (event.getClickCount() == 2
                    && SwingUtilities.isLeftMouseButton(event)
                    && grid.rows().at(event.getX(), event.getY()) >= 0) {
                open.run();
            }
        }
    }
}
