package planewright.app.pictures;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.GpsDirectory;
import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;

/**
 * What a camera wrote beside a photo. Source: CIPA DC-008-2019 (Exif 2.32), 4.6.
 *
 * @param taken when, by the camera's clock
 * @param orientation 1 to 8 as in Exif; 1 is upright
 * @param tellsPlace whether it says where
 */
record Exif(Optional<LocalDateTime> taken, int orientation, boolean tellsPlace) {
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss", Locale.ROOT);

    private static final int HEADER = 8;
    private static final int FIELD = 12;
    private static final int ASCII = 2;
    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int UNDEFINED = 7;
    /** 0232 in letters. */
    private static final int VERSION = 0x30323332;

    private static final Exif NONE = new Exif(Optional.empty(), 1, false);

    static Exif of(Path file) {
        try (var in = new BufferedInputStream(Files.newInputStream(file))) {
            return of(in);
        } catch (IOException unreadable) {
            return NONE;
        }
    }

    static Exif of(byte[] content) {
        return of(new ByteArrayInputStream(content));
    }

    private static Exif of(InputStream content) {
        try {
            var metadata = ImageMetadataReader.readMetadata(content);
            return new Exif(taken(metadata), orientation(metadata), tellsPlace(metadata));
        } catch (ImageProcessingException | IOException | RuntimeException unreadable) {
            return NONE;
        }
    }

    private static Optional<LocalDateTime> taken(Metadata metadata) {
        var directory = metadata.getFirstDirectoryOfType(ExifSubIFDDirectory.class);
        var stamp = directory == null ? null : directory.getString(ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL);
        try {
            return Optional.ofNullable(stamp).map(text -> LocalDateTime.parse(text.strip(), STAMP));
        } catch (DateTimeParseException broken) {
            return Optional.empty();
        }
    }

    private static boolean tellsPlace(Metadata metadata) {
        return metadata.getDirectoriesOfType(GpsDirectory.class).stream()
                .anyMatch(directory -> directory.getTagCount() > 0);
    }

    private static int orientation(Metadata metadata) {
        var directory = metadata.getFirstDirectoryOfType(ExifIFD0Directory.class);
        var orientation = directory == null ? null : directory.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
        return orientation == null || orientation < 1 || orientation > 8 ? 1 : orientation;
    }

    /**
     * A block that says when and which side is up, and nothing else; empty where there is nothing to say. As TIFF 6.0, section 2,
     * and Exif 2.32, 4.6.2 lay it out.
     */
    byte[] plain() {
        if (taken.isEmpty() && orientation == 1) {
            return new byte[0];
        }
        var stamp = taken.map(at -> (STAMP.format(at) + "\0").getBytes(StandardCharsets.US_ASCII));
        int fields = stamp.isPresent() ? 2 : 1;
        int second = HEADER + directory(fields);
        var block = ByteBuffer.allocate(
                second + stamp.map(text -> directory(2) + text.length).orElse(0));
        block.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(HEADER);
        block.putShort((short) fields);
        field(block, ExifIFD0Directory.TAG_ORIENTATION, SHORT, 1, orientation << 16);
        stamp.ifPresent(text -> {
            field(block, ExifIFD0Directory.TAG_EXIF_SUB_IFD_OFFSET, LONG, 1, second);
            block.putInt(0).putShort((short) 2);
            field(block, ExifSubIFDDirectory.TAG_EXIF_VERSION, UNDEFINED, 4, VERSION);
            field(block, ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL, ASCII, text.length, second + directory(2));
        });
        block.putInt(0);
        stamp.ifPresent(block::put);
        return block.array();
    }

    private static int directory(int fields) {
        return 2 + FIELD * fields + 4;
    }

    private static void field(ByteBuffer block, int tag, int type, int count, int value) {
        block.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
    }
}
