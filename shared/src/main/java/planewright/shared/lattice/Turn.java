package planewright.shared.lattice;

/**
 * A part of a surface that turns against the stream: a control surface about its hinge, or, hinged at its leading edge, a
 * whole surface. One radian of it turns the trailing edge of the right side down, or that of a fin to the right; measured
 * square to the hinge, or along the stream where the whole chord turns.
 *
 * @param surface which surface of the planform, from 0
 * @param from where along the surface it begins, as a share of the way along its panels from root to tip
 * @param to where it ends
 * @param hingeFrom where the hinge lies along the chord at the begin, 0 for the whole chord
 * @param hingeTo where it lies at the end
 * @param sides how the left side of a mirrored surface turns: alike, or the opposite way; a surface that is not mirrored
 *     turns as it is
 */
public record Turn(int surface, double from, double to, double hingeFrom, double hingeTo, Symmetry sides) {
    public Turn {
        if (!(from >= 0 && from < to && to <= 1)) {
            throw new IllegalArgumentException(
                    "a part runs from " + from + " to " + to + " of its surface; accepted: in order, 0 to 1");
        }
        if (!(hingeFrom >= 0 && hingeFrom < 1 && hingeTo >= 0 && hingeTo < 1)) {
            throw new IllegalArgumentException("a hinge lies at " + hingeFrom + " and " + hingeTo
                    + " of the chord; accepted: 0 or more, less than 1");
        }
        if (sides == Symmetry.NONE) {
            throw new IllegalArgumentException(
                    "the sides of a part turn alike or the opposite way; accepted: one of both");
        }
    }

    /** The whole of a surface, both sides alike: its setting, or the zero-lift incidence of its section. */
    public static Turn whole(int surface) {
        return new Turn(surface, 0, 1, 0, 0, Symmetry.SYMMETRIC);
    }

    /** The same part with its sides turning otherwise. */
    public Turn turning(Symmetry otherwise) {
        return new Turn(surface, from, to, hingeFrom, hingeTo, otherwise);
    }

    /** Velocity through a panel for one radian, as a share of the stream's. */
    double through(Strip strip, Horseshoe horseshoe) {
        if (strip.surface() != surface) {
            return 0;
        }
        double low = Math.min(strip.alongFrom(), strip.alongTo());
        double high = Math.max(strip.alongFrom(), strip.alongTo());
        double begin = Math.max(low, from);
        double end = Math.min(high, to);
        if (!(end > begin)) {
            return 0;
        }
        double hinge = hinge((begin + end) / 2);
        double side = sides == Symmetry.ANTISYMMETRIC && strip.leftCopy() ? -1 : 1;
        return side
                * (end - begin)
                / (high - low)
                * behind(hinge, horseshoe)
                * (hinge > 0 ? slant(strip) : 1)
                * Math.cos(strip.incidence());
    }

    private double hinge(double along) {
        return hingeFrom + (hingeTo - hingeFrom) * (along - from) / (to - from);
    }

    /** Cosine of the hinge line's sweep. */
    private double slant(Strip strip) {
        double one = strip.from().x() + hinge(strip.alongFrom()) * strip.fromChord();
        double other = strip.to().x() + hinge(strip.alongTo()) * strip.toChord();
        return strip.width() / Math.hypot(strip.width(), other - one);
    }

    /**
     * How much of a panel lies behind the hinge, weighted by what turning it lifts: ∫(1 − cos θ)dθ for x = (1 − cos θ)/2, so
     * that a section's lift is that of thin-aerofoil theory (H. Glauert, The Elements of Aerofoil and Airscrew Theory,
     * chapter 7, cited from memory) however few panels there are.
     */
    private static double behind(double hinge, Horseshoe horseshoe) {
        double begin = weight(Math.max(horseshoe.chordFrom(), hinge));
        double end = weight(Math.max(horseshoe.chordTo(), hinge));
        return (end - begin) / (weight(horseshoe.chordTo()) - weight(horseshoe.chordFrom()));
    }

    private static double weight(double chordShare) {
        double angle = Math.acos(Math.max(-1, Math.min(1, 1 - 2 * chordShare)));
        return angle - Math.sin(angle);
    }
}
