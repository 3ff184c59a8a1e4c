package planewright.app.pictures;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;

/** Makes small views of pictures, upright. A picture is decoded once however many sizes of it are wanted. */
final class Thumbnails {
    /** Of more pixels only every second or third is taken, so that memory stays bounded. */
    private static final long MOST_DECODED = 24_000_000;

    /** Of a photo at least so many pixels are averaged along each side of a pixel of the view; a camera resolves no single one. */
    private static final int ENOUGH = 3;

    private final Path file;
    private final byte[] content;
    private final Exif exif;

    private Thumbnails(Path file) throws IOException {
        this.file = file;
        try {
            this.content = Files.readAllBytes(file);
        } catch (NoSuchFileException gone) {
            throw new IOException(PictureWords.say("picture {0} is missing", file), gone);
        }
        this.exif = Exif.of(content);
    }

    /**
     * One view for each edge, no side of it longer.
     *
     * @param longestEdges the longest first
     */
    static BufferedImage[] of(Path file, int... longestEdges) throws IOException {
        var thumbnails = new Thumbnails(file);
        var views = new BufferedImage[longestEdges.length];
        var image = thumbnails.decoded(longestEdges[0]);
        for (int i = 0; i < views.length; i++) {
            image = Shrinking.to(image, longestEdges[i]);
            views[i] = turned(image, thumbnails.exif.orientation());
        }
        return views;
    }

    private BufferedImage decoded(int longestEdge) throws IOException {
        try (var input = ImageIO.createImageInputStream(new ByteArrayInputStream(content))) {
            var readers = ImageIO.getImageReaders(input);
            if (!readers.hasNext()) {
                throw new IOException(PictureWords.say("picture {0} is not JPEG or PNG", file));
            }
            var reader = readers.next();
            try {
                reader.setInput(input, true, true);
                PictureFormat.requireReasonable(file, reader);
                int step = step(reader, longestEdge);
                var param = reader.getDefaultReadParam();
                param.setSourceSubsampling(step, step, 0, 0);
                return reader.read(0, param);
            } catch (RuntimeException damaged) {
                throw new IOException(
                        PictureWords.say("picture {0} is damaged: {1}", file, damaged.getMessage()), damaged);
            } finally {
                reader.dispose();
            }
        }
    }

    private static int step(ImageReader reader, int longestEdge) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        boolean photo = reader.getFormatName().equals("JPEG");
        int step = photo ? Math.max(1, Math.max(width, height) / (ENOUGH * longestEdge)) : 1;
        while ((long) width * height / ((long) step * step) > MOST_DECODED) {
            step++;
        }
        return step;
    }

    /** Upright by the eight orientations of Exif (CIPA DC-008-2019, 4.6.4 A, tag 274), on white where it can be seen through. */
    private static BufferedImage turned(BufferedImage source, int orientation) {
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
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
            default -> new AffineTransform();
        };
        var g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.drawImage(source, turn, null);
        g.dispose();
        return image;
    }
}
