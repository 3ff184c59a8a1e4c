package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import planewright.api.journal.Entry;
import planewright.app.Settings;
import planewright.app.cli.CommandLineProgram;
import planewright.app.journal.EntryRecord;
import planewright.app.store.JournalFolder;
import planewright.app.store.JsonFiles;
import planewright.app.ui.common.MeasurementChip;
import planewright.app.ui.common.PictureTile;

/** The main job in a real window: a build, an entry, the ledger, keeping, finding, undoing, closing, opening again. */
class WholeJobTest extends InNewJournal {
    private static final String BUILD = "Tin Whistle";

    @Test
    void aBuilderGoesThroughTheWholeJobAndFindsItAgain() throws Exception {
        try (var window = open()) {
            beginBuild(window);
            writeEntry();
            writeLedger(window);
            keepBalance(window);
            findAgain();
            undoAndRedo();
        }
        try (var window = open()) {
            window.build(BUILD);
            seeEntry();
            assertThat(kept()).as("the kept result is in the log").isPresent();
        }
        assertThatCommandLineAnswersAsTheWindowDid();
    }

    @Test
    void aQuantityThatIsNoneStaysAsTypedAndNothingIsWritten() throws Exception {
        try (var window = open()) {
            beginBuild(window);
            Hands.click("new-entry");
            Hands.type("entry-title", "Fin");
            Hands.click("add-measurements");
            Hands.type("measurements-name-0", "fin height");
            Hands.type("measurements-quantity-0", "3 1/2 spans");
            Hands.click("save-entry");
            Hands.find(
                    javax.swing.JTextArea.class,
                    "that names 'spans'",
                    area -> area.getText().contains("'spans' is not a unit"));
            assertThat(Hands.text("measurements-quantity-0")).isEqualTo("3 1/2 spans");
            Hands.click("discard-entry");
            Hands.click("bring-back");
            assertThat(Hands.text("entry-title")).isEqualTo("Fin");
            Hands.type("measurements-quantity-0", "3 1/2 in");
            Hands.click("save-entry");
            Hands.find(
                    MeasurementChip.class,
                    "with the height",
                    chip -> chip.getAccessibleContext().getAccessibleName().equals("fin height  3 1/2 in"));
        }
        try (var opened = JournalFolder.open(journal, user)) {
            var log = opened.journal().log(opened.journal().builds().get(0).id());
            assertThat(log).hasSize(1);
            assertThat(log.get(0).measurements().get(0).quantity().text()).isEqualTo("3 1/2 in");
        }
    }

    @Test
    void aDeletedEntryIsBroughtBackFromTheBin() throws Exception {
        try (var window = open()) {
            beginBuild(window);
            writeEntry();
            Hands.click("edit-entry");
            Hands.click("delete-entry");
            Hands.waitUntil(
                    "the entry gone", () -> Hands.all(MeasurementChip.class).isEmpty());
            Hands.click("show-bin");
            Hands.click("restore");
            Hands.waitUntil(
                    "the bin empty",
                    () -> Hands.all(AbstractButton.class).stream()
                            .noneMatch(button -> "restore".equals(button.getName())));
            Hands.click("show-bin");
            seeEntry();
        }
    }

    private static void beginBuild(OpenWindow window) {
        assertThat(window.frame().getTitle()).startsWith("Shed");
        begin(BUILD);
    }

    private void writeEntry() throws Exception {
        var picture = folder.resolve("fin.png").toFile();
        ImageIO.write(new BufferedImage(320, 200, BufferedImage.TYPE_INT_RGB), "png", picture);
        Hands.click("new-entry");
        Hands.type("entry-title", "Fin cut to the card outline");
        Hands.type("entry-text", "Grain along the *leading edge*.");
        Hands.click("add-measurements");
        Hands.type("measurements-name-0", "fin height");
        Hands.type("measurements-quantity-0", "3 1/2 in ± 1/16 in");
        Hands.click("add-picture");
        Hands.chooseFile("picture-chooser", picture.toPath());
        Hands.type("entry-caption-0", "fin on the bench");
        Hands.click("save-entry");
        seeEntry();
    }

    private void seeEntry() {
        Hands.find(
                MeasurementChip.class,
                "with the height",
                chip -> chip.getAccessibleContext().getAccessibleName().equals("fin height  3 1/2 in ± 1/16 in"));
        Hands.find(PictureTile.class, "with the picture", PictureTile::isShown);
    }

    private static void writeLedger(OpenWindow window) {
        window.page("Parts");
        JTable parts = Hands.find(JTable.class, "parts");
        writePart(parts, 0, "pod", "120 g ± 1 g", "60 mm ± 1 mm");
        writePart(parts, 1, "tail", "40 g ± 1 g", "300 mm ± 1 mm");
    }

