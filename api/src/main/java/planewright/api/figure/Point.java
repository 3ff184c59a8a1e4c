package planewright.api.figure;

/**
 * A point of a drawing or of a line in a chart.
 *
 * @param x in millimetres to the right in a drawing, in the unit of the horizontal axis in a chart
 * @param y in millimetres upwards in a drawing, in the unit of the vertical axis in a chart
 */
public record Point(double x, double y) {
    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a point is (" + x + ", " + y + "); accepted: finite numbers");
        }
    }
}
