package planewright.acceptance.window;

import java.awt.Component;
import java.awt.Dimension;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
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
final class PagesTold {
    static final String WORDS = "words";
    static final String CUT_OFF = "cut off";

    private static final Dimension SMALL = new Dimension(900, 600);
    /** Of the window's height a picture has at least one part in so many. */
    private static final int LEAST_OF_A_PICTURE = 4;

    private static final PrintStream OUT = new PrintStream(System.out, true, StandardCharsets.UTF_8);

    private static boolean cutOff;

    private PagesTold() {}

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
        PageByPage.go(PagesTold::tell);
        if (!cutOff) {
            columns(Path.of(arguments[0]));
        }
        window.close();
        System.exit(0);
    }

    /** What the columns of a table are asked for by. */
    private static void columns(Path journal) throws IOException {
        var table = Files.writeString(journal.resolveSibling("readings.csv"), "Messtag,Teil\n");
        Hands.click("show-exchange");
        Hands.choose("bring-kind", "MEASUREMENTS");
        Hands.type("bring-from", table.toString());
        Hands.click("bring-look");
        Hands.find(Component.class, "column-name");
        tell("columns");
    }

    private static void tell(String page) {
        var texts = Hands.onEventThread(() -> {
            Hands.all(JFrame.class).forEach(Component::validate);
            var found = new LinkedHashSet<String>();
            for (var component : Hands.all(JComponent.class)) {
                if (component.isShowing()) {
                    if (cutOff) {
                        CutOff.look(component).ifPresent(found::add);
                        small(component, found);
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

    private static void small(JComponent component, Set<String> found) {
        if ("large-picture".equals(component.getName()) && component.getHeight() < SMALL.height / LEAST_OF_A_PICTURE) {
            found.add("the picture has " + component.getHeight() + " px of height");
        }
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
