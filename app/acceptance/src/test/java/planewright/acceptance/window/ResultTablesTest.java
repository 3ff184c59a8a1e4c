package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.app.store.UserFolders;

/** Every table that a packaged calculator answers with can be read to its last letter, however narrow the window is. */
class ResultTablesTest {
    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    private Path journal;
    private UserFolders user;

    @BeforeEach
    void sample() throws Exception {
        journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        user = UserFolders.under(folder.resolve("user"));
    }

    @ParameterizedTest
    @CsvSource({"900, 600", "1360, 860"})
    void nothingInThemIsCutOff(int width, int height) throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            Hands.onEventThread(() -> {
                window.frame().setSize(new Dimension(width, height));
                window.frame().validate();
                return window;
            });
            window.build("Old Mustard");
            window.page("Calculators");
            JComboBox<?> choice = Hands.find(JComboBox.class, "calculator");
            Hands.waitUntil("calculators", () -> choice.getItemCount() > 1);
            int tables = 0;
            for (int i = 1; i <= choice.getItemCount(); i++) {
                tables += tablesOf(choice, i % choice.getItemCount());
            }
            assertThat(tables).isGreaterThan(8);
        }
    }

    private static int tablesOf(JComboBox<?> choice, int item) {
        var before = Hands.onEventThread(ResultTablesTest::answers);
        Hands.onEventThread(() -> {
            choice.setSelectedIndex(item);
            return item;
        });
        Hands.waitUntil(
                "an answer of calculator " + item,
                () -> !answers().isEmpty() && answers().stream().noneMatch(before::contains));
        Hands.waitUntil(
                "tables laid out",
                () -> tables().stream().allMatch(table -> cut(table).isEmpty()));
        return Hands.onEventThread(() -> tables().size());
    }

    /** What a calculator came to: a result, or what is wrong with its inputs. */
    private static List<Component> answers() {
        return Hands.all(Component.class).stream()
                .filter(each -> "result".equals(each.getName()) || "problems".equals(each.getName()))
                .toList();
    }

    private static List<JTable> tables() {
        return Hands.all(JTable.class).stream()
                .filter(table -> String.valueOf(table.getName()).startsWith("table-"))
                .toList();
    }

    private static List<String> cut(JTable table) {
        var cut = new ArrayList<String>();
        var pane = (JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, table);
        if (table.getWidth() > pane.getViewport().getWidth()
                && !pane.getHorizontalScrollBar().isVisible()) {
            cut.add("wider than what shows it");
        }
        if (table.getHeight() > pane.getViewport().getHeight()) {
            cut.add("higher than what shows it");
        }
        for (int column = 0; column < table.getColumnCount(); column++) {
            var header = table.getTableHeader();
            var heading = header.getDefaultRenderer()
                    .getTableCellRendererComponent(
                            table, table.getColumnModel().getColumn(column).getHeaderValue(), false, false, -1, column);
            fit(heading, header.getHeaderRect(column).getSize(), table.getColumnName(column), cut);
            for (int row = 0; row < table.getRowCount(); row++) {
                var cell = table.prepareRenderer(table.getCellRenderer(row, column), row, column);
                fit(cell, table.getCellRect(row, column, false).getSize(), "" + table.getValueAt(row, column), cut);
            }
        }
        return cut;
    }

    private static void fit(Component cell, Dimension room, String words, List<String> cut) {
        var wanted = cell.getPreferredSize();
        if (wanted.width > room.width || wanted.height > room.height) {
            cut.add("'" + words + "' wants " + wanted.width + " × " + wanted.height + " and has " + room.width + " × "
                    + room.height);
        }
    }
}
