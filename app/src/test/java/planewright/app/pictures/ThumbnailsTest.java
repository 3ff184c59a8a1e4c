package planewright.app.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
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
        var stored = Photos.stored(Photos.upright(240, 160), orientation);
        var photo = add(Photos.withExif(Photos.encoded(stored, "jpg"), orientation, "2025:03:14 20:15:07"));
        var seen = shelf.thumbnail(photo, 120);
        assertThat(seen.getWidth()).isEqualTo(120);
        assertThat(seen.getHeight()).isEqualTo(80);
        assertQuarters(seen);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 9, 77})
    void anOrientationThatExifDoesNotKnowIsTakenAsUpright(int orientation) throws IOException {
        var photo = add(Photos.withExif(Photos.encoded(Photos.upright(240, 160), "jpg"), orientation, ""));
        assertQuarters(shelf.thumbnail(photo, 120));
    }

    @ParameterizedTest
    @CsvSource({"4000, 1000, 200, 200, 50", "1000, 4000, 200, 50, 200", "30, 20, 200, 30, 20", "3000, 2, 100, 100, 1"})
    void noSideIsLongerThanTheEdgeAndSmallPicturesStaySmall(int w, int h, int edge, int width, int height)
            throws IOException {
        var seen = shelf.thumbnail(add(Photos.encoded(Photos.upright(w, h), "png")), edge);
        assertThat(seen.getWidth()).isEqualTo(width);
        assertThat(seen.getHeight()).isEqualTo(height);
    }

    @Test
    void aThumbnailIsMadeOnceAndThenComesFromTheCache() throws IOException {
        var photo = add(Photos.encoded(Photos.upright(240, 160), "jpg"));
        var first = shelf.thumbnail(photo, 120);
        Files.delete(shelf.file(photo));
        assertSame(shelf.thumbnail(photo, 120), first);
        assertThat(cache.toFile().list()).hasSize(1);
    }

    @Test
    void eachSizeIsKeptForItself() throws IOException {
        var photo = add(Photos.encoded(Photos.upright(240, 160), "jpg"));
        shelf.thumbnail(photo, 120);
        assertThat(shelf.thumbnail(photo, 60).getWidth()).isEqualTo(60);
        assertThat(shelf.thumbnail(photo, 120).getWidth()).isEqualTo(120);
    }

    @ParameterizedTest
    @CsvSource({"0", "9", "200"})
    void aDamagedThumbnailIsMadeAnew(int length) throws IOException {
        var photo = add(Photos.encoded(Photos.upright(240, 160), "jpg"));
        var sound = shelf.thumbnail(photo, 120);
        var kept = cache.resolve(cache.toFile().list()[0]);
        var content = Files.readAllBytes(kept);
        Files.write(kept, Arrays.copyOf(content, length));
        assertSame(shelf.thumbnail(photo, 120), sound);
        assertThat(kept).as("mended for the next time").hasBinaryContent(content);
    }

    @Test
    void theWholeCacheMayBeDeletedAtAnyTime() throws IOException {
        var photo = add(Photos.encoded(Photos.upright(240, 160), "jpg"));
        var sound = shelf.thumbnail(photo, 120);
        Files.delete(cache.resolve(cache.toFile().list()[0]));
        Files.delete(cache);
        assertSame(shelf.thumbnail(photo, 120), sound);
    }

    @Test
    void fineDetailIsAveragedNotDropped() throws IOException {
        var stripes = new BufferedImage(1600, 1600, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 1600; x += 2) {
            for (int y = 0; y < 1600; y++) {
                stripes.setRGB(x, y, Color.WHITE.getRGB());
            }
        }
        var grey = new Color(
                shelf.thumbnail(add(Photos.encoded(stripes, "png")), 400).getRGB(200, 200));
        assertThat(grey.getRed()).isBetween(100, 155);
    }

    private PictureRecord add(byte[] content) throws IOException {
        return shelf.add(Files.write(temp.resolve("camera"), content), "");
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

    private static void assertSame(BufferedImage one, BufferedImage other) {
        assertThat(one.getWidth()).isEqualTo(other.getWidth());
        assertThat(one.getHeight()).isEqualTo(other.getHeight());
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                assertThat(one.getRGB(x, y) & 0xFFFFFF).isEqualTo(other.getRGB(x, y) & 0xFFFFFF);
            }
        }
    }
}
