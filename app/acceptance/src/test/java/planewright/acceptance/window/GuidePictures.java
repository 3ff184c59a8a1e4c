package planewright.acceptance.window;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import javax.imageio.ImageIO;
import javax.swing.JLabel;
import javax.swing.JTable;
import planewright.app.store.UserFolders;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.FigureView;
import planewright.app.ui.common.PictureTile;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;

/** A program of its own, for it needs a Java that speaks a language from the start: takes the pictures of the guide. */
final class GuidePictures {
    private static final Dimension README = new Dimension(1120, 750);
    private static final Dimension SIZE = new Dimension(1120, 860);
    private static final Dimension SMALL = new Dimension(820, 600);
    private static final int MANY_COLOURS = 3000;

    private final Map<String, BufferedImage> taken = new LinkedHashMap<>();

    private GuidePictures() {}

    /** Journal, folder for the user's files, folder for the pictures. */
    public static void main(String[] arguments) throws Exception {
        Speech.endWithFailure();
        var user = UserFolders.under(Path.of(arguments[1]));
        Files.createDirectories(user.data());
        Files.write(user.data().resolve("window.txt"), List.of("look=light", "bench=hidden"));
        var pictures = new GuidePictures();
        try (var window = OpenWindow.on(Path.of(arguments[0]), user)) {
            size(window, README);
            pictures.take("window", window.frame().getContentPane(), theLog(window));
            size(window, SIZE);
            pictures.take("shelf", "shelf");
            var whole = theLog(window);
            pictures.take("log", Hands.find(Component.class, "log"), whole);
            pictures.thePagesOfTheBuild(window);
            pictures.thePagesOfTheJournal();
            pictures.theLineAndTheBench(window);
        }
        pictures.write(Files.createDirectories(Path.of(arguments[2])));
        System.exit(0);
    }

    private void write(Path folder) throws IOException {
        for (var each : taken.entrySet()) {
            ImageIO.write(
                    fewColours(each.getValue()),
                    "png",
                    folder.resolve(each.getKey() + ".png").toFile());
        }
    }

    /** As GIF has them, 256: a third of the bytes, and words stay as sharp. */
    private static BufferedImage fewColours(BufferedImage picture) throws IOException {
        var gif = new ByteArrayOutputStream();
        ImageIO.write(picture, "gif", gif);
        return ImageIO.read(new ByteArrayInputStream(gif.toByteArray()));
    }

    private static void size(OpenWindow window, Dimension size) {
        Hands.onEventThread(() -> {
            window.frame().getContentPane().setPreferredSize(size);
            window.frame().pack();
            return window;
        });
    }

    /** Brings an entry with a table, a chart and pictures, and tells when all of it is to be seen. */
    private static Callable<Boolean> theLog(OpenWindow window) {
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
        int height = window.frame().getContentPane().getHeight();
        return () -> {
            var tiles = Hands.all(PictureTile.class);
            return Hands.all(Card.class).stream()
                            .anyMatch(card -> entry.equals(card.getName()) && card.getVisibleRect().height > height / 4)
                    && !tiles.isEmpty()
                    && tiles.stream().allMatch(PictureTile::isShown);
        };
    }

    private void thePagesOfTheBuild(OpenWindow window) {
        window.build("Slate Ray");
        window.page(Texts.PICTURES.text());
        var grid = Hands.find(Component.class, "picture-grid");
        size(window, SMALL);
        take("pictures", Hands.find(Component.class, "pictures-page"), () -> colours(painted(grid)) > MANY_COLOURS);
        size(window, SIZE);
        window.page(Texts.MEASUREMENTS.text());
        choose("measurements", "all-up mass");
        take("measurements", "measurements-page");
        window.page(Texts.PARTS.text());
        take("parts", "parts-page");
        window.page(Texts.PLANFORM.text());
        take("planform", "planform-page");
        window.page(Texts.SET_UP_PAGE.text());
        choose("set-up", "balance point");
        take("set-up", "set-up-page");
        window.page(Texts.CALCULATORS.text());
        Hands.find(FigureView.class, "of the answer", view -> true);
        take("calculators", "calculators");
        Hands.click("show-plugins");
        Hands.find(Component.class, "plugins-back");
        Hands.click("plugins-back");
        window.page(Texts.LOG.text());
    }

