package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import planewright.api.journal.Entry;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.PartRecord;
import planewright.app.journal.SetUpRecord;
import planewright.app.store.JournalFolder;
import planewright.shared.quantity.QuantityText;

/** Another build is chosen while a cell is open: what was typed is of the build it was typed for, and the page shows the other. */
class OtherBuildTest extends InNewJournal {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 1);

    @BeforeEach
    void twoBuilds() throws Exception {
        try (var opened = JournalFolder.open(journal, user)) {
            add(opened.journal(), "Teal", 12, 212, 50, 120);
            add(opened.journal(), "Coot", 9, 180, 70, 150);
        }
    }

    /**
     * @param up throw of the elevator, mm
     * @param panel weighed, g
     * @param pod in the ledger, g
     * @param tip chord, mm
     */
    private static void add(OpenJournal into, String name, int up, int panel, int pod, int tip) throws Exception {
        var wing = new Planform.Surface(
                "wing", 0, 0, 0, true, List.of(new Planform.Panel(0.2, tip / 1000.0, 0.6, 0.1, 0, 0)));
        var build = BuildRecord.begin(name, DAY)
                .withParts(List.of(pod(pod)))
                .withPlanform(new Planform(List.of(wing), List.of()));
        into.apply(Edit.add("begin", build));
        into.apply(Edit.add(
                "write",
                EntryRecord.blank(build.id(), Entry.Kind.WORK, DAY.atTime(19, 30))
                        .withMeasurements(List.of(MeasurementRecord.of(
                                "left wing panel", QuantityText.parse(panel + " g", Units.GRAM), "")))
                        .withSetUp(List.of(
                                new SetUpRecord("elevator throw", QuantityText.parse(up + " mm", Units.MILLIMETRE))))));
    }

    private static PartRecord pod(int grams) {
        return new PartRecord(
                "pod",
                "pod",
                "airframe",
                Optional.of(Measured.of(grams, Units.GRAM)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    @Test
    void whatIsTypedGoesToTheBuildThatItIsTypedFor() throws Exception {
        try (var window = open()) {
            leaveOpen(window, new Cell("Set-up", "set-up", 0, 1), "12 mm", "14", "9 mm");
            leaveOpen(window, new Cell("Measurements", "measurements", 0, 2), "212 g", "215 g", "180 g");
            leaveOpen(window, new Cell("Parts", "parts", 0, 2), "50 g", "48 g", "70 g");
            leaveOpen(window, new Cell("Planform", "planform-sections", 1, 3), "120 mm", "110 mm", "150 mm");
        }
        try (var opened = JournalFolder.open(journal, user)) {
            assertThat(numbers(opened.journal(), "Teal")).isEqualTo("14 215 48 110");
            assertThat(numbers(opened.journal(), "Coot")).isEqualTo("9 180 70 150");
        }
    }

    @Test
    void whatIsNotUnderstoodIsDroppedAndNamed() throws Exception {
        try (var window = open()) {
            leaveOpen(window, new Cell("Set-up", "set-up", 0, 1), "12 mm", "10 g", "9 mm");
            Hands.waitUntil(
                    "it is said",
                    () -> Hands.all(JLabel.class).stream()
                            .anyMatch(label -> "status".equals(label.getName())
                                    && label.getText().startsWith("'10 g' was dropped")
                                    && label.getText().contains("is in g")));
        }
        try (var opened = JournalFolder.open(journal, user)) {
            assertThat(numbers(opened.journal(), "Teal")).isEqualTo("12 212 50 120");
            assertThat(numbers(opened.journal(), "Coot")).isEqualTo("9 180 70 150");
        }
    }

    private record Cell(String page, String table, int row, int column) {
        boolean shows(JTable shown, String words) {
            return shown.getRowCount() > row && words.equals(shown.getValueAt(row, column));
        }
    }

    /** Types into a cell of one build and chooses the other, whose rows are to be seen then. */
    private static void leaveOpen(OpenWindow window, Cell cell, String before, String typed, String other) {
        window.build("Teal");
        window.page(cell.page());
        JTable table = Hands.find(JTable.class, cell.table());
        Hands.waitUntil(before, () -> cell.shows(table, before));
        Hands.onEventThread(() -> {
            table.editCellAt(cell.row(), cell.column());
            ((JTextComponent) table.getEditorComponent()).setText(typed);
            return table;
        });
        window.build("Coot");
        Hands.waitUntil(other, () -> !table.isEditing() && cell.shows(table, other));
    }

    private static String numbers(OpenJournal of, String name) {
        var build = of.builds().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
        var tip =
                build.planform().orElseThrow().surfaces().get(0).panels().get(0).tipChord();
        return String.join(
                " ",
                of.setUpValue(build.id(), "elevator throw").orElseThrow().what().written(),
                of.latestMeasurement(build.id(), "left wing panel")
                        .orElseThrow()
                        .what()
                        .written(),
                String.valueOf(
                        Math.round(build.parts().get(0).mass().orElseThrow().in(Units.GRAM))),
                String.valueOf(Math.round(1000 * tip)));
    }
}
