package planewright.samples.studio;

/** Repeatable noise, 0 to 1, without a state: the same place gives the same value. */
public final class Noise {
    private Noise() {}

    /** A value per cell of the unit grid. */
    public static double cell(int x, int y, int z) {
        int h = x * 374761393 + y * 668265263 + z * 1274126177;
        h = (h ^ (h >>> 13)) * 1274126177;
        h ^= h >>> 16;
        return (h & 0xffffff) / (double) 0x1000000;
    }

    /** Smooth noise with a grain of one unit. */
    public static double smooth(double x, double y, double z) {
        int ix = (int) Math.floor(x);
        int iy = (int) Math.floor(y);
        int iz = (int) Math.floor(z);
        double fx = ease(x - ix);
        double fy = ease(y - iy);
        double fz = ease(z - iz);
        return mix(layer(ix, iy, iz, fx, fy), layer(ix, iy, iz + 1, fx, fy), fz);
    }

    /** Several grains on top of each other, each half as large and half as strong. */
    public static double rough(double x, double y, double z, int grains) {
        double sum = 0;
        double weight = 0;
        double strength = 1;
        double scale = 1;
        for (int i = 0; i < grains; i++) {
            sum += strength * smooth(x * scale + 17 * i, y * scale - 31 * i, z * scale + 11 * i);
            weight += strength;
            strength /= 2;
            scale *= 2.03;
        }
        return sum / weight;
    }

    /** Between a and b. */
    public static double mix(double a, double b, double share) {
        return a + (b - a) * share;
    }

    /** 0 below from, 1 above to, smooth between. */
    public static double step(double from, double to, double value) {
        return ease(Math.max(0, Math.min(1, (value - from) / (to - from))));
    }

    private static double layer(int x, int y, int z, double fx, double fy) {
        return mix(mix(cell(x, y, z), cell(x + 1, y, z), fx), mix(cell(x, y + 1, z), cell(x + 1, y + 1, z), fx), fy);
    }

    private static double ease(double t) {
        return t * t * (3 - 2 * t);
    }
}
