package planewright.ducts;

/**
 * The thick lip. Source of its nose radius, of the depth of its inner side at three quarters of its chord and of its
 * thickness at the end, as shares of the entrance's depth: 'NACA Submerged Duct Construction' (Whitehouse), second hand.
 *
 * @param depth of the entrance, m
 */
record ShapedLip(double depth) implements Lip {
    private static final double NOSE = 0.094;
    private static final double THROAT_BEHIND = 0.75;
    private static final double THROAT_BELOW = 0.481;
    private static final double CHORD = 1;
    private static final double THICKNESS = 0.5;

    /** What leads the inner side through its two points, as factors of x and x². */
    private static final double SQUARE =
            (slope(CHORD, THICKNESS) - slope(THROAT_BEHIND, THROAT_BELOW)) / (CHORD - THROAT_BEHIND);

    private static final double LINEAR = slope(CHORD, THICKNESS) - SQUARE * CHORD;

    @Override
    public double noseRadius() {
        return NOSE * depth;
    }

    @Override
    public double throatBehind() {
        return THROAT_BEHIND * depth;
    }

    @Override
    public double throatBelow() {
        return THROAT_BELOW * depth;
    }

    @Override
    public double length() {
        return CHORD * depth;
    }

    /**
     * Between its known points it is drawn as y = r + √(2rx) + bx + cx²: the first terms keep the nose radius, as in the
     * thickness of the NACA four-digit sections (NACA TR 460, from memory). No source gives the curve itself.
     */
    @Override
    public double below(double behindNose) {
        double x = behindNose / depth;
        return depth * (rounded(x) + LINEAR * x + SQUARE * x * x);
    }

    private static double rounded(double x) {
        return NOSE + Math.sqrt(2 * NOSE * x);
    }

    private static double slope(double x, double y) {
        return (y - rounded(x)) / x;
    }
}
