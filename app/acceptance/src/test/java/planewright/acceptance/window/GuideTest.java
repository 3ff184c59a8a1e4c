package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import planewright.app.store.UserFolders;
import planewright.app.ui.help.Chapter;

/**
 * The guide's pictures, and the README's, are those of the window. With {@code -Dplanewright.pictures=renew} the committed ones are
 * replaced; else each is compared, from afar, with the window as it is today, and has to be clearly nearer to its own page than to any other.
 */
class GuideTest {
    private static final Pattern PICTURE = Pattern.compile("!\\[[^]]*]\\(([^)]*\\.png)\\)");
    private static final long MOST_BYTES = 80_000;
    private static final String FOR_README = "window.png";

    /** Measured: with another font up to 0.63; once a page is laid out otherwise, mostly 1 and more. */
    private static final double NEARER = 0.8;

    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(Speech.class)
    void thePicturesAreThoseOfTheWindow(Speech speech) throws Exception {
        var out = folder.resolve("pictures");
        speech.run(
                GuidePictures.class,
                folder,
                journal().toString(),
                folder.resolve("user").toString(),
                out.toString());
        var committed = speech == Speech.ENGLISH ? guide().resolve("pictures") : guide().resolve("pictures/de");
        if ("renew".equals(System.getProperty("planewright.pictures"))) {
            Files.createDirectories(committed);
            for (var name : names(out)) {
                if (speech == Speech.ENGLISH || !name.equals(FOR_README)) {
                    Files.copy(out.resolve(name), committed.resolve(name), StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
        compare(out, committed);
    }

    @Test
    void everyPageHasAChapter() throws Exception {
        try (var window = OpenWindow.on(journal(), UserFolders.under(folder.resolve("user")))) {
            everyPageHasAChapter(window);
        }
    }

    private Path journal() throws IOException {
        return Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
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
        try (var files = Files.find(guide().resolve("pictures"), 2, (file, about) -> about.isRegularFile())) {
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
        try (var window = OpenWindow.on(journal(), UserFolders.under(folder.resolve("user")))) {
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

    /** Pages are the cards in the middle, those of a build, and what stands round them. */
    private static void everyPageHasAChapter(OpenWindow window) {
        for (var page : Map.of("start-from", "leave-start", "compare-build", "leave-compare")
                .entrySet()) {
            Hands.click(page.getKey());
            Hands.click(page.getValue());
        }
        for (var page : List.of(
                "show-templates",
                "show-across",
                "show-exchange",
                "show-bin",
                "show-journals",
                "show-notices",
                "show-help")) {
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

    private static void compare(Path out, Path folder) throws IOException {
        var committed = new LinkedHashMap<String, Coarse>();
        for (var name : names(folder)) {
            committed.put(name, Coarse.of(ImageIO.read(folder.resolve(name).toFile())));
        }
        assertThat(committed).hasSizeGreaterThan(14);
        for (var own : committed.entrySet()) {
            var now = Coarse.of(ImageIO.read(out.resolve(own.getKey()).toFile()));
            assertThat(own.getValue().shape() / now.shape())
                    .as("%s; renew the pictures as DEVELOPERS.md tells", own.getKey())
                    .isBetween(0.75, 1.33);
            committed.forEach((name, other) -> {
                if (!name.equals(own.getKey())) {
                    assertThat(now.from(own.getValue()))
                            .as("%s beside %s; renew the pictures as DEVELOPERS.md tells", own.getKey(), name)
                            .isLessThan(NEARER * now.from(other));
                }
            });
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".png"))
                    .sorted()
                    .toList();
        }
    }

    private static Path guide() {
        return OpenWindow.root().resolve("app/guide");
    }
}
