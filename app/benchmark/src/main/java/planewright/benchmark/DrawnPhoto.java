package planewright.benchmark;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;

/**
 * Pictures as large, as detailed and as noisy as a camera's: light and shade of every size from a third of the picture down to two
 * pixels, falling off as in photographs (amplitude about in proportion to size), and the noise of a sensor.
 */
final class DrawnPhoto {
    private static final int WIDTH = 4000;
    private static final int HEIGHT = 3000;
    private static final int COARSEST = 1024;
    private static final double FALL_OFF = 0.6;
    private static final double CONTRAST = 2.2;
    private static final double NOISE = 7;
    private static final float QUALITY = 0.93f;

    private final Random random;
    private final float[] light = new float[WIDTH * HEIGHT];

    private DrawnPhoto(long seed) {
        random = new Random(seed);
        for (int cell = COARSEST; cell >= 2; cell /= 2) {
            add(cell);
        }
    }

    /** A JPEG of that number; always the same. */
    static byte[] jpeg(long number) throws IOException {
        var image = new DrawnPhoto(number).image();
        var content = new ByteArrayOutputStream();
        var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        try (var out = ImageIO.createImageOutputStream(content)) {
            writer.setOutput(out);
            var param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
        return content.toByteArray();
    }

    /** Random values at the corners of cells, and straight lines between them. */
    private void add(int cell) {
        int across = WIDTH / cell + 3;
        var corners = new float[across * (HEIGHT / cell + 3)];
        float amplitude = (float) (CONTRAST * Math.pow(cell, FALL_OFF));
        for (int i = 0; i < corners.length; i++) {
            corners[i] = amplitude * (random.nextFloat() - 0.5f);
        }
        for (int y = 0; y < HEIGHT; y++) {
            float down = (float) (y % cell) / cell;
            for (int x = 0; x < WIDTH; x++) {
                float right = (float) (x % cell) / cell;
                int corner = y / cell * across + x / cell;
                float top = corners[corner] + (corners[corner + 1] - corners[corner]) * right;
                int below = corner + across;
                float bottom = corners[below] + (corners[below + 1] - corners[below]) * right;
                light[y * WIDTH + x] += top + (bottom - top) * down;
            }
        }
    }

    private BufferedImage image() {
        var image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        var pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        for (int i = 0; i < pixels.length; i++) {
            float grey = 128 + light[i] + (float) (NOISE * (random.nextFloat() - 0.5));
            float tint = light[(i + pixels.length / 3) % pixels.length] / 3;
            pixels[i] = level(grey + tint) << 16 | level(grey) << 8 | level(grey - tint);
        }
        return image;
    }

    private static int level(float value) {
        return Math.max(0, Math.min(255, Math.round(value)));
    }
}
