package planewright.ducts;

import planewright.shared.curve.SmoothLine;

/**
 * The curved side wall of a submerged inlet, as a share of the entrance's half width over the share of the ramp's length.
 *
 * <p>Source: D. P. Raymer, Aircraft Design: A Conceptual Approach, 6th ed., Table 10.1 with Fig. 10.6: the curved diverging
 * wall of NACA RM A7I30 (1948). Its eleven ordinates stand here as printed; a smooth monotone line joins them, which is ours.
 */
final class Wall {
    /** How many ordinates there are. */
    static final int STATIONS = 11;

    /** From the apex to the lip, at each tenth of the ramp's length. */
    private static final double[] HALF_WIDTHS = {
        0.083, 0.160, 0.236, 0.313, 0.389, 0.466, 0.614, 0.766, 0.916, 0.996, 1.000
    };

    private static final SmoothLine LINE = SmoothLine.through(places(), HALF_WIDTHS);

    private Wall() {}

    /**
     * Half width over the entrance's half width.
     *
     * @param fromApex distance aft of the apex over the ramp's length, 0 to 1
     */
    static double halfWidth(double fromApex) {
        return LINE.at(fromApex);
    }

    /** Where a station lies, as a distance aft of the apex over the ramp's length. */
    static double place(int station) {
        return station / (STATIONS - 1.0);
    }

    private static double[] places() {
        var places = new double[STATIONS];
        for (int i = 0; i < STATIONS; i++) {
            places[i] = place(i);
        }
        return places;
    }
}
