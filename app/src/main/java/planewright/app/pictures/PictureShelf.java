package planewright.app.pictures;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDateTime;
import java.util.HexFormat;
import java.util.Optional;
import javax.imageio.ImageIO;
import planewright.api.journal.Picture;
import planewright.app.files.SafeFile;
import planewright.app.journal.PictureRecord;
import planewright.app.journal.Slow;

/** The pictures of one journal. Methods may be called from any thread, and read or write files: not on the event thread. */
public final class PictureShelf {
    private static final long MOST_BYTES = 50L << 20;

    private final Path photos;
    private final KeptThumbnails kept;
    private final Permission permission;

    /**
     * @param photos where pictures lie under their hashes
     * @param thumbnails a folder of the user's cache
     * @param permission refuses where nothing may be taken in
     */
    public PictureShelf(Path photos, Path thumbnails, Permission permission) {
        this.photos = photos;
        this.kept = new KeptThumbnails(thumbnails);
        this.permission = permission;
    }

    /** Asked before a picture is taken in. */
    public interface Permission {
        /**
         * @throws IOException with the reason, where nothing may be written
         */
        void require() throws IOException;
    }

    /**
     * Takes a picture in; when it returns, the picture is on disk.
     *
     * @throws PictureRefused if it is no JPEG or PNG, is cut off, or is too large
     */
    public PictureRecord add(Path file, String caption) throws IOException {
        var content = content(file);
        return keep(content, PictureFormat.of(file, content), caption);
    }

    /**
     * Whether a picture would be taken in; nothing is written.
     *
     * @return what {@link #add(Path, String)} would give, without a caption
     * @throws PictureRefused if it would not
     */
    public PictureRecord check(Path file) throws IOException {
        var content = content(file);
        return new PictureRecord(hash(content), PictureFormat.of(file, content).type(), "");
    }

    /** Whether a picture lies there, with the content that its name says. */
    public boolean holds(Picture picture) throws IOException {
        var file = file(picture);
        return Files.isRegularFile(file) && hash(file).equals(picture.hash());
    }

    /** Throws a picture away that no entry shows. */
    public void remove(Picture picture) throws IOException {
        SafeFile.delete(file(picture));
    }

    private static byte[] content(Path file) throws IOException {
        Slow.work("taking a picture in");
        if (!Files.isRegularFile(file)) {
            throw new PictureRefused("picture {0} is not there; accepted: a JPEG or PNG file", file);
        }
        if (Files.size(file) > MOST_BYTES) {
            throw new PictureRefused(
                    "picture {0} has {1} MB; accepted: up to {2} MB", file, Files.size(file) >> 20, MOST_BYTES >> 20);
        }
        return Files.readAllBytes(file);
    }

    /** Takes a picture in that comes from no file, such as a pasted one. */
    public PictureRecord add(BufferedImage picture, String caption) throws IOException {
        Slow.work("taking a picture in");
        var content = new ByteArrayOutputStream();
        ImageIO.write(picture, "png", content);
        return keep(content.toByteArray(), PictureFormat.PNG, caption);
    }

    /** Where a picture lies. */
    public Path file(Picture picture) {
        return photos.resolve(picture.hash().substring(0, 2)).resolve(picture.hash() + "." + picture.type());
    }

    /**
     * Writes a picture into another file.
     *
     * @param asTaken byte for byte, the place included where the camera told it; else without whatever a camera has noted besides
     *     the time
     * @throws IOException if the picture is missing or damaged, or the file cannot be written
     */
    public void handOn(Picture picture, Path target, boolean asTaken) throws IOException {
        Slow.work("copying a picture");
        var file = file(picture);
        if (!Files.isRegularFile(file)) {
            throw new IOException(PictureWords.say("picture {0} is missing", file));
        }
        SafeFile.write(target, asTaken ? Files.readAllBytes(file) : PlainPicture.of(file));
    }

    /** When a photo was taken, by the camera's clock; empty where it does not say. */
    public Optional<LocalDateTime> taken(Path file) {
        return Exif.of(file).taken();
    }

    /** Whether a photo says where it was taken. */
    public static boolean tellsPlace(Path file) {
        return Exif.of(file).tellsPlace();
    }

    /** Whether a file begins as a picture that a journal takes in. */
    public static boolean isPicture(Path file) throws IOException {
        try (var in = Files.newInputStream(file)) {
            return PictureFormat.begunBy(in.readNBytes(PictureFormat.START));
        }
    }

    /**
     * A small view, upright; kept for the next time, together with the other sizes.
     *
     * @throws IOException if the picture is missing or cannot be decoded; the message names the file
     */
    public BufferedImage thumbnail(Picture picture, ThumbnailSize size) throws IOException {
        Slow.work("reading a picture");
        return kept.thumbnail(picture, file(picture), size);
    }

    /** Makes the small views of a picture before somebody wants to see them, where that has not been done. */
    public void prepare(Picture picture) throws IOException {
        Slow.work("making small views");
        kept.prepare(picture, file(picture));
    }

    /** A picture, upright, no side longer than the edge; not kept. */
    public static BufferedImage view(Path file, int longestEdge) throws IOException {
        Slow.work("reading a picture");
        return Thumbnails.of(file, longestEdge)[0];
    }

    /** As {@link #view(Path, int)} in several sizes at once, the longest edge first. */
    public static BufferedImage[] views(Path file, int... longestEdges) throws IOException {
        Slow.work("reading a picture");
        return Thumbnails.of(file, longestEdges);
    }

    /** The SHA-256 of a content, in lower-case hexadecimal digits. */
    public static String hash(byte[] content) {
        return HexFormat.of().formatHex(sha256().digest(content));
    }

    /** The same of a file, however large. */
    public static String hash(Path file) throws IOException {
        var digest = sha256();
        try (var in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(OutputStream.nullOutputStream());
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    private PictureRecord keep(byte[] content, PictureFormat format, String caption) throws IOException {
        permission.require();
        var record = new PictureRecord(hash(content), format.type(), caption);
        if (!holds(record)) {
            SafeFile.write(file(record), content);
        }
        return record;
    }
}
