package planewright.shared.lattice;

/**
 * A place or a direction in the axes of the aircraft.
 *
 * @param x aft
 * @param y to the right wing
 * @param z up
 */
public record Vector(double x, double y, double z) {
    public static final Vector ZERO = new Vector(0, 0, 0);

    public Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    public Vector minus(Vector other) {
        return plus(other.times(-1));
    }

    public Vector times(double factor) {
        return new Vector(factor * x, factor * y, factor * z);
    }

    public double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /** The same on the other side of the plane y = 0. */
    public Vector mirrored() {
        return new Vector(x, -y, z);
    }

    /** The point a share of the way to another. */
    Vector towards(Vector other, double share) {
        return times(1 - share).plus(other.times(share));
    }
}
