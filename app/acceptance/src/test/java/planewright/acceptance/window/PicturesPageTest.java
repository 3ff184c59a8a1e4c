package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import planewright.app.store.JournalFolder;
import planewright.app.ui.common.PictureTile;

/** Pictures dropped, found by keys and words, looked at, named, measured, compared, handed on; and what cannot be shown. */
class PicturesPageTest extends WithPictures {
    @Test
    void picturesAreDroppedNamedFoundMeasuredAndComparedAndUndone() throws Exception {
        try (var window = open()) {
            begin("Teal");
            window.page("Pictures");
            see("No pictures of this build yet");
            drop(picture("fin.png", FIRST));
            count("one picture");
            seeColour(grid(), FIRST);
            drop(picture("wing.png", SECOND));
            count("2 pictures");
            seeColour(grid(), SECOND);

            Hands.press(grid(), "HOME");
            Hands.press(grid(), "ENTER");
            var view = Hands.find(JPanel.class, "large-picture");
            seeColour(view, FIRST);
            Hands.type("large-caption", "fin on the bench");
            Hands.enter("large-caption");
            see(1, "fin on the bench");
            Hands.click("undo");
            see(0, "fin on the bench");
            Hands.click("redo");
            see(1, "fin on the bench");
            measure(view);
            Hands.click("large-back");

            Hands.type("pictures-filter", "fin bench");
            count("1 of 2 pictures");
            Hands.type("pictures-filter", "canopy");
            see("No picture bears 'canopy'");
            Hands.type("pictures-filter", "");
            count("2 pictures");

            Hands.press(grid(), "ctrl A");
            Hands.click("picture-compare");
            seeColour(Hands.find(JPanel.class, "compare-then"), FIRST);
            seeColour(Hands.find(JPanel.class, "compare-now"), SECOND);
            Hands.click("compare-back");
            assertThat(Hands.find(AbstractButton.class, "picture-compare").isEnabled())
                    .isTrue();

            Hands.press(grid(), "HOME");
            copies();
            window.page("Log");
            Hands.waitUntil(
                    "both pictures in the log",
                    () -> Hands.all(PictureTile.class).stream()
                                    .filter(PictureTile::isShown)
                                    .count()
                            == 2);
            Hands.press(Hands.find(PictureTile.class, "of the log", PictureTile::isShown), 5, 5);
            seeColour(Hands.find(JPanel.class, "large-picture"), FIRST);
        }
        try (var opened = JournalFolder.open(journal, user)) {
            var entry =
                    opened.journal().log(opened.journal().builds().get(0).id()).get(0);
            assertThat(entry.pictures()).hasSize(2);
            assertThat(entry.pictures().get(0).caption()).isEqualTo("fin on the bench");
            assertThat(entry.measurements()).as("kept, then undone").isEmpty();
        }
    }

    /** 200 pixels are 100 mm, so 100 pixels are 50 mm; a pixel of the mouse may be half a one of the picture beside it. */
    private void measure(JComponent view) {
        Hands.click("large-measure");
        see("Mark both ends");
        mark(view, 100, 100);
        see("Mark the other end");
        mark(view, 300, 100);
        see("Write how long it is");
        Hands.type("measure-known", "0 mm");
        Hands.click("measure-calibrate");
        see("'0 mm' is not above 0");
        Hands.type("measure-known", "3 kg");
        Hands.enter("measure-known");
        see("'3 kg' is in kg");
        Hands.type("measure-known", "100 mm ± 0.5 mm");
        Hands.enter("measure-known");
        see("Mark both ends of what you want to measure");
        mark(view, 100, 150);
        mark(view, 100, 250);
        Hands.waitUntil("a length", () -> text("measure-result").contains("mm ±"));
        assertThat(millimetres(Hands.text("measure-result"))).isCloseTo(50, within(1.0));
        Hands.click("measure-keep");
        see("A measurement needs a name");
        Hands.type("measure-name", "fin height");
        Hands.click("measure-keep");
        Hands.waitUntil("it was said", () -> text("status").contains("fin height"));
        Hands.click("undo");
        Hands.waitUntil("it was undone", () -> text("status").startsWith("Taken back"));
    }

    private static void copies() throws Exception {
        var clipboard = Toolkit.getDefaultToolkit().getSystemClipboard();
        Hands.press(grid(), "ctrl C");
        Hands.waitUntil("it was said", () -> text("status").startsWith("One picture copied"));
        var files = (List<?>) clipboard.getData(DataFlavor.javaFileListFlavor);
        assertThat(files).hasSize(1);
        var copy = (File) files.get(0);
        assertThat(copy).hasName("2026-11-28 fin on the bench.png");
        assertThat(new Color(ImageIO.read(copy).getRGB(5, 5))).isEqualTo(FIRST);
        assertThat(clipboard.isDataFlavorAvailable(DataFlavor.imageFlavor)).isTrue();
    }

    @Test
    void aTurnIsForTheEyeAndAMissingFileIsSaidWithItsReason() throws Exception {
        try (var window = open()) {
            begin("Teal");
            window.page("Pictures");
            drop(picture("fin.png", FIRST));
            count("one picture");
            Hands.press(grid(), "HOME");
            Hands.press(grid(), "ENTER");
            var view = Hands.find(JPanel.class, "large-picture");
            seeColour(view, FIRST);
            var before = photos();
            Hands.click("large-turn-right");
            Hands.waitUntil("a narrow picture", () -> {
                int left = (view.getWidth() - view.getHeight() * HEIGHT / WIDTH) / 2;
                return !near(colourAt(view, left - 6, view.getHeight() / 2), FIRST)
                        && near(colourAt(view, left + 6, view.getHeight() / 2), FIRST);
            });
            assertThat(photos()).as("the picture as it was taken").isEqualTo(before);
            Hands.click("large-back");
        }
        for (var photo : photos()) {
            Files.delete(photo);
        }
        try (var files = Files.walk(folder.resolve("user"))) {
            for (var kept :
                    files.filter(each -> each.toString().endsWith(".jpg")).toList()) {
                Files.delete(kept);
            }
        }
        try (var window = open()) {
            window.page("Pictures");
            count("one picture");
            var grid = grid();
            Hands.waitUntil("the reason", () -> {
                grid.paint(new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB).createGraphics());
                var told = grid.getToolTipText(new MouseEvent(grid, MouseEvent.MOUSE_MOVED, 0, 0, 60, 90, 0, false));
                return told != null && told.endsWith("is missing");
            });
            Hands.press(grid, "HOME");
            Hands.press(grid, "ENTER");
            see("is missing");
        }
    }

    private static Color colourAt(JComponent component, int x, int y) {
        var image = new BufferedImage(component.getWidth(), component.getHeight(), BufferedImage.TYPE_INT_RGB);
        var g = image.createGraphics();
        component.paint(g);
        g.dispose();
        return new Color(image.getRGB(x, y));
    }

    private static boolean near(Color one, Color other) {
        return Math.abs(one.getRed() - other.getRed()) < 12 && Math.abs(one.getGreen() - other.getGreen()) < 12;
    }

    private List<Path> photos() throws Exception {
        try (var files = Files.walk(journal.resolve("photos"))) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }
}
