package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.store.UserFolders;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.PictureTile;

/**
 * The README's picture of the window. With {@code -Dplanewright.pictures=renew} the committed one is replaced; else the test
 * checks that the window still gives such a picture and that the README shows it.
 */
class ReadmePictureTest {
    private static final String PICTURE = "app/acceptance/pictures/window.png";
    private static final Dimension SIZE = new Dimension(1280, 860);

    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    @Test
    void theReadmeShowsTheWindowAsItIs() throws Exception {
        var journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        BufferedImage image;
        try (var window = OpenWindow.on(journal, UserFolders.under(folder.resolve("user")))) {
            Hands.onEventThread(() -> {
                window.frame().getContentPane().setPreferredSize(SIZE);
                window.frame().pack();
                return window;
            });
            Hands.type("search", "first weighing three scales");
            var hit = Hands.find(
                    Card.class,
                    "of the weighing",
                    card -> card.getName() != null && card.getName().startsWith("hit-"));
            Hands.onEventThread(() -> {
                hit.getActionMap().get("open").actionPerformed(null);
                return hit;
            });
            var entry = hit.getName().replaceFirst("hit-", "entry-");
            Hands.waitUntil("the entry with all pictures", () -> {
                var tiles = Hands.all(PictureTile.class);
                return Hands.all(Card.class).stream()
                                .anyMatch(card ->
                                        entry.equals(card.getName()) && card.getVisibleRect().height > SIZE.height / 4)
                        && !tiles.isEmpty()
                        && tiles.stream().allMatch(PictureTile::isShown);
            });
            image = Hands.onEventThread(() -> {
                var content = window.frame().getContentPane();
                window.frame().validate();
                var picture = new BufferedImage(SIZE.width, SIZE.height, BufferedImage.TYPE_INT_RGB);
                var graphics = picture.createGraphics();
                content.paint(graphics);
                graphics.dispose();
                return picture;
            });
        }
        var committed = OpenWindow.root().resolve(PICTURE);
        if ("renew".equals(System.getProperty("planewright.pictures"))) {
            Files.createDirectories(committed.getParent());
            ImageIO.write(image, "png", committed.toFile());
        }
        assertThat(colours(image)).as("colours: photos are shown").isGreaterThan(2000);
        assertThat(Files.readString(OpenWindow.root().resolve("README.md"))).contains("](" + PICTURE + ")");
        var shown = ImageIO.read(committed.toFile());
        assertThat(new Dimension(shown.getWidth(), shown.getHeight())).isEqualTo(SIZE);
        assertThat(colours(shown)).isGreaterThan(2000);
    }

    private static int colours(BufferedImage image) {
        var colours = new HashSet<Integer>();
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                colours.add(image.getRGB(x, y));
            }
        }
        return colours.size();
    }
}
