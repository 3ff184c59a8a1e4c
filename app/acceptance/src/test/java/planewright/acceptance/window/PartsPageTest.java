package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import planewright.app.store.JournalFolder;

/**
 * Parts on the drawing: dragged out of the tray, moved by keys, added by a double click; where they balance follows. Two masses
 * balance where their moments cancel (Archimedes, On the Equilibrium of Planes, book I, propositions 6 and 7).
 */
class PartsPageTest extends InNewJournal {
    private static final int MASS = 2;
    private static final int X = 4;

    @Test
    void partsAreDraggedMovedByKeysTakenBackAndKept() throws Exception {
        try (var window = open()) {
            begin("Teal");
            window.page("Parts");
            see("Where it balances is seen once");
            var table = Hands.find(JTable.class, "parts");
            part(table, 0, "pod", "100 g ± 1 g", "100 mm");
            part(table, 1, "tail", "50 g", "");
            see("Balances 100 mm aft");
            see("One part without mass or place does not count.");

            var above = Hands.find(Component.class, "parts-above");
            // keys: the tail comes out of the tray to where the rest balances, then goes aft in steps of 5 mm and 1 mm
            Hands.onEventThread(() -> {
                table.setRowSelectionInterval(1, 1);
                return table;
            });
            keys(above, 0, KeyEvent.VK_DOWN);
            keys(above, 0, KeyEvent.VK_DOWN);
            keys(above, 0, KeyEvent.VK_DOWN);
            keys(above, InputEvent.SHIFT_DOWN_MASK, KeyEvent.VK_DOWN);
            Hands.waitUntil("eleven millimetres", () -> "111 mm".equals(table.getValueAt(1, X)));
            see("Balances 103.667 mm ± 0.024 mm aft");
            Hands.waitUntil("it is kept", () -> statusSays("moved part 'tail'"));
            Hands.click("undo");
            Hands.waitUntil("in the tray again", () -> "".equals(table.getValueAt(1, X)));
            Hands.click("redo");
            Hands.waitUntil("out of it", () -> "111 mm".equals(table.getValueAt(1, X)));

            var from = middleOf(above, "tail");
            drag(above, from, new Point(from.x, from.y + 40));
            Hands.waitUntil("further aft", () -> !"111 mm".equals(table.getValueAt(1, X)));
            Hands.waitUntil("it is kept", () -> statusSays("Saved: moved part 'tail'"));
            Hands.click("undo");
            Hands.waitUntil("the whole drag back", () -> "111 mm".equals(table.getValueAt(1, X)));

            press(above, from, MouseEvent.MOUSE_PRESSED, 1);
            press(above, new Point(from.x, from.y + 30), MouseEvent.MOUSE_DRAGGED, 1);
            Hands.waitUntil("it follows", () -> !"111 mm".equals(table.getValueAt(1, X)));
            keys(above, 0, KeyEvent.VK_ESCAPE);
            Hands.waitUntil("it is let go", () -> "111 mm".equals(table.getValueAt(1, X)));
            press(above, new Point(from.x, from.y + 30), MouseEvent.MOUSE_RELEASED, 1);

            var free = new Point(12, 12);
            press(above, free, MouseEvent.MOUSE_CLICKED, 2);
            Hands.waitUntil(
                    "a third part with a place",
                    () -> table.getRowCount() == 3 && !"".equals(table.getValueAt(2, X)) && table.isEditing());
        }
        try (var opened = JournalFolder.open(journal, user)) {
            var parts = opened.journal().builds().get(0).parts();
            assertThat(parts).hasSize(3);
            assertThat(parts.get(1).x()).isPresent();
            assertThat(parts.get(1).y()).isEmpty();
        }
    }

