package planewright.samples.studio;

/** A turn and a shift: where a body stands. {@code m} holds the turned axes row by row, {@code t} the shift, mm. */
record Frame(double[] m, double[] t) {
    static final Frame HOME = new Frame(new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1}, new double[3]);

    Frame moved(double x, double y, double z) {
        return new Frame(m, new double[] {t[0] + x, t[1] + y, t[2] + z});
    }

    /** Turned about an axis of the room, 0 x, 1 y, 2 z. */
    Frame turned(int axis, double degrees) {
        double c = Math.cos(Math.toRadians(degrees));
        double s = Math.sin(Math.toRadians(degrees));
        int a = (axis + 1) % 3;
        int b = (axis + 2) % 3;
        var turned = m.clone();
        for (int k = 0; k < 3; k++) {
            turned[3 * a + k] = c * m[3 * a + k] - s * m[3 * b + k];
            turned[3 * b + k] = s * m[3 * a + k] + c * m[3 * b + k];
        }
        var shift = t.clone();
        shift[a] = c * t[a] - s * t[b];
        shift[b] = s * t[a] + c * t[b];
        return new Frame(turned, shift);
    }

    double localX(double x, double y, double z) {
        return m[0] * (x - t[0]) + m[3] * (y - t[1]) + m[6] * (z - t[2]);
    }

    double localY(double x, double y, double z) {
        return m[1] * (x - t[0]) + m[4] * (y - t[1]) + m[7] * (z - t[2]);
    }

    double localZ(double x, double y, double z) {
        return m[2] * (x - t[0]) + m[5] * (y - t[1]) + m[8] * (z - t[2]);
    }
}