    private void thePagesOfTheJournal() {
        Hands.click("show-templates");
        Hands.find(Component.class, "templates");
        Hands.find(FigureView.class, "of a template", view -> true);
        take("templates", "templates");
        Hands.click("show-templates");
        Hands.click("compare-build");
        var compared = Hands.find(JTable.class, "compared");
        Hands.waitUntil("rows", () -> compared.getRowCount() > 5);
        take("compare", "compare");
        Hands.click("leave-compare");
        Hands.click("show-across");
        Hands.choose("across-value", Terms.of("wing area") + " (dm²)");
        Hands.choose("across-against", Terms.of("span") + " (mm)");
        Hands.find(Component.class, "across-chart");
        Hands.type("across-at", "1.8 m");
        take("across", "across");
        Hands.click("show-across");
        Hands.click("start-from");
        var carried = Hands.find(JTable.class, "carried");
        Hands.waitUntil("what is carried", () -> carried.getRowCount() > 5);
        take("start", "start");
        Hands.click("leave-start");
        Hands.type("search", "fin joint");
        take("search", Hands.find(Component.class, "search-page"), () -> {
            long hits = Hands.all(Card.class).stream()
                    .map(Component::getName)
                    .filter(name -> name != null && name.startsWith("hit-"))
                    .count();
            return hits > 2
                    && Hands.all(JLabel.class).stream()
                            .anyMatch(found -> "found".equals(found.getName())
                                    && found.getText().startsWith(hits + " "))
                    && Hands.all(PictureTile.class).stream().allMatch(PictureTile::isShown);
        });
        Hands.type("search", "");
        Hands.click("show-exchange");
        Hands.find(Component.class, "exchange");
        take("exchange", "exchange");
        Hands.click("show-exchange");
        Hands.find(Component.class, "pages");
    }

    private void theLineAndTheBench(OpenWindow window) {
        Hands.click("show-bench");
        Hands.find(Component.class, "bench");
        Hands.type("capture-line", "fin joint contact adhesive 12 h");
        Hands.enter("capture-line");
        Hands.find(Component.class, "bench-fin joint");
        Hands.find(Component.class, "bench-session");
        take("bench", "bench");
        Hands.click("show-bench");
        Hands.type("capture-line", "wi pa");
        Hands.find(Component.class, "capture-line-offers");
        var whole = Hands.onEventThread(() -> painted(window.frame().getRootPane()));
        taken.put("capture", whole.getSubimage(0, whole.getHeight() - 300, 640, 300));
        Hands.type("capture-line", "");
    }

    /** Chooses the first row that tells of something. */
    private static void choose(String table, String what) {
        var found = Hands.find(JTable.class, table);
        Hands.waitUntil(what, () -> {
            for (int row = 0; row < found.getRowCount(); row++) {
                for (int column = 0; column < found.getColumnCount(); column++) {
                    if (what.equals(String.valueOf(found.getValueAt(row, column)))) {
                        found.setRowSelectionInterval(row, row);
                        return true;
                    }
                }
            }
            return false;
        });
        Hands.find(FigureView.class, "of the history", view -> true);
    }

    private void take(String name, String component) {
        take(name, Hands.find(Component.class, component), () -> true);
    }

    /** In the very turn of the event thread in which it is ready: in the next it may be filled anew. */
    private void take(String name, Component component, Callable<Boolean> ready) {
        Hands.waitUntil(name + " to be ready", () -> {
            boolean isReady = ready.call();
            if (isReady) {
                taken.put(name, painted(component));
            }
            return isReady;
        });
    }

    /** On the event thread. */
    private static BufferedImage painted(Component component) {
        component.validate();
        var picture = new BufferedImage(component.getWidth(), component.getHeight(), BufferedImage.TYPE_INT_RGB);
        var graphics = picture.createGraphics();
        graphics.setColor(javax.swing.UIManager.getColor("Panel.background"));
        graphics.fillRect(0, 0, picture.getWidth(), picture.getHeight());
        component.paint(graphics);
        graphics.dispose();
        return picture;
    }

    private static long colours(BufferedImage image) {
        return java.util.Arrays.stream(
                        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()))
                .distinct()
                .count();
    }
}
