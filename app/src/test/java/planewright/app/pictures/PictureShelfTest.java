package planewright.app.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.app.journal.PictureRecord;

class PictureShelfTest {
    @TempDir
    private Path temp;

    private PictureShelf shelf;

    @BeforeEach
    void makeShelf() {
        shelf = new PictureShelf(temp.resolve("photos"), temp.resolve("thumbnails"), () -> {});
    }

    @Test
    void aHashIsTheSha256OfTheContent() {
        // FIPS 180-4 example "abc", NIST
        assertThat(PictureShelf.hash("abc".getBytes(StandardCharsets.US_ASCII)))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @ParameterizedTest
    @CsvSource({"jpg, launch.JPG", "png, plan.png", "png, lies.jpg"})
    void aPictureIsKeptUnalteredUnderItsHashByItsContentsType(String type, String name) throws IOException {
        var content = Photos.encoded(Photos.upright(64, 48), type);
        var record = shelf.add(file(name, content), "the launch");
        var hash = PictureShelf.hash(content);
        assertThat(record).isEqualTo(new PictureRecord(hash, type, "the launch"));
        assertThat(temp.resolve("photos").resolve(hash.substring(0, 2)).resolve(hash + "." + type))
                .isEqualTo(shelf.file(record))
                .hasBinaryContent(content);
    }

    @Test
    void theSamePictureIsKeptOnce() throws IOException {
        var content = Photos.encoded(Photos.upright(64, 48), "jpg");
        var one = shelf.add(file("one.jpg", content), "one");
        var other = shelf.add(file("other.jpg", content), "other");
        assertThat(other.hash()).isEqualTo(one.hash());
        assertThat(other.caption()).isEqualTo("other");
        assertThat(photos()).hasSize(1);
    }

    @Test
    void aPictureThatWasDamagedOnTheShelfIsMendedByAddingItAgain() throws IOException {
        var content = Photos.encoded(Photos.upright(64, 48), "jpg");
        var record = shelf.add(file("one.jpg", content), "");
        Files.write(shelf.file(record), Arrays.copyOf(content, 100));
        shelf.add(file("one.jpg", content), "");
        assertThat(shelf.file(record)).hasBinaryContent(content);
    }

    @Test
    void manyThreadsMayAddOnePicture() throws Exception {
        var source = file("one.jpg", Photos.encoded(Photos.upright(64, 48), "jpg"));
        var pool = Executors.newFixedThreadPool(8);
        try {
            var added = new ArrayList<Future<PictureRecord>>();
            for (int i = 0; i < 40; i++) {
                added.add(pool.submit(() -> shelf.add(source, "")));
            }
            for (var record : added) {
                assertThat(shelf.file(record.get())).exists();
            }
        } finally {
            pool.shutdown();
        }
        assertThat(photos()).hasSize(1);
    }

    @Test
    void aPastedPictureIsKeptWithoutLoss() throws IOException {
        var pasted = Photos.upright(40, 30);
        var record = shelf.add(pasted, "pasted");
        assertThat(record.type()).isEqualTo("png");
        var kept = ImageIO.read(shelf.file(record).toFile());
        for (int y = 0; y < 30; y++) {
            for (int x = 0; x < 40; x++) {
                assertThat(kept.getRGB(x, y)).isEqualTo(pasted.getRGB(x, y));
            }
        }
    }

    @Test
    void whatIsNoPictureIsRefusedByNameAndReason() throws IOException {
        assertRefused(file("notes.jpg", bytes("dear diary")), "notes.jpg", "JPEG or PNG");
        assertRefused(file("empty.png", new byte[0]), "empty.png", "empty");
        assertRefused(
                file("phone.heic", bytes("\0\0\0\u0018ftypheic\0\0\0\0")), "phone.heic", "HEIC", "export it as JPEG");
        assertRefused(file("scan.tif", bytes("II*\0\b\0\0\0")), "scan.tif", "TIFF");
        assertRefused(file("old.gif", Photos.encoded(Photos.upright(8, 8), "gif")), "old.gif", "JPEG or PNG");
        assertRefused(file("mark.jpg", new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF}), "mark.jpg", "damaged");
        assertRefused(temp.resolve("gone.jpg"), "gone.jpg", "not there");
        assertRefused(Files.createDirectories(temp.resolve("folder.jpg")), "folder.jpg");
        assertThat(photos()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"jpg", "png"})
    void aPictureCutOffAnywhereIsRefused(String type) throws IOException {
        var whole = Photos.encoded(noisy(), type);
        for (int percent = 1; percent < 100; percent += 7) {
            var cut = Arrays.copyOf(whole, whole.length * percent / 100);
            assertRefused(file("cut." + type, cut), "cut." + type);
        }
        assertRefused(file("cut." + type, Arrays.copyOf(whole, whole.length - 20)), "cut." + type);
        assertThat(photos()).isEmpty();
    }

    @Test
    void aPictureWithTooManyPixelsIsRefusedBeforeItIsDecoded() throws IOException {
        assertRefused(file("wide.png", Photos.pngClaiming(20_000, 20_000)), "wide.png", "400 megapixels", "100");
        assertRefused(file("vast.png", Photos.pngClaiming(Integer.MAX_VALUE, Integer.MAX_VALUE)), "vast.png");
    }

    @Test
    void aFileThatIsTooLargeIsRefusedBeforeItIsRead() throws IOException {
        var large = file("film.jpg", new byte[0]);
        try (var channel = FileChannel.open(large, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.wrap(new byte[1]), 51L << 20);
        }
        assertRefused(large, "film.jpg", "51 MB", "50 MB");
    }

    @Test
    void thePhotosOwnTimeIsReadAsTheCamerasClockSaid() throws IOException {
        var jpeg = Photos.encoded(Photos.upright(64, 48), "jpg");
        assertThat(shelf.taken(file("a.jpg", Photos.withExif(jpeg, 1, "2025:03:14 20:15:07"))))
                .contains(LocalDateTime.of(2025, 3, 14, 20, 15, 7));
        assertThat(shelf.taken(file("b.jpg", Photos.withExif(jpeg, 1, "    :  :     :  :  "))))
                .isEmpty();
        assertThat(shelf.taken(file("c.jpg", jpeg))).isEmpty();
        assertThat(shelf.taken(file("d.jpg", bytes("no picture")))).isEmpty();
        assertThat(shelf.taken(temp.resolve("gone.jpg"))).isEmpty();
    }

    @Test
    void aPictureThatIsMissingIsToldByItsFile() {
        var missing = new PictureRecord("ab".repeat(32), "jpg", "");
        assertThatIOException()
                .isThrownBy(() -> shelf.thumbnail(missing, ThumbnailSize.SMALL))
                .withMessageContaining("ab".repeat(32));
    }

    private void assertRefused(Path file, String... told) {
        assertThatExceptionOfType(PictureRefused.class)
                .isThrownBy(() -> shelf.add(file, ""))
                .satisfies(refused -> assertThat(refused.getMessage())
                        .contains(file.toString())
                        .contains(told));
    }

    private static BufferedImage noisy() {
        var image = Photos.upright(400, 300);
        var random = new Random(1);
        for (int i = 0; i < 40_000; i++) {
            image.setRGB(random.nextInt(400), random.nextInt(300), random.nextInt());
        }
        return image;
    }

    private Path file(String name, byte[] content) throws IOException {
        return Files.write(temp.resolve(name), content);
    }

    private List<Path> photos() throws IOException {
        if (!Files.exists(temp.resolve("photos"))) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(temp.resolve("photos"))) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
