package planewright.api.figure;

import java.util.List;
import org.apiguardian.api.API;

/**
 * A drawing at true size, in millimetres, x to the right and y upwards.
 *
 * @param title what is drawn
 * @param layers drawn in this order, later over earlier
 */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public record Drawing(String title, List<Layer> layers) {
    public Drawing {
        layers = List.copyOf(layers);
    }

    /** What the lines of a layer are for. */
    public enum Use {
        /** Cut along it. */
        CUT,
        /** Fold or score along it. */
        FOLD,
        /** The aircraft or a part of it, for orientation. */
        OUTLINE,
        /** A part that is placed, weighed or moved. */
        PART,
        /** A point or line to carry over to the work. */
        MARK,
        /** A measure with its figure. */
        DIMENSION,
        /** Words. */
        NOTE
    }

    /**
     * Shapes that serve one use.
     *
     * @param use what they are for
     * @param shapes drawn in this order
     */
    public record Layer(Use use, List<Shape> shapes) {
        public Layer {
            shapes = List.copyOf(shapes);
        }
    }

    /** One thing to draw. */
    public sealed interface Shape permits Path, Disc, Mark, Dimension, Note {}

    /**
     * Straight pieces through points.
     *
     * @param points at least two
     * @param closed whether the last joins the first
     */
    public record Path(List<Point> points, boolean closed) implements Shape {
        public Path {
            points = List.copyOf(points);
            if (points.size() < 2) {
                throw new IllegalArgumentException("a path has " + points.size() + " points; accepted: 2 or more");
            }
        }
    }

    /**
     * A filled circle.
     *
     * @param centre its middle
     * @param radius in millimetres, above 0
     * @param label written beside it; may be empty
     */
    public record Disc(Point centre, double radius, String label) implements Shape {
        public Disc {
            if (!(radius > 0) || Double.isInfinite(radius)) {
                throw new IllegalArgumentException("a disc's radius is " + radius + " mm; accepted: above 0 mm");
            }
        }
    }

    /** What a mark says. */
    public enum Sign {
        /** Where it balances: the quartered disc of the trade. */
        BALANCE_POINT,
        /** Where it should balance. */
        TARGET,
        /** Where stations are measured from. */
        DATUM,
        /** Where it is held up. */
        SUPPORT
    }

    /**
     * A sign of fixed size on screen and paper.
     *
     * @param at where
     * @param sign which
     * @param label written beside it; may be empty
     */
    public record Mark(Point at, Sign sign, String label) implements Shape {}

    /**
     * A measured distance with its figure.
     *
     * @param from one end
     * @param to the other end
     * @param text the figure with its unit
     */
    public record Dimension(Point from, Point to, String text) implements Shape {}

    /**
     * Words at a place.
     *
     * @param at left end of the base line
     * @param text the words
     */
    public record Note(Point at, String text) implements Shape {}
}
