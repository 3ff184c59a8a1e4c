package planewright.samples.studio;

/** The plain bodies, about the origin unless said otherwise; mm. */
public final class Solids {
    private Solids() {}

    /** A block with whole lengths along x, y, z and rounded edges. */
    public static Solid block(double lx, double ly, double lz, double round) {
        double hx = lx / 2 - round;
        double hy = ly / 2 - round;
        double hz = lz / 2 - round;
        return (x, y, z) -> {
            double qx = Math.abs(x) - hx;
            double qy = Math.abs(y) - hy;
            double qz = Math.abs(z) - hz;
            return length(Math.max(qx, 0), Math.max(qy, 0), Math.max(qz, 0))
                    + Math.min(Math.max(qx, Math.max(qy, qz)), 0)
                    - round;
        };
    }

    /** A block that stands on z = 0. */
    public static Solid slab(double lx, double ly, double lz, double round) {
        return block(lx, ly, lz, round).moved(0, 0, lz / 2);
    }

    public static Solid ball(double radius) {
        return (x, y, z) -> length(x, y, z) - radius;
    }

    public static Solid egg(double rx, double ry, double rz) {
        return (x, y, z) -> {
            double k = length(x / rx, y / ry, z / rz);
            double m = length(x / (rx * rx), y / (ry * ry), z / (rz * rz));
            return m == 0 ? -Math.min(rx, Math.min(ry, rz)) : k * (k - 1) / m;
        };
    }

    /** A drum standing on z = 0. */
    public static Solid drum(double radius, double height, double round) {
        return (x, y, z) -> {
            double dr = Math.hypot(x, y) - radius + round;
            double dz = Math.abs(z - height / 2) - height / 2 + round;
            return Math.hypot(Math.max(dr, 0), Math.max(dz, 0)) + Math.min(Math.max(dr, dz), 0) - round;
        };
    }

    /** A drum along x, from x = 0. */
    public static Solid barrel(double radius, double length, double round) {
        return drum(radius, length, round).pitched(90);
    }

    public static Solid ring(double radius, double thickness) {
        return (x, y, z) -> Math.hypot(Math.hypot(x, y) - radius, z) - thickness;
    }

    /** A round rod through points given as x, y, z, x, y, z, … */
    public static Solid rod(double radius, double... points) {
        return (x, y, z) -> {
            double nearest = Double.MAX_VALUE;
            for (int i = 0; i + 5 < points.length; i += 3) {
                nearest = Math.min(nearest, squareToLine(x, y, z, points, i));
            }
            return Math.sqrt(nearest) - radius;
        };
    }

    /** A rod along a smooth curve through the points, for wires. */
    public static Solid wire(double radius, double... points) {
        int parts = 6;
        int last = points.length / 3 - 1;
        var smooth = new double[(last * parts + 1) * 3];
        for (int i = 0; i <= last * parts; i++) {
            int at = Math.min(i / parts, last - 1);
            double t = i / (double) parts - at;
            for (int k = 0; k < 3; k++) {
                double p0 = points[Math.max(at - 1, 0) * 3 + k];
                double p1 = points[at * 3 + k];
                double p2 = points[(at + 1) * 3 + k];
                double p3 = points[Math.min(at + 2, last) * 3 + k];
                smooth[i * 3 + k] = p1
                        + t * (p2 - p0) / 2
                        + t * t * (2 * p0 - 5 * p1 + 4 * p2 - p3) / 2
                        + t * t * t * (3 * (p1 - p2) + p3 - p0) / 2;
            }
        }
        return rod(radius, smooth);
    }

    /** A plate of this thickness on z = 0 with the outline x, y, x, y, … */
    public static Solid plate(double thickness, double round, double... outline) {
        return (x, y, z) -> {
            double dr = toOutline(x, y, outline) + round;
            double dz = Math.abs(z - thickness / 2) - thickness / 2 + round;
            return Math.hypot(Math.max(dr, 0), Math.max(dz, 0)) + Math.min(Math.max(dr, dz), 0) - round;
        };
    }

    /** Distance in the plane to an outline x, y, x, y, …; negative inside. */
    public static double toOutline(double x, double y, double... outline) {
        double nearest = Double.MAX_VALUE;
        boolean inside = false;
        int n = outline.length;
        for (int i = 0, j = n - 2; i < n; j = i, i += 2) {
            double ex = outline[j] - outline[i];
            double ey = outline[j + 1] - outline[i + 1];
            double wx = x - outline[i];
            double wy = y - outline[i + 1];
            double along = Math.max(0, Math.min(1, (wx * ex + wy * ey) / (ex * ex + ey * ey)));
            double bx = wx - ex * along;
            double by = wy - ey * along;
            nearest = Math.min(nearest, bx * bx + by * by);
            if (outline[i + 1] > y != outline[j + 1] > y && wx < ex * wy / ey) {
                inside = !inside;
            }
        }
        return inside ? -Math.sqrt(nearest) : Math.sqrt(nearest);
    }

    static double length(double x, double y, double z) {
        return Math.sqrt(x * x + y * y + z * z);
    }

    private static double squareToLine(double x, double y, double z, double[] p, int i) {
        double ex = p[i + 3] - p[i];
        double ey = p[i + 4] - p[i + 1];
        double ez = p[i + 5] - p[i + 2];
        double wx = x - p[i];
        double wy = y - p[i + 1];
        double wz = z - p[i + 2];
        double along = (wx * ex + wy * ey + wz * ez) / Math.max(1e-9, ex * ex + ey * ey + ez * ez);
        along = Math.max(0, Math.min(1, along));
        double dx = wx - ex * along;
        double dy = wy - ey * along;
        double dz = wz - ez * along;
        return dx * dx + dy * dy + dz * dz;
    }
}
