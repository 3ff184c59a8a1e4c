package planewright.balance;

/**
 * A part as mechanics sees it. Lengths in m, masses in kg; x aft, y to the right wing, z up.
 *
 * @param mass above 0
 * @param massSpread its standard uncertainty
 * @param at station of its centre of mass
 * @param atSpread standard uncertainties of the station
 * @param size its extent, 0 where it counts as a point
 * @param sizeSpread standard uncertainties of the extent
 */
record MassPoint(double mass, double massSpread, Vector at, Vector atSpread, Vector size, Vector sizeSpread) {
    /** Three numbers along the axes. */
    record Vector(double x, double y, double z) {
        static final Vector ZERO = new Vector(0, 0, 0);
    }
}
