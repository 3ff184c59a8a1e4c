package planewright.app.pictures;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.GpsDirectory;
import java.io.IOException;
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

    static Exif of(Path file) {
        try {
            var metadata = ImageMetadataReader.readMetadata(file.toFile());
            return new Exif(taken(metadata), orientation(metadata), tellsPlace(metadata));
        } catch (ImageProcessingException | IOException | RuntimeException unreadable) {
            return new Exif(Optional.empty(), 1, false);
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
}
