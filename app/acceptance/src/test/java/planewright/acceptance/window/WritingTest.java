package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.store.UserFolders;
import planewright.app.ui.common.PictureTile;

/** Who writes much still sees where it is saved, and what was saved. */
class WritingTest {
    private static final int MANY = 30;

    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    private Path journal;
    private UserFolders user;

    @BeforeEach
    void copy() throws Exception {
        journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        user = UserFolders.under(folder.resolve("user"));
    }

    @Test
    void saveStaysInSightBelowManyRowsAndTheEntryIsInSightOnceSaved() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            window.build("Slate Ray");
            Hands.click("new-entry");
            Hands.type("entry-title", "Weighed part by part");
            for (int i = 0; i < MANY; i++) {
                Hands.click("add-measurements");
                Hands.find(Component.class, "measurements-name-" + i);
                Hands.waitUntil("save in sight", () -> isInSight(save()));
            }
            Hands.type("measurements-name-" + (MANY - 1), "canopy");
            Hands.type("measurements-quantity-" + (MANY - 1), "heavy");
            Hands.waitUntil("the row above the foot", () -> {
                var row = named("measurements-quantity-" + (MANY - 1));
                return isInSight(row) && onScreen(row).getMaxY() <= onScreen(save()).y;
            });
            Hands.click("save-entry");
            Hands.find(JTextArea.class, "that refuses", area -> area.getText().contains("'heavy'"));
            Hands.type("measurements-quantity-" + (MANY - 1), "31 g");
            Hands.click("save-entry");
            Hands.waitUntil(
                    "the entry in sight",
                    () -> Hands.all(JTextArea.class).stream()
                            .anyMatch(each -> each.getText().equals("Weighed part by part") && isInSight(each)));
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    @Test
    void saveIsInSightInALogThatIsScrolledAndInALongTemplate() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            window.build("Slate Ray");
            Hands.find(Component.class, "older");
            Hands.onEventThread(() -> {
                var edits = Hands.all(AbstractButton.class).stream()
                        .filter(each -> "edit-entry".equals(each.getName()))
                        .toList();
                edits.get(edits.size() - 1).doClick(0);
                return edits;
            });
            Hands.find(Component.class, "editor");
            Hands.waitUntil("save in sight", () -> isInSight(save()));
            Hands.click("discard-entry");
            Hands.click("show-templates");
            Hands.click("new-procedure");
            for (int i = 0; i < MANY; i++) {
                Hands.click("add-steps");
                Hands.find(Component.class, "steps-text-" + (i + 1));
            }
            Hands.waitUntil("save in sight", () -> isInSight(named("save-template")));
            Hands.click("discard-template");
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    @Test
    void aPictureOfAnEntryThatIsWrittenOpensLargeAndLeadsBack() throws Exception {
        var file = Files.write(folder.resolve("fin.png"), png());
        try (var window = OpenWindow.on(journal, user)) {
            Hands.click("new-entry");
            Hands.type("entry-title", "Fin set");
            Hands.click("add-picture");
            Hands.chooseFile("picture-chooser", file);
            Hands.find(JComponent.class, "entry-caption-0");
            var tile = Hands.find(PictureTile.class, "of the editor", each -> each.isShown() && isIn(each, "editor"));
            Hands.press(tile, 5, 5);
            Hands.hasKeyboard("large-picture");
            assertThat(Hands.find(AbstractButton.class, "large-measure").isEnabled())
                    .isFalse();
            Hands.key("F2");
            Hands.hasKeyboard("large-caption");
            Hands.type("large-caption", "fin, from the left");
            Hands.enter("large-caption");
            Hands.hasKeyboard("large-picture");
            assertThat(Hands.find(AbstractButton.class, "large-turn-right").isEnabled())
                    .isTrue();
            Hands.key("ESCAPE");
            Hands.find(JComponent.class, "editor");
            assertThat(Hands.text("entry-title")).isEqualTo("Fin set");
            assertThat(Hands.text("entry-caption-0")).isEqualTo("fin, from the left");
            Hands.type("entry-caption-0", "the fin");
            Hands.click("save-entry");
            Hands.waitUntil(
                    "the editor gone",
                    () -> Hands.all(JComponent.class).stream().noneMatch(each -> "editor".equals(each.getName())));
            var saved = Hands.find(
                    PictureTile.class, "of the log", each -> each.isShown() && "the fin".equals(each.getToolTipText()));
            Hands.press(saved, 5, 5);
            Hands.hasKeyboard("large-picture");
            assertThat(Hands.find(AbstractButton.class, "large-measure").isEnabled())
                    .isTrue();
            assertThat(Hands.text("large-caption")).isEqualTo("the fin");
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    @Test
    void aPictureThatIsAddedToALongEntryComesIntoSight() throws Exception {
        var file = Files.write(folder.resolve("fin.png"), png());
        try (var window = OpenWindow.on(journal, user)) {
            Hands.click("new-entry");
            Hands.type("entry-title", "Fin set");
            for (int i = 0; i < MANY; i++) {
                Hands.click("add-measurements");
                Hands.find(Component.class, "measurements-name-" + i);
            }
            Hands.onEventThread(() -> {
                var title = named("entry-title");
                title.requestFocusInWindow();
                ((JComponent) title.getParent()).scrollRectToVisible(title.getBounds());
                return title;
            });
            Hands.hasKeyboard("entry-title");
            Hands.waitUntil("its beginning in sight", () -> isInSight(named("entry-title")));
            assertThat(Hands.onEventThread(() -> isInSight(named("measurements-name-" + (MANY - 1)))))
                    .isFalse();
            Hands.click("add-picture");
            Hands.chooseFile("picture-chooser", file);
            Hands.find(JComponent.class, "entry-caption-0");
            Hands.waitUntil("its caption above the foot", () -> {
                var caption = named("entry-caption-0");
                return isInSight(caption) && onScreen(caption).getMaxY() <= onScreen(save()).y;
            });
            Hands.click("discard-entry");
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    private static byte[] png() throws java.io.IOException {
        var bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", bytes);
        return bytes.toByteArray();
    }

    private static boolean isIn(Component each, String name) {
        return each != null && (name.equals(each.getName()) || isIn(each.getParent(), name));
    }

    private static JComponent save() {
        return named("save-entry");
    }

    private static JComponent named(String name) {
        return Hands.all(JComponent.class).stream()
                .filter(each -> name.equals(each.getName()))
                .findFirst()
                .orElseThrow();
    }

    private static boolean isInSight(JComponent each) {
        var view = SwingUtilities.getAncestorOfClass(JViewport.class, each);
        return view == null || onScreen((JComponent) view).contains(onScreen(each));
    }

    private static Rectangle onScreen(JComponent each) {
        return new Rectangle(each.getLocationOnScreen(), each.getSize());
    }
}
