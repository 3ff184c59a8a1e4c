package planewright.samples.studio;

/**
 * A body with its look and its place in the room.
 *
 * @param care what a step towards it is shortened by, for bodies whose distance is only estimated
 */
public record Thing(Solid solid, Skin skin, Frame frame, Bounds bounds, double care) {
    private static final double FAR = 1e6;

    public static Thing of(Solid solid, Skin skin) {
        return new Thing(solid, skin, Frame.HOME, Bounds.of(solid), 0.95);
    }

    /** A body whose distance is estimated and whose reach is given as least and greatest x, y, z. */
    public static Thing estimated(Solid solid, Skin skin, double... reach) {
        return new Thing(solid, skin, Frame.HOME, new Bounds(reach), 0.6);
    }

    public Thing at(double x, double y, double z) {
        return new Thing(solid, skin, frame.moved(x, y, z), bounds, care);
    }

    /** Turned about the room's x axis, degrees. */
    public Thing rolled(double degrees) {
        return new Thing(solid, skin, frame.turned(0, degrees), bounds, care);
    }

    /** Turned about the room's y axis, degrees. */
    public Thing pitched(double degrees) {
        return new Thing(solid, skin, frame.turned(1, degrees), bounds, care);
    }

    /** Turned about the room's z axis, degrees. */
    public Thing turned(double degrees) {
        return new Thing(solid, skin, frame.turned(2, degrees), bounds, care);
    }

    public Thing skinned(Skin other) {
        return new Thing(solid, other, frame, bounds, care);
    }

    double distance(double x, double y, double z) {
        return care * solid.at(frame.localX(x, y, z), frame.localY(x, y, z), frame.localZ(x, y, z));
    }

    Tone tone(double x, double y, double z, double[] normal) {
        double up = frame.m()[2] * normal[0] + frame.m()[5] * normal[1] + frame.m()[8] * normal[2];
        return skin.at(frame.localX(x, y, z), frame.localY(x, y, z), frame.localZ(x, y, z), up);
    }

    /** Distance to the box around this body. */
    double outside(double x, double y, double z) {
        double[] reach = bounds.reach();
        double lx = frame.localX(x, y, z);
        double ly = frame.localY(x, y, z);
        double lz = frame.localZ(x, y, z);
        return Solids.length(
                Math.max(0, Math.max(reach[0] - lx, lx - reach[3])),
                Math.max(0, Math.max(reach[1] - ly, ly - reach[4])),
                Math.max(0, Math.max(reach[2] - lz, lz - reach[5])));
    }

    /** Whether a ray comes closer than the margin to this body's box, at most so far away. */
    boolean near(double[] from, double[] to, double reach, double margin) {
        double ox = frame.localX(from[0], from[1], from[2]);
        double oy = frame.localY(from[0], from[1], from[2]);
        double oz = frame.localZ(from[0], from[1], from[2]);
        double[] m = frame.m();
        double dx = m[0] * to[0] + m[3] * to[1] + m[6] * to[2];
        double dy = m[1] * to[0] + m[4] * to[1] + m[7] * to[2];
        double dz = m[2] * to[0] + m[5] * to[1] + m[8] * to[2];
        return bounds.near(new double[] {ox, oy, oz}, new double[] {dx, dy, dz}, reach, margin);
    }

    /** Least and greatest x, y, z. */
    record Bounds(double[] reach) {
        static Bounds of(Solid solid) {
            return new Bounds(new double[] {
                solid.at(-FAR, 0, 0) - FAR,
                solid.at(0, -FAR, 0) - FAR,
                solid.at(0, 0, -FAR) - FAR,
                FAR - solid.at(FAR, 0, 0),
                FAR - solid.at(0, FAR, 0),
                FAR - solid.at(0, 0, FAR)
            });
        }

        boolean near(double[] o, double[] d, double reach1, double margin) {
            double first = 0;
            double last = reach1;
            for (int k = 0; k < 3; k++) {
                double low = reach[k] - margin - o[k];
                double high = reach[k + 3] + margin - o[k];
                if (Math.abs(d[k]) < 1e-12) {
                    if (low > 0 || high < 0) {
                        return false;
                    }
                    continue;
                }
                double a = low / d[k];
                double b = high / d[k];
                first = Math.max(first, Math.min(a, b));
                last = Math.min(last, Math.max(a, b));
            }
            return first <= last;
        }
    }
}
