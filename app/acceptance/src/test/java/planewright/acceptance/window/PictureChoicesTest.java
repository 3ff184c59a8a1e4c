package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.nio.file.Files;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.MenuSelectionManager;
import org.junit.jupiter.api.Test;
import planewright.api.quantity.Units;
import planewright.app.store.JournalFolder;

/** What is read of a picture and what can be done with it, by what is chosen. */
class PictureChoicesTest extends WithPictures {
    @Test
    void whatIsMeasuredIsReadInTheUnitThatIsChosenAndKeptAsItWasComputed() throws Exception {
        Files.createDirectories(user.data());
        Files.write(user.data().resolve("window.txt"), List.of("unit m=[in_i]"));
        try (var window = open()) {
            begin("Teal");
            window.page("Pictures");
            drop(picture("fin.png", FIRST));
            count("one picture");
            Hands.press(grid(), "HOME");
            Hands.press(grid(), "ENTER");
            var view = Hands.find(JPanel.class, "large-picture");
            seeColour(view, FIRST);
            Hands.click("large-measure");
            see("Mark both ends");
            mark(view, 100, 100);
            see("Mark the other end");
            mark(view, 300, 100);
            see("Write how long it is");
            Hands.type("measure-known", "100 mm ± 0.5 mm");
            Hands.enter("measure-known");
            see("Mark both ends of what you want to measure");
            mark(view, 100, 150);
            mark(view, 100, 250);
            Hands.waitUntil("inches", () -> text("measure-result").contains(" in ±"));
            assertThat(millimetres(Hands.text("measure-result"))).isCloseTo(50, within(1.0));
            Hands.type("measure-name", "fin height");
            Hands.click("measure-keep");
            Hands.waitUntil("it was said", () -> text("status").contains(" in ±"));
        }
        try (var opened = JournalFolder.open(journal, user)) {
            var entry =
                    opened.journal().log(opened.journal().builds().get(0).id()).get(0);
            assertThat(entry.measurements())
                    .singleElement()
                    .satisfies(kept -> assertThat(kept.quantity().unit()).isEqualTo(Units.MILLIMETRE));
        }
    }

    @Test
    void theKeyForItTakesNoOtherPicturesCaptionBack() throws Exception {
        try (var window = open()) {
            begin("Teal");
            window.page("Pictures");
            drop(picture("fin.png", FIRST));
            count("one picture");
            drop(picture("wing.png", SECOND));
            count("2 pictures");
            Hands.press(grid(), "HOME");
            Hands.press(grid(), "ENTER");
            Hands.hasKeyboard("large-picture");
            caption("the fin");
            Hands.key("PAGE_DOWN");
            caption("the wing");
            Hands.key("F2");
            Hands.hasKeyboard("large-caption");
            Hands.key("PAGE_UP");
            assertThat(Hands.text("large-caption")).isEqualTo("the fin");
            Hands.key("ctrl Z");
            Hands.waitUntil("it said", () -> text("status").startsWith("Nothing typed here is left to take back"));
            assertThat(Hands.text("large-caption")).isEqualTo("the fin");
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    private static void caption(String words) {
        Hands.type("large-caption", words);
        Hands.enter("large-caption");
        Hands.hasKeyboard("large-picture");
        see(1, words);
    }

    @Test
    void withoutAChosenPictureNothingIsOfferedAndTheClipboardStays() throws Exception {
        var clipboard = Toolkit.getDefaultToolkit().getSystemClipboard();
        clipboard.setContents(new StringSelection("left wing panel"), null);
        try (var window = open()) {
            begin("Teal");
            window.page("Pictures");
            see("No pictures of this build yet");
            var grid = grid();
            Hands.press(grid, "ctrl C");
            seeInMenu(grid, false);
            drop(picture("fin.png", FIRST));
            count("one picture");
            assertThat(clipboard.getData(DataFlavor.stringFlavor)).isEqualTo("left wing panel");
            Hands.press(grid, "HOME");
            seeInMenu(grid, true);
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    /** What can be done with chosen pictures stands in the menu, and can be done or not. */
    private static void seeInMenu(JComponent grid, boolean enabled) {
        Hands.onEventThread(() -> {
            grid.getComponentPopupMenu().show(grid, 5, 5);
            return grid;
        });
        for (var item : List.of("open", "caption", "entry", "copy", "save", "save-as-taken")) {
            assertThat(Hands.find(JMenuItem.class, "menu-picture-" + item).isEnabled())
                    .as(item)
                    .isEqualTo(enabled);
        }
        Hands.onEventThread(() -> {
            MenuSelectionManager.defaultManager().clearSelectedPath();
            return grid;
        });
    }
}
