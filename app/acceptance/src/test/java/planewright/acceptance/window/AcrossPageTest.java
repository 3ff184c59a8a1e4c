package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;

/** What should the wing of the next build weigh, given those that were built? */
class AcrossPageTest extends InNewJournal {
    private static final List<String> BUILDS = List.of("Teal", "Wigeon", "Gadwall", "Smew");

    @Test
    void theNextBuildIsToldAndAnOutlierLeftOut() throws Exception {
        try (var window = open()) {
            Hands.click("show-across");
            Hands.waitUntil(
                    "what it is for",
                    () -> Hands.all(JTextArea.class).stream()
                            .anyMatch(area -> "across-nothing".equals(area.getName())
                                    && area.getText().startsWith("No build has values yet")));
            for (int i = 0; i < BUILDS.size(); i++) {
                begin(BUILDS.get(i));
                write("half wing " + List.of(100, 150, 200, 900).get(i) + " g");
                write("reach " + List.of(1000, 1500, 2000, 2500).get(i) + " mm");
            }
            Hands.click("show-across");
            JTable table = Hands.find(JTable.class, "across-table");
            Hands.choose("across-value", "half wing (g)");
            Hands.choose("across-against", "reach (mm)");
            Hands.waitUntil("four builds with both", () -> table.getRowCount() == 4 && table.getColumnCount() == 6);
            Hands.waitUntil(
                    "a line that tells nothing",
                    () -> said().contains("By 4 builds") && said().contains("one does not go with the other"));

            int smew = row(table, "Smew");
            Hands.onEventThread(() -> {
                table.setValueAt(false, smew, 0);
                return table;
            });
            Hands.type("across-at", "1.8 m");
            Hands.waitUntil(
                    "the next build", () -> said().contains("At 1800 mm expect 180 g, between 180 g and 180 g."));
            assertThat(said()).contains("By 3 builds: half wing (g) = ").doesNotContain("outside");
            Hands.type("across-at", "4000");
            Hands.waitUntil("a warning", () -> said().contains("outside of what was built"));
            Hands.type("across-at", "long");
            JComponent asked = Hands.find(JComponent.class, "across-at");
            Hands.waitUntil("it is marked", () -> "error".equals(asked.getClientProperty("JComponent.outline")));
            see("'long' is not a quantity");

            Hands.click("copy-across");
            Hands.waitUntil("it said", () -> statusSays("4 rows copied"));
            assertThat((String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor))
                    .contains("Smew,900,g,,900,", "Teal,100,g,,100,");

            JComponent chart = Hands.find(JComponent.class, "across-chart");
            Hands.onEventThread(() -> {
                table.setRowSelectionInterval(row(table, "Wigeon"), row(table, "Wigeon"));
                return table;
            });
            var place = Hands.onEventThread(() -> dotOf(chart, "Wigeon"));
            Hands.press(chart, place.x, place.y);
            window.page("Log");
            Hands.waitUntil(
                    "its log",
                    () -> Hands.all(javax.swing.JLabel.class).stream()
                            .anyMatch(label -> "Wigeon".equals(label.getText())));
        }
    }

    /** Looks for the dot as the pointer does: by what it says there. */
    private static java.awt.Point dotOf(JComponent chart, String build) {
        for (int y = 0; y < chart.getHeight(); y += 3) {
            for (int x = 0; x < chart.getWidth(); x += 3) {
                var pointer = new MouseEvent(chart, MouseEvent.MOUSE_MOVED, 0, 0, x, y, 0, false);
                if (build.equals(chart.getToolTipText(pointer))) {
                    return new java.awt.Point(x, y);
                }
            }
        }
        throw new AssertionError("no dot says " + build);
    }

    private static int row(JTable table, String build) {
        for (int row = 0; row < table.getRowCount(); row++) {
            if (build.equals(table.getValueAt(row, 1))) {
                return row;
            }
        }
        throw new AssertionError("no row of " + build);
    }

    private static String said() {
        return Hands.all(JTextArea.class).stream()
                .filter(area -> "across-said".equals(area.getName()))
                .map(JTextArea::getText)
                .findFirst()
                .orElse("");
    }

    private static boolean statusSays(String words) {
        return Hands.all(javax.swing.JLabel.class).stream()
                .anyMatch(label ->
                        "status".equals(label.getName()) && label.getText().contains(words));
    }
}
