package planewright.samples.studio;

/**
 * How a scene is lit.
 *
 * @param sun direction towards the light
 * @param direct colour and strength of the light
 * @param sky what comes from above
 * @param bounce what comes from below
 * @param hardness of the shadows: 3 a large window, 30 the sun
 */
public record Light(double[] sun, Tone direct, Tone sky, Tone bounce, double hardness) {

    /** A large window at the left of the bench. */
    public static Light window() {
        return new Light(
                Camera.unit(new double[] {-0.62, 0.38, 0.95}),
                new Tone(1.55, 1.48, 1.36, 0),
                new Tone(0.50, 0.54, 0.62, 0),
                new Tone(0.20, 0.17, 0.14, 0),
                5);
    }

    /** A lamp over the bench in the evening. */
    public static Light lamp() {
        return new Light(
                Camera.unit(new double[] {0.5, 0.42, 0.9}),
                new Tone(1.75, 1.48, 1.12, 0),
                new Tone(0.40, 0.37, 0.36, 0),
                new Tone(0.22, 0.17, 0.12, 0),
                7);
    }

    /** A bright day outside. */
    public static Light day() {
        return new Light(
                Camera.unit(new double[] {-0.55, -0.35, 0.85}),
                new Tone(1.9, 1.8, 1.6, 0),
                new Tone(0.50, 0.60, 0.78, 0),
                new Tone(0.22, 0.24, 0.16, 0),
                22);
    }

    /** The sun low in the west. */
    public static Light dusk() {
        return new Light(
                Camera.unit(new double[] {-0.9, 0.5, 0.16}),
                new Tone(1.9, 0.98, 0.46, 0),
                new Tone(0.30, 0.27, 0.40, 0),
                new Tone(0.12, 0.09, 0.10, 0),
                16);
    }
}
