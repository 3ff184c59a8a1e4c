package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.zip.ZipFile;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;

/** Brings a card of pictures and a table in, sees beforehand what will be written, takes it back, and takes all of it out. */
@SuppressWarnings("try") // the window is open as long as its block runs, whoever looks at it
class InAndOutTest {
    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    private Path journal;
    private UserFolders user;
    private BuildRecord build;

    @BeforeEach
    void journal() throws Exception {
        journal = folder.resolve("journal");
        user = UserFolders.under(folder.resolve("user"));
        JournalFolder.create(journal, "Shed");
        build = BuildRecord.begin("Tin Whistle", LocalDate.of(2026, 10, 3));
        try (var opened = JournalFolder.open(journal, user)) {
            opened.journal().apply(Edit.add("build", build));
        }
    }

    @Test
    void picturesOfACardAreSeenBroughtInAndTakenBack() throws Exception {
        var card = card();
        try (var window = OpenWindow.on(journal, user)) {
            Hands.click("show-exchange");
            Hands.type("bring-from", card.toString());
            Hands.click("bring-look");
            Hands.find(JTextArea.class, "that tells why", area -> area.getText().contains("film.mov: is a film"));
            assertThat(Hands.find(AbstractButton.class, "bring").isEnabled()).isFalse();
            Hands.type("bring-day", "2026-11-20");
            Hands.click("bring-look");
            var preview = Hands.find(JTable.class, "preview");
            assertThat(Hands.onEventThread(() -> preview.getValueAt(0, 3).toString()))
                    .isEqualTo("(2) DCIM/one.png, DCIM/two.png");
            assertThat(log()).as("nothing is written by looking").isEmpty();
            Hands.click("bring");
            Hands.find(JTextArea.class, "that tells it", area -> area.getText().startsWith("Brought in 2 things"));
            assertThat(log()).singleElement().satisfies(entry -> {
                assertThat(entry.at().toLocalDate()).isEqualTo(LocalDate.of(2026, 11, 20));
                assertThat(entry.pictures()).hasSize(2);
            });
            Hands.click("bring-undo");
            Hands.waitUntil(
                    "that it was taken back",
                    () -> Hands.all(JLabel.class).stream()
                            .anyMatch(label -> "status".equals(label.getName())
                                    && label.getText().contains("bring in pictures")));
            assertThat(log()).isEmpty();
        }
    }

    @Test
    void aTableWithOtherNamesIsBroughtInByItsColumns() throws Exception {
        var table = Files.writeString(
                folder.resolve("table.csv"),
                "Day;Thing;Weight;Unit\n14.03.2026;left wing panel;212;g\n15.03.2026;fin;four;g\n");
        try (var window = OpenWindow.on(journal, user)) {
            Hands.click("show-exchange");
            choose("bring-kind", 1);
            choose("bring-separator", 1);
            Hands.type("bring-from", table.toString());
            Hands.type("bring-dates", "dd.MM.yyyy");
            Hands.click("bring-look");
            Hands.find(
                    JTextArea.class,
                    "that names the columns",
                    area -> area.getText()
                            .contains("has no column for name, value; its columns: Day | Thing | Weight | Unit"));
            choose("column-name", 2);
            choose("column-value", 3);
            Hands.click("bring-look");
            var preview = Hands.find(JTable.class, "preview");
            assertThat(Hands.onEventThread(() -> preview.getValueAt(0, 3))).isEqualTo("left wing panel 212 g");
            Hands.find(
                    JTextArea.class,
                    "that tells the bad row",
                    area -> area.getText().contains("line 3: value is 'four'"));
            assertThat(Hands.find(AbstractButton.class, "bring").isEnabled()).isFalse();
            Hands.click("bring-skip-bad");
            Hands.click("bring-look");
            Hands.waitUntil(
                    "that it may be brought in",
                    () -> Hands.all(AbstractButton.class).stream()
                            .anyMatch(button -> "bring".equals(button.getName()) && button.isEnabled()));
            Hands.click("bring");
            Hands.find(JTextArea.class, "that tells it", area -> area.getText().startsWith("Brought in one thing"));
        }
        assertThat(log())
                .singleElement()
                .satisfies(
                        entry -> assertThat(entry.measurements().get(0).name()).isEqualTo("left wing panel"));
    }

    @Test
    void anArchiveAndPagesAreTakenOut() throws Exception {
        var zip = folder.resolve("out.zip");
        var pages = folder.resolve("pages");
        try (var window = OpenWindow.on(journal, user)) {
            Hands.click("show-exchange");
            JTabbedPane tabs = Hands.find(JTabbedPane.class, "exchange-tabs");
            Hands.onEventThread(() -> {
                tabs.setSelectedIndex(1);
                return tabs;
            });
            assertThat(Hands.text("take-what")).startsWith("This will write one build");
            Hands.type("take-to", zip.toString());
            Hands.click("take");
            Hands.find(
                    JTextArea.class,
                    "that tells it",
                    area -> area.getText().startsWith("Wrote ")
                            && area.getText().endsWith(zip.toString()));
            Hands.click("take");
            Hands.find(
                    JTextArea.class, "that it is there", area -> area.getText().contains("is there already"));
            choose("take-kind", 1);
            Hands.type("take-to", pages.toString());
            Hands.click("take");
            Hands.find(JTextArea.class, "that tells it", area -> area.getText().endsWith(pages.toString()));
        }
        assertThat(pages.resolve("index.html")).content().contains("Tin Whistle");
        try (var taken = new ZipFile(zip.toFile())) {
            assertThat(taken.getEntry("journal.json")).isNotNull();
        }
    }

    private Path card() throws IOException {
        var card = Files.createDirectories(folder.resolve("card/DCIM"));
        var image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
        for (var name : List.of("one", "two")) {
            image.setRGB(1, 1, name.hashCode());
            ImageIO.write(image, "png", card.resolve(name + ".png").toFile());
        }
        Files.writeString(card.resolve("film.mov"), "\0\0\0\024ftypqt  \0\0\0\0qt  ");
        return card.getParent();
    }

    private static void choose(String box, int index) {
        JComboBox<?> found = Hands.find(JComboBox.class, box);
        Hands.onEventThread(() -> {
            found.setSelectedIndex(index);
            return index;
        });
    }

    /** Read from a copy, so that the journal may be open. */
    private List<EntryRecord> log() throws IOException {
        var copy = Copies.copy(journal, folder.resolve("copy-" + System.nanoTime()));
        try (var opened = JournalFolder.open(copy, user)) {
            return opened.journal().log(build.id());
        }
    }
}
