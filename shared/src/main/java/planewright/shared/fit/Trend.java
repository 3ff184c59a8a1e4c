package planewright.shared.fit;

import java.util.Arrays;

/**
 * How one thing goes with another over points that scatter, and what the next point may be.
 *
 * @param law a straight line, or a power
 * @param line through the points, or through their logarithms
 */
public record Trend(Law law, StraightLine line) {
    /**
     * The trend of points.
     *
     * @throws IllegalArgumentException if {@link StraightLine#through} does, or a power is asked for and a number is not above 0
     */
    public static Trend of(Law law, double[] x, double[] y) {
        return new Trend(law, StraightLine.through(in(law, x), in(law, y)));
    }

    private static double[] in(Law law, double... values) {
        return Arrays.stream(values).map(law::in).toArray();
    }

    /** The a of its law. */
    public double factor() {
        return law.out(line.intercept());
    }

    /** The b of its law. */
    public double slope() {
        return line.slope();
    }

    /** What is expected at an x; of a power the median. */
    public double at(double x) {
        return law.out(line.at(law.in(x)));
    }

    /**
     * Where a new point at an x lies as often as the share says.
     *
     * @param share above 0 and below 1
     */
    public Interval predicted(double x, double share) {
        var inside = line.predicted(law.in(x), share);
        return new Interval(law.out(inside.low()), law.out(inside.middle()), law.out(inside.high()));
    }
}
