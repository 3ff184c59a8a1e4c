package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.nio.file.Path;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.store.UserFolders;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.help.Chapter;
import planewright.app.ui.help.HelpPage;

/** Two builds side by side, and the page that tells what each page and each key is for. */
class CompareAndHelpTest {
    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    @Test
    void twoBuildsStandSideBySideAndOnlyWhatDiffersIsLeft() throws Exception {
        var journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        try (var window = OpenWindow.on(journal, UserFolders.under(folder.resolve("user")))) {
            window.build("Slate Ray Two");
            Hands.click("compare-build");
            JTable table = Hands.find(JTable.class, "compared");
            JComboBox<?> first = Hands.find(JComboBox.class, "compare-first");
            Hands.onEventThread(() -> {
                for (int i = 0; i < first.getItemCount(); i++) {
                    if (first.getItemAt(i).toString().equals("Slate Ray")) {
                        first.setSelectedIndex(i);
                    }
                }
                return first;
            });
            Hands.waitUntil(
                    "both names",
                    () -> table.getColumnName(2).equals("Slate Ray")
                            && table.getColumnName(3).equals("Slate Ray Two"));
            Hands.waitUntil("rows", () -> table.getRowCount() > 10);
            Hands.waitUntil(
                    "the days between them", () -> row(table, "begun", 4).endsWith(" days later"));
            Hands.waitUntil("what is the same", () -> row(table, "layout", 4).equals("same"));
            int all = Hands.onEventThread(table::getRowCount);
            Hands.click("compare-differing");
            Hands.waitUntil("fewer rows", () -> table.getRowCount() < all && table.getRowCount() > 0);
            Hands.type("compare-filter", "balance point");
            Hands.waitUntil("the balance point alone", () -> table.getRowCount() > 0 && table.getRowCount() < 4);
            assertThat(Hands.onEventThread(() -> String.valueOf(table.getValueAt(0, 1))))
                    .containsIgnoringCase("balance point");
            Hands.click("leave-compare");
            Hands.find(Component.class, "pages");
        }
    }

    private static String row(JTable table, String name, int column) {
        return IntStream.range(0, table.getRowCount())
                .filter(row -> name.equals(table.getValueAt(row, 1)))
                .mapToObj(row -> String.valueOf(table.getValueAt(row, column)))
                .findFirst()
                .orElse("");
    }

    @Test
    void everyKeyOfTheWindowIsTold() throws Exception {
        var journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        try (var window = OpenWindow.on(journal, UserFolders.under(folder.resolve("user")))) {
            Hands.click("show-help");
            JList<?> chapters = Hands.find(JList.class, "chapters");
            Hands.waitUntil("chapters", () -> chapters.getModel().getSize() > Chapter.values().length);
            Hands.onEventThread(() -> {
                chapters.setSelectedIndex(chapters.getModel().getSize() - 1);
                return chapters;
            });
            var bound = Hands.onEventThread(
                    () -> ((javax.swing.JComponent) window.frame().getContentPane())
                            .getInputMap(javax.swing.JComponent.WHEN_IN_FOCUSED_WINDOW)
                            .keys());
            var told = HelpPage.KEYS.stream()
                    .map(key -> KeyStroke.getKeyStroke(key.stroke()))
                    .toList();
            assertThat(told).containsExactlyInAnyOrder(bound);
            var labels = Hands.onEventThread(
                    () -> Hands.all(JLabel.class).stream().map(JLabel::getText).toList());
            HelpPage.KEYS.forEach(key -> assertThat(labels).contains(Buttons.keyText(key.stroke())));
        }
    }

    @Test
    void theGuidesChaptersNeverCoverItsText() throws Exception {
        var journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        try (var window = OpenWindow.on(journal, UserFolders.under(folder.resolve("user")))) {
            Hands.click("show-help");
            JList<?> chapters = Hands.find(JList.class, "chapters");
            Hands.waitUntil("chapters", () -> chapters.getModel().getSize() > Chapter.values().length);
            for (int height : new int[] {1000, 600, 900, 700}) {
                Hands.onEventThread(() -> {
                    window.frame().setSize(1024, height);
                    window.frame().validate();
                    return height;
                });
                assertThat(Hands.onEventThread(
                                () -> textOf(chapters).getX() - listOf(chapters).getWidth()))
                        .as("the text begins after the chapters, %s px high", height)
                        .isGreaterThanOrEqualTo(
                                Hands.onEventThread(() -> listOf(chapters).getX()));
            }
        }
    }

    private static Component listOf(JList<?> chapters) {
        return SwingUtilities.getAncestorOfClass(JScrollPane.class, chapters);
    }

    private static Component textOf(JList<?> chapters) {
        return listOf(chapters).getParent().getComponent(1);
    }
}
