package planewright.app.pictures;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadWarningListener;

/** Kinds of pictures that a journal takes in, told by their content and not by their name. */
enum PictureFormat {
    JPEG("jpg", 0xFF, 0xD8, 0xFF),
    PNG("png", 0x89, 'P', 'N', 'G');

    /** So many bytes tell the format. */
    static final int START = 4;

    private static final long MOST_PIXELS = 100_000_000;

    private final String type;
    private final int[] start;

    PictureFormat(String type, int... start) {
        this.type = type;
        this.start = start;
    }

    /** How names of such files end. */
    String type() {
        return type;
    }

    /**
     * The format of a whole, sound picture.
     *
     * @throws PictureRefused if it is none; the message names the file and the reason
     */
    static PictureFormat of(Path file, byte[] content) throws IOException {
        for (var format : values()) {
            if (format.begins(content)) {
                requireSound(file, content);
                return format;
            }
        }
        throw new PictureRefused(
                "picture {0} is {1}; accepted: JPEG or PNG", file, PictureWords.say(looksLike(content)));
    }

    /** Whether a content begins as one of the formats. */
    static boolean begunBy(byte[] content) {
        return Stream.of(values()).anyMatch(format -> format.begins(content));
    }

    private boolean begins(byte[] content) {
        if (content.length < start.length) {
            return false;
        }
        for (int i = 0; i < start.length; i++) {
            if ((content[i] & 0xFF) != start[i]) {
                return false;
            }
        }
        return true;
    }

    private static String looksLike(byte[] content) {
        return ForeignFormat.of(content)
                .map(ForeignFormat::words)
                .orElse(content.length == 0 ? "empty" : "of another kind; export it as JPEG");
    }

    private static void requireSound(Path file, byte[] content) throws IOException {
        try (var input = ImageIO.createImageInputStream(new ByteArrayInputStream(content))) {
            var reader = ImageIO.getImageReaders(input).next();
            try {
                reader.setInput(input);
                requireReasonable(file, reader);
                var warnings = new Warnings();
                reader.addIIOReadWarningListener(warnings);
                var coarse = reader.getDefaultReadParam();
                coarse.setSourceSubsampling(8, 8, 0, 0);
                reader.read(0, coarse);
                if (warnings.cutOff) {
                    throw new PictureRefused("picture {0} is cut off; copy it from the camera again", file);
                }
            } finally {
                reader.dispose();
            }
        } catch (PictureRefused refused) {
            throw refused;
        } catch (IOException | RuntimeException broken) {
            throw new PictureRefused(
                    "picture {0} is damaged ({1}); copy it from the camera again", file, broken.getMessage());
        }
    }

    /**
     * @throws PictureRefused if a picture has so many pixels that decoding it would take the memory
     */
    static void requireReasonable(Path file, ImageReader reader) throws IOException {
        long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
        if (pixels > MOST_PIXELS) {
            throw new PictureRefused(
                    "picture {0} has {1} megapixels; accepted: up to {2}",
                    file, pixels / 1_000_000, MOST_PIXELS / 1_000_000);
        }
    }

    /** A JPEG that ends too early is decoded without an exception, only with a warning. */
    private static final class Warnings implements IIOReadWarningListener {
        private boolean cutOff;

        @Override
        public void warningOccurred(ImageReader source, String warning) {
            cutOff |= warning != null && (warning.contains("EOI") || warning.contains("Premature"));
        }
    }
}
