package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.journal.Entry;
import planewright.api.quantity.Units;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;

/** A day on which something broke: flights, a repair and work done are written into one entry and read on its card. */
class RepairDayTest {
    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    @Test
    void flightsRepairsAndWorkAreWrittenShownAndChanged() throws Exception {
        var journal = folder.resolve("journal");
        var user = UserFolders.under(folder.resolve("user"));
        JournalFolder.create(journal, "Shed");
        try (var window = OpenWindow.on(journal, user)) {
            Hands.type("new-build-name", "Teal");
            Hands.click("new-build");
            Hands.find(
                    JLabel.class,
                    "with the build's name",
                    label -> label.getText().equals("Teal"));
            Hands.click("new-entry");
            Hands.type("entry-title", "A post");
            choose(Entry.Kind.REPAIR);
            Hands.type("repairs-broke-0", "left leading edge");
            Hands.type("repairs-cause-0", "a post");
            Hands.type("repairs-massAdded-0", "3 min");
            Hands.click("add-flights");
            Hands.type("flights-duration-0", "4 min");
            Hands.click("add-flights");
            Hands.type("flights-behaviour-1", "straight into it");
            Hands.click("add-tasks");
            Hands.type("tasks-name-0", "cut a wedge");
            Hands.type("tasks-handsOn-0", "20");
            Hands.click("save-entry");
            see("left leading edge: '3 min'");
            Hands.type("repairs-massAdded-0", "3 g");
            Hands.click("save-entry");
            see("repair: left leading edge; a post; +3 g");
            see("flight: 4 min");
            see("flight: straight into it");
            see("done: cut a wedge; 20 min");
            Hands.click("edit-entry");
            assertThat(Hands.text("flights-behaviour-1")).isEqualTo("straight into it");
            Hands.type("repairs-mended-0", "a wedge of foam");
            Hands.click("save-entry");
            see("repair: left leading edge; a post; a wedge of foam; +3 g");
            assertThat(window.frame().isShowing()).isTrue();
        }
        try (var opened = JournalFolder.open(journal, user)) {
            var build = opened.journal().builds().get(0);
            var entry = opened.journal().log(build.id()).get(0);
            assertThat(entry.flights()).hasSize(2);
            assertThat(entry.repairs().get(0).massAdded().orElseThrow().in(Units.GRAM))
                    .isEqualTo(3);
            assertThat(entry.tasks().get(0).handsOn().orElseThrow().in(Units.MINUTE))
                    .isEqualTo(20);
        }
    }

    private static void see(String words) {
        Hands.find(
                JTextArea.class, "with '" + words + "'", area -> area.getText().contains(words));
    }

    private static void choose(Entry.Kind kind) {
        JComboBox<?> kinds = Hands.find(JComboBox.class, "entry-kind");
        Hands.onEventThread(() -> {
            kinds.setSelectedItem(kind);
            return kinds;
        });
    }
}
