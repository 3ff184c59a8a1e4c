package planewright.app.ui.common;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.UIManager;
import planewright.api.journal.Planform;
import planewright.shared.planform.Outlines;

/** A small plan view of an aircraft; two dashed axes where its shape is not known. */
public final class PlanView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final double MARGIN = 3;
    private static final BasicStroke AXIS =
            new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {6, 3, 1, 3}, 0);

    private final transient Path2D shape = new Path2D.Double(Path2D.WIND_NON_ZERO);
    private transient Optional<Color> ink = Optional.empty();

    public PlanView(Optional<Planform> planform, String name, int width, int height) {
        setPreferredSize(new Dimension(width, height));
        setOpaque(false);
        setMinimumSize(new Dimension(width, height));
        getAccessibleContext().setAccessibleName(name);
        for (var path : planform.map(Outlines::plan).orElse(java.util.List.of())) {
            boolean first = true;
            for (var point : path.points()) {
                if (first) {
                    shape.moveTo(point.x(), -point.y());
                } else {
                    shape.lineTo(point.x(), -point.y());
                }
                first = false;
            }
            shape.closePath();
        }
    }

    /** Draws it in another colour, such as that of words on what is selected. */
    public void setInk(Optional<Color> ink) {
        this.ink = ink;
    }

    @Override
    protected void paintComponent(Graphics g) {
        var own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        var bounds = shape.getBounds2D();
        if (bounds.isEmpty()) {
            axes(own);
        } else {
            double scale = Math.min(
                    (getWidth() - 2 * MARGIN) / bounds.getWidth(), (getHeight() - 2 * MARGIN) / bounds.getHeight());
            var place = AffineTransform.getTranslateInstance(getWidth() / 2.0, getHeight() / 2.0);
            place.scale(scale, scale);
            place.translate(-bounds.getCenterX(), -bounds.getCenterY());
            var placed = place.createTransformedShape(shape);
            own.setColor(ink.orElseGet(() -> UIManager.getColor("Component.accentColor")));
            own.fill(placed);
            own.setColor(UIManager.getColor("Label.foreground"));
            own.setStroke(new BasicStroke(0.8f));
            own.draw(placed);
        }
        own.dispose();
    }

    /** Centre line and span of what is still to be drawn. */
    private void axes(Graphics2D own) {
        double across = Math.min(getWidth(), 2.0 * getHeight()) / 3;
        double middle = getWidth() / 2.0;
        double high = getHeight() / 2.0;
        own.setColor(ink.orElseGet(() -> Look.colour("quiet")));
        own.setStroke(AXIS);
        own.draw(new Line2D.Double(middle - across, high, middle + across, high));
        own.draw(new Line2D.Double(middle, high - across / 2, middle, high + across / 2));
    }
}
