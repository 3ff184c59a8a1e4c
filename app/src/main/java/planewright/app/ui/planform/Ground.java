package planewright.app.ui.planform;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import planewright.api.figure.Drawing;
import planewright.api.journal.Planform;
import planewright.shared.planform.Outlines;
import planewright.shared.planform.Place;

/**
 * Where a shape lies on the screen: x across to the right and stations aft downwards.
 *
 * @param scale pixels in a metre
 * @param left where the datum lies, px
 * @param top where the datum lies, px
 */
public record Ground(double scale, double left, double top) {
    private static final double MARGIN = 42;
    private static final double LEAST_SCALE = 20;
    private static final double MOST_SCALE = 40_000;
    private static final double LEAST_EXTENT = 0.05;

    /** All of a shape, in a component of a size. */
    static Ground fitting(Planform shape, Sight sight, int width, int height) {
        return fitting(bounds(shape, sight), width, height);
    }

    /** All between bounds in metres, across and aft. */
    public static Ground fitting(Rectangle2D bounds, int width, int height) {
        double scale = limited(Math.min(
                Math.max(1, width - 2 * MARGIN) / Math.max(LEAST_EXTENT, bounds.getWidth()),
                Math.max(1, height - 2 * MARGIN) / Math.max(LEAST_EXTENT, bounds.getHeight())));
        return new Ground(scale, width / 2.0 - scale * bounds.getCenterX(), height / 2.0 - scale * bounds.getCenterY());
    }

    /** The outlines of a shape as seen, each closed, in pixels. */
    List<Shape> outlines(Planform shape, Sight sight) {
        var place = new AffineTransform(scale / 1000, 0, 0, -scale / 1000, left, top);
        return seen(shape, sight).stream()
                .map(path -> place.createTransformedShape(line(path)))
                .toList();
    }

    private static Shape line(Drawing.Path path) {
        var line = new Path2D.Double();
        for (var point : path.points()) {
            if (line.getCurrentPoint() == null) {
                line.moveTo(point.x(), point.y());
            } else {
                line.lineTo(point.x(), point.y());
            }
        }
        line.closePath();
        return line;
    }

    /** The same in millimetres of a drawing whose y points up. */
    private static List<Drawing.Path> seen(Planform shape, Sight sight) {
        return sight == Sight.ABOVE
                ? Outlines.plan(shape)
                : Outlines.side(shape).stream().map(Ground::turned).toList();
    }

    public Point2D at(double across, double x) {
        return new Point2D.Double(left + scale * across, top + scale * x);
    }

    public Point2D at(Place place, Sight sight) {
        return at(sight.across(place), place.x());
    }

    /** Station across of a pixel, m. */
    public double across(double pixel) {
        return (pixel - left) / scale;
    }

    /** Station aft of a pixel, m. */
    public double aft(double pixel) {
        return (pixel - top) / scale;
    }

    public Ground moved(double right, double down) {
        return new Ground(scale, left + right, top + down);
    }

    /** Larger by a factor, what lies under a pixel staying there. */
    public Ground zoomed(double factor, double x, double y) {
        double wanted = limited(scale * factor);
        double by = wanted / scale;
        return new Ground(wanted, x - by * (x - left), y - by * (y - top));
    }

    private static Drawing.Path turned(Drawing.Path path) {
        return new Drawing.Path(
                path.points().stream()
                        .map(point -> new planewright.api.figure.Point(point.y(), -point.x()))
                        .toList(),
                path.closed());
    }

    /** Between where and where a shape is seen, m across and aft. */
    public static Rectangle2D bounds(Planform shape, Sight sight) {
        Rectangle2D bounds = null;
        for (var path : seen(shape, sight)) {
            for (var point : path.points()) {
                if (bounds == null) {
                    bounds = new Rectangle2D.Double(point.x() / 1000, -point.y() / 1000, 0, 0);
                }
                bounds.add(point.x() / 1000, -point.y() / 1000);
            }
        }
        return bounds == null ? new Rectangle2D.Double() : bounds;
    }

    private static double limited(double scale) {
        return Math.max(LEAST_SCALE, Math.min(MOST_SCALE, scale));
    }
}
