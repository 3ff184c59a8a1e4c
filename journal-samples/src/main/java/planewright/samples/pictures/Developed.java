package planewright.samples.pictures;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import planewright.samples.studio.Noise;

/** A picture as it comes from a camera: a little darker at its corners, a little grain, packed as a file. */
final class Developed {
    private static final float QUALITY = 0.85f;

    private Developed() {}

    static byte[] bytes(Picture picture) throws IOException {
        var image = picture.drawing().get();
        var out = new ByteArrayOutputStream();
        if (picture.type().equals("png")) {
            ImageIO.write(image, "png", out);
            return out.toByteArray();
        }
        var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        var settings = writer.getDefaultWriteParam();
        settings.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        settings.setCompressionQuality(QUALITY);
        try (var stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(camera(image), null, null), settings);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    private static BufferedImage camera(BufferedImage image) {
        int w = image.getWidth();
        int h = image.getHeight();
        var developed = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        double reach = Math.hypot(w, h) / 2;
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                double out = Math.hypot(x - w / 2.0, y - h / 2.0) / reach;
                double corner = 1 - 0.22 * out * out * out;
                double grain = (Noise.smooth(x * 0.7, y * 0.7, 3) - 0.5) * 5;
                int rgb = image.getRGB(x, y);
                developed.setRGB(
                        x,
                        y,
                        channel(rgb >> 16, corner, grain) << 16
                                | channel(rgb >> 8, corner, grain) << 8
                                | channel(rgb, corner, grain));
            }
        }
        return developed;
    }

    private static int channel(int value, double corner, double grain) {
        return (int) Math.max(0, Math.min(255, Math.round((value & 255) * corner + grain)));
    }
}
