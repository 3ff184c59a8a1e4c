package planewright.samples.pictures;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.stream.IntStream;
import planewright.samples.studio.Noise;
import planewright.samples.studio.Tone;

/**
 * Backdrops of flight pictures: sky with clouds, and below the horizon fields between hedges.
 *
 * @param horizon where it lies, share of the height from the top; above 1 only sky is seen
 * @param zenith colour overhead
 * @param rim colour at the horizon
 * @param cloud colour of the clouds in the light
 * @param shade colour of their undersides
 * @param cover 0 clear to 1 closed
 */
record Skies(double horizon, int zenith, int rim, int cloud, int shade, double cover, int seed) {
    private static final int[] FIELDS = {0x7d9a45, 0xa7a04f, 0x5f8a3c, 0xc2b060, 0x6f9248, 0x8c7a4c};

    static Skies summer(double horizon, int seed) {
        return new Skies(horizon, 0x3f7fc4, 0xc9dfee, 0xfdfcf8, 0xa9b6c6, 0.5, seed);
    }

    static Skies grey(double horizon, int seed) {
        return new Skies(horizon, 0x8fa3b5, 0xdbe0e2, 0xf0f1f0, 0x8d98a4, 0.78, seed);
    }

    static Skies evening(double horizon, int seed) {
        return new Skies(horizon, 0x3b4a7a, 0xf3a65c, 0xf6b98a, 0x6a4f70, 0.42, seed);
    }

    /** The backdrop; {@code dim} darkens the land, 1 by day. */
    BufferedImage painted(int width, int height, double dim) {
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        IntStream.range(0, height).parallel().forEach(y -> {
            double level = horizon - y / (double) height;
            for (int x = 0; x < width; x++) {
                double across = (x - width / 2.0) / height;
                double up = level
                        - 0.03 * Noise.rough(across * 2.4, seed, 2, 3)
                        - 0.006 * Noise.smooth(across * 60, seed, 7) * Noise.smooth(across * 9, seed, 8);
                var tone = up > 0 ? sky(across, up) : land(across, -up).times(dim);
                synchronized (image) {
                    image.setRGB(x, y, screen(tone));
                }
            }
        });
        return image;
    }

    private Tone sky(double across, double up) {
        var clear = Tone.of(rim).mixed(Tone.of(zenith), Math.pow(Math.min(1, up / 1.1), 0.65));
        double far = 1 / (up + 0.16);
        double u = across * far * 1.5;
        double v = far * 2.1;
        double here = Noise.rough(u, v, seed, 6);
        double beside = Noise.rough(u - 0.12, v - 0.16, seed, 4);
        double thick = Noise.step(0.72 - 0.4 * cover, 0.95 - 0.4 * cover, here);
        double lit = Noise.step(-0.1, 0.16, here - beside + 0.04);
        var body = Tone.of(shade).mixed(Tone.of(cloud), lit * (1 - 0.35 * thick));
        double haze = Noise.step(0, 0.22, up);
        return clear.mixed(body, thick * (0.25 + 0.7 * haze));
    }

    private Tone land(double across, double down) {
        double far = 0.16 / (down + 0.012);
        double bend = 1.3 * Noise.rough(far * 1.4, across * far * 2.2, seed, 2);
        double u = across * far * 5 + bend + 0.35 * far + seed;
        double v = far * 2.6 + 1.5 * Noise.rough(across * far * 1.6, far * 0.8 + 3, seed, 2) - 0.22 * across * far * 5;
        int j = (int) Math.floor(v);
        u = u * (0.55 + 0.7 * Noise.cell(j, 5, seed)) + 3 * Noise.cell(j, 9, seed);
        int i = (int) Math.floor(u);
        var field = Tone.of(FIELDS[(int) (FIELDS.length * Noise.cell(i, j, seed))]);
        double rows = 0.92 + 0.1 * Math.sin(u * 55) * Math.min(1, down * 6);
        double patch = 0.82 + 0.36 * Noise.rough(u * 3, v * 3, seed, 4);
        double edge = Math.min(Math.min(u - i, i + 1 - u), Math.min(v - j, j + 1 - v));
        double hedge = 1 - Noise.step(0.02, 0.055 + 0.04 * Noise.smooth(u * 9, v * 9, seed), edge);
        var near = field.times(rows * patch)
                .mixed(Tone.of(0x2c4a24).times(0.6 + 0.8 * Noise.smooth(u * 40, v * 40, 1)), hedge);
        double mist = Math.exp(-down * 14);
        return near.mixed(Tone.of(rim).mixed(Tone.of(0x6f8a94), 0.35), 0.85 * mist);
    }

    private static int screen(Tone tone) {
        return new Color(channel(tone.r()), channel(tone.g()), channel(tone.b())).getRGB();
    }

    private static int channel(double linear) {
        return (int) Math.round(255 * Math.pow(Math.max(0, Math.min(1, linear)), 1 / 2.2));
    }
}
