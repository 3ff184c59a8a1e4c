package planewright.app.ui.planform;

import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import planewright.api.journal.Planform;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.shared.lattice.BalanceBand;

/**
 * The shape as a drawing. Handles are dragged or moved by arrow keys; the ground is dragged and zoomed. What a drag, or a run of
 * keys, has changed is one edit.
 */
final class PlanformView extends GroundView {
    private static final long serialVersionUID = 1L;
    private static final double REACH = 9;
    private static final int LARGER = 10;

    private final transient PlanformDraft draft;
    private final transient HandleWords words;
    private transient Optional<Handle> held = Optional.empty();
    private transient Optional<BalanceBand> balance = Optional.empty();
    private transient Optional<Double> balancePoint = Optional.empty();
    private transient Runnable told = () -> {};
    private Sight sight = Sight.ABOVE;
    private boolean dragging;
    private int fromX;
    private int fromY;
    private double snap = 0.001;

    PlanformView(PlanformDraft draft, HandleWords words) {
        super(new Dimension(520, 360), new Dimension(160, 160));
        this.draft = draft;
        this.words = words;
        setName("planform-drawing");
        listen(new Mouse(), new Keys());
        name();
    }

    /** Hears when another handle is held. */
    void onHold(Runnable listener) {
        told = listener;
    }

    /** Steps to which stations are rounded, m; 0 for none. */
    void snapTo(double step) {
        snap = step;
    }

    Sight sight() {
        return sight;
    }

    void look(Sight from) {
        if (from != sight) {
            sight = from;
            fit();
        }
    }

    /** What the handle that is held is and where, in words; empty where none is. */
    String holding() {
        return draft.shape()
                .flatMap(shape ->
                        held.filter(handle -> handle.isIn(shape)).map(handle -> words.of(shape, handle, sight)))
                .orElse("");
    }

    void show(Optional<BalanceBand> band, Optional<Double> point) {
        balance = band;
        balancePoint = point;
        repaint();
    }

    /** The shape or the surface that is chosen is another. */
    void refresh() {
        if (held.filter(handle -> handle.surface() != draft.chosen()).isPresent()) {
            hold(Optional.empty());
        }
        draft.shape().ifPresent(shape -> {
            if (!dragging && !draft.isTrying() && !isSeen(shape)) {
                look(Sight.of(shape.surfaces().get(draft.chosen())));
            }
        });
        name();
        repaint();
    }

    private boolean isSeen(Planform shape) {
        return shape.surfaces().get(draft.chosen()).panels().stream()
                .allMatch(panel -> Math.abs(sight.share(panel)) > 0.3);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        var g = (Graphics2D) graphics.create();
        var colours = Look.figures();
        g.setColor(colours.paper());
        g.fillRect(0, 0, getWidth(), getHeight());
        draft.shape().ifPresent(shape -> {
            var surface = shape.surfaces().get(draft.chosen());
            var picture = new PlanformPicture(g, shape, sight, ground(), colours);
            picture.datum(getWidth(), getHeight());
            picture.surfaces(draft.chosen());
            picture.sections(surface);
            balance.ifPresent(picture::balance);
            balancePoint.ifPresent(picture::balancePoint);
            picture.handles(handles(shape), held, isFocusOwner());
        });
        g.dispose();
    }

    @Override
    protected Optional<Ground> fitting() {
        return draft.shape().map(shape -> Ground.fitting(shape, sight, getWidth(), getHeight()));
    }

    private List<Handle> handles(Planform shape) {
        return Handle.of(shape, draft.chosen());
    }

    private void hold(Optional<Handle> handle) {
        held = handle;
        name();
        repaint();
        told.run();
    }

    private void name() {
        var holding = holding();
        getAccessibleContext()
                .setAccessibleName(
                        holding.isEmpty() ? Texts.PLANFORM_DRAWING.text() : Texts.PLANFORM_HANDLE.text(holding));
    }

    @Override
    protected void keepTried() {
        if (!dragging && draft.isTrying()) {
            draft.keep(words.edit(held, draft));
        }
    }

    private Optional<Handle> near(int x, int y) {
        return draft.shape().flatMap(shape -> {
            Handle nearest = null;
            double least = REACH;
            for (var handle : handles(shape)) {
                double off = ground().at(handle.place(shape), sight).distance(x, y);
                if (off < least) {
                    nearest = handle;
                    least = off;
                }
            }
            return Optional.ofNullable(nearest);
        });
    }

    /** The surface under a pixel, the smallest where several are. */
    private Optional<Integer> surfaceAt(int x, int y) {
        return draft.shape().flatMap(shape -> Hit.surface(shape, sight, ground(), x, y));
    }

    private void step(int across, int aft) {
        draft.shape()
                .ifPresent(shape -> held.filter(handle -> handle.isIn(shape)).ifPresent(handle -> {
                    stand();
                    draft.tryOut(handle.stepped(shape, sight, across, aft, snap > 0 ? snap : 0.001));
                    keepSoon();
                    name();
                    told.run();
                }));
    }

    /** The next handle, or the one before; beyond the last the next component has its turn. */
    private void go(int by) {
        var shape = draft.shape();
        if (shape.isEmpty()) {
            leave(by);
            return;
        }
        var all = handles(shape.get());
        int next = held.map(all::indexOf).map(at -> at + by).orElse(by > 0 ? 0 : all.size() - 1);
        if (next < 0 || next >= all.size()) {
            hold(Optional.empty());
            leave(by);
        } else {
            hold(Optional.of(all.get(next)));
        }
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            keep();
            requestFocusInWindow();
            fromX = event.getX();
            fromY = event.getY();
            var near = near(fromX, fromY);
            if (near.isEmpty()) {
                surfaceAt(fromX, fromY).ifPresent(draft::choose);
            }
            hold(near);
            dragging = near.isPresent();
            stand();
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            if (dragging) {
                draft.shape()
                        .ifPresent(shape -> draft.tryOut(held.orElseThrow()
                                .moved(shape, sight, ground().across(event.getX()), ground().aft(event.getY()), snap)));
                name();
                told.run();
            } else {
                drag(event.getX() - fromX, event.getY() - fromY);
                fromX = event.getX();
                fromY = event.getY();
            }
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            dragging = false;
            keep();
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            setCursor(Cursor.getPredefinedCursor(
                    near(event.getX(), event.getY()).isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
        }
    }

    private final class Keys extends KeyAdapter {
        @Override
        public void keyPressed(KeyEvent event) {
            int by = event.isShiftDown() ? LARGER : 1;
            switch (event.getKeyCode()) {
                case KeyEvent.VK_LEFT -> step(-by, 0);
                case KeyEvent.VK_RIGHT -> step(by, 0);
                case KeyEvent.VK_UP -> step(0, -by);
                case KeyEvent.VK_DOWN -> step(0, by);
                case KeyEvent.VK_TAB -> {
                    keep();
                    go(event.isShiftDown() ? -1 : 1);
                }
                case KeyEvent.VK_ESCAPE -> {
                    if (!draft.isTrying()) {
                        return;
                    }
                    forget();
                    dragging = false;
                    draft.drop();
                    told.run();
                }
                case KeyEvent.VK_SHIFT -> {
                    return;
                }
                default -> {
                    keep();
                    return;
                }
            }
            event.consume();
        }
    }
}
