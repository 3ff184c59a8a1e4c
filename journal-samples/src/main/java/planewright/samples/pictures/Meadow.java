package planewright.samples.pictures;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.Random;
import planewright.samples.studio.Drawn;

/** Long grass, blade by blade, from the far edge of a meadow to the camera. */
final class Meadow {
    private final Random random;
    private final BufferedImage image;
    private final Graphics2D g;
    private final double dim;

    Meadow(BufferedImage backdrop, long seed, double dim) {
        this.random = new Random(seed);
        this.image = backdrop;
        this.g = backdrop.createGraphics();
        this.dim = dim;
        Drawn.smooth(g);
    }

    /** Grass whose roots lie between two shares of the picture's height, 0 top to 1 bottom. */
    Meadow grass(double from, double to, double horizon, int blades) {
        for (int i = 0; i < blades; i++) {
            double at = from + (to - from) * i / blades;
            double near = (at - horizon) / (1 - horizon);
            blade(
                    random.nextDouble() * image.getWidth(),
                    at * image.getHeight(),
                    10 + 190 * near * near + 40 * near,
                    near);
        }
        return this;
    }

    Meadow thing(BufferedImage thing) {
        g.drawImage(thing, 0, 0, null);
        return this;
    }

    BufferedImage image() {
        g.dispose();
        return image;
    }

    private void blade(double x, double y, double size, double near) {
        double tall = size * (0.5 + 0.7 * random.nextDouble());
        double lean = tall * (random.nextGaussian() * 0.16 + 0.14);
        double wide = 0.6 + size * 0.014 * (0.6 + random.nextDouble());
        var path = new Path2D.Double();
        path.moveTo(x - wide, y);
        path.quadTo(x, y - tall * 0.6, x + lean, y - tall);
        path.quadTo(x + wide, y - tall * 0.55, x + wide, y);
        path.closePath();
        float hue = (float) (0.17 + 0.09 * random.nextDouble());
        float strength = (float) (0.35 + 0.3 * random.nextDouble());
        float bright = (float) (dim * (0.34 + 0.4 * random.nextDouble()) * (1.12 - 0.35 * near));
        g.setColor(Color.getHSBColor(hue, strength, bright));
        g.fill(path);
        if (near > 0.15 && random.nextInt(9) == 0) {
            g.setColor(Color.getHSBColor(0.12f, 0.35f, (float) (dim * 0.75)));
            double ear = size * 0.03;
            g.fill(new java.awt.geom.Ellipse2D.Double(x + lean - ear / 2, y - tall - ear * 2, ear, ear * 3.4));
        }
    }
}
