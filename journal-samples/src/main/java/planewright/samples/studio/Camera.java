package planewright.samples.studio;

/**
 * Where the picture is taken from.
 *
 * @param eye x, y, z
 * @param target what is in the middle of the picture
 * @param up which way is up in the picture
 * @param field width that is seen at the target's distance, mm
 */
public record Camera(double[] eye, double[] target, double[] up, double field) {

    /** From above, the room's y axis up in the picture, slightly from the front, as one holds a camera. */
    public static Camera above(double x, double y, double field) {
        return new Camera(
                new double[] {x, y - field * 0.12, field * 1.6}, new double[] {x, y, 0}, new double[] {0, 1, 0}, field);
    }

    /** Towards a point from this many degrees round (0 from the front, 90 from the right) and above the horizon. */
    public static Camera round(double x, double y, double z, double degrees, double height, double field) {
        double a = Math.toRadians(degrees);
        double e = Math.toRadians(height);
        double far = field * 1.5;
        return new Camera(
                new double[] {
                    x + far * Math.sin(a) * Math.cos(e), y - far * Math.cos(a) * Math.cos(e), z + far * Math.sin(e)
                },
                new double[] {x, y, z},
                new double[] {0, 0, 1},
                field);
    }

    /** Tilted about the line of sight, degrees. */
    public Camera tilted(double degrees) {
        double[] w = forward();
        double[] side = cross(w, up);
        double c = Math.cos(Math.toRadians(degrees));
        double s = Math.sin(Math.toRadians(degrees));
        double n = Solids.length(side[0], side[1], side[2]);
        double[] tilted = new double[3];
        double[] straight = cross(side, w);
        for (int k = 0; k < 3; k++) {
            tilted[k] = c * straight[k] / n + s * side[k] / n;
        }
        return new Camera(eye, target, tilted, field);
    }

    double distance() {
        return Solids.length(target[0] - eye[0], target[1] - eye[1], target[2] - eye[2]);
    }

    double[] forward() {
        return unit(new double[] {target[0] - eye[0], target[1] - eye[1], target[2] - eye[2]});
    }

    /** The direction through a point of the picture, −0.5 to 0.5 across. */
    double[] ray(double across, double down) {
        double[] w = forward();
        double[] u = unit(cross(w, up));
        double[] v = cross(u, w);
        double k = field / distance();
        return unit(new double[] {
            w[0] + k * (across * u[0] - down * v[0]),
            w[1] + k * (across * u[1] - down * v[1]),
            w[2] + k * (across * u[2] - down * v[2])
        });
    }

    static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    static double[] unit(double[] a) {
        double n = Solids.length(a[0], a[1], a[2]);
        return new double[] {a[0] / n, a[1] / n, a[2] / n};
    }
}
