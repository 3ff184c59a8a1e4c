package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.ListCellRenderer;
import javax.swing.plaf.basic.ComboPopup;
import org.junit.jupiter.api.Test;

/** Who looks for a calculator finds it by its question. */
class CalculatorChoiceTest extends InNewJournal {
    @Test
    void theListTellsTheQuestionOfEachCalculatorAndTheChosenOneItsTitle() throws Exception {
        try (var window = open()) {
            begin("Teal");
            window.page("Calculators");
            JComboBox<?> choice = Hands.find(JComboBox.class, "calculator");
            Hands.waitUntil("calculators", () -> choice.getItemCount() > 5);
            var told = Hands.onEventThread(() -> told(choice));
            assertThat(told)
                    .anyMatch(words -> words.contains("Mass ledger") && words.contains("Where does it balance?"))
                    .anyMatch(words -> words.contains("Weighing") && words.contains("What do the scales say?"))
                    .allMatch(words -> words.contains("?"));
            var chosen = Hands.onEventThread(() -> text(choice, choice.getSelectedIndex(), -1));
            assertThat(chosen).doesNotContain("?").isNotBlank();
            Hands.onEventThread(() -> {
                choice.showPopup();
                return choice;
            });
            Hands.waitUntil("the list as wide as its questions", () -> {
                var list = ((ComboPopup) choice.getAccessibleContext().getAccessibleChild(0)).getList();
                return list.isShowing() && list.getParent().getWidth() >= list.getPreferredSize().width;
            });
        }
    }

    @Test
    void allThreeStationsOfTheLedgerAreInSightInAWindowOfUsualWidth() throws Exception {
        Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("workshop"));
        try (var window = OpenWindow.on(folder.resolve("workshop"), user)) {
            Hands.onEventThread(() -> {
                window.frame().setSize(1360, 768);
                return window.frame();
            });
            window.build("Slate Ray");
            window.page("Calculators");
            Hands.choose("calculator", "balance.ledger");
            JTable parts = Hands.find(JTable.class, "rows-parts");
            Hands.waitUntil("mass and all stations in sight", () -> {
                int last = parts.getColumnModel().getColumnIndex("z (mm)");
                return parts.getRowCount() > 0
                        && parts.getVisibleRect().contains(parts.getCellRect(0, 0, true))
                        && parts.getVisibleRect().contains(parts.getCellRect(0, last, true));
            });
            assertThat(Hands.onEventThread(() -> shown(parts, "Mass (g)"))).isEqualTo("212 ± 1");
            assertThat(Hands.onEventThread(() -> parts.getValueAt(0, 1)))
                    .as("what is edited")
                    .isEqualTo("212 g ± 1 g");
        }
    }

    private static String shown(JTable table, String heading) {
        int column = table.getColumnModel().getColumnIndex(heading);
        return ((JLabel) table.prepareRenderer(table.getCellRenderer(0, column), 0, column)).getText();
    }

    private static List<String> told(JComboBox<?> choice) {
        return IntStream.range(0, choice.getItemCount())
                .mapToObj(i -> text(choice, i, i))
                .toList();
    }

    private static String text(JComboBox<?> choice, int item, int index) {
        @SuppressWarnings("unchecked") // whatever it holds has a renderer
        var renderer = (ListCellRenderer<Object>) choice.getRenderer();
        Component drawn =
                renderer.getListCellRendererComponent(new JList<>(), choice.getItemAt(item), index, false, false);
        return ((JLabel) drawn).getText();
    }
}
