package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.util.Arrays;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JToolTip;
import org.junit.jupiter.api.Test;
import planewright.app.store.JournalFolder;
import planewright.app.ui.common.FigureView;
import planewright.app.ui.common.MeasurementChip;

/**
 * Measurements of a build: looked at in another unit, corrected in their cells, copied. The ounce is that of NIST Special
 * Publication 811 (2008), appendix B: 28.349523125 g, so 212 g are 7.478 oz.
 */
class MeasurementsPageTest extends InNewJournal {
    @Test
    void valuesAreShownInTheUnitOfChoiceEditedUndoneAndCopied() throws Exception {
        try (var window = open()) {
            begin("Teal");
            window.page("Measurements");
            Hands.waitUntil(
                    "what to do",
                    () -> Hands.all(javax.swing.JTextArea.class).stream()
                            .anyMatch(area -> "no-measurements".equals(area.getName())));
            write("left wing panel 212 g ± 1 g");
            write("fin height 3 1/2 in");
            JTable table = Hands.find(JTable.class, "measurements");
            Hands.waitUntil("both", () -> table.getRowCount() == 2);
            assertThat(Hands.onEventThread(() -> table.getValueAt(0, 2))).isEqualTo("3 1/2 in");

            Hands.onEventThread(() -> {
                table.setRowSelectionInterval(1, 1);
                return table;
            });
            Hands.find(
                    FigureView.class,
                    "of the panel",
                    view -> view.getToolTipText().equals("left wing panel"));
            chooseUnit("oz");
            Hands.waitUntil("ounces", () -> table.getValueAt(1, 2).equals("7.478 oz ± 0.035 oz"));
            assertThat(Hands.onEventThread(() -> table.getValueAt(0, 2))).isEqualTo("3 1/2 in");

            Hands.typeCell(table, 1, 2, "8");
            Hands.waitUntil("the new value", () -> table.getValueAt(1, 2).equals("8 oz"));
            Hands.onEventThread(() -> table.editCellAt(1, 2));
            assertThat(Hands.onEventThread(() -> {
                        ((javax.swing.text.JTextComponent) table.getEditorComponent()).setText("heavy");
                        return table.getCellEditor().stopCellEditing();
                    }))
                    .isFalse();
            assertThat(Hands.text("status")).contains("heavy");
            Hands.onEventThread(() -> {
                table.getCellEditor().cancelCellEditing();
                return table;
            });
            Hands.click("undo");
            Hands.waitUntil("the old value", () -> table.getValueAt(1, 2).equals("7.478 oz ± 0.035 oz"));

            Hands.type("measurements-filter", "fin");
            Hands.waitUntil("the fin alone", () -> table.getRowCount() == 1);
            Hands.click("copy-measurements");
            Hands.waitUntil(
                    "it said",
                    () -> Hands.all(javax.swing.JLabel.class).stream()
                            .anyMatch(label ->
                                    label.getText() != null && label.getText().startsWith("One row copied")));
            assertThat((String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor))
                    .contains("Teal,2026-11-28T19:30,fin height,3 1/2,in,,,3.5,")
                    .doesNotContain("panel");
        }
        try (var again = open()) {
            again.page("Measurements");
            JTable table = Hands.find(JTable.class, "measurements");
            Hands.waitUntil(
                    "ounces remembered",
                    () -> table.getRowCount() == 2 && table.getValueAt(1, 2).equals("7.478 oz ± 0.035 oz"));
        }
        try (var opened = JournalFolder.open(journal, user)) {
            var build = opened.journal().builds().get(0);
            assertThat(opened.journal()
                            .latestMeasurement(build.id(), "left wing panel")
                            .orElseThrow()
                            .what()
                            .written())
                    .isEqualTo("212");
        }
    }

    @Test
    void aChipOfTheLogTellsWhatWasMeasuredBeforeAndLeadsToItsHistory() throws Exception {
        try (var window = open()) {
            begin("Teal");
            window.page("Log");
            write("left wing panel 215 g");
            write("left wing panel 212 g ± 1 g");
            var chip = Hands.find(
                    MeasurementChip.class,
                    "of the second weighing",
                    each -> each.getAccessibleContext().getAccessibleName().equals("left wing panel  212 g ± 1 g"));
            assertThat(Hands.onEventThread(() -> chip.getToolTipText())).contains("before: 215 g on ");
            Hands.rest(chip);
            var tip = Hands.find(JToolTip.class, "of the chip", Component::isShowing);
            assertThat(Hands.onEventThread(() -> Arrays.stream(tip.getComponents())
                            .filter(FigureView.class::isInstance)
                            .map(each -> ((FigureView) each).getToolTipText())
                            .toList()))
                    .containsExactly("left wing panel: 2 readings");
            Hands.onEventThread(() -> {
                chip.doClick(0);
                return chip;
            });
            JTable table = Hands.find(JTable.class, "measurements");
            Hands.waitUntil(
                    "the weighing is chosen",
                    () -> table.getSelectedRow() >= 0
                            && table.getValueAt(table.getSelectedRow(), 2).equals("212 g ± 1 g"));
        }
    }

    private static void chooseUnit(String symbol) {
        JComboBox<?> unit = Hands.find(JComboBox.class, "shown-unit");
        Hands.onEventThread(() -> {
            unit.setSelectedItem(symbol);
            return unit;
        });
    }
}
