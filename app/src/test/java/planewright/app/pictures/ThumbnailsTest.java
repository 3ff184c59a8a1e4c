package planewright.app.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.app.journal.PictureRecord;

class ThumbnailsTest {
    @TempDir
    private Path temp;

    private Path cache;
    private PictureShelf shelf;

    @BeforeEach
    void makeShelf() {
        cache = temp.resolve("cache/thumbnails");
        shelf = new PictureShelf(temp.resolve("photos"), cache, () -> {});
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void aPhotoIsShownUprightWhicheverWayTheCameraWasHeld(int orientation) throws IOException {
        var stored = Photos.stored(Photos.upright(600, 400), orientation);
        var photo = add(Photos.withExif(Photos.encoded(stored, "jpg"), orientation, "2025:03:14 20:15:07"));
        for (var size : ThumbnailSize.values()) {
            var seen = shelf.thumbnail(photo, size);
            assertThat(seen.getWidth()).isEqualTo(size.edge());
            assertThat(seen.getHeight()).isEqualTo(Math.round(size.edge() * 2f / 3));
            assertQuarters(seen);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 9, 77})
    void anOrientationThatExifDoesNotKnowIsTakenAsUpright(int orientation) throws IOException {
        var photo = add(Photos.withExif(Photos.encoded(Photos.upright(240, 160), "jpg"), orientation, ""));
        assertQuarters(shelf.thumbnail(photo, ThumbnailSize.SMALL));
    }

    @ParameterizedTest
    @CsvSource({"4000, 1000, 200, 200, 50", "1000, 4000, 200, 50, 200", "30, 20, 200, 30, 20", "3000, 2, 100, 100, 1"})
    void noSideIsLongerThanTheEdgeAndSmallPicturesStaySmall(int w, int h, int edge, int width, int height)
            throws IOException {
        var seen = PictureShelf.view(file(Photos.encoded(Photos.upright(w, h), "png")), edge);
        assertThat(seen.getWidth()).isEqualTo(width);
        assertThat(seen.getHeight()).isEqualTo(height);
    }

    @Test
    void bothSizesAreMadeOnceAndThenComeFromTheCache() throws IOException {
        var photo = add(Photos.encoded(Photos.upright(800, 600), "jpg"));
        var first = shelf.thumbnail(photo, ThumbnailSize.LARGE);
        Files.delete(shelf.file(photo));
        assertAlike(shelf.thumbnail(photo, ThumbnailSize.LARGE), first);
        assertThat(shelf.thumbnail(photo, ThumbnailSize.SMALL).getWidth()).isEqualTo(192);
        assertThat(cache.toFile().list()).hasSize(2);
    }

    @Test
    void whatWasPreparedNeedsThePictureNoMore() throws IOException {
        var photo = add(Photos.encoded(Photos.upright(800, 600), "jpg"));
        shelf.prepare(photo);
        Files.delete(shelf.file(photo));
        shelf.prepare(photo);
        assertThat(shelf.thumbnail(photo, ThumbnailSize.LARGE).getWidth()).isEqualTo(512);
    }

    @ParameterizedTest
    @CsvSource({"0", "9", "200", "3000"})
    void aDamagedThumbnailIsMadeAnew(int length) throws IOException {
        var photo = add(Photos.encoded(Photos.upright(800, 600), "jpg"));
        var sound = shelf.thumbnail(photo, ThumbnailSize.LARGE);
        var kept = cache.resolve(photo.hash() + "-512.jpg");
        var content = Files.readAllBytes(kept);
        assertThat(content.length).isGreaterThan(3000);
        Files.write(kept, Arrays.copyOf(content, length));
        assertAlike(shelf.thumbnail(photo, ThumbnailSize.LARGE), sound);
        assertThat(kept).as("mended for the next time").hasBinaryContent(content);
    }

    @Test
    void theWholeCacheMayBeDeletedAtAnyTime() throws IOException {
        var photo = add(Photos.encoded(Photos.upright(240, 160), "jpg"));
        var sound = shelf.thumbnail(photo, ThumbnailSize.SMALL);
        for (var file : cache.toFile().listFiles()) {
            Files.delete(file.toPath());
        }
        Files.delete(cache);
        assertAlike(shelf.thumbnail(photo, ThumbnailSize.SMALL), sound);
    }

    @Test
    void manyThreadsMayAskForOnePicture() throws Exception {
        var photo = add(Photos.encoded(Photos.upright(800, 600), "jpg"));
        var pool = Executors.newFixedThreadPool(8);
        try {
            var asked = new ArrayList<Future<BufferedImage>>();
            for (int i = 0; i < 24; i++) {
                var size = ThumbnailSize.values()[i % 2];
                asked.add(pool.submit(() -> shelf.thumbnail(photo, size)));
            }
            for (int i = 0; i < asked.size(); i++) {
                assertThat(asked.get(i).get().getWidth()).isEqualTo(ThumbnailSize.values()[i % 2].edge());
            }
        } finally {
            pool.shutdown();
        }
        assertThat(cache.toFile().list()).hasSize(2);
    }

    /** Means of areas can be said beforehand: of every second white column in any proportion, half of white. */
    @ParameterizedTest
    @ValueSource(ints = {100, 333, 400, 799})
    void fineDetailIsAveragedNotDropped(int edge) throws IOException {
        var stripes = new BufferedImage(1600, 1600, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 1600; x += 2) {
            for (int y = 0; y < 1600; y++) {
                stripes.setRGB(x, y, Color.WHITE.getRGB());
            }
        }
        var seen = PictureShelf.view(file(Photos.encoded(stripes, "png")), edge);
        double sum = 0;
        for (int x = 0; x < edge; x++) {
            int grey = new Color(seen.getRGB(x, edge / 2)).getRed();
            assertThat(grey).isBetween(127 - 127 * edge / 1600 - 1, 128 + 127 * edge / 1600 + 1);
            sum += grey;
        }
        assertThat(sum / edge).isCloseTo(127.5, within(0.6));
    }

    @Test
    void aPictureThatClaimsToBeHugeIsRefusedThoughItLiesOnTheShelf() throws IOException {
        var bomb = Photos.pngClaiming(30_000, 30_000);
        var hash = PictureShelf.hash(bomb);
        var place = Files.createDirectories(temp.resolve("photos").resolve(hash.substring(0, 2)));
        Files.write(place.resolve(hash + ".png"), bomb);
        assertThatExceptionOfType(PictureRefused.class)
                .isThrownBy(() -> shelf.thumbnail(new PictureRecord(hash, "png", ""), ThumbnailSize.LARGE))
                .withMessageContaining("900 megapixels");
    }

    @Test
    void whatCanBeSeenThroughStandsOnWhite() throws IOException {
        var clear = new BufferedImage(400, 300, BufferedImage.TYPE_INT_ARGB);
        for (int y = 100; y < 200; y++) {
            for (int x = 0; x < 400; x++) {
                clear.setRGB(x, y, 0xFF204060);
            }
        }
        for (int edge : new int[] {100, 1000}) {
            var seen = PictureShelf.view(file(Photos.encoded(clear, "png")), edge);
            assertThat(new Color(seen.getRGB(seen.getWidth() / 2, 2))).isEqualTo(Color.WHITE);
            assertThat(new Color(seen.getRGB(seen.getWidth() / 2, seen.getHeight() / 2)))
                    .isEqualTo(new Color(0x204060));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {BufferedImage.TYPE_BYTE_GRAY, BufferedImage.TYPE_BYTE_INDEXED, BufferedImage.TYPE_USHORT_GRAY})
    void everyKindOfPngKeepsItsColours(int type) throws IOException {
        var image = new BufferedImage(300, 200, type);
        var g = image.createGraphics();
        g.setColor(new Color(0x999999));
        g.fillRect(0, 0, 300, 200);
        g.dispose();
        var whole = new Color(
                PictureShelf.view(file(Photos.encoded(image, "png")), 300).getRGB(5, 5));
        var small = new Color(
                PictureShelf.view(file(Photos.encoded(image, "png")), 30).getRGB(5, 5));
        assertThat(small).isEqualTo(whole);
    }

    private PictureRecord add(byte[] content) throws IOException {
        return shelf.add(file(content), "");
    }

    private Path file(byte[] content) throws IOException {
        return Files.write(temp.resolve("camera"), content);
    }

    private static void assertQuarters(BufferedImage seen) {
        for (int i = 0; i < 4; i++) {
            int x = seen.getWidth() * (1 + 2 * (i % 2)) / 4;
            int y = seen.getHeight() * (1 + 2 * (i / 2)) / 4;
            var colour = new Color(seen.getRGB(x, y));
            var wanted = Photos.QUARTERS[i];
            assertThat(Math.abs(colour.getRed() - wanted.getRed())
                            + Math.abs(colour.getGreen() - wanted.getGreen())
                            + Math.abs(colour.getBlue() - wanted.getBlue()))
                    .as("quarter %d is %s", i, colour)
                    .isLessThan(60);
        }
    }

    /** But for what JPEG loses. */
    private static void assertAlike(BufferedImage one, BufferedImage other) {
        assertThat(one.getWidth()).isEqualTo(other.getWidth());
        assertThat(one.getHeight()).isEqualTo(other.getHeight());
        assertQuarters(one);
        assertQuarters(other);
    }
}
