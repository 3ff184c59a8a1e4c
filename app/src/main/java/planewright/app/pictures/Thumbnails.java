package planewright.app.pictures;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Makes small views: decodes every n-th pixel, then averages down. */
final class Thumbnails {
    private Thumbnails() {}

    static BufferedImage of(Path file, int longestEdge) throws IOException {
        return turned(
                fitted(decoded(file, longestEdge), longestEdge), Exif.of(file).orientation());
    }

    private static BufferedImage decoded(Path file, int longestEdge) throws IOException {
        try (var input = ImageIO.createImageInputStream(file.toFile())) {
            var readers = input == null ? null : ImageIO.getImageReaders(input);
            if (readers == null || !readers.hasNext()) {
                throw new IOException("picture " + file + " is missing or not JPEG or PNG");
            }
            var reader = readers.next();
            try {
                reader.setInput(input, true, true);
                int width = reader.getWidth(0);
                int height = reader.getHeight(0);
                int step = Math.max(1, Math.max(width, height) / (3 * longestEdge));
                var param = reader.getDefaultReadParam();
                param.setSourceSubsampling(step, step, Math.min(step / 2, width - 1), Math.min(step / 2, height - 1));
                return reader.read(0, param);
            } catch (RuntimeException damaged) {
                throw new IOException("picture " + file + " is damaged: " + damaged.getMessage(), damaged);
            } finally {
                reader.dispose();
            }
        }
    }

    /** Halves as often as it may, then scales the rest, so that every source pixel counts. */
    private static BufferedImage fitted(BufferedImage source, int longestEdge) {
        var image = source;
        while (Math.max(image.getWidth(), image.getHeight()) >= 2 * longestEdge) {
            image = scaled(image, Math.max(1, image.getWidth() / 2), Math.max(1, image.getHeight() / 2));
        }
        double scale = Math.min(1, (double) longestEdge / Math.max(image.getWidth(), image.getHeight()));
        return scaled(image, Math.max(1, (int) Math.round(image.getWidth() * scale)), Math.max(1, (int)
                Math.round(image.getHeight() * scale)));
    }

    private static BufferedImage scaled(BufferedImage source, int width, int height) {
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(source, 0, 0, width, height, null);
        g.dispose();
        return image;
    }

    /** Upright by the eight orientations of Exif (CIPA DC-008-2019, 4.6.4 A, tag 274). */
    private static BufferedImage turned(BufferedImage source, int orientation) {
        if (orientation == 1) {
            return source;
        }
        int w = source.getWidth();
        int h = source.getHeight();
        boolean across = orientation >= 5;
        var image = new BufferedImage(across ? h : w, across ? w : h, BufferedImage.TYPE_INT_RGB);
        var turn = switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            default -> new AffineTransform(0, -1, 1, 0, 0, w);
        };
        Graphics2D g = image.createGraphics();
        g.drawImage(source, turn, null);
        g.dispose();
        return image;
    }
}
