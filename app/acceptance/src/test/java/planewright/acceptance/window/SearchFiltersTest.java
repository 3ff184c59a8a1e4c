package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JComboBox;
import javax.swing.JEditorPane;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.text.BadLocationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.index.Hits;
import planewright.app.store.UserFolders;

/** The search page on the sample journal: its filters, and what a hit tells. */
class SearchFiltersTest {
    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    @Test
    void filtersNarrowAndAreTakenAwayAgain() throws Exception {
        var journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        try (var window = OpenWindow.on(journal, UserFolders.under(folder.resolve("user")))) {
            Hands.type("search", "fin");
            waitForFound("\\d+ entries with these words");
            int withFin = choose("filter-kind", "work");
            waitForFound(withFin + " entries with these words");
            Hands.type("search", "");
            waitForFound("\\d+ entries");
            int flights = choose("filter-kind", "flight");
            int repairs = choose("filter-kind", "repair");
            Hands.click("filter-kind-work");
            waitForFound(flights + repairs + " entries");
            Hands.click("filter-kind-flight");
            waitForFound(repairs + " entries");
            Hands.click("filter-kind-repair");
            waitForFound(entries(journal) + " entries");
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    @Test
    void aMeasuredRangeMayBeInAnyUnitAndARefusalIsShown() throws Exception {
        var journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        try (var window = OpenWindow.on(journal, UserFolders.under(folder.resolve("user")))) {
            Hands.type("search", "panel");
            waitForFound("\\d+ entries with these words");
            Hands.type("filter-measured", "wing mass");
            Hands.type("filter-at-least", "3 mm");
            Hands.waitUntil("a refusal", () -> text("filter-problem").contains("'3 mm' is in mm; accepted: kg, g"));
            Hands.type("filter-at-least", "230 g");
            Hands.type("filter-at-most", "8.3 oz");
            // 8.3 oz is 235.3 g: of all wings and their panels, those of one build have 231 and 234 g, one of another
            // 233 g
            waitForFound("2 entries with these words");
            Hands.waitUntil("no refusal", () -> text("filter-problem").isEmpty());
            Hands.type("filter-from", "2026-04");
            waitForFound("One entry with these words");
            Hands.type("filter-to", "2026-05");
            waitForFound("No entry passes.*");
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    @Test
    void aJointThatIsFoundSaysWhatHeldItAndHowLong() throws Exception {
        var journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        try (var window = OpenWindow.on(journal, UserFolders.under(folder.resolve("user")))) {
            Hands.type("search", "canopy joint");
            // 21 November 15:30 until 22 November 9:30, and until 25 November 15:30
            Hands.waitUntil(
                    "the joint with its times",
                    () -> Hands.all(JEditorPane.class).stream()
                            .anyMatch(pane -> shown(pane)
                                    .endsWith(
                                            "canopy shell · laminating epoxy · hands off for 18 h · cured after 4 d")));
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    private static String shown(JEditorPane pane) {
        try {
            return pane.getDocument().getText(0, pane.getDocument().getLength()).strip();
        } catch (BadLocationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static long entries(Path journal) throws IOException {
        try (var files = Files.walk(journal.resolve("builds"))) {
            return files.filter(file -> file.toString().matches(".*/entries/.*\\.json"))
                    .count();
        }
    }

    private static String text(String area) {
        return Hands.all(JTextArea.class).stream()
                .filter(each -> area.equals(each.getName()))
                .map(JTextArea::getText)
                .findFirst()
                .orElse("");
    }

    /** Chooses a value and gives the count that stands beside it. */
    private static int choose(String box, String value) {
        JComboBox<?> choice = Hands.find(JComboBox.class, box);
        Hands.waitUntil(value + " offered", () -> index(choice, value) > 0);
        return Hands.onEventThread(() -> {
            int entries = ((Hits.Count) choice.getItemAt(index(choice, value))).entries();
            choice.setSelectedIndex(index(choice, value));
            return entries;
        });
    }

    private static int index(JComboBox<?> choice, String value) {
        for (int i = 0; i < choice.getItemCount(); i++) {
            if (((Hits.Count) choice.getItemAt(i)).value().equals(value)) {
                return i;
            }
        }
        return -1;
    }

    private static void waitForFound(String pattern) {
        Hands.waitUntil(
                "found: " + pattern,
                () -> Hands.all(JLabel.class).stream()
                        .filter(Component::isShowing)
                        .anyMatch(label -> "found".equals(label.getName())
                                && label.getText().matches(pattern)));
    }
}
