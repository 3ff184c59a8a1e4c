package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.store.UserFolders;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.FigureView;
import planewright.app.ui.common.PictureTile;
import planewright.app.ui.help.Chapter;

/**
 * The guide's pictures, and the README's, are those of the window. With {@code -Dplanewright.pictures=renew} the committed ones are
 * replaced; else each is compared, from afar, with the window as it is today, and has to be clearly nearer to its own page than to any other.
 */
class GuideTest {
    private static final Dimension README = new Dimension(1120, 750);
    private static final Dimension SIZE = new Dimension(1120, 860);
    private static final Dimension SMALL = new Dimension(820, 600);
    private static final Pattern PICTURE = Pattern.compile("!\\[[^]]*]\\(([^)]*\\.png)\\)");
    private static final int MANY_COLOURS = 3000;
    private static final long MOST_BYTES = 150_000;

    /** Measured: with another font up to 0.63; once a page is laid out otherwise, mostly 1 and more. */
    private static final double NEARER = 0.8;

    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    private final Map<String, BufferedImage> taken = new LinkedHashMap<>();

    @Test
    void thePicturesAreThoseOfTheWindowAndEveryPageHasAChapter() throws Exception {
        var journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        var user = UserFolders.under(folder.resolve("user"));
        Files.createDirectories(user.data());
        Files.write(user.data().resolve("window.txt"), List.of("look=light", "bench=hidden"));
        try (var window = OpenWindow.on(journal, user)) {
            size(window, README);
            theLog(window);
            take("window", window.frame().getContentPane());
            size(window, SIZE);
            take("shelf", "shelf");
            theLog(window);
            take("log", "log");
            thePagesOfTheBuild(window);
            thePagesOfTheJournal();
            theLineAndTheBench(window);
            everyPageHasAChapter(window);
        }
        if ("renew".equals(System.getProperty("planewright.pictures"))) {
            Files.createDirectories(guide().resolve("pictures"));
            for (var each : taken.entrySet()) {
                ImageIO.write(each.getValue(), "png", file(each.getKey()).toFile());
            }
        }
        compare();
    }

    @Test
    void everyPictureThatIsNamedIsThereAndNoOther() throws Exception {
        var named = new TreeSet<Path>();
        var pages = new java.util.ArrayList<>(List.of(OpenWindow.root().resolve("README.md")));
        for (var language : List.of("en", "de")) {
            for (var chapter : Chapter.values()) {
                pages.add(guide().resolve(language).resolve(chapter.file() + ".md"));
            }
        }
        for (var page : pages) {
            var found = PICTURE.matcher(Files.readString(page));
            while (found.find()) {
                named.add(page.resolveSibling(found.group(1)).normalize());
            }
        }
        try (var files = Files.list(guide().resolve("pictures"))) {
            assertThat(files.map(Path::normalize)).containsExactlyInAnyOrderElementsOf(named);
        }
        for (var picture : named) {
            assertThat(Files.size(picture)).as("%s", picture).isLessThan(MOST_BYTES);
        }
        var listed = Files.readString(guide().resolve("README.md"));
        for (var chapter : Chapter.values()) {
            assertThat(listed).contains("(en/" + chapter.file() + ".md)", "(de/" + chapter.file() + ".md)");
        }
        assertThat(Files.readString(OpenWindow.root().resolve("README.md"))).contains("(app/guide/README.md)");
    }

    @Test
    void helpBeginsWithThePageThatIsInFront() throws Exception {
        var journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        try (var window = OpenWindow.on(journal, UserFolders.under(folder.resolve("user")))) {
            window.page("Parts");
            Hands.click("show-help");
            JList<?> chapters = Hands.find(JList.class, "chapters");
            Hands.waitUntil("the chapter on parts", () -> chapters.getSelectedIndex() == Chapter.PARTS.ordinal());
            Hands.find(Component.class, "guide-picture");
            for (int i = 0; i < Chapter.values().length; i++) {
                int row = i;
                Hands.onEventThread(() -> {
                    chapters.setSelectedIndex(row);
                    return row;
                });
                Hands.find(
                        javax.swing.JLabel.class,
                        "with the heading",
                        label -> heading(chapters, row).equals(label.getText()));
            }
        }
    }

    private static <T> String heading(JList<T> chapters, int row) {
        var shown = chapters.getCellRenderer()
                .getListCellRendererComponent(chapters, chapters.getModel().getElementAt(row), row, false, false);
        return ((javax.swing.JLabel) shown).getText();
    }

