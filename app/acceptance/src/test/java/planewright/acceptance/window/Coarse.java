package planewright.acceptance.window;

import java.awt.image.BufferedImage;

/** What the eye sees of a picture from afar: how bright each field of a grid is, and how wide it is for its height. Fonts and the edges of letters hardly count. */
record Coarse(double[] fields, double shape) {
    private static final int ACROSS = 24;
    private static final int DOWN = 18;

    static Coarse of(BufferedImage image) {
        var fields = new double[ACROSS * DOWN];
        var counts = new int[ACROSS * DOWN];
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int field = y * DOWN / image.getHeight() * ACROSS + x * ACROSS / image.getWidth();
                int rgb = image.getRGB(x, y);
                fields[field] += ((rgb >> 16 & 0xff) + (rgb >> 8 & 0xff) + (rgb & 0xff)) / 3.0;
                counts[field]++;
            }
        }
        for (int i = 0; i < fields.length; i++) {
            fields[i] /= counts[i];
        }
        return new Coarse(fields, (double) image.getWidth() / image.getHeight());
    }

    /** How far two pictures are apart: 0 for the same, 255 for black and white. */
    double from(Coarse other) {
        double sum = 0;
        for (int i = 0; i < fields.length; i++) {
            sum += Math.abs(fields[i] - other.fields[i]);
        }
        return sum / fields.length;
    }
}