    private static void writePart(JTable parts, int row, String name, String mass, String x) {
        Hands.click("add-part");
        Hands.waitUntil("a part more", () -> parts.getRowCount() == row + 1 && parts.isEditing());
        Hands.typeCell(parts, row, 0, name);
        typeSaved(parts, row, 2, mass);
        typeSaved(parts, row, 4, x);
    }

    private static void typeSaved(JTable parts, int row, int column, String text) {
        Hands.waitUntil("the cell free", () -> !parts.isEditing() && parts.getRowCount() > row);
        Hands.typeCell(parts, row, column, text);
        Hands.waitUntil(
                "'" + text + "' in the table",
                () -> parts.getValueAt(row, column).equals(text));
    }

    /** Two masses: 160 g at (120 · 60 + 40 · 300) / 160 = 120 mm. */
    private static void keepBalance(OpenWindow window) {
        window.page("Calculators");
        JComboBox<?> choice = Hands.find(JComboBox.class, "calculator");
        Hands.onEventThread(() -> {
            for (int i = 0; i < choice.getItemCount(); i++) {
                if (choice.getItemAt(i).toString().contains("balance.ledger")) {
                    choice.setSelectedIndex(i);
                }
            }
            return choice;
        });
        Hands.waitUntil(
                "the mass",
                () -> Hands.all(JLabel.class).stream()
                        .anyMatch(label -> "value-All-up mass".equals(label.getName())
                                && label.getText().startsWith("160")));
        assertThat(Hands.text("value-Balance point x")).startsWith("120");
        Hands.find(
                JCheckBox.class, "that proposes the mass", box -> box.getText().contains("all-up mass"));
        var keep = Hands.find(AbstractButton.class, "keep");
        Hands.onEventThread(keep::requestFocusInWindow);
        Hands.hasKeyboard("keep");
        Hands.click("keep");
        Hands.waitUntil("the answer with what is kept", () -> !keep.isShowing());
        Hands.hasKeyboard("keep");
        Hands.waitUntil(
                "that it is kept",
                () -> Hands.all(JLabel.class).stream()
                        .anyMatch(label -> "status".equals(label.getName())
                                && label.getText().contains(BUILD)));
        window.page("Log");
        Hands.waitUntil("the kept result", () -> isKeptShown());
    }

    private static boolean isKeptShown() {
        return Hands.all(javax.swing.JPanel.class).stream()
                .anyMatch(panel -> panel.getName() != null && panel.getName().startsWith("kept-"));
    }

    private void findAgain() {
        Hands.type("search", "leading edge");
        Hands.waitUntil(
                "one hit",
                () -> Hands.all(JLabel.class).stream()
                        .anyMatch(label -> "found".equals(label.getName())
                                && label.getText().startsWith("One entry")));
        Hands.type("search", "\"3 1/2 in\"");
        Hands.waitUntil(
                "the entry",
                () -> Hands.all(javax.swing.JTextArea.class).stream()
                        .anyMatch(title -> title.getText().equals("Fin cut to the card outline")));
        Hands.type("search", "");
        Hands.waitUntil("the log again", () -> isKeptShown());
    }

    private void undoAndRedo() {
        Hands.click("undo");
        Hands.waitUntil("the kept result gone", () -> !isKeptShown());
        Hands.click("redo");
        Hands.waitUntil("the kept result back", () -> isKeptShown());
    }

    private Optional<EntryRecord> kept() throws Exception {
        return Hands.onEventThread(() -> isKeptShown()) ? Optional.of(keptOnDisk()) : Optional.empty();
    }

    /** Read while the window is open: files can always be read. */
    private EntryRecord keptOnDisk() throws Exception {
        var copy = folder.resolve("copy-" + System.nanoTime());
        Copies.copy(journal, copy);
        try (var opened = JournalFolder.open(copy, user)) {
            return opened.journal().log(opened.journal().builds().get(0).id()).stream()
                    .filter(entry -> entry.kind() == Entry.Kind.KEPT_RESULT)
                    .findFirst()
                    .orElseThrow();
        }
    }

    private void assertThatCommandLineAnswersAsTheWindowDid() throws Exception {
        var out = new StringWriter();
        var err = new StringWriter();
        int code = new CommandLineProgram(
                        new Settings(user, OpenWindow.plugins(), Optional.of(journal)),
                        OpenWindow.CLOCK,
                        new PrintWriter(out),
                        new PrintWriter(err))
                .run("calc", "balance.ledger", "--build", BUILD, "--json");
        assertThat(err.toString()).isEmpty();
        assertThat(code).isZero();
        var answered = JsonFiles.parse(out.toString());
        assertThat(answered.get("results"))
                .isEqualTo(keptOnDisk().keptResult().orElseThrow().results());
        assertThat(List.of(answered.get("inputs")))
                .isEqualTo(List.of(keptOnDisk().keptResult().orElseThrow().inputs()));
    }
}
