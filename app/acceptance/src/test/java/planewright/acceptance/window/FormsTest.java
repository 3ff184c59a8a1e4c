package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.app.store.UserFolders;

/** The form of every packaged calculator: no word beside a field is cut, a unit stands with it, and rows are added where they stand. */
class FormsTest {
    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"840, 600", "1360, 860"})
    void everyWordBesideAFieldIsReadInFull(int width, int height) throws Exception {
        var journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        try (var window = OpenWindow.on(journal, UserFolders.under(folder.resolve("user")))) {
            Hands.onEventThread(() -> {
                window.frame().setSize(new Dimension(width, height));
                window.frame().validate();
                return window;
            });
            window.build("Slate Ray");
            window.page("Calculators");
            JComboBox<?> choice = Hands.find(JComboBox.class, "calculator");
            Hands.waitUntil("calculators", () -> choice.getItemCount() > 1);
            int rows = 0;
            int units = 0;
            for (int i = 1; i <= choice.getItemCount(); i++) {
                int item = i % choice.getItemCount();
                var before = Hands.onEventThread(FormsTest::form);
                Hands.onEventThread(() -> {
                    choice.setSelectedIndex(item);
                    return choice;
                });
                Hands.waitUntil(
                        "form " + item,
                        () -> form().isPresent()
                                && !form().equals(before)
                                && form().get().getWidth() > 0);
                Hands.waitUntil("words in full in form " + item, () -> cut().isEmpty());
                rows += Hands.onEventThread(FormsTest::rowsAddedWhereTheyStand);
                units += Hands.onEventThread(
                        () -> (int) labels().filter(label -> label.getText().endsWith(" (mm)"))
                                .count());
            }
            assertThat(rows).isGreaterThan(5);
            assertThat(units).isGreaterThan(5);
        }
    }

    private static Optional<Component> form() {
        return Hands.all(Component.class).stream()
                .filter(each -> "inputs".equals(each.getName()))
                .findFirst();
    }

    private static Stream<JLabel> labels() {
        return Hands.all(JLabel.class).stream()
                .filter(label -> label.getLabelFor() != null)
                .filter(label -> SwingUtilities.isDescendingFrom(label, form().orElseThrow()));
    }

    private static List<String> cut() {
        return labels().filter(label -> label.getWidth() < label.getPreferredSize().width)
                .map(JLabel::getText)
                .toList();
    }

    /** How many tables have the button right below their left edge. */
    private static int rowsAddedWhereTheyStand() {
        int found = 0;
        for (var button : Hands.all(AbstractButton.class)) {
            if (String.valueOf(button.getName()).startsWith("add-row-")) {
                Container field =
                        SwingUtilities.getAncestorNamed(button.getName().replace("add-row-", "input-"), button);
                var table = (JScrollPane) field.getComponent(0);
                assertThat(table.getViewport().getView()).isInstanceOf(JTable.class);
                assertThat(SwingUtilities.convertPoint(button, 0, 0, field).x)
                        .as(button.getName())
                        .isEqualTo(table.getX());
                found++;
            }
        }
        return found;
    }
}
