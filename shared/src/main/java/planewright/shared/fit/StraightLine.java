package planewright.shared.fit;

import java.util.Arrays;

/**
 * The straight line y = a + b·x through points by ordinary least squares, each point counting alike and x taken as exact. Source
 * of all formulas: D. C. Montgomery and G. C. Runger, Applied Statistics and Probability for Engineers, chapter 11.
 */
public final class StraightLine {
    /** Fewer points than these leave nothing from which their scatter could be told. */
    public static final int LEAST = 3;

    private final int count;
    private final double middle;
    private final double height;
    private final double width;
    private final double slope;
    private final double scatter;

    private StraightLine(double[] x, double[] y) {
        count = x.length;
        middle = Arrays.stream(x).average().orElseThrow();
        height = Arrays.stream(y).average().orElseThrow();
        double squares = 0;
        double products = 0;
        for (int i = 0; i < count; i++) {
            squares += (x[i] - middle) * (x[i] - middle);
            products += (x[i] - middle) * (y[i] - height);
        }
        width = squares;
        slope = products / squares;
        double rest = 0;
        for (int i = 0; i < count; i++) {
            double off = y[i] - at(x[i]);
            rest += off * off;
        }
        scatter = Math.sqrt(rest / (count - 2));
    }

    /**
     * The line through points.
     *
     * @throws IllegalArgumentException if they are fewer than {@link #LEAST}, not finite, all at the same x, or x and y are not as
     *     many
     */
    public static StraightLine through(double[] x, double[] y) {
        if (x.length != y.length || x.length < LEAST) {
            throw new IllegalArgumentException(
                    x.length + " x and " + y.length + " y of a line; accepted: as many of both, " + LEAST + " or more");
        }
        if (!Arrays.stream(x).allMatch(Double::isFinite) || !Arrays.stream(y).allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("a point of a line is not finite; accepted: finite numbers");
        }
        if (Arrays.stream(x).allMatch(each -> each == x[0])) {
            throw new IllegalArgumentException(
                    "all points of a line are at x = " + x[0] + "; accepted: two different x");
        }
        return new StraightLine(x, y);
    }

    /** How many points it goes through. */
    public int count() {
        return count;
    }

    /** By how much y rises with x. */
    public double slope() {
        return slope;
    }

    /** Its y at x = 0. */
    public double intercept() {
        return at(0);
    }

    /** Its y at an x. */
    public double at(double x) {
        return height + slope * (x - middle);
    }

    /** Standard uncertainty of the slope. */
    public double slopeSpread() {
        return scatter / Math.sqrt(width);
    }

    /** Whether y goes with x at all: were the slope 0, points would look so steep less often than the rest of the share. */
    public boolean isSloping(double share) {
        return Math.abs(slope) > StudentT.within(share, count - 2) * slopeSpread();
    }

    /** Standard deviation of the points about the line. */
    public double scatter() {
        return scatter;
    }

    /** Standard uncertainty of the line itself at an x. */
    public double spreadAt(double x) {
        return scatter * Math.sqrt(1.0 / count + (x - middle) * (x - middle) / width);
    }

    /**
     * Where a new point at an x lies as often as the share says: a ± t·s·√(1 + 1/n + (x − x̄)²/Sₓₓ).
     *
     * @param share above 0 and below 1
     */
    public Interval predicted(double x, double share) {
        double y = at(x);
        double reach = StudentT.within(share, count - 2) * Math.hypot(scatter, spreadAt(x));
        return new Interval(y - reach, y, y + reach);
    }
}
