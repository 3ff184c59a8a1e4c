package planewright.api.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apiguardian.api.API;

/**
 * A shape at true size, in millimetres, x to the right and y upwards from the lower left corner of its sheet. As an input it
 * is an outline template of the journal or an SVG file; as a proposal it becomes a template.
 *
 * @param width of the sheet, mm; above 0, up to 10 000
 * @param height of the sheet, mm; above 0, up to 10 000
 * @param paths at least one
 */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public record Outline(double width, double height, List<Path> paths) {
    /** The longest edge of a sheet, mm; no sheet of a model aircraft is longer, so this was chosen. */
    public static final double MOST_MILLIMETRES = 10_000;

    public Outline {
        paths = List.copyOf(paths);
        if (!(width > 0) || !(height > 0) || !(width <= MOST_MILLIMETRES) || !(height <= MOST_MILLIMETRES)) {
            throw new IllegalArgumentException("the sheet of an outline is " + width + " mm × " + height
                    + " mm; accepted: above 0 mm and up to " + (int) MOST_MILLIMETRES + " mm");
        }
        if (paths.isEmpty()) {
            throw new IllegalArgumentException("an outline has no lines; accepted: 1 or more");
        }
    }

    /**
     * Pieces that follow one another.
     *
     * @param start where the first begins, mm
     * @param pieces at least one
     * @param closed whether a straight line joins the end to the start
     */
    public record Path(Point start, List<Piece> pieces, boolean closed) {
        public Path {
            pieces = List.copyOf(pieces);
            if (pieces.isEmpty()) {
                throw new IllegalArgumentException("a path of an outline has no pieces; accepted: 1 or more");
            }
        }

        /** Straight pieces that nowhere stray further from the path than the tolerance, mm. */
        private Drawing.Path flattened(double tolerance) {
            var points = new ArrayList<Point>();
            points.add(start);
            for (var piece : pieces) {
                if (piece instanceof Curve curve) {
                    curve.flatten(points.get(points.size() - 1), tolerance, points);
                } else {
                    points.add(piece.end());
                }
            }
            return new Drawing.Path(points, closed);
        }
    }

    /** What leads on from where a path has come to. */
    public sealed interface Piece {
        /**
         * Where it leads to.
         *
         * @return the point, mm
         */
        Point end();
    }

    /**
     * A straight line.
     *
     * @param end where it leads to, mm
     */
    public record Line(Point end) implements Piece {}

    /**
     * A cubic Bézier curve.
     *
     * @param first the control point towards which it sets out, mm
     * @param second the control point from which it arrives, mm
     * @param end where it leads to, mm
     */
    public record Curve(Point first, Point second, Point end) implements Piece {
        /**
         * As many equal steps of the parameter as keep each chord within the tolerance: with M the greatest second
         * derivative, 6·max(|P₀−2P₁+P₂|, |P₁−2P₂+P₃|), a chord over a step of 1/n strays by M/(8n²) at most. The error of
         * linear interpolation, as in any numerical analysis, for example Davis, Interpolation and Approximation, 3.1.
         */
        private void flatten(Point from, double tolerance, List<Point> points) {
            double bend = 6 * Math.max(bend(from, first, second), bend(first, second, end));
            int steps = (int) Math.max(1, Math.ceil(Math.sqrt(bend / (8 * tolerance))));
            for (int i = 1; i < steps; i++) {
                points.add(at(from, (double) i / steps));
            }
            points.add(end);
        }

        private Point at(Point from, double t) {
            double u = 1 - t;
            double b0 = u * u * u;
            double b1 = 3 * u * u * t;
            double b2 = 3 * u * t * t;
            double b3 = t * t * t;
            return new Point(
                    b0 * from.x() + b1 * first.x() + b2 * second.x() + b3 * end.x(),
                    b0 * from.y() + b1 * first.y() + b2 * second.y() + b3 * end.y());
        }

        private static double bend(Point a, Point b, Point c) {
            return Math.hypot(a.x() - 2 * b.x() + c.x(), a.y() - 2 * b.y() + c.y());
        }
    }

    /**
     * An outline of straight pieces on a sheet that just holds them.
     *
     * @param drawn at least one path, mm; wherever it lies, the lower left corner of all becomes that of the sheet
     * @return the outline
     * @throws IllegalArgumentException if there is no path, or all points lie on one line across or upwards
     */
    public static Outline around(List<Drawing.Path> drawn) {
        double left = extreme(drawn, point -> -point.x());
        double low = extreme(drawn, point -> -point.y());
        return new Outline(
                extreme(drawn, Point::x) + left,
                extreme(drawn, Point::y) + low,
                drawn.stream().map(path -> moved(path, left, low)).toList());
    }

    private static double extreme(List<Drawing.Path> drawn, ToDoubleFunction<Point> along) {
        return drawn.stream()
                .flatMap(path -> path.points().stream())
                .mapToDouble(along)
                .max()
                .orElse(0);
    }

    private static Path moved(Drawing.Path path, double right, double up) {
        var points = path.points().stream()
                .map(point -> new Point(point.x() + right, point.y() + up))
                .toList();
        return new Path(
                points.get(0), points.stream().skip(1).<Piece>map(Line::new).toList(), path.closed());
    }

    /**
     * To draw and to print.
     *
     * @param title what is drawn
     * @param tolerance by how much the straight pieces may stray from the outline, mm; above 0
     * @return the drawing, its lines to be cut along
     */
    public Drawing drawing(String title, double tolerance) {
        return new Drawing(
                title,
                List.of(new Drawing.Layer(
                        Drawing.Use.CUT,
                        paths.stream()
                                .map(path -> (Drawing.Shape) path.flattened(tolerance))
                                .toList())));
    }
}
