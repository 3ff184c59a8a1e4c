package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.HierarchyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import planewright.app.journal.Edit;
import planewright.app.journal.Ids;
import planewright.app.journal.StepRecord;
import planewright.app.journal.TemplateContent;
import planewright.app.journal.TemplateRecord;
import planewright.app.store.JournalFolder;
import planewright.app.ui.common.Card;

/** What is begun stays, and the keyboard with it, when the window comes back to the front and other programs have written meanwhile. */
class NewsMeanwhileTest extends InNewJournal {
    @Test
    void aRowThatIsAddedAndACellThatIsWrittenStayInTheFormOfACalculator() throws Exception {
        try (var window = open()) {
            begin("Teal");
            window.page("Calculators");
            Hands.choose("calculator", "balance.ledger");
            Hands.click("add-row-parts");
            var parts = Hands.find(
                    JTable.class,
                    "with a row",
                    table -> "rows-parts".equals(table.getName()) && table.getRowCount() == 1);
            rename(window, "Teal", "Wigeon");
            assertThat(Hands.find(JTable.class, "rows-parts")).isSameAs(parts);
            Hands.onEventThread(() -> {
                parts.editCellAt(0, 0);
                ((JTextComponent) parts.getEditorComponent()).setText("fin");
                return parts.getEditorComponent().requestFocusInWindow();
            });
            rename(window, "Wigeon", "Garganey");
            assertThat(Hands.find(JTable.class, "rows-parts")).isSameAs(parts);
            assertThat(Hands.onEventThread(() -> ((JTextComponent) parts.getEditorComponent()).getText()))
                    .isEqualTo("fin");
            Hands.onEventThread(() -> parts.getCellEditor().stopCellEditing());
            assertThat(Hands.onEventThread(() -> parts.getValueAt(0, 0))).isEqualTo("fin");
        }
    }

    @Test
    void aTemplateThatIsWrittenStaysWhereItIsAndACardsButtonKeepsTheKeyboard() throws Exception {
        var first = template("Fin glued");
        var second = template("Aft fin glued");
        try (var window = open()) {
            Hands.click("show-templates");
            Hands.click("new-procedure");
            Hands.hasKeyboard("template-name");
            Hands.type("template-name", "Spar glued");
            var name = Hands.find(JTextComponent.class, "template-name");
            var taken = new AtomicBoolean();
            Hands.onEventThread(() -> {
                name.addHierarchyListener(event ->
                        taken.compareAndSet(false, (event.getChangeFlags() & HierarchyEvent.PARENT_CHANGED) != 0));
                return name;
            });
            bring(window, first);
            Hands.find(Component.class, "template-Fin glued");
            assertThat(taken).as("taken out of the page").isFalse();
            Hands.hasKeyboard("template-name");
            assertThat(Hands.text("template-name")).isEqualTo("Spar glued");
            Hands.click("discard-template");
            Hands.waitUntil(
                    "no form",
                    () -> Hands.all(Component.class).stream()
                            .noneMatch(each -> "template-form".equals(each.getName())));
            Hands.focus("edit-template");
            bring(window, second);
            Hands.find(Component.class, "template-Aft fin glued");
            Hands.waitUntil("the keyboard in the same card", () -> {
                var owner =
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
                return owner != null
                        && "edit-template".equals(owner.getName())
                        && SwingUtilities.getAncestorNamed("template-Fin glued", owner) != null
                        && SwingUtilities.getAncestorNamed("templates", owner) != null;
            });
        }
    }

    @Test
    void aHitKeepsTheKeyboardAndSoDoesAButtonInTheBin() throws Exception {
        try (var window = open()) {
            begin("Teal");
            write("left wing panel 212 g");
            Hands.type("search", "panel");
            var hit = Hands.find(Card.class, "that is a hit", NewsMeanwhileTest::isHit)
                    .getName();
            Hands.focus(hit);
            rename("Teal", "Wigeon");
            window.comeToFront();
            see("Wigeon  ·");
            Hands.hasKeyboard(hit);
            Hands.type("search", "");
            Hands.click("edit-entry");
            Hands.click("delete-entry");
            Hands.click("show-bin");
            Hands.focus("restore");
            var before = Hands.find(JButton.class, "restore");
            rename("Wigeon", "Garganey");
            window.comeToFront();
            see("Garganey");
            assertThat(Hands.find(JButton.class, "restore")).isNotSameAs(before);
            Hands.hasKeyboard("restore");
        }
    }

    private static boolean isHit(Card card) {
        return card.getName() != null && card.getName().startsWith("hit-");
    }

    /** Another program gives the build another name, and that is seen. */
    private void rename(OpenWindow window, String before, String after) throws IOException {
        rename(before, after);
        window.comeToFront();
        Hands.find(JLabel.class, "with the name", label -> after.equals(label.getText()));
    }

    private void rename(String before, String after) throws IOException {
        try (var files = Files.walk(journal.resolve("builds"))) {
            var file = files.filter(each -> each.endsWith("build.json"))
                    .findFirst()
                    .orElseThrow();
            Files.writeString(file, Files.readString(file).replace('"' + before + '"', '"' + after + '"'));
        }
    }

    /** The file of a procedure in another journal. */
    private Path template(String name) throws IOException {
        var step = new StepRecord(Ids.small(), "Glue", Optional.empty(), Optional.empty(), List.of(), List.of());
        var other = folder.resolve("of " + name);
        JournalFolder.create(other, "Loft");
        try (var opened = JournalFolder.open(other, user)) {
            opened.journal()
                    .apply(Edit.add(
                            "template",
                            TemplateRecord.of(
                                    name, LocalDate.of(2026, 11, 1), new TemplateContent.Procedure(List.of(step)))));
        }
        try (var files = Files.list(other.resolve("templates"))) {
            return files.filter(each -> each.toString().endsWith(".json"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /** Another program puts a template into the journal. */
    private void bring(OpenWindow window, Path template) throws IOException {
        var templates = Files.createDirectories(journal.resolve("templates"));
        Files.copy(template, templates.resolve(template.getFileName()));
        window.comeToFront();
    }
}
