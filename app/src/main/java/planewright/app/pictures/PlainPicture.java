package planewright.app.pictures;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * A picture to hand on: the same pixels, bit for bit, without what a camera or a program has written beside them (the place, the
 * owner, serial numbers, notes of the maker, smaller copies, films behind the picture). When it was taken and which side is up
 * stay, as does the colour profile. Sources: JPEG (ITU-T T.81), annex B; Exif 2.32 (CIPA DC-008-2019), 4.5 and 4.6; PNG (W3C,
 * third edition), 5 and 11; ICC.1:2022, annex B.4.
 */
public final class PlainPicture {
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    private static final String PROFILE = "ICC_PROFILE\0";
    private static final String ADOBE = "Adobe";
    private static final String JFIF = "JFIF\0";

    /** What decides how pixels look; all other chunks tell of something else. */
    private static final Set<String> CHUNKS_OF_PIXELS = Set.of(
            "IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "cICP", "sBIT", "bKGD", "pHYs");

    private static final int PNG_SIGNATURE = 8;
    private static final int CHUNK_FRAME = 12;

    private final byte[] content;
    private final ByteArrayOutputStream plain = new ByteArrayOutputStream();

    private PlainPicture(byte[] content) {
        this.content = content;
    }

    /**
     * The plain form of a picture; of a plain picture, its own content.
     *
     * @throws PictureRefused if the file is not a whole JPEG or PNG, so that nobody knows what it says
     */
    public static byte[] of(Path file) throws IOException {
        var content = Files.readAllBytes(file);
        try {
            return of(content);
        } catch (IndexOutOfBoundsException cutOff) {
            throw new PictureRefused("picture {0} is damaged, so what it tells cannot be cut out", file);
        }
    }

    static byte[] of(byte[] content) {
        var exif = Exif.of(content).plain();
        var picture = new PlainPicture(content);
        return (content[0] & 0xFF) == 0xFF ? picture.jpeg(exif) : picture.png(exif);
    }

    private byte[] jpeg(byte[] exif) {
        marker(0xD8);
        if (exif.length > 0) {
            marker(0xE1);
            number(2 + EXIF.length + exif.length);
            plain.writeBytes(EXIF);
            plain.writeBytes(exif);
        }
        int at = 2;
        while (true) {
            at = nextMarker(at);
            int marker = content[at - 1] & 0xFF;
            if (marker == 0xD9) {
                marker(marker);
                return plain.toByteArray();
            }
            if (isAlone(marker)) {
                marker(marker);
            } else {
                int end = at + (content[at] & 0xFF) * 256 + (content[at + 1] & 0xFF);
                segment(marker, at, end);
                at = marker == 0xDA ? scan(end) : end;
            }
        }
    }

    /** The place behind the next marker; what stands before it, and bytes that fill up, belong to nothing. */
    private int nextMarker(int from) {
        int at = from;
        while ((content[at] & 0xFF) != 0xFF) {
            at++;
        }
        while ((content[at] & 0xFF) == 0xFF) {
            at++;
        }
        return at + 1;
    }

    private static boolean isAlone(int marker) {
        return marker == 0x01 || marker >= 0xD0 && marker <= 0xD8;
    }

    /** Copies a segment whose length stands at a place, if pixels need it. */
    private void segment(int marker, int at, int end) {
        if (marker == 0xE0) {
            if (says(JFIF, at + 2)) {
                marker(marker);
                number(16);
                plain.write(content, at + 2, 12);
                number(0);
            }
        } else if (!isOfSomeone(marker)
                || marker == 0xE2 && says(PROFILE, at + 2)
                || marker == 0xEE && says(ADOBE, at + 2)) {
            marker(marker);
            copy(at, end);
        }
    }

    /** Segments of applications, comments. */
    private static boolean isOfSomeone(int marker) {
        return marker >= 0xE0;
    }

    /** Copies the coded pixels of a scan up to the next marker that is no part of them; its place. */
    private int scan(int from) {
        int at = from;
        while ((content[at] & 0xFF) != 0xFF || content[at + 1] == 0 || (content[at + 1] & 0xF8) == 0xD0) {
            at++;
        }
        copy(from, at);
        return at;
    }

    private byte[] png(byte[] exif) {
        copy(0, PNG_SIGNATURE);
        var bytes = ByteBuffer.wrap(content);
        int at = PNG_SIGNATURE;
        while (true) {
            long length = bytes.getInt(at) & 0xFFFFFFFFL;
            var type = new String(content, at + 4, 4, StandardCharsets.US_ASCII);
            int end = (int) Math.min(Integer.MAX_VALUE, at + CHUNK_FRAME + length);
            if (CHUNKS_OF_PIXELS.contains(type)) {
                copy(at, end);
            }
            if (type.equals("IHDR") && exif.length > 0) {
                chunk("eXIf", exif);
            }
            if (type.equals("IEND")) {
                return plain.toByteArray();
            }
            at = end;
        }
    }

    private void chunk(String type, byte[] data) {
        var typed = ByteBuffer.allocate(4 + data.length)
                .put(type.getBytes(StandardCharsets.US_ASCII))
                .put(data)
                .array();
        var check = new CRC32();
        check.update(typed);
        plain.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
        plain.writeBytes(typed);
        plain.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
    }

    private void marker(int marker) {
        plain.write(0xFF);
        plain.write(marker);
    }

    private void number(int number) {
        plain.write(number >> 8);
        plain.write(number);
    }

    private void copy(int from, int to) {
        plain.write(content, from, to - from);
    }

    private boolean says(String text, int at) {
        for (int i = 0; i < text.length(); i++) {
            if (content[at + i] != text.charAt(i)) {
                return false;
            }
        }
        return true;
    }
}
