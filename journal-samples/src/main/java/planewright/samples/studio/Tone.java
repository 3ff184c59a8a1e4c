package planewright.samples.studio;

/**
 * What a surface looks like at a point: linear red, green and blue, 0 to 1, and how much it shines.
 *
 * @param shine 0 dull to 1 polished
 */
public record Tone(double r, double g, double b, double shine) {

    /** From a colour as written for screens, 0xRRGGBB. */
    public static Tone of(int rgb, double shine) {
        return new Tone(linear(rgb >> 16), linear(rgb >> 8), linear(rgb), shine);
    }

    public static Tone of(int rgb) {
        return of(rgb, 0.08);
    }

    public Tone times(double factor) {
        return new Tone(r * factor, g * factor, b * factor, shine);
    }

    public Tone mixed(Tone other, double share) {
        return new Tone(
                Noise.mix(r, other.r, share),
                Noise.mix(g, other.g, share),
                Noise.mix(b, other.b, share),
                Noise.mix(shine, other.shine, share));
    }

    static double linear(int channel) {
        return Math.pow((channel & 255) / 255.0, 2.2);
    }
}
