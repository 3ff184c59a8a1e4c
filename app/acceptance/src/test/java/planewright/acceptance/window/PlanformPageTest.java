package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.journal.Planform;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;

/** A shape that is begun from a layout, typed into its tables, moved by keys and by hand, taken back and kept on disk. */
class PlanformPageTest {
    private static final int CHORD = 3;

    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    private Path journal;
    private UserFolders user;

    @BeforeEach
    void empty() throws Exception {
        journal = folder.resolve("journal");
        user = UserFolders.under(folder.resolve("user"));
        JournalFolder.create(journal, "Shed");
    }

    @Test
    void aShapeIsBegunChangedTakenBackAndKept() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            Hands.type("new-build-name", "Teal");
            Hands.click("new-build");
            window.page("Planform");
            Hands.find(Component.class, "begin-shape");
            Hands.type("shape-span", "wide");
            assertThat(description("shape-span")).contains("wide");
            Hands.type("shape-span", "4 ft");
            assertThat(description("shape-span")).isEmpty();
            Hands.type("shape-chord", "200 mm");
            JComboBox<?> layout = Hands.find(JComboBox.class, "shape-layout");
            Hands.onEventThread(() -> {
                layout.setSelectedIndex(1);
                return layout;
            });
            Hands.click("begin-planform");
            JTable sections = Hands.find(JTable.class, "planform-sections");
            Hands.waitUntil("a wing", () -> sections.getRowCount() == 2);
            Hands.waitUntil(
                    "its balance",
                    () -> Hands.all(javax.swing.JLabel.class).stream()
                            .anyMatch(label -> "planform_range".equals(label.getName())
                                    && label.getText().contains("mm")));

            Hands.waitUntil(
                    "it said that it is saved",
                    () -> Hands.all(javax.swing.JLabel.class).stream()
                            .anyMatch(label -> "status".equals(label.getName())
                                    && label.getText().contains("begin a shape")));
            refused(sections, 1, "-20 mm");
            Hands.typeCell(sections, 1, CHORD, "4 in");
            Hands.waitUntil("four inches", () -> sections.getValueAt(1, CHORD).equals("101.6 mm"));
            Hands.click("undo");
            Hands.waitUntil("the old chord", () -> sections.getValueAt(1, CHORD).equals("120 mm"));

            Component drawing = Hands.find(Component.class, "planform-drawing");
            keys(drawing, KeyEvent.VK_TAB, KeyEvent.VK_TAB, KeyEvent.VK_DOWN, KeyEvent.VK_DOWN, KeyEvent.VK_TAB);
            Hands.waitUntil("two steps", () -> sections.getValueAt(0, CHORD).equals("202 mm"));
            assertThat(Hands.onEventThread(() -> drawing.getAccessibleContext().getAccessibleName()))
                    .contains("wing, tip, leading edge");
            Hands.click("undo");
            Hands.waitUntil(
                    "both steps back", () -> sections.getValueAt(0, CHORD).equals("200 mm"));

