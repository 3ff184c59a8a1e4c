package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.nio.file.Files;
import javax.swing.AbstractButton;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import planewright.app.store.JournalFolder;

/** What a build flies with: written, refused where it cannot be understood, set anew in its cell, undone, copied, printed. */
class SetUpPageTest extends InNewJournal {
    @Test
    void aValueIsSetSetAnewUndoneCopiedAndHandedOver() throws Exception {
        var sheet = folder.resolve("teal.pdf");
        try (var window = open()) {
            begin("Teal");
            window.page("Set-up");
            see("Nothing is set yet");
            set("elevator throw up", "twelve");
            see("'twelve' is not a quantity");
            setAtOnce("elevator throw up", "12 mm ± 1 mm", "balance point", "3 1/2 in");
            JTable table = Hands.find(JTable.class, "set-up");
            Hands.waitUntil("both", () -> table.getRowCount() == 2);
            assertThat(Hands.onEventThread(() -> table.getValueAt(0, 1))).isEqualTo("3 1/2 in");
            assertThat(Hands.onEventThread(() -> table.getValueAt(1, 1))).isEqualTo("12 mm ± 1 mm");

            Hands.typeCell(table, 1, 1, "10");
            Hands.waitUntil("the new throw", () -> table.getValueAt(1, 1).equals("10 mm"));
            Hands.onEventThread(() -> table.editCellAt(1, 1));
            assertThat(Hands.onEventThread(() -> {
                        ((javax.swing.text.JTextComponent) table.getEditorComponent()).setText("10 g");
                        return table.getCellEditor().stopCellEditing();
                    }))
                    .as("a throw is no mass")
                    .isFalse();
            assertThat(Hands.text("status")).contains("'10 g' is in g");
            Hands.onEventThread(() -> {
                table.getCellEditor().cancelCellEditing();
                return table;
            });
            Hands.click("undo");
            Hands.waitUntil("the old throw", () -> table.getValueAt(1, 1).equals("12 mm ± 1 mm"));

            Hands.type("set-up-filter", "throw");
            Hands.waitUntil("the throw alone", () -> table.getRowCount() == 1);
            Hands.click("copy-set-up");
            Hands.waitUntil(
                    "it was said",
                    () -> Hands.all(javax.swing.JLabel.class).stream()
                            .anyMatch(label ->
                                    label.getText() != null && label.getText().startsWith("One value copied")));
            assertThat((String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor))
                    .startsWith("elevator throw up\t12 mm ± 1 mm\t")
                    .doesNotContain("balance");
            Hands.click("print-set-up");
            Hands.chooseFile("target-chooser", sheet);
            Hands.waitUntil("the sheet", () -> Files.exists(sheet) && Files.size(sheet) > 0);
        }
        try (var pdf = Loader.loadPDF(sheet.toFile())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("Set-up sheet · Teal", "elevator throw up", "12 mm ± 1 mm", "28 Nov 2026", "Propeller");
        }
        try (var opened = JournalFolder.open(journal, user)) {
            var log = opened.journal().log(opened.journal().builds().get(0).id());
            assertThat(log).as("all of it in the entry of today").hasSize(1);
            assertThat(log.get(0).setUp()).hasSize(2);
        }
    }

    @Test
    void theKeyTakesTheValueBackAndNotWhatWasTypedForIt() throws Exception {
        try (var window = open()) {
            begin("Teal");
            window.page("Set-up");
            set("elevator throw up", "12 mm");
            JTable table = Hands.find(JTable.class, "set-up");
            Hands.waitUntil("it set", () -> table.getRowCount() == 1);
            Hands.hasKeyboard("set-up-name");
            Hands.key("ctrl Z");
            Hands.waitUntil("it taken back", () -> table.getRowCount() == 0);
            assertThat(Hands.text("set-up-name")).isEmpty();
        }
    }

    /** Sets values one upon the other, before any of them can have been saved. */
    private static void setAtOnce(String... namesAndQuantities) {
        var name = Hands.find(JTextComponent.class, "set-up-name");
        var quantity = Hands.find(JTextComponent.class, "set-up-quantity");
        var add = Hands.find(AbstractButton.class, "add-set-up");
        Hands.onEventThread(() -> {
            for (int at = 0; at < namesAndQuantities.length; at += 2) {
                name.setText(namesAndQuantities[at]);
                quantity.setText(namesAndQuantities[at + 1]);
                add.doClick(0);
            }
            return add;
        });
    }

    private static void set(String name, String quantity) {
        Hands.type("set-up-name", name);
        Hands.type("set-up-quantity", quantity);
        Hands.click("add-set-up");
    }
}
