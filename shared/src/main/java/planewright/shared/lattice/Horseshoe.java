package planewright.shared.lattice;

/**
 * A bound vortex whose ends trail straight aft, with the point where its panel lets no air pass.
 *
 * @param from one end of the bound vortex
 * @param to its other end
 * @param control the point where no air passes
 * @param normal the direction in which none passes there, of unit length
 * @param strip which strip of the lattice it belongs to
 * @param chordFrom where the piece of the chord begins for which its control point stands, as a share of it
 * @param chordTo where that piece ends
 */
record Horseshoe(Vector from, Vector to, Vector control, Vector normal, int strip, double chordFrom, double chordTo) {
    private static final double FOUR_PI = 4 * Math.PI;

    /** Nearer to a vortex than this share of its distance from the ends, a point lies on it and is not moved by it. */
    private static final double ON_IT = 1e-10;

    Vector bound() {
        return to.minus(from);
    }

    Vector middle() {
        return from.plus(to).times(0.5);
    }

    /** Velocity at a point for unit circulation, written to a triple. Source: Drela, equation 5.40. */
    void velocity(double x, double y, double z, double[] out) {
        double ax = x - from.x();
        double ay = y - from.y();
        double az = z - from.z();
        double bx = x - to.x();
        double by = y - to.y();
        double bz = z - to.z();
        double a = Math.sqrt(ax * ax + ay * ay + az * az);
        double b = Math.sqrt(bx * bx + by * by + bz * bz);
        double near = a * b + ax * bx + ay * by + az * bz;
        double bound = near > ON_IT * a * b ? (1 / a + 1 / b) / near : 0;
        double one = leg(ax, ay, az, a);
        double other = leg(bx, by, bz, b);
        out[0] = bound * (ay * bz - az * by) / FOUR_PI;
        out[1] = (bound * (az * bx - ax * bz) + one * az - other * bz) / FOUR_PI;
        out[2] = (bound * (ax * by - ay * bx) - one * ay + other * by) / FOUR_PI;
    }

    /** 1 / (|r|(|r| − x)) of a vortex from the origin aft, written so that nothing cancels far behind it. */
    private static double leg(double x, double y, double z, double distance) {
        if (x <= 0) {
            return distance > 0 ? 1 / (distance * (distance - x)) : 0;
        }
        double off = y * y + z * z;
        return off > ON_IT * ON_IT * distance * distance ? (distance + x) / (distance * off) : 0;
    }
}
