package planewright.acceptance.window;

import java.awt.Component;
import java.awt.Dimension;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.ListCellRenderer;
import javax.swing.text.JTextComponent;
import planewright.app.store.UserFolders;

/**
 * A program of its own, for it needs a Java that speaks a language from the start: goes through the window page by page and prints,
 * a line each after the page and a tabulator, every word that can be read there, or what is cut off in a small window.
 */
final class PageByPage {
    static final String WORDS = "words";
    static final String CUT_OFF = "cut off";

    private static final Dimension SMALL = new Dimension(900, 600);
    /** Of the window's height a picture has at least one part in so many. */
    private static final int LEAST_OF_A_PICTURE = 4;

    private static final PrintStream OUT = new PrintStream(System.out, true, StandardCharsets.UTF_8);

    private static boolean cutOff;

    private PageByPage() {}

    /** Journal, folder for the user's files, which of both. */
    public static void main(String[] arguments) throws Exception {
        Speech.endWithFailure();
        var window = OpenWindow.on(Path.of(arguments[0]), UserFolders.under(Path.of(arguments[1])));
        cutOff = CUT_OFF.equals(arguments[2]);
        if (cutOff) {
            Hands.onEventThread(() -> {
                window.frame().setSize(SMALL);
                window.frame().validate();
                return window;
            });
        }
        Hands.find(JComponent.class, "header");
        var tabs = Hands.find(JTabbedPane.class, "pages");
        for (int page = 0; page < tabs.getTabCount() - 1; page++) {
            bring(tabs, page);
            tell(tabs.getTitleAt(page));
        }
        calculators(tabs);
        pictures(tabs);
        bring(tabs, 0);
        Hands.click("edit-entry");
        Hands.find(Component.class, "editor");
        tell("editor");
        Hands.click("discard-entry");
        Hands.click("edit-build");
        Hands.find(Component.class, "build-layout");
        tell("header");
        Hands.click("discard-build");
        for (var button : new String[] {
            "show-across", "show-templates", "show-notices", "show-bin", "show-exchange", "show-journals", "show-help"
        }) {
            Hands.click(button);
            tell(button);
            Hands.click(button);
        }
        templates();
        Hands.click("start-from");
        Hands.find(Component.class, "carried");
        tell("start");
        Hands.click("leave-start");
        Hands.click("compare-build");
        Hands.find(Component.class, "compared");
        tell("compare");
        Hands.click("leave-compare");
        Hands.type("search", "fin");
        Hands.find(JLabel.class, "found");
        tell("search");
        window.close();
        System.exit(0);
    }

    private static void pictures(JTabbedPane tabs) {
        bring(tabs, 1);
        var grid = Hands.find(JComponent.class, "picture-grid");
        Hands.press(grid, "END");
        Hands.press(grid, "shift LEFT");
        Hands.click("picture-compare");
        Hands.find(Component.class, "compare-then");
        tell("pictures compared");
        Hands.click("compare-back");
        Hands.press(grid, "ENTER");
        var picture = Hands.find(JComponent.class, "large-picture");
        tell("large picture");
        int high = Hands.onEventThread(picture::getHeight);
        if (cutOff && high < SMALL.height / LEAST_OF_A_PICTURE) {
            OUT.println("large picture\thas " + high + " px of height");
        }
        Hands.click("large-measure");
        Hands.find(Component.class, "measure-panel");
        tell("measuring");
        Hands.click("large-back");
        Hands.find(JComponent.class, "picture-grid");
    }

    private static void templates() {
        Hands.click("show-templates");
        for (var form : List.of("new-procedure", "new-set-up")) {
            Hands.click(form);
            Hands.find(Component.class, "template-form");
            tell(form);
            Hands.click("discard-template");
            Hands.waitUntil(
                    "no form",
                    () -> Hands.all(Component.class).stream()
                            .noneMatch(each -> "template-form".equals(each.getName())));
        }
        Hands.click("show-templates");
    }

    /** The form and the answer of each. */
    private static void calculators(JTabbedPane tabs) throws Exception {
        bring(tabs, tabs.getTabCount() - 1);
        Hands.find(Component.class, "inputs");
        JComboBox<?> choice = Hands.find(JComboBox.class, "calculator");
        for (int i = 0; i < choice.getItemCount(); i++) {
            int item = i;
            var before = Hands.onEventThread(PageByPage::answer);
            Hands.onEventThread(() -> {
                choice.setSelectedIndex(item);
                return item;
            });
            Hands.waitUntil("an answer", () -> answer().isPresent() && !answer().equals(before));
            tell("calculator " + item);
        }
        Hands.click("show-plugins");
        Hands.find(Component.class, "plugins-back");
        tell("plugins");
        Hands.click("plugins-back");
    }

    private static Optional<JComponent> answer() {
        return Hands.all(JComponent.class).stream()
                .filter(each -> "result".equals(each.getName()) || "problems".equals(each.getName()))
                .findFirst();
    }

    private static void bring(JTabbedPane tabs, int page) {
        Hands.onEventThread(() -> {
            tabs.setSelectedIndex(page);
            return page;
        });
        Hands.waitUntil("page " + page, () -> tabs.getSelectedComponent().isShowing());
    }

    private static void tell(String page) {
        var texts = Hands.onEventThread(() -> {
            Hands.all(JFrame.class).forEach(Component::validate);
            var found = new LinkedHashSet<String>();
            for (var component : Hands.all(JComponent.class)) {
                if (component.isShowing()) {
                    if (cutOff) {
                        CutOff.look(component).ifPresent(found::add);
                    } else {
                        texts(component, found);
                    }
                }
            }
            return found;
        });
        texts.stream()
                .filter(text -> text != null && !text.isBlank())
                .map(text ->
                        text.replaceAll("<[^>]+>", " ").replaceAll("\\s+", " ").strip())
                .forEach(text -> OUT.println(page + "\t" + text));
    }

    private static void texts(JComponent component, Set<String> found) {
        found.add(component.getToolTipText());
        if (component instanceof JLabel label) {
            found.add(label.getText());
        } else if (component instanceof AbstractButton button) {
            found.add(button.getText());
        } else if (component instanceof JTextComponent text) {
            found.add(text.isEditable() ? null : text.getText());
            found.add((String) component.getClientProperty("JTextField.placeholderText"));
        } else if (component instanceof JTabbedPane tabs) {
            for (int i = 0; i < tabs.getTabCount(); i++) {
                found.add(tabs.getTitleAt(i));
            }
        } else if (component instanceof JTable table) {
            table(table, found);
        } else if (component instanceof JComboBox<?> box) {
            choices(box, found);
        }
    }

    private static void table(JTable table, Set<String> found) {
        for (int column = 0; column < table.getColumnCount(); column++) {
            found.add(table.getColumnName(column));
            for (int row = 0; row < table.getRowCount(); row++) {
                if (table.prepareRenderer(table.getCellRenderer(row, column), row, column) instanceof JLabel cell) {
                    found.add(cell.getText());
                }
            }
        }
    }

    private static <T> void choices(JComboBox<T> box, Set<String> found) {
        ListCellRenderer<? super T> renderer = box.getRenderer();
        var list = new JList<>(box.getModel());
        for (int i = 0; i < box.getItemCount(); i++) {
            if (renderer.getListCellRendererComponent(list, box.getItemAt(i), i, false, false)
                    instanceof JLabel choice) {
                found.add(choice.getText());
            }
        }
    }
}
