package planewright.samples.studio;

import java.awt.image.BufferedImage;
import java.util.function.DoubleBinaryOperator;

/** Grounds that things are photographed on. */
public final class Floors {
    private Floors() {}

    /** A bench top of glued beech strips. */
    public static Floor bench(int seed) {
        int[][] hues = {{0xb98a58, 0x9a6c40}, {0xc39663, 0xa3764a}, {0xad7d4d, 0x8d6238}};
        double dots = 1.4;
        return Floor.of(
                paint(1500, (x, y) -> {
                    double mx = x / dots;
                    double my = y / dots;
                    int strip = (int) Math.floor(my / 64);
                    double shift = 700 * Noise.cell(strip, seed, 1);
                    int piece = (int) Math.floor((mx + shift) / 620);
                    int kind = (int) (3 * Noise.cell(strip, piece, seed));
                    double grain = Noise.rough(mx * 0.006 + strip * 9, my * 0.13, seed + piece, 4);
                    double lines = 0.5 + 0.5 * Math.sin(grain * 40);
                    double pores = Noise.smooth(mx * 0.07, my * 1.6, seed);
                    double seam = my - strip * 64 < 0.8 ? 0.25 : 0;
                    var tone = Tone.of(hues[kind][0])
                            .mixed(Tone.of(hues[kind][1]), 0.55 * lines + 0.35 * Math.max(0, pores - 0.5));
                    return screen(tone.times(1 - seam - 0.12 * Noise.smooth(mx * 0.004, my * 0.01, seed + 3)));
                }),
                dots,
                0.06);
    }

    /** Mown or long grass; so many mm a dot. */
    public static Floor grass(double scale, int seed, int dry, int fresh) {
        return Floor.of(
                paint(1500, (x, y) -> {
                    double patch = Noise.rough(x * 0.006, y * 0.006, seed, 3);
                    double tuft = Noise.rough(x * 0.11, y * 0.085, seed + 5, 3);
                    double blade = Noise.smooth(x * 0.55 + tuft * 6, y * 0.16, seed + 9);
                    double share = Noise.step(0.2, 0.8, 0.55 * patch + 0.45 * tuft);
                    var tone = Tone.of(dry).mixed(Tone.of(fresh), share);
                    return screen(tone.times(0.42 + 0.75 * blade * (0.5 + tuft)));
                }),
                1 / scale,
                0.02);
    }

    /** A smooth painted board. */
    public static Floor board(int rgb, int seed) {
        var tone = Tone.of(rgb);
        return Floor.of(
                paint(
                        900,
                        (x, y) -> screen(tone.times(0.9
                                + 0.12 * Noise.rough(x * 0.01, y * 0.01, seed, 3)
                                + 0.05 * Noise.smooth(x * 0.5, y * 0.5, seed)))),
                1.2,
                0.12);
    }

    private static BufferedImage paint(int size, DoubleBinaryOperator rgb) {
        var image = new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < size; y++) {
            for (int x = 0; x < size; x++) {
                image.setRGB(x, y, (int) rgb.applyAsDouble(x, y));
            }
        }
        return image;
    }

    private static int screen(Tone tone) {
        return channel(tone.r()) << 16 | channel(tone.g()) << 8 | channel(tone.b());
    }

    private static int channel(double linear) {
        return (int) Math.round(255 * Math.pow(Math.max(0, Math.min(1, linear)), 1 / 2.2));
    }
}
