package planewright.app.pictures;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * Formats that a journal does not take in, told by their content: which one it is, and what the builder can do. Sources: ISO
 * base media file format (ISO/IEC 14496-12) 4.3 and the registered brands at mp4ra.org; TIFF revision 6.0, section 2; TIFF/EP
 * (ISO 12234-2); the signatures of the other formats as their own specifications give them.
 */
enum ForeignFormat {
    HEIC("HEIC or HEIF, which needs a licensed decoder; let the camera save JPEG, or export it as JPEG"),
    AVIF("AVIF; export it as JPEG"),
    RAW("a camera's raw file, which must be developed first; export it as JPEG"),
    FILM("a film; export a frame of it as JPEG"),
    TIFF("TIFF; export it as JPEG or PNG"),
    WEBP("WebP; export it as JPEG or PNG"),
    GIF("GIF; export it as PNG"),
    BMP("BMP; export it as PNG"),
    JPEG_2000("JPEG 2000; export it as JPEG"),
    JPEG_XL("JPEG XL; export it as JPEG"),
    PDF("PDF; export its page as PNG"),
    SVG("SVG; export it as PNG");

    private static final int HEAD = 4096;

    private static final Set<String> HEIF_BRANDS =
            Set.of("heic", "heix", "heim", "heis", "hevc", "hevx", "hevm", "hevs", "mif1", "mif2", "msf1", "miaf");

    private static final int MAKE = 271;
    private static final int SUB_DIRECTORIES = 330;
    private static final int EXIF_DIRECTORY = 34665;
    private static final int COLOUR_FILTER_ARRAY = 33422;
    private static final int TIFF_EP_VERSION = 37398;
    private static final int DNG_VERSION = 50706;

    private final String words;

    ForeignFormat(String words) {
        this.words = words;
    }

    /** What it is and what to do about it: {@code HEIC or HEIF, …; export it as JPEG}. */
    String words() {
        return words;
    }

    /** The format of a content; empty for one that is not known. */
    static Optional<ForeignFormat> of(byte[] content) {
        var text = text(content, HEAD);
        if (text.startsWith("ftyp", 4)) {
            return Optional.of(media(content, text));
        }
        if (text.startsWith("II") || text.startsWith("MM")) {
            return tiff(content, text.startsWith("II") ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        }
        return signature(text);
    }

    private static Optional<ForeignFormat> signature(String text) {
        if (text.startsWith("RIFF") && text.startsWith("WEBP", 8)) {
            return Optional.of(WEBP);
        }
        if (text.startsWith("GIF8")) {
            return Optional.of(GIF);
        }
        if (text.startsWith("BM") && text.startsWith("\0\0\0\0", 6)) {
            return Optional.of(BMP);
        }
        if (text.startsWith("\0\0\0\fjP  \r\n") || text.startsWith("\u00ff\u004f\u00ff\u0051")) {
            return Optional.of(JPEG_2000);
        }
        if (text.startsWith("\0\0\0\fJXL \r\n") || text.startsWith("\u00ff\n")) {
            return Optional.of(JPEG_XL);
        }
        if (text.startsWith("%PDF-")) {
            return Optional.of(PDF);
        }
        if (text.stripLeading().startsWith("<") && text.contains("<svg")) {
            return Optional.of(SVG);
        }
        return text.startsWith("\0MRM")
                        || text.startsWith("FOVb")
                        || text.substring(0, Math.min(16, text.length())).contains("RAW")
                ? Optional.of(RAW)
                : Optional.empty();
    }

    /** The main brand decides, then the compatible ones: four letters each, to the end of the box. */
    private static ForeignFormat media(byte[] content, String text) {
        long length = ByteBuffer.wrap(content).getInt() & 0xFFFFFFFFL;
        int end = (int) Math.min(length, text.length());
        for (int at = 8; at + 4 <= end; at += at == 8 ? 8 : 4) {
            var brand = text.substring(at, at + 4);
            if (brand.startsWith("avi")) {
                return AVIF;
            }
            if (HEIF_BRANDS.contains(brand) && !text.substring(8, end).contains("avif")) {
                return HEIC;
            }
            if (brand.equals("crx ")) {
                return RAW;
            }
        }
        return FILM;
    }

    /** A raw file is a TIFF with a camera's own tags in it, or one with a number of its own instead of 42. */
    private static Optional<ForeignFormat> tiff(byte[] content, ByteOrder order) {
        var bytes = ByteBuffer.wrap(content).order(order);
        try {
            int version = bytes.getShort(2);
            long directory = bytes.getInt(4) & 0xFFFFFFFFL;
            if (version == 42) {
                return Optional.of(isRaw(tags(bytes, (int) directory)) ? RAW : TIFF);
            }
            return version == 43
                    ? Optional.of(TIFF)
                    : Optional.of(RAW).filter(raw -> directory == 8 || directory == 24);
        } catch (IndexOutOfBoundsException cutOff) {
            return text(content, 4).contains("*") ? Optional.of(TIFF) : Optional.empty();
        }
    }

    private static Set<Integer> tags(ByteBuffer bytes, int directory) {
        var tags = new HashSet<Integer>();
        int entries = bytes.getShort(directory) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            tags.add(bytes.getShort(directory + 2 + 12 * i) & 0xFFFF);
        }
        return tags;
    }

    private static boolean isRaw(Set<Integer> tags) {
        return tags.contains(DNG_VERSION)
                || tags.contains(TIFF_EP_VERSION)
                || tags.contains(COLOUR_FILTER_ARRAY)
                || tags.contains(MAKE) && (tags.contains(SUB_DIRECTORIES) || tags.contains(EXIF_DIRECTORY));
    }

    private static String text(byte[] content, int most) {
        return new String(Arrays.copyOf(content, Math.min(content.length, most)), StandardCharsets.ISO_8859_1);
    }
}
