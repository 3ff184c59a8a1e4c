package planewright.ducts;

/**
 * A submerged inlet in metres and radians. Lengthwise places are counted along the skin, aft of the apex; depths are counted
 * from the skin on the centre line, square to it.
 *
 * <p>Across, the floor is flat and the walls stand upright, whatever the skin does: the floor is then so much deeper in the
 * middle that the entrance keeps its area. Lengthwise, the floor follows the skin.
 *
 * @param width of the entrance, wall to wall
 * @param depth of the entrance, lip to floor, on the mean over its width
 * @param ramp angle of the floor to the skin
 * @param lip at the rear
 * @param curvatureAcross one over the radius of the skin across the flow; 0 where it is flat
 */
record InletShape(double width, double depth, double ramp, Lip lip, double curvatureAcross) {

    /** The share of the width that an entrance of that depth has. */
    double ratio() {
        return width / depth;
    }

    double area() {
        return width * depth;
    }

    /**
     * From the apex to the nose of the lip. Source: 'NACA Submerged Duct Construction' (Whitehouse), second hand: (1 + 0.481)
     * h / tan(ramp) to where the entrance is measured, and from there 0.75 h back to the nose.
     */
    double length() {
        return floorDepth() / Math.tan(ramp) - lip.throatBehind();
    }

    /** Of the floor at its deepest, below the entrance; from there on it runs level. */
    double floorDepth() {
        return depth + lip.throatBelow() + meanDrop();
    }

    /** Of the floor at a place, in the middle. */
    double floorBelow(double fromApex) {
        return Math.min(floorDepth(), fromApex * Math.tan(ramp));
    }

    /** Of the floor along the wall, below the skin there. */
    double floorBelowAtWall(double fromApex) {
        return Math.max(0, floorBelow(fromApex) - drop(halfWidth(fromApex)));
    }

    /** From the centre line straight to the wall. */
    double halfWidth(double fromApex) {
        return width / 2 * Wall.halfWidth(fromApex / length());
    }

    /** From the centre line to the wall along the skin, as on a paper that lies on it: an arc of R · asin(y/R). */
    double halfWidthOnSkin(double fromApex) {
        double y = halfWidth(fromApex);
        return curvatureAcross == 0 ? y : Math.asin(curvatureAcross * y) / curvatureAcross;
    }

    /** How far the skin falls away from its middle: R − √(R² − y²). */
    double drop(double y) {
        double turn = curvatureAcross * y;
        return turn * y / (1 + Math.sqrt(1 - turn * turn));
    }

    /** The mean of {@link #drop} over the entrance: its segment of a circle spread over its width. */
    double meanDrop() {
        if (curvatureAcross == 0) {
            return 0;
        }
        double sine = curvatureAcross * width / 2;
        double mean = (sine * Math.sqrt(1 - sine * sine) + Math.asin(sine)) / (2 * sine);
        return (1 - mean) / curvatureAcross;
    }

    /** What is cut out of the skin as it lies flat; the ordinates joined straight. */
    double cutOut() {
        double sum = 0;
        for (int i = 1; i < Wall.STATIONS; i++) {
            sum += halfWidthOnSkin(length() * Wall.place(i - 1)) + halfWidthOnSkin(length() * Wall.place(i));
        }
        return sum * length() / (Wall.STATIONS - 1);
    }
}
