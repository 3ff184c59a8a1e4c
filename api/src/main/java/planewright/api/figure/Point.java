package planewright.api.figure;

import org.apiguardian.api.API;

/**
 * A point of a drawing or of a line in a chart.
 *
 * @param x in millimetres to the right in a drawing, in the unit of the horizontal axis in a chart
 * @param y in millimetres upwards in a drawing, in the unit of the vertical axis in a chart
 */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public record Point(double x, double y) {
    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a point is (" + x + ", " + y + "); accepted: finite numbers");
        }
    }
}
