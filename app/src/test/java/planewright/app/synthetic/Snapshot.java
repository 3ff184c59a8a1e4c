package planewright.app.synthetic;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Random;
import javax.imageio.ImageIO;

/**
 * A picture of pieces on a bench, different for each number, the same for the same.
 *
 * @param width in pixels
 * @param height in pixels
 */
public record Snapshot(int width, int height) {
    /** Some kilobytes a picture. */
    public static final Snapshot SMALL = new Snapshot(320, 240);

    /** As large as a camera's: 12 megapixels. */
    public static final Snapshot LARGE = new Snapshot(4000, 3000);

    /** The bytes of a JPEG. */
    public byte[] jpeg(long number) {
        var content = new ByteArrayOutputStream();
        try {
            ImageIO.write(draw(new Random(number)), "jpeg", content);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return content.toByteArray();
    }

    private BufferedImage draw(Random random) {
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        var g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setPaint(new GradientPaint(0, 0, wood(random), width, height, wood(random)));
        g.fillRect(0, 0, width, height);
        int pieces = 3 + random.nextInt(6);
        for (int i = 0; i < pieces; i++) {
            piece(g, random);
        }
        g.dispose();
        return image;
    }

    private void piece(Graphics2D g, Random random) {
        var outline = new Path2D.Double();
        outline.moveTo(random.nextDouble() * width, random.nextDouble() * height);
        int corners = 3 + random.nextInt(4);
        for (int i = 0; i < corners; i++) {
            outline.quadTo(
                    random.nextDouble() * width,
                    random.nextDouble() * height,
                    random.nextDouble() * width,
                    random.nextDouble() * height);
        }
        outline.closePath();
        g.setColor(new Color(random.nextInt(0x1000000)));
        g.fill(outline);
    }

    private static Color wood(Random random) {
        return new Color(150 + random.nextInt(90), 110 + random.nextInt(80), 60 + random.nextInt(80));
    }
}
