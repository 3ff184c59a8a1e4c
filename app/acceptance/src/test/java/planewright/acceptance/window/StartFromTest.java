package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Component;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.quantity.Units;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.PartRecord;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;
import planewright.shared.planform.Outlines;

/** Templates in the window, and a build that is begun from a proven one and from a template. */
class StartFromTest {
    private static final int VALUE = 3;

    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    private Path journal;
    private UserFolders user;

    @BeforeEach
    void copy() throws Exception {
        journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        user = UserFolders.under(folder.resolve("user"));
    }

    @Test
    void aLargerBuildIsBegunFromAProvenOneAndUndone() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            JTable carried = fromSlateRay();
            JComboBox<?> from = Hands.find(JComboBox.class, "start-from");
            Hands.waitUntil(
                    "how far it is proven", () -> text("start-proof").startsWith("Slate Ray is proven: flown on "));
            assertThat(Hands.onEventThread(() -> offered(from)))
                    .contains("Slate Ray (flying)", "Slate Ray Two (on the bench)");
            assertThat(Hands.text("start-with-Fin squared by two threads")).contains("proven");
            Hands.type("start-size", "0");
            Hands.waitUntil("a refusal", () -> text("start-problem").contains("0.1"));
            Hands.type("start-size", "larger");
            Hands.click("begin-from");
            Hands.waitUntil(
                    "both refusals",
                    () -> text("start-problem").contains("'larger'")
                            && text("start-problem").contains("such as 1.2")
                            && text("start-problem").lines().count() == 2);
            Hands.type("start-size", "2800 mm");
            // twice the span of 1,399.8 mm, eight times the mass: Euclid, Elements XI.33
            Hands.waitUntil(
                    "eight times the mass",
                    () -> value(carried, "left wing panel").startsWith("169"));
            Hands.onEventThread(() -> {
                carried.setValueAt(false, row(carried, "motor"), 0);
                return true;
            });
            Hands.typeCell(carried, Hands.onEventThread(() -> row(carried, "fin")), VALUE, "3 oz");
            Hands.click("begin-from");
            Hands.waitUntil("a name is asked for", () -> !text("start-problem").isEmpty());
            Hands.type("start-name", "Slate Ray Large");
            Hands.click("begin-from");
            JList<?> builds = Hands.find(JList.class, "builds");
            Hands.waitUntil("the new build", () -> names(builds).contains("Slate Ray Large"));
            window.page("Parts");
            JTable parts = Hands.find(JTable.class, "parts");
            Hands.waitUntil("its parts", () -> row(parts, 0, "fin") >= 0);
            assertThat(Hands.onEventThread(() -> row(parts, 0, "motor"))).isNegative();
            assertThat(Hands.onEventThread(() -> String.valueOf(parts.getValueAt(row(parts, 0, "fin"), VALUE))))
                    .isEqualTo("carried over, weigh it");
            window.page("Set-up");
            JTable setUp = Hands.find(JTable.class, "set-up");
            Hands.waitUntil("its set-up", () -> row(setUp, 0, "balance point") >= 0);
            assertThat(Hands.onEventThread(
                            () -> String.valueOf(setUp.getValueAt(row(setUp, 0, "balance point"), VALUE))))
                    .startsWith("carried over: ");
            assertThat(Hands.all(JLabel.class))
                    .as("the header says so as well")
                    .anyMatch(label -> "all carried over from another build".equals(label.getText()))
                    .anyMatch(label -> "begun from Slate Ray".equalsIgnoreCase(label.getText()));
            Hands.click("undo");
            Hands.waitUntil("the build is gone again", () -> !names(builds).contains("Slate Ray Large"));
            assertThat(files("slate-ray-large")).isEqualTo(0);
        }
    }

    @Test
    void whatIsBegunHasTheSizeThatIsShownAndWhatIsTypedInAnOpenCell() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            JTable carried = fromSlateRay();
            var size = Hands.find(JTextComponent.class, "start-size");
            var name = Hands.find(JTextComponent.class, "start-name");
            var begin = Hands.find(JButton.class, "begin-from");
            Hands.onEventThread(() -> {
                typing(carried, "fin", "3 oz");
                name.setText("Slate Ray Large");
                size.setText("2");
                begin.doClick(0);
                return begin;
            });
            JList<?> builds = Hands.find(JList.class, "builds");
            Hands.waitUntil("the new build", () -> names(builds).contains("Slate Ray Large"));
            assertThat(window.frame().isShowing()).isTrue();
        }
        try (var opened = JournalFolder.open(journal, user)) {
            var before = build(opened.journal(), "Slate Ray");
            var large = build(opened.journal(), "Slate Ray Large");
            assertThat(Outlines.span(large.planform().orElseThrow()))
                    .isCloseTo(2 * Outlines.span(before.planform().orElseThrow()), within(1e-9));
            // 212 g and eight times the mass: Euclid, Elements XI.33; an ounce: NIST SP 811, B.8
            assertThat(grams(large, "left wing panel")).isCloseTo(8 * 212, within(1e-6));
            assertThat(grams(large, "fin")).isCloseTo(3 * 28.349523125, within(1e-6));
        }
    }

    @Test
    void theListOfAnotherBuildComesWhenTheOpenCellIsLeft() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            JTable carried = fromSlateRay();
            Hands.onEventThread(() -> {
                typing(carried, "fin", "3 oz");
                return carried;
            });
            choose(Hands.find(JComboBox.class, "start-from"), "Slate Ray Two");
            Hands.waitUntil(
                    "how far the other is proven", () -> text("start-proof").startsWith("Slate Ray Two "));
            assertThat(Hands.onEventThread(() -> carried.isEditing() && row(carried, "fin") >= 0))
                    .as("nothing is taken from under the hand")
                    .isTrue();
            assertThat(Hands.onEventThread(() -> {
                        carried.getCellEditor().stopCellEditing();
                        return row(carried, "fin") < 0 && row(carried, "left fin") >= 0;
                    }))
                    .as("the other one's parts")
                    .isTrue();
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    /** The list of what is carried over from there. */
    private static JTable fromSlateRay() {
        Hands.click("start-from");
        choose(Hands.find(JComboBox.class, "start-from"), "Slate Ray");
        JTable carried = Hands.find(JTable.class, "carried");
        Hands.waitUntil(
                "the parts of the Slate Ray",
                () -> value(carried, "left wing panel").startsWith("212") && row(carried, "fin") >= 0);
        return carried;
    }

    private static void typing(JTable carried, String name, String text) {
        carried.editCellAt(row(carried, name), VALUE);
        ((JTextComponent) carried.getEditorComponent()).setText(text);
    }

    private static BuildRecord build(OpenJournal in, String name) {
        return in.builds().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double grams(BuildRecord build, String part) {
        return build.parts().stream()
                .filter(each -> each.name().equals(part))
                .findFirst()
                .flatMap(PartRecord::mass)
                .orElseThrow()
                .in(Units.GRAM);
    }

    @Test
    void theListAndItsButtonsKeepTheirRoomInALowWindow() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            Hands.onEventThread(() -> {
                window.frame().setSize(900, 600);
                window.frame().validate();
                return window;
            });
            Hands.click("start-from");
            JTable carried = Hands.find(JTable.class, "carried");
            var begin = Hands.find(JButton.class, "begin-from");
            Hands.waitUntil("rows", () -> carried.getRowCount() > 10);
            Hands.waitUntil(
                    "some of them and the buttons in sight",
                    () -> carried.getVisibleRect().height > 3 * carried.getRowHeight()
                            && begin.getVisibleRect().height == begin.getHeight());
        }
    }

    @Test
    void aProcedureIsWrittenGivenToABuildAndTakenAwayAgain() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            Hands.click("show-templates");
            Hands.find(Component.class, "template-Core with the hot wire");
            Hands.click("new-procedure");
            Hands.type("template-name", "Spar glued in");
            Hands.type("steps-text-0", "Glue it with laminating epoxy");
            Hands.type("steps-waiting-0", "a while");
            Hands.click("save-template");
            Hands.waitUntil(
                    "a refusal",
                    () -> Hands.all(JTextArea.class).stream()
                            .anyMatch(area -> area.getText().contains("'a while'")));
            Hands.type("steps-waiting-0", "12 h");
            Hands.click("save-template");
            Hands.find(Component.class, "template-Spar glued in");
            Hands.type("templates-filter", "spar glued");
            Hands.waitUntil("only one", () -> !isThere("template-Core with the hot wire"));
            Hands.click("start-with");
            JCheckBox box = Hands.find(JCheckBox.class, "start-with-Spar glued in");
            assertThat(Hands.onEventThread(box::isSelected)).isTrue();
            JTable carried = Hands.find(JTable.class, "carried");
            Hands.waitUntil("the template is listed", () -> row(carried, "Spar glued in") == 0);
            Hands.type("start-name", "Borrowed Plume");
            Hands.click("begin-from");
            JList<?> builds = Hands.find(JList.class, "builds");
            Hands.waitUntil("the new build", () -> names(builds).contains("Borrowed Plume"));
            Hands.click("show-templates");
            Hands.waitUntil(
                    "it went to the build",
                    () -> Hands.all(JTextArea.class).stream()
                            .anyMatch(area -> area.getText().contains("went to Borrowed Plume")));
            Hands.click("remove-template");
            Hands.waitUntil("it is gone", () -> !isThere("template-Spar glued in"));
            Hands.click("undo");
            Hands.find(Component.class, "template-Spar glued in");
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    private static boolean isThere(String name) {
        return Hands.all(Component.class).stream().anyMatch(each -> name.equals(each.getName()));
    }

    private long files(String build) throws Exception {
        try (var files = Files.walk(journal.resolve("builds"))) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> file.toString().contains(build))
                    .count();
        }
    }

    private static void choose(JComboBox<?> box, String build) {
        Hands.onEventThread(() -> {
            for (int i = 0; i < box.getItemCount(); i++) {
                if (((Optional<?>) box.getItemAt(i))
                        .filter(each -> ((BuildRecord) each).name().equals(build))
                        .isPresent()) {
                    box.setSelectedIndex(i);
                }
            }
            return box;
        });
    }

    private static List<String> offered(JComboBox<?> box) {
        @SuppressWarnings("unchecked") // whatever it holds has a renderer
        var renderer = (ListCellRenderer<Object>) box.getRenderer();
        return IntStream.range(0, box.getItemCount())
                .mapToObj(i -> ((JLabel)
                                renderer.getListCellRendererComponent(new JList<>(), box.getItemAt(i), i, false, false))
                        .getText())
                .toList();
    }

    private static String names(JList<?> builds) {
        var all = new StringBuilder();
        for (int i = 0; i < builds.getModel().getSize(); i++) {
            all.append(builds.getModel().getElementAt(i)).append('\n');
        }
        return all.toString();
    }

    private static int row(JTable carried, String name) {
        return row(carried, 2, name);
    }

    private static int row(JTable table, int column, String name) {
        for (int i = 0; i < table.getRowCount(); i++) {
            if (name.equals(table.getValueAt(i, column))) {
                return i;
            }
        }
        return -1;
    }

    private static String value(JTable carried, String name) {
        int row = row(carried, name);
        return row < 0 ? "" : String.valueOf(carried.getValueAt(row, VALUE));
    }

    private static String text(String area) {
        return Hands.all(JTextArea.class).stream()
                .filter(each -> area.equals(each.getName()))
                .map(JTextArea::getText)
                .findFirst()
                .orElse("");
    }
}
