package planewright.shared.curve;

import java.util.Arrays;

/**
 * A smooth line through points that rises only where they rise and falls only where they fall. Source: F. N. Fritsch and R.
 * E. Carlson, Monotone piecewise cubic interpolation, SIAM Journal on Numerical Analysis 17 (1980) 238. Its tangents are
 * weighted harmonic means of the neighbouring slopes, (w₁ + w₂)/(w₁/s₁ + w₂/s₂) with w₁ = 2h₂ + h₁ and w₂ = h₂ + 2h₁, after F.
 * N. Fritsch and J. Butland, SIAM Journal on Scientific and Statistical Computing 5 (1984) 300 (both cited from memory); at the
 * ends they are the slopes themselves.
 */
public final class SmoothLine {
    private final double[] along;
    private final double[] values;
    private final double[] tangents;

    private SmoothLine(double[] along, double[] values) {
        this.along = along;
        this.values = values;
        this.tangents = tangents(along, values);
    }

    /**
     * The line through points.
     *
     * @param along where they are, ascending, at least two
     * @param values what they are there, as many
     * @throws IllegalArgumentException if they are not as many, fewer than two, or not ascending
     */
    public static SmoothLine through(double[] along, double[] values) {
        if (along.length != values.length || along.length < 2) {
            throw new IllegalArgumentException(along.length + " places and " + values.length
                    + " values of a line; accepted: as many of both, 2 or more");
        }
        for (int i = 1; i < along.length; i++) {
            if (!(along[i] > along[i - 1])) {
                throw new IllegalArgumentException(
                        "a line runs from " + along[i - 1] + " to " + along[i] + "; accepted: ascending places");
            }
        }
        return new SmoothLine(along.clone(), values.clone());
    }

    /** Its value at a place; before the first point and after the last it keeps their values. */
    public double at(double place) {
        int last = along.length - 1;
        if (place <= along[0]) {
            return values[0];
        }
        if (place >= along[last]) {
            return values[last];
        }
        int found = Arrays.binarySearch(along, place);
        if (found >= 0) {
            return values[found];
        }
        int piece = -found - 2;
        return at(piece, (place - along[piece]) / (along[piece + 1] - along[piece]));
    }

    /** The cubic of a piece, in Hermite form. */
    private double at(int piece, double part) {
        double length = along[piece + 1] - along[piece];
        double rest = 1 - part;
        return (1 + 2 * part) * rest * rest * values[piece]
                + part * part * (3 - 2 * part) * values[piece + 1]
                + length * part * rest * (rest * tangents[piece] - part * tangents[piece + 1]);
    }

    private static double[] tangents(double[] along, double[] values) {
        int last = along.length - 1;
        var lengths = new double[last];
        var slopes = new double[last];
        for (int i = 0; i < last; i++) {
            lengths[i] = along[i + 1] - along[i];
            slopes[i] = (values[i + 1] - values[i]) / lengths[i];
        }
        var tangents = new double[last + 1];
        tangents[0] = slopes[0];
        tangents[last] = slopes[last - 1];
        for (int i = 1; i < last; i++) {
            double before = 2 * lengths[i] + lengths[i - 1];
            double after = lengths[i] + 2 * lengths[i - 1];
            tangents[i] =
                    slopes[i - 1] * slopes[i] > 0 ? (before + after) / (before / slopes[i - 1] + after / slopes[i]) : 0;
        }
        return tangents;
    }
}
