package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import planewright.app.calc.Described;
import planewright.app.calc.PluginShelf;
import planewright.app.calc.TestPlugins;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.store.JournalFolder;

/** Plugins in the window: added once trusted, switched and removed while it is open. */
@SuppressWarnings("try") // the window is open as long as its block runs, whoever looks at it
class PluginsPageTest extends InNewJournal {
    private static final String CALCULATORS = "Calculators";

    private Path zip;

    @BeforeEach
    void buildAndPlugin() throws Exception {
        try (var opened = JournalFolder.open(journal, user)) {
            opened.journal().apply(Edit.add("build", BuildRecord.begin("Tin Whistle", LocalDate.of(2026, 10, 3))));
        }
        zip = TestPlugins.zip(
                folder.resolve("loft.zip"), TestPlugins.SOUND, Map.of("bench.Station", TestPlugins.STATION));
    }

    private static List<String> offered() {
        var choice = Hands.all(JComboBox.class).stream()
                .filter(each -> "calculator".equals(each.getName()))
                .findFirst()
                .orElseThrow();
        return IntStream.range(0, choice.getItemCount())
                .mapToObj(i -> ((Described) choice.getItemAt(i)).id())
                .toList();
    }

    private static void waitFor(String id, boolean there) {
        Hands.waitUntil(
                "that " + id + (there ? " is" : " is not") + " offered",
                () -> offered().contains(id) == there);
    }

    private static void onceBack(String id, boolean there) {
        Hands.click("plugins-back");
        waitFor(id, there);
    }

    private static void press(String card, String button) {
        Hands.onEventThread(() -> {
            var wanted = buttons(card, button).findFirst().orElseThrow();
            wanted.doClick();
            return wanted;
        });
    }

    private static void focus(String card, String button) {
        Hands.waitUntil(
                "the keyboard brought to " + button + " of " + card,
                () -> buttons(card, button)
                        .peek(AbstractButton::requestFocusInWindow)
                        .anyMatch(AbstractButton::isFocusOwner));
    }

    private static void hasKeyboard(String card, String button) {
        Hands.waitUntil(
                "the keyboard at " + button + " of " + card,
                () -> buttons(card, button).anyMatch(AbstractButton::isFocusOwner));
    }

    private static Stream<AbstractButton> buttons(String card, String button) {
        return Hands.all(AbstractButton.class).stream()
                .filter(each -> button.equals(each.getName())
                        && card.equals(each.getParent().getName()));
    }

    @Test
    void aPluginOfTheProgramIsSwitchedOffAndOn() throws Exception {
        try (var window = open()) {
            window.page(CALCULATORS);
            waitFor("ducts.inlet", true);
            Hands.click("show-plugins");
            Hands.find(
                    JTextArea.class,
                    "that names the plugin",
                    area -> area.getText().startsWith("ducts "));
            focus("plugin-ducts", "switch-off");
            press("plugin-ducts", "switch-off");
            hasKeyboard("plugin-ducts", "switch-on");
            onceBack("ducts.inlet", false);
            Hands.click("show-plugins");
            Hands.find(
                    JTextArea.class,
                    "that says it is off",
                    area -> area.getText().equals("Switched off"));
            press("plugin-ducts", "switch-on");
            onceBack("ducts.inlet", true);
        }
    }

    @Test
    void anAddedPluginRunsAtOnceAndIsRemoved() throws Exception {
        try (var window = open()) {
            window.page(CALCULATORS);
            waitFor("ducts.inlet", true);
            Hands.click("show-plugins");
            Hands.click("add-plugin");
            Hands.chooseFile("place-chooser", zip);
            Hands.find(JLabel.class, "of the question", label -> label.getText().equals("SHA-256"));
            Hands.find(
                    JTextArea.class,
                    "that shows the hash",
                    area -> area.getText().matches("[0-9a-f]{64}"));
            assertThat(user.data().resolve("plugins"))
                    .as("nothing is added before the answer")
                    .doesNotExist();
            Hands.onEventThread(() -> {
                Hands.all(AbstractButton.class).stream()
                        .filter(each -> "Trust and add".equals(each.getText()))
                        .findFirst()
                        .orElseThrow()
                        .doClick();
                return true;
            });
            Hands.find(
                    JTextArea.class,
                    "that names the plugin",
                    area -> area.getText().startsWith("bench "));
            onceBack("bench.station", true);
            Hands.click("show-plugins");
            assertThat(user.data().resolve("plugins/bench.zip")).hasSameBinaryContentAs(zip);
            Hands.find(
                    JTextArea.class,
                    "that names the plugin",
                    area -> area.getText().startsWith("bench "));
            press("plugin-bench", "remove-plugin");
            onceBack("bench.station", false);
            assertThat(user.data().resolve("plugins/bench.zip")).doesNotExist();
        }
    }

    @Test
    void aPluginThatNobodyTrustedSaysSo() throws Exception {
        Files.createDirectories(user.data().resolve("plugins"));
        Files.copy(zip, user.data().resolve("plugins/stray.zip"));
        assertThat(PluginShelf.look(zip).id()).isEqualTo("bench");
        try (var window = open()) {
            window.page(CALCULATORS);
            waitFor("ducts.inlet", true);
            Hands.click("show-plugins");
            Hands.find(
                    JTextArea.class,
                    "that says why",
                    area -> area.getText().equals("nobody has said that it is trusted; add it to be asked"));
            onceBack("bench.station", false);
        }
    }
}
