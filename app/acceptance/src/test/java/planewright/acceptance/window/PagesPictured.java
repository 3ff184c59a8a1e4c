package planewright.acceptance.window;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.measure.Unit;
import javax.swing.JFrame;
import javax.swing.text.JTextComponent;
import planewright.api.quantity.Units;
import planewright.app.store.UserFolders;
import planewright.app.ui.common.PictureTile;

/**
 * A program to look at what is drawn: takes a picture of every page of the window. Java's own settings choose language
 * ({@code -Duser.language=de}) and scale ({@code -Dsun.java2d.uiScale=2}).
 */
final class PagesPictured {
    private static final List<Unit<?>> INCHES = List.of(
            Units.OUNCE,
            Units.INCH,
            Units.SQUARE_INCH,
            Units.OUNCE_PER_SQUARE_FOOT,
            Units.OUNCE_INCH,
            Units.POUND_SQUARE_INCH,
            Units.OUNCE_FORCE_INCH,
            Units.MILE_PER_HOUR);

    private static final long ALIKE_NANOS = 1_200_000_000L;

    private final OpenWindow window;
    private final Path folder;
    private int taken;

    private PagesPictured(OpenWindow window, Path folder) {
        this.window = window;
        this.folder = folder;
    }

    /** Journal, a new folder for the user's files, folder for the pictures, size (1360x900), light or dark, metric or inch. */
    public static void main(String[] arguments) throws Exception {
        Speech.endWithFailure();
        var user = UserFolders.under(Path.of(arguments[1]));
        Files.createDirectories(user.data());
        Files.write(user.data().resolve("window.txt"), remembered(arguments[4], arguments[5]));
        var size = arguments[3].split("x");
        var folder = Files.createDirectories(Path.of(arguments[2]));
        try (var window = OpenWindow.on(Path.of(arguments[0]), user)) {
            Hands.onEventThread(() -> {
                window.frame().setSize(new Dimension(Integer.parseInt(size[0]), Integer.parseInt(size[1])));
                window.frame().validate();
                return window;
            });
            var pictured = new PagesPictured(window, folder);
            if (Files.exists(Path.of(arguments[0], "builds"))) {
                PageByPage.go(pictured::take);
            } else {
                pictured.emptyPages();
            }
        }
        System.exit(0);
    }

    private static List<String> remembered(String look, String system) {
        var lines = new ArrayList<>(List.of("look=" + look));
        if ("inch".equals(system)) {
            INCHES.forEach(unit -> lines.add("unit " + Units.alike(unit).get(0).code() + "=" + Units.codeOf(unit)));
        }
        return lines;
    }

    /** A journal without a build, then a build without an entry. */
    private void emptyPages() {
        take("first");
        PageByPage.overAll(this::take);
        InNewJournal.begin("Teal");
        PageByPage.ofTheBuild(this::take);
    }

    private void take(String page) {
        Hands.waitUntil(
                "pictures on " + page,
                () -> Hands.all(PictureTile.class).stream()
                        .filter(tile -> !tile.getVisibleRect().isEmpty())
                        .allMatch(PictureTile::isShown));
        var picture = settled();
        var name = String.format(Locale.ROOT, "%02d-%s.png", ++taken, page.replaceAll("\\W+", "-"));
        try {
            ImageIO.write(picture, "png", folder.resolve(name).toFile());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Once it has been painted alike for a while. */
    private BufferedImage settled() {
        var picture = Hands.onEventThread(() -> painted(window.frame()));
        long since = System.nanoTime();
        while (System.nanoTime() - since < ALIKE_NANOS) {
            var next = Hands.onEventThread(() -> painted(window.frame()));
            if (!Arrays.equals(pixels(picture), pixels(next))) {
                since = System.nanoTime();
            }
            picture = next;
        }
        return picture;
    }

    private static int[] pixels(BufferedImage picture) {
        return picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
    }

    /** On the event thread. */
    private static BufferedImage painted(JFrame frame) {
        frame.validate();
        Hands.all(JTextComponent.class).forEach(text -> text.getCaret().setBlinkRate(0));
        Component pane = frame.getRootPane();
        var scale = frame.getGraphicsConfiguration().getDefaultTransform();
        var picture = new BufferedImage(
                (int) (pane.getWidth() * scale.getScaleX()),
                (int) (pane.getHeight() * scale.getScaleY()),
                BufferedImage.TYPE_INT_RGB);
        var graphics = picture.createGraphics();
        graphics.transform(scale);
        pane.paint(graphics);
        graphics.dispose();
        return picture;
    }
}
