package planewright.samples.pictures;

import planewright.samples.studio.Noise;
import planewright.samples.studio.Solids;

/**
 * A straight-edged piece of a surface, its root's leading edge at x, y, z; mm and radians.
 *
 * @param from share of the whole surface's span at its inner end
 * @param to the same at its outer end
 */
record Panel(
        double x,
        double y,
        double z,
        double root,
        double tip,
        double span,
        double sweep,
        double dihedral,
        double twist,
        double from,
        double to) {

    private double along(double py, double pz) {
        return (py - y) * Math.cos(dihedral) + (pz - z) * Math.sin(dihedral);
    }

    private double above(double px, double py, double pz) {
        double share = Math.max(0, Math.min(1, along(py, pz) / span));
        double droop = (px - x - along(py, pz) * Math.tan(sweep)) * Math.tan(twist * share);
        return (pz - z) * Math.cos(dihedral) - (py - y) * Math.sin(dihedral) + droop;
    }

    private double chord(double v) {
        return Noise.mix(root, tip, Math.max(0, Math.min(1, v / span)));
    }

    /** Where along the chord a point lies, 0 leading to 1 trailing edge. */
    double chordShare(double px, double py, double pz) {
        double v = along(py, pz);
        return (px - x - v * Math.tan(sweep)) / chord(v);
    }

    /** Where along the whole surface's span a point lies, 0 to 1. */
    double spanShare(double py, double pz) {
        return from + (to - from) * along(py, pz) / span;
    }

    double outside(double py, double pz) {
        double v = along(py, pz);
        return Math.max(-v, v - span) + Math.abs(above(x, py, pz)) * 0.1;
    }

    /** Distance to this piece with a section so thick, as a share of the chord; flat where flat. */
    double distance(double px, double py, double pz, double thick, boolean flat) {
        double v = along(py, pz);
        double inwards = dihedral > 1 ? 0 : 2;
        double end = span * Math.tan(sweep);
        double plan = Solids.toOutline(px - x, v, 0, -inwards, end, span, end + tip, span, root, -inwards);
        double share = Math.max(0, Math.min(1, chordShare(px, py, pz)));
        double half = flat ? thick / 2 : chord(v) * profile(share) * thick + 0.4;
        double over = Math.abs(above(px, py, pz)) - half;
        return Math.hypot(Math.max(plan, 0), Math.max(over, 0))
                + Math.min(0, Math.max(plan, over))
                - (flat ? 0.6 : 0.5);
    }

    private static double profile(double s) {
        return 5 * (0.2969 * Math.sqrt(s) - 0.126 * s - 0.3516 * s * s + 0.2843 * s * s * s - 0.1015 * s * s * s * s);
    }
}
