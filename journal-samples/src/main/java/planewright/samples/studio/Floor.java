package planewright.samples.studio;

import java.awt.image.BufferedImage;

/**
 * What the things stand on, at z = 0: a drawn picture, repeated where it ends.
 *
 * @param left x of the picture's left edge, mm
 * @param top y of its upper edge, mm
 * @param dots per mm
 */
public record Floor(int[] pixels, int width, int height, double left, double top, double dots, double shine) {

    /** A picture whose middle lies at x = y = 0. */
    public static Floor of(BufferedImage drawn, double dots, double shine) {
        int w = drawn.getWidth();
        int h = drawn.getHeight();
        return new Floor(drawn.getRGB(0, 0, w, h, null, 0, w), w, h, -w / dots / 2, h / dots / 2, dots, shine);
    }

    Tone tone(double x, double y) {
        double px = (x - left) * dots - 0.5;
        double py = (top - y) * dots - 0.5;
        int ix = (int) Math.floor(px);
        int iy = (int) Math.floor(py);
        var upper = pixel(ix, iy).mixed(pixel(ix + 1, iy), px - ix);
        var lower = pixel(ix, iy + 1).mixed(pixel(ix + 1, iy + 1), px - ix);
        return upper.mixed(lower, py - iy);
    }

    private Tone pixel(int x, int y) {
        return Tone.of(pixels[Math.floorMod(y, height) * width + Math.floorMod(x, width)], shine);
    }
}
