package planewright.app.ui.planform;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import planewright.api.journal.Planform;
import planewright.app.figure.FigureColours;

/** Paints a shape as what other things are drawn on. */
public final class Silhouette {
    private static final int FAINT = 26;
    private static final int THROUGH = 120;
    private static final BasicStroke DASHED =
            new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {5, 4}, 0);

    private Silhouette() {}

    /** Smooth lines and letters from now on. */
    public static void smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    }

    /** All of a shape, in quiet. */
    public static void paint(Graphics2D g, Planform shape, Sight sight, Ground ground, FigureColours colours) {
        g.setStroke(new BasicStroke(1));
        paint(g, shape, sight, ground, colours.quiet(), colours.faint(colours.quiet(), FAINT));
    }

    static void paint(Graphics2D g, Planform shape, Sight sight, Ground ground, Color line, Color fill) {
        for (var outline : ground.outlines(shape, sight)) {
            g.setColor(fill);
            g.fill(outline);
            g.setColor(line);
            g.draw(outline);
        }
    }

    /** The datum as a cross of thin lines. */
    public static void datum(Graphics2D g, Ground ground, int width, int height, FigureColours colours) {
        var at = ground.at(0, 0);
        g.setStroke(DASHED);
        g.setColor(colours.faint(colours.quiet(), THROUGH));
        g.draw(new Line2D.Double(0, at.getY(), width, at.getY()));
        g.draw(new Line2D.Double(at.getX(), 0, at.getX(), height));
    }
}
