package planewright.ducts;

/** The lip at the rear of a submerged inlet, in metres behind its nose and below the skin. */
sealed interface Lip permits ShapedLip, PlainLip {
    /** Of its rounded nose. */
    double noseRadius();

    /** How far behind the nose the entrance is measured. */
    double throatBehind();

    /** How far below the skin its inner side is there. */
    double throatBelow();

    /** How far behind the nose it is drawn. */
    double length();

    /** How far below the skin its inner side is at a place behind the nose, up to its length. */
    double below(double behindNose);

    /** From the nose a quarter circle leads up to the skin. */
    default double above(double behindNose) {
        double ahead = Math.max(0, noseRadius() - behindNose);
        return noseRadius() - Math.sqrt(noseRadius() * noseRadius() - ahead * ahead);
    }
}
