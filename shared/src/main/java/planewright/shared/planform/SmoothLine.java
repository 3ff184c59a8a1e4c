package planewright.shared.planform;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import planewright.api.journal.Planform;

/**
 * A smooth line through the sections of a body that rises only where they rise and falls only where they fall. Source: F. N.
 * Fritsch and R. E. Carlson, Monotone piecewise cubic interpolation, SIAM Journal on Numerical Analysis 17 (1980) 238. Its
 * tangents are weighted harmonic means of the neighbouring slopes, (w₁ + w₂)/(w₁/s₁ + w₂/s₂) with w₁ = 2h₂ + h₁ and w₂ = h₂ +
 * 2h₁, after F. N. Fritsch and J. Butland, SIAM Journal on Scientific and Statistical Computing 5 (1984) 300 (both cited from
 * memory); at the ends they are the slopes themselves.
 */
final class SmoothLine {
    private static final int STEPS = 8;

    /** Sections nearer to each other than this have no slope between them, m. */
    private static final double CLOSEST = 1e-6;

    private final double[] along;
    private final double[] values;
    private final double[] tangents;

    private SmoothLine(double[] along, double[] values) {
        this.along = along;
        this.values = values;
        this.tangents = tangents(along, values);
    }

    /** The sections with others between them; as they are where they are two, or do not run from nose to tail. */
    static List<Planform.Section> through(List<Planform.Section> sections) {
        if (sections.size() < 3 || !runAft(sections)) {
            return sections;
        }
        var width = of(sections, Planform.Section::width);
        var top = of(sections, Planform.Section::top);
        var bottom = of(sections, Planform.Section::bottom);
        var line = new ArrayList<Planform.Section>();
        for (int i = 0; i + 1 < sections.size(); i++) {
            line.add(sections.get(i));
            double from = sections.get(i).x();
            double piece = sections.get(i + 1).x() - from;
            for (int step = 1; step < STEPS; step++) {
                double part = (double) step / STEPS;
                line.add(new Planform.Section(
                        from + part * piece, width.at(i, part), top.at(i, part), bottom.at(i, part)));
            }
        }
        line.add(sections.get(sections.size() - 1));
        return line;
    }

    private static boolean runAft(List<Planform.Section> sections) {
        for (int i = 1; i < sections.size(); i++) {
            if (!(sections.get(i).x() - sections.get(i - 1).x() > CLOSEST)) {
                return false;
            }
        }
        return true;
    }

    private static SmoothLine of(List<Planform.Section> sections, ToDoubleFunction<Planform.Section> value) {
        return new SmoothLine(
                sections.stream().mapToDouble(Planform.Section::x).toArray(),
                sections.stream().mapToDouble(value).toArray());
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