            drag(drawing);
            Hands.waitUntil(
                    "a longer root", () -> !sections.getValueAt(0, CHORD).equals("200 mm"));
            Hands.click("undo");
            Hands.waitUntil(
                    "the whole drag back", () -> sections.getValueAt(0, CHORD).equals("200 mm"));
            Hands.click("redo");
            Hands.waitUntil("made again", () -> !sections.getValueAt(0, CHORD).equals("200 mm"));
        }
        try (var opened = JournalFolder.open(journal, user)) {
            var build = opened.journal().builds().get(0);
            var wing = build.planform().orElseThrow().surfaces().get(0);
            assertThat(build.layout()).isEqualTo("tailless with elevons");
            assertThat(wing.controls().get(0).role()).isEqualTo(Planform.Role.ELEVON);
            assertThat(wing.panels().get(0).rootChord()).isGreaterThan(0.2);
        }
    }

    /** What cannot be stays as it was typed, is marked and named. */
    private static void refused(JTable table, int row, String typed) {
        boolean taken = Hands.onEventThread(() -> {
            table.editCellAt(row, CHORD);
            ((JTextComponent) table.getEditorComponent()).setText(typed);
            return table.getCellEditor().stopCellEditing();
        });
        assertThat(taken).isFalse();
        assertThat(Hands.text("status")).contains(typed, "Chord");
        assertThat(Hands.onEventThread(() -> {
                    var text = ((JTextComponent) table.getEditorComponent()).getText();
                    table.getCellEditor().cancelCellEditing();
                    return text;
                }))
                .isEqualTo(typed);
    }

    @Test
    void twoSurfacesOnEachOtherAreNamedUntilOneIsRemoved() throws Exception {
        var wing = new Planform.Surface("wing", 0, 0, 0, true, List.of(new Planform.Panel(0.2, 0.15, 0.6, 0.1, 0, 0)));
        var second = new Planform.Surface("second wing", 0.05, 0, 0, true, wing.panels());
        try (var opened = JournalFolder.open(journal, user)) {
            opened.journal()
                    .apply(Edit.add(
                            "begin",
                            BuildRecord.begin("Teal", LocalDate.of(2026, 11, 1))
                                    .withPlanform(new Planform(List.of(wing, second), List.of()))));
        }
        try (var window = OpenWindow.on(journal, user)) {
            window.build("Teal");
            window.page("Planform");
            Hands.waitUntil(
                    "why there is no balance point",
                    () -> Hands.all(JTextArea.class).stream()
                            .anyMatch(area -> "planform-why".equals(area.getName())
                                    && area.getText().contains("‘wing’ and ‘second wing’ lie on each other")));
            JTable surfaces = Hands.find(JTable.class, "planform-surfaces");
            Hands.onEventThread(() -> {
                surfaces.setRowSelectionInterval(1, 1);
                return surfaces;
            });
            Hands.click("remove-surface");
            Hands.waitUntil(
                    "nothing is wrong any more",
                    () -> Hands.all(Component.class).stream().noneMatch(each -> "planform-why".equals(each.getName())));
        }
    }

    @Test
    void whatIsTypedIsTakenBeforeARowIsAddedOrAnotherSurfaceIsChosen() throws Exception {
        var wing = new Planform.Surface("wing", 0, 0, 0, true, List.of(new Planform.Panel(0.2, 0.15, 0.6, 0.1, 0, 0)));
        var tail = new Planform.Surface("tail", 0.7, 0, 0, true, List.of(new Planform.Panel(0.1, 0.08, 0.2, 0, 0, 0)));
        try (var opened = JournalFolder.open(journal, user)) {
            opened.journal()
                    .apply(Edit.add(
                            "begin",
                            BuildRecord.begin("Teal", LocalDate.of(2026, 11, 1))
                                    .withPlanform(new Planform(List.of(wing, tail), List.of()))));
        }
        try (var window = OpenWindow.on(journal, user)) {
            window.build("Teal");
            window.page("Planform");
            JTable sections = Hands.find(JTable.class, "planform-sections");
            JTable surfaces = Hands.find(JTable.class, "planform-surfaces");
            Hands.waitUntil("the wing", () -> sections.getRowCount() == 2);
            typing(sections, 1, "110 mm");
            Hands.click("add-section");
            Hands.waitUntil(
                    "a section more, and what was typed",
                    () -> sections.getRowCount() == 3
                            && sections.getValueAt(2, CHORD).equals("110 mm"));
            typing(sections, 2, "-20 mm");
            var more = Hands.find(AbstractButton.class, "add-section");
            assertThat(Hands.onEventThread(() -> {
                        more.doClick(0);
                        return sections.getRowCount() + " " + typed(sections);
                    }))
                    .as("what is not understood stays, and nothing is added")
                    .isEqualTo("3 -20 mm");
            assertThat(Hands.onEventThread(() -> {
                        surfaces.setRowSelectionInterval(1, 1);
                        return surfaces.getSelectedRow() + " " + typed(sections);
                    }))
                    .as("it stays, and its surface with it")
                    .isEqualTo("0 -20 mm");
            Hands.onEventThread(() -> {
                ((JTextComponent) sections.getEditorComponent()).setText("100 mm");
                surfaces.setRowSelectionInterval(1, 1);
                return surfaces;
            });
            Hands.waitUntil(
                    "the tail",
                    () -> !sections.isEditing()
                            && sections.getRowCount() == 2
                            && sections.getValueAt(1, CHORD).equals("80 mm"));
        }
        try (var opened = JournalFolder.open(journal, user)) {
            var shape = opened.journal().builds().get(0).planform().orElseThrow();
            assertThat(shape.surfaces().get(0).panels()).hasSize(2);
            assertThat(shape.surfaces().get(0).panels().get(1).tipChord()).isEqualTo(0.1);
            assertThat(shape.surfaces().get(1).panels()).isEqualTo(tail.panels());
        }
    }

    private static void typing(JTable table, int row, String text) {
        Hands.onEventThread(() -> {
            table.editCellAt(row, CHORD);
            ((JTextComponent) table.getEditorComponent()).setText(text);
            return table;
        });
    }

    private static String typed(JTable table) {
        return ((JTextComponent) table.getEditorComponent()).getText();
    }

    private static String description(String field) {
        var found = Hands.find(JTextComponent.class, field);
        return Hands.onEventThread(() -> found.getAccessibleContext().getAccessibleDescription());
    }

    private static void keys(Component on, int... codes) {
        Hands.onEventThread(() -> {
            for (int code : codes) {
                on.dispatchEvent(new KeyEvent(on, KeyEvent.KEY_PRESSED, 0, 0, code, KeyEvent.CHAR_UNDEFINED));
            }
            return codes;
        });
    }

    /** Takes the lowest handle on the centre line, the end of the root's chord, and draws it down in several moves. */
    private static void drag(Component on) {
        Hands.onEventThread(() -> {
            int x = -1;
            int y = -1;
            for (int row = on.getHeight() - 1; row > 0 && y < 0; row--) {
                for (int column = on.getWidth() / 2 - 3; column <= on.getWidth() / 2 + 3; column++) {
                    mouse(on, MouseEvent.MOUSE_MOVED, column, row, 0);
                    if (on.getCursor().getType() == java.awt.Cursor.HAND_CURSOR) {
                        x = column;
                        y = row;
                    }
                }
            }
            mouse(on, MouseEvent.MOUSE_PRESSED, x, y, InputEvent.BUTTON1_DOWN_MASK);
            for (int i = 1; i <= 12; i++) {
                mouse(on, MouseEvent.MOUSE_DRAGGED, x, y + 2 * i, InputEvent.BUTTON1_DOWN_MASK);
            }
            mouse(on, MouseEvent.MOUSE_RELEASED, x, y + 24, 0);
            return y;
        });
    }

    private static void mouse(Component on, int kind, int x, int y, int modifiers) {
        on.dispatchEvent(new MouseEvent(on, kind, 0, modifiers, x, y, 1, false, MouseEvent.BUTTON1));
    }
}
