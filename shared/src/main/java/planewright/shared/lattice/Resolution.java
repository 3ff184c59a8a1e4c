package planewright.shared.lattice;

/**
 * How fine a lattice is. The half span is cut wherever a surface begins, breaks or ends; each piece gets {@code multiple}
 * strips for every {@code 1/spanwise} of the half span, and at least one lot of them. So a lattice of twice the {@code
 * multiple} has exactly twice the strips everywhere.
 *
 * @param chordwise panels along each chord
 * @param spanwise lots of strips along the half span
 * @param multiple strips in a lot
 * @param spacing how panels and strips are spread
 */
public record Resolution(int chordwise, int spanwise, int multiple, Spacing spacing) {
    public Resolution {
        if (chordwise < 1 || spanwise < 1 || multiple < 1) {
            throw new IllegalArgumentException("a resolution is " + chordwise + " by " + spanwise + " times " + multiple
                    + "; accepted: 1 or more each");
        }
    }

    /** The usual lattice: two panels a chord and twelve lots across for each step of fineness. */
    public static Resolution fineness(int steps) {
        return new Resolution(2 * steps, 12, steps, Spacing.SEMICIRCLE);
    }

    /** Even panels and strips, as in hand computations. */
    public static Resolution even(int chordwise, int spanwise) {
        return new Resolution(chordwise, spanwise, 1, Spacing.EVEN);
    }

    int strips(double share) {
        return multiple * (int) Math.max(1, Math.round(spanwise * share));
    }
}
