package planewright.samples.studio;

import java.awt.image.BufferedImage;

/** Looks of the materials in a workshop. */
public final class Skins {
    private Skins() {}

    public static Skin plain(int rgb, double shine) {
        var tone = Tone.of(rgb, shine);
        return (x, y, z, nz) -> tone;
    }

    /** Bead foam: pale cells with darker seams. */
    public static Skin foam(int rgb) {
        var tone = Tone.of(rgb, 0.05);
        return (x, y, z, nz) -> {
            double bead = Noise.smooth(x * 0.3, y * 0.3, z * 0.3);
            double seam = 0.84 + 0.16 * Noise.step(0.0, 0.09, Math.abs(bead - 0.5));
            return tone.times(seam * (0.8 + 0.14 * Noise.rough(x * 0.04, y * 0.04, z * 0.04, 3)));
        };
    }

    /** Wood with its grain along x. */
    public static Skin wood(int rgb, double grain) {
        var light = Tone.of(rgb, 0.1);
        var dark = light.times(0.55);
        return (x, y, z, nz) -> {
            double rings = Noise.rough(x * 0.006 / grain, y * 0.16 / grain, z * 0.16 / grain, 4);
            double lines = 0.5 + 0.5 * Math.sin(rings * 46);
            double pores = Noise.smooth(x * 0.05, y * 2.4 / grain, z * 2.4 / grain);
            return light.mixed(dark, 0.22 * lines + 0.3 * Math.max(0, pores - 0.55));
        };
    }

    public static Skin balsa() {
        return wood(0xe6cfa0, 0.55);
    }

    /** Plywood: pale faces, layers at the edge. */
    public static Skin ply(double thickness) {
        var face = wood(0xd2ab74, 0.7);
        var dark = Tone.of(0x8a6238);
        return (x, y, z, nz) -> {
            boolean layer = Math.abs(nz) < 0.5 && Math.floorMod((int) Math.floor(z / thickness * 5), 2) == 1;
            return layer ? dark : face.at(x, y, z, nz);
        };
    }

    /** Carbon fibre drawn along x. */
    public static Skin carbon() {
        var tone = Tone.of(0x1d1e20, 0.5);
        return (x, y, z, nz) -> tone.times(0.7 + 0.9 * Noise.smooth(x * 0.02, y * 5, z * 5));
    }

    /** Woven cloth under resin. */
    public static Skin woven() {
        var tone = Tone.of(0x26282b, 0.6);
        return (x, y, z, nz) -> {
            int i = (int) Math.floor((x + y) / 2.2);
            int j = (int) Math.floor((x - y) / 2.2);
            return tone.times((i + j & 1) == 0 ? 0.7 : 1.7);
        };
    }

    public static Skin steel() {
        var tone = Tone.of(0xb9bcc0, 0.75);
        return (x, y, z, nz) -> tone.times(0.86 + 0.22 * Noise.smooth(x * 0.05, y * 3, z * 3));
    }

    /** A print on the upper side, its middle at x = y = 0, over another look. */
    public static Skin printed(Skin below, BufferedImage print, double dots) {
        return printed(below, print, dots, 0.35);
    }

    /** The same for surfaces that face up at least so much. */
    public static Skin printed(Skin below, BufferedImage print, double dots, double facing) {
        int w = print.getWidth();
        int h = print.getHeight();
        int[] pixels = print.getRGB(0, 0, w, h, null, 0, w);
        return (x, y, z, nz) -> {
            var tone = below.at(x, y, z, nz);
            double px = w / 2.0 + x * dots - 0.5;
            double py = h / 2.0 - y * dots - 0.5;
            int ix = (int) Math.floor(px);
            int iy = (int) Math.floor(py);
            if (nz < facing || ix < 0 || iy < 0 || ix + 1 >= w || iy + 1 >= h) {
                return tone;
            }
            double fx = px - ix;
            double fy = py - iy;
            var upper = over(tone, pixels[iy * w + ix]).mixed(over(tone, pixels[iy * w + ix + 1]), fx);
            var lower = over(tone, pixels[(iy + 1) * w + ix]).mixed(over(tone, pixels[(iy + 1) * w + ix + 1]), fx);
            return upper.mixed(lower, fy);
        };
    }

    private static Tone over(Tone below, int argb) {
        return below.mixed(Tone.of(argb, below.shine()), (argb >>> 24) / 255.0);
    }
}
