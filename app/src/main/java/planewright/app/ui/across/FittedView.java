package planewright.app.ui.across;

import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import planewright.app.figure.Fitted;
import planewright.app.figure.FittedPicture;
import planewright.app.ui.common.Look;

/** The picture: the pointer on a dot names its build, a click leads there. */
final class FittedView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final double NEAR = 9;
    private static final double RING = 8;

    /** Hears which dot was clicked, by its place in the list. */
    interface Wanted {
        void dot(int place);
    }

    private transient Optional<Fitted> fitted = Optional.empty();
    private transient List<Point2D> places = List.of();
    private transient Optional<Integer> chosen = Optional.empty();

    FittedView(Wanted wanted) {
        setName("across-chart");
        setOpaque(false);
        setMinimumSize(new Dimension(160, 120));
        setPreferredSize(new Dimension(420, 300));
        setToolTipText("");
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                at(event).ifPresent(wanted::dot);
            }
        });
        addMouseMotionListener(new MouseAdapter() {
            @Override
            public void mouseMoved(MouseEvent event) {
                setCursor(
                        Cursor.getPredefinedCursor(at(event).isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
            }
        });
    }

    void show(Fitted shown, String words) {
        fitted = Optional.of(shown);
        getAccessibleContext().setAccessibleName(shown.title());
        getAccessibleContext().setAccessibleDescription(words);
        repaint();
    }

    /** Marks a dot by its place in the list; none where it is empty. */
    void choose(Optional<Integer> dot) {
        chosen = dot;
        repaint();
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return at(event).map(dot -> fitted.orElseThrow().dots().get(dot).name()).orElse(null);
    }

    /** The nearest dot under the pointer. */
    private Optional<Integer> at(MouseEvent event) {
        Optional<Integer> nearest = Optional.empty();
        double least = NEAR;
        for (int i = 0; i < places.size(); i++) {
            double away = places.get(i).distance(event.getPoint());
            if (away < least) {
                least = away;
                nearest = Optional.of(i);
            }
        }
        return nearest;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        var g = (Graphics2D) graphics.create();
        fitted.ifPresent(shown -> {
            places = FittedPicture.paint(
                    shown, g, new Rectangle2D.Double(0, 0, getWidth(), getHeight()), Look.figures());
            chosen.filter(dot -> dot < places.size()).ifPresent(dot -> ring(g, places.get(dot)));
        });
        g.dispose();
    }

    private static void ring(Graphics2D g, Point2D at) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Look.figures().ink());
        g.setStroke(new BasicStroke(1.6f));
        g.draw(new Ellipse2D.Double(at.getX() - RING, at.getY() - RING, 2 * RING, 2 * RING));
    }
}
