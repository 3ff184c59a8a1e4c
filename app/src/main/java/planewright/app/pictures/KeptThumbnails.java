package planewright.app.pictures;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import planewright.api.journal.Picture;

/** Small views in the user's cache. All sizes of a picture are made at once, for decoding it is most of the work. */
final class KeptThumbnails {
    /** The largest first, as each is made from the one before. */
    private static final ThumbnailSize[] SIZES = {ThumbnailSize.LARGE, ThumbnailSize.SMALL};

    private static final System.Logger LOGGER = System.getLogger(KeptThumbnails.class.getName());

    private static final int LOCKS = 32;

    private final Path folder;

    /** One picture is made once, though two threads ask for it. */
    private final Object[] locks = Stream.generate(Object::new).limit(LOCKS).toArray();

    KeptThumbnails(Path folder) {
        this.folder = folder;
    }

    BufferedImage thumbnail(Picture picture, Path file, ThumbnailSize size) throws IOException {
        synchronized (locks[Math.floorMod(picture.hash().hashCode(), LOCKS)]) {
            var known = read(place(picture, size));
            return known.isPresent() ? known.get() : make(picture, file, size);
        }
    }

    void prepare(Picture picture, Path file) throws IOException {
        synchronized (locks[Math.floorMod(picture.hash().hashCode(), LOCKS)]) {
            if (!Stream.of(SIZES).allMatch(size -> Files.exists(place(picture, size)))) {
                make(picture, file, ThumbnailSize.LARGE);
            }
        }
    }

    private BufferedImage make(Picture picture, Path file, ThumbnailSize wanted) throws IOException {
        var made = Thumbnails.of(
                file, Stream.of(SIZES).mapToInt(ThumbnailSize::edge).toArray());
        try {
            Files.createDirectories(folder);
            for (int i = 0; i < SIZES.length; i++) {
                keep(Jpeg.of(made[i]), place(picture, SIZES[i]));
            }
        } catch (IOException refused) {
            LOGGER.log(System.Logger.Level.WARNING, "a small view of " + file + " cannot be kept", refused);
        }
        return made[
                IntStream.range(0, SIZES.length)
                        .filter(i -> SIZES[i] == wanted)
                        .findFirst()
                        .orElseThrow()];
    }

    private void keep(byte[] view, Path place) throws IOException {
        var beside = Files.createTempFile(folder, "thumbnail", ".tmp");
        try {
            Files.write(beside, view);
            Files.move(beside, place, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private Path place(Picture picture, ThumbnailSize size) {
        return folder.resolve(picture.hash() + "-" + size.edge() + ".jpg");
    }

    /** A view that was made before; empty where there is none, or a damaged one. */
    private static Optional<BufferedImage> read(Path file) {
        try {
            if (!Files.isRegularFile(file)) {
                return Optional.empty();
            }
            var content = Files.readAllBytes(file);
            return isWhole(content)
                    ? Optional.ofNullable(ImageIO.read(new ByteArrayInputStream(content)))
                    : Optional.empty();
        } catch (IOException | RuntimeException damaged) {
            return Optional.empty();
        }
    }

    /** A JPEG that was cut off is decoded all the same, so look whether its end is there. */
    private static boolean isWhole(byte[] content) {
        int end = content.length;
        return end > 2 && (content[end - 2] & 0xFF) == 0xFF && (content[end - 1] & 0xFF) == 0xD9;
    }
}