    @Test
    void aPartThatIsRemovedComesBackWithWhatWasTypedInItsOpenCell() throws Exception {
        try (var window = open()) {
            begin("Teal");
            window.page("Parts");
            var table = Hands.find(JTable.class, "parts");
            part(table, 0, "pod", "100 g", "100 mm");
            Hands.onEventThread(() -> {
                table.setRowSelectionInterval(0, 0);
                table.editCellAt(0, MASS);
                ((JTextComponent) table.getEditorComponent()).setText("96 g");
                return table;
            });
            Hands.click("remove-part");
            Hands.waitUntil("no part", () -> table.getRowCount() == 0);
            Hands.click("undo");
            Hands.waitUntil(
                    "it with its new mass", () -> table.getRowCount() == 1 && "96 g".equals(table.getValueAt(0, MASS)));
            Hands.click("undo");
            Hands.waitUntil("it as it was", () -> "100 g".equals(table.getValueAt(0, MASS)));
        }
    }

    private static void part(JTable table, int row, String name, String mass, String x) {
        Hands.click("add-part");
        Hands.waitUntil("a row", () -> table.getRowCount() == row + 1 && table.isEditing());
        Hands.typeCell(table, row, 0, name);
        Hands.typeCell(table, row, MASS, mass);
        if (!x.isEmpty()) {
            Hands.typeCell(table, row, X, x);
        }
        Hands.waitUntil(name, () -> name.equals(table.getValueAt(row, 0)) && x.equals(table.getValueAt(row, X)));
    }

    /** A press there chooses the part, as the table shows. */
    private static Point middleOf(Component drawing, String part) {
        JTable table = Hands.find(JTable.class, "parts");
        return Hands.onEventThread(() -> {
            for (int y = 0; y < drawing.getHeight(); y += 2) {
                for (int x = 0; x < drawing.getWidth(); x += 2) {
                    var at = new Point(x, y);
                    drawing.dispatchEvent(mouse(drawing, at, MouseEvent.MOUSE_MOVED, 0));
                    if (drawing.getCursor().getType() == java.awt.Cursor.HAND_CURSOR) {
                        drawing.dispatchEvent(mouse(drawing, at, MouseEvent.MOUSE_PRESSED, 1));
                        drawing.dispatchEvent(mouse(drawing, at, MouseEvent.MOUSE_RELEASED, 1));
                        if (part.equals(table.getValueAt(table.getSelectedRow(), 0))) {
                            return at;
                        }
                    }
                }
            }
            throw new AssertionError("no place chooses " + part);
        });
    }

    private static void drag(Component on, Point from, Point to) {
        press(on, from, MouseEvent.MOUSE_PRESSED, 1);
        press(on, new Point((from.x + to.x) / 2, (from.y + to.y) / 2), MouseEvent.MOUSE_DRAGGED, 1);
        press(on, to, MouseEvent.MOUSE_DRAGGED, 1);
        press(on, to, MouseEvent.MOUSE_RELEASED, 1);
    }

    private static void press(Component on, Point at, int kind, int clicks) {
        Hands.onEventThread(() -> {
            on.dispatchEvent(mouse(on, at, kind, clicks));
            return on;
        });
    }

    private static MouseEvent mouse(Component on, Point at, int kind, int clicks) {
        return new MouseEvent(
                on,
                kind,
                System.currentTimeMillis(),
                0,
                at.x,
                at.y,
                clicks,
                false,
                clicks == 0 ? 0 : MouseEvent.BUTTON1);
    }

    private static void keys(Component on, int held, int key) {
        Hands.onEventThread(() -> {
            on.dispatchEvent(new KeyEvent(
                    on, KeyEvent.KEY_PRESSED, System.currentTimeMillis(), held, key, KeyEvent.CHAR_UNDEFINED));
            return on;
        });
    }

    private static boolean statusSays(String words) {
        return Hands.all(javax.swing.JLabel.class).stream()
                .anyMatch(label -> "status".equals(label.getName())
                        && label.getText() != null
                        && label.getText().contains(words));
    }
}
