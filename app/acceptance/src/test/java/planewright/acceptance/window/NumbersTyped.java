package planewright.acceptance.window;

import java.awt.Component;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.swing.JTable;
import javax.swing.JTextField;
import planewright.app.store.UserFolders;

/**
 * A program of its own, for it needs a Java that speaks a language from the start: goes into every cell and field with a number,
 * leaves it as it is, and prints what stood there.
 */
final class NumbersTyped {
    private NumbersTyped() {}

    /** Journal, folder for the user's files. */
    public static void main(String[] arguments) throws Exception {
        Speech.endWithFailure();
        try (var window = OpenWindow.on(Path.of(arguments[0]), UserFolders.under(Path.of(arguments[1])))) {
            window.build("Teal");
            Stream.of("Messwerte:measurements:2", "Teile:parts:2", "Teile:parts:4", "Einstellungen:set-up:1")
                    .map(each -> each.split(":"))
                    .forEach(each -> leaveAlone(window, each[0], each[1], Integer.parseInt(each[2])));
            window.page("Logbuch");
            Hands.click("edit-entry");
            Hands.find(Component.class, "editor");
            tell("measurements-quantity-0");
            tell("setUp-quantity-0");
            Hands.type("entry-title", "Anders");
            Hands.click("save-entry");
            Hands.waitUntil(
                    "the editor closed",
                    () -> Hands.all(Component.class).stream().noneMatch(each -> "editor".equals(each.getName())));
            Hands.click("start-from");
            JTable carried = Hands.find(JTable.class, "carried");
            Hands.waitUntil("what is carried over", () -> carried.getRowCount() > 1);
            for (int row = 0; row < carried.getRowCount(); row++) {
                int value = row;
                System.out.println(Hands.onEventThread(() -> carried.getValueAt(value, 3)));
            }
        }
        System.exit(0);
    }

    private static void tell(String field) {
        System.out.println(Hands.find(JTextField.class, field).getText());
    }

    private static void leaveAlone(OpenWindow window, String page, String name, int column) {
        window.page(page);
        JTable table = Hands.find(JTable.class, name);
        Hands.waitUntil("rows of " + name, () -> table.getRowCount() > 0);
        var shown = Hands.onEventThread(() -> (String) table.getValueAt(0, column));
        System.out.println(shown);
        Hands.typeCell(table, 0, column, shown);
    }
}
