package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.Objects;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;

/** The keyboard is where the builder goes on: at what was begun, or back where it was before a page was laid over the build. */
class KeyboardPlaceTest extends InNewJournal {
    @Test
    void aNewBuildHasTheKeyboardAndIsTakenBackFromThere() throws Exception {
        try (var window = open()) {
            begin("Teal");
            Hands.hasKeyboard("capture-line");
            Hands.key("ctrl B");
            Hands.hasKeyboard("start-name");
            Hands.type("start-name", "Wigeon");
            Hands.click("begin-from");
            Hands.find(JLabel.class, "with the name", label -> "Wigeon".equals(label.getText()));
            Hands.hasKeyboard("capture-line");
            Hands.key("ctrl Z");
            Hands.find(JLabel.class, "of the build before", label -> "Teal".equals(label.getText()));
            Hands.waitUntil("it chosen on the shelf", () -> "Teal".equals(chosen()));
            Hands.hasKeyboard("capture-line");
            Hands.key("ctrl Y");
            Hands.find(JLabel.class, "of the build again", label -> "Wigeon".equals(label.getText()));
            Hands.waitUntil("it chosen on the shelf", () -> "Wigeon".equals(chosen()));
            assertThat(Hands.text("search")).isEmpty();
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    @Test
    void keysInATextTakeBackWhatIsTypedThereAndLeaveTheJournalAlone() throws Exception {
        try (var window = open()) {
            begin("Teal");
            write("left wing panel 212 g");
            Hands.type("capture-line", "r");
            Hands.key("ctrl Z");
            Hands.waitUntil("an empty line", () -> line().getText().isEmpty());
            Hands.key("ctrl Z");
            Hands.waitUntil("it said", () -> status().startsWith("Nothing typed here is left to take back"));
            Hands.key("ctrl Y");
            Hands.waitUntil("what was typed", () -> "r".equals(line().getText()));
            Hands.key("ctrl Y");
            Hands.waitUntil("it said", () -> status().startsWith("Nothing typed here is left to make again"));
            Hands.type("capture-line", "right wing panel 214 g");
            Hands.enter("capture-line");
            Hands.waitUntil("a line that is done with", () -> status().endsWith("right wing panel = 214 g"));
            Hands.key("ctrl Z");
            Hands.waitUntil("the last edit taken back", () -> status().equals("Taken back: right wing panel = 214 g"));
            Hands.key("ctrl Y");
            Hands.waitUntil("it made again", () -> status().startsWith("Made again"));
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    @Test
    void aTextThatNobodyHasChangedLeavesTheJournalAloneToo() throws Exception {
        try (var window = open()) {
            begin("Teal");
            write("left wing panel 212 g");
            Hands.click("edit-entry");
            Hands.find(Component.class, "editor");
            var name = Hands.find(JTextComponent.class, "measurements-name-0");
            Hands.onEventThread(name::requestFocusInWindow);
            Hands.hasKeyboard("measurements-name-0");
            Hands.key("ctrl Z");
            Hands.waitUntil("it said", () -> status().startsWith("Nothing typed here is left to take back"));
            assertThat(Hands.text("measurements-name-0")).isEqualTo("left wing panel");
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    @Test
    void aPageThatGoesGivesTheKeyboardBack() throws Exception {
        try (var window = open()) {
            begin("Teal");
            Hands.hasKeyboard("capture-line");
            for (var laid : new String[][] {
                {"F1", "chapters"}, {"ctrl T", "templates-filter"}, {"ctrl B", "start-name"}, {"ctrl F", "search"}
            }) {
                Hands.key(laid[0]);
                Hands.hasKeyboard(laid[1]);
                Hands.key("ESCAPE");
                Hands.hasKeyboard("capture-line");
            }
            Hands.click("new-entry");
            Hands.hasKeyboard("entry-title");
            Hands.key("F1");
            Hands.hasKeyboard("chapters");
            Hands.key("F1");
            Hands.hasKeyboard("entry-title");
            Hands.key("ctrl F");
            Hands.type("search", "wing");
            Hands.waitUntil("the search", () -> isThere("search-page"));
            Hands.type("search", "");
            Hands.waitUntil("the build again", () -> isThere("editor"));
            Hands.hasKeyboard("search");
            Hands.key("ESCAPE");
            Hands.hasKeyboard("entry-title");
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    @Test
    void keysBringPagesAndTheBenchAndSaveWhatIsWritten() throws Exception {
        try (var window = open()) {
            begin("Teal");
            Hands.hasKeyboard("capture-line");
            Hands.key("F1");
            Hands.hasKeyboard("chapters");
            Hands.key("ctrl 4");
            Hands.waitUntil("the keyboard on the parts' page", () -> hasKeyboardWithin("parts-page"));
            Hands.key("ctrl 1");
            Hands.hasKeyboard("new-entry");
            boolean bench = Hands.isThere("bench");
            Hands.key("ctrl J");
            Hands.waitUntil("the bench changed", () -> isThere("bench") != bench);
            Hands.key("ctrl N");
            Hands.hasKeyboard("entry-title");
            Hands.type("entry-title", "Fin");
            Hands.key("ctrl ENTER");
            Hands.waitUntil("the entry saved", () -> !isThere("editor") && isThere("edit-entry"));
            Hands.click("edit-build");
            Hands.hasKeyboard("build-name");
            Hands.type("build-name", "Garganey");
            Hands.key("ctrl ENTER");
            Hands.find(JLabel.class, "with the name", label -> "Garganey".equals(label.getText()));
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    private static String chosen() {
        return Hands.all(JList.class).stream()
                .filter(each -> "builds".equals(each.getName()))
                .map(each -> String.valueOf(each.getSelectedValue()))
                .findFirst()
                .orElseThrow();
    }

    private static boolean hasKeyboardWithin(String name) {
        var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return Stream.<Component>iterate(owner, Objects::nonNull, Component::getParent)
                .anyMatch(each -> name.equals(each.getName()));
    }

    private static boolean isThere(String name) {
        return Hands.all(Component.class).stream().anyMatch(each -> name.equals(each.getName()));
    }

    private static JTextComponent line() {
        return Hands.all(JTextComponent.class).stream()
                .filter(each -> "capture-line".equals(each.getName()))
                .findFirst()
                .orElseThrow();
    }

    private static String status() {
        return Hands.all(JLabel.class).stream()
                .filter(each -> "status".equals(each.getName()))
                .findFirst()
                .orElseThrow()
                .getText();
    }
}