    private static void size(OpenWindow window, Dimension size) {
        Hands.onEventThread(() -> {
            window.frame().getContentPane().setPreferredSize(size);
            window.frame().pack();
            return window;
        });
    }

    /** An entry with a table, a chart and pictures. */
    private void theLog(OpenWindow window) {
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
        Hands.waitUntil("the entry with all pictures", () -> {
            var tiles = Hands.all(PictureTile.class);
            return Hands.all(Card.class).stream()
                            .anyMatch(card -> entry.equals(card.getName()) && card.getVisibleRect().height > height / 4)
                    && !tiles.isEmpty()
                    && tiles.stream().allMatch(PictureTile::isShown);
        });
    }

    private void thePagesOfTheBuild(OpenWindow window) {
        window.build("Slate Ray");
        window.page("Pictures");
        var grid = Hands.find(Component.class, "picture-grid");
        size(window, SMALL);
        Hands.waitUntil("photos", () -> colours(painted(grid)) > MANY_COLOURS);
        take("pictures", "pictures-page");
        size(window, SIZE);
        window.page("Measurements");
        choose("measurements", "all-up mass");
        take("measurements", "measurements-page");
        window.page("Parts");
        take("parts", "parts-page");
        window.page("Planform");
        take("planform", "planform-page");
        window.page("Set-up");
        choose("set-up", "balance point");
        take("set-up", "set-up-page");
        window.page("Calculators");
        Hands.find(FigureView.class, "of the answer", view -> true);
        take("calculators", "calculators");
        Hands.click("show-plugins");
        Hands.find(Component.class, "plugins-back");
        Hands.click("plugins-back");
        window.page("Log");
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
        Hands.choose("across-value", "wing area (dm²)");
        Hands.choose("across-against", "span (mm)");
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
        Hands.waitUntil(
                "both hits with their picture",
                () -> Hands.all(Card.class).stream()
                                        .map(Component::getName)
                                        .filter(name -> name != null && name.startsWith("hit-"))
                                        .count()
                                == 2
                        && Hands.all(PictureTile.class).stream().allMatch(PictureTile::isShown));
        take("search", "search-page");
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

    /** Pages are the cards in the middle, those of a build, and what stands round them. */
    private static void everyPageHasAChapter(OpenWindow window) {
        for (var page : List.of("show-bin", "show-journals", "show-notices", "show-help")) {
            Hands.click(page);
        }
        Hands.find(JList.class, "chapters");
        Hands.click("show-help");
        var build = Hands.find(Component.class, "build");
        JTabbedPane tabs = Hands.find(JTabbedPane.class, "pages");
        var pages = Hands.onEventThread(() -> Stream.of(
                        Stream.of(build.getParent().getComponents()),
                        Stream.of(tabs.getComponents()).filter(each -> tabs.indexOfComponent(each) >= 0))
                .flatMap(each -> each)
                .map(Component::getName)
                .filter(name -> !List.of("build", "help").contains(name))
                .toList());
        assertThat(pages).hasSizeGreaterThan(14);
        assertThat(Stream.concat(pages.stream(), Stream.of("shelf", "bench", "capture")))
                .allMatch(page -> Chapter.about(page).isPresent());
        assertThat(window.frame().isShowing()).isTrue();
    }

    private void compare() throws IOException {
        var committed = new LinkedHashMap<String, Coarse>();
        for (var name : taken.keySet()) {
            committed.put(name, Coarse.of(ImageIO.read(file(name).toFile())));
        }
        for (var each : taken.entrySet()) {
            var now = Coarse.of(each.getValue());
            var own = committed.get(each.getKey());
            assertThat(own.shape() / now.shape())
                    .as("%s; renew the pictures as DEVELOPERS.md tells", each.getKey())
                    .isBetween(0.75, 1.33);
            committed.forEach((name, other) -> {
                if (!name.equals(each.getKey())) {
                    assertThat(now.from(own))
                            .as("%s beside %s; renew the pictures as DEVELOPERS.md tells", each.getKey(), name)
                            .isLessThan(NEARER * now.from(other));
                }
            });
        }
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
        take(name, Hands.find(Component.class, component));
    }

    private void take(String name, Component component) {
        taken.put(name, Hands.onEventThread(() -> painted(component)));
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

    private static Path guide() {
        return OpenWindow.root().resolve("app/guide");
    }

    private static Path file(String name) {
        return guide().resolve("pictures/" + name + ".png");
    }
}
