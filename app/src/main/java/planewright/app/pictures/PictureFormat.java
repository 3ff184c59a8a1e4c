package planewright.app.pictures;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadWarningListener;

/** Kinds of pictures that a journal takes in, told by their content and not by their name. */
enum PictureFormat {
    JPEG("jpg", 0xFF, 0xD8, 0xFF),
    PNG("png", 0x89, 'P', 'N', 'G');

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
        throw new PictureRefused("picture " + file + " is " + looksLike(content) + "; accepted: JPEG or PNG");
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
        var head = new String(Arrays.copyOf(content, 16), StandardCharsets.ISO_8859_1);
        if (head.startsWith("ftyp", 4)) {
            return "HEIC or a film, which Java cannot read: let the camera save JPEG, or convert it";
        }
        if (head.startsWith("II*") || head.startsWith("MM\0*")) {
            return "TIFF or a camera's raw file: save it as JPEG first";
        }
        return content.length == 0 ? "empty" : "of another kind";
    }

    private static void requireSound(Path file, byte[] content) throws IOException {
        try (var input = ImageIO.createImageInputStream(new ByteArrayInputStream(content))) {
            var reader = ImageIO.getImageReaders(input).next();
            try {
                reader.setInput(input);
                long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
                if (pixels > MOST_PIXELS) {
                    throw new PictureRefused("picture " + file + " has " + pixels / 1_000_000
                            + " megapixels; accepted: up to " + MOST_PIXELS / 1_000_000);
                }
                var warnings = new Warnings();
                reader.addIIOReadWarningListener(warnings);
                var coarse = reader.getDefaultReadParam();
                coarse.setSourceSubsampling(8, 8, 0, 0);
                reader.read(0, coarse);
                if (warnings.cutOff) {
                    throw new PictureRefused("picture " + file + " is cut off; copy it from the camera again");
                }
            } finally {
                reader.dispose();
            }
        } catch (PictureRefused refused) {
            throw refused;
        } catch (IOException | RuntimeException broken) {
            throw new PictureRefused(
                    "picture " + file + " is damaged (" + broken.getMessage() + "); copy it from the camera again");
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
