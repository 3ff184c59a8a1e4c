package planewright.app.ui.planform;

import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyListener;
import java.awt.event.MouseAdapter;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.Timer;

/**
 * A drawing on a ground that is dragged and zoomed, with things on it that are dragged or moved by keys. What a drag, or a run of
 * keys, has changed is one edit.
 */
public abstract class GroundView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final double ZOOM = 1.15;
    /** A run of keys has ended when none came for so long, ms. */
    private static final int REST = 600;

    private final Timer rest = new Timer(REST, event -> keep());
    private transient Optional<Ground> ground = Optional.empty();

    protected GroundView(Dimension wanted, Dimension least) {
        setFocusable(true);
        setFocusTraversalKeysEnabled(false);
        setPreferredSize(wanted);
        setMinimumSize(least);
        rest.setRepeats(false);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                keep();
                repaint();
            }
        });
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                fit();
            }
        });
        addMouseWheelListener(event -> known().ifPresent(now -> {
            ground = Optional.of(
                    now.zoomed(Math.pow(ZOOM, -event.getPreciseWheelRotation()), event.getX(), event.getY()));
            repaint();
        }));
    }

    /** The ground on which all is seen; empty where there is nothing. */
    protected abstract Optional<Ground> fitting();

    /** Makes what was tried out an edit, unless a drag is under way. */
    protected abstract void keepTried();

    protected final void listen(MouseAdapter mouse, KeyListener keys) {
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addKeyListener(keys);
    }

    /** Shows all of it, from then on whatever its size. */
    public final void fit() {
        ground = Optional.empty();
        repaint();
    }

    protected final Ground ground() {
        return known().orElseThrow();
    }

    private Optional<Ground> known() {
        return ground.or(this::fitting);
    }

    /** From now on the ground stays where it is, also when what is on it grows. */
    protected final void stand() {
        ground = known();
    }

    protected final void drag(double right, double down) {
        ground = known().map(now -> now.moved(right, down));
        repaint();
    }

    /** A key has changed something; when no other follows, it is kept. */
    protected final void keepSoon() {
        rest.restart();
    }

    protected final void keep() {
        rest.stop();
        keepTried();
    }

    /** What was tried out is not kept. */
    protected final void forget() {
        rest.stop();
    }

    /** The next component, or the one before, has its turn. */
    protected final void leave(int by) {
        if (by > 0) {
            transferFocus();
        } else {
            transferFocusBackward();
        }
    }
}
