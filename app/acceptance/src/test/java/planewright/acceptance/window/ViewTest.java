package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Font;
import java.nio.file.Files;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;

/** How large words are, and light or dark: at once in the whole window, and again the next time. */
class ViewTest extends InNewJournal {
    @Test
    void wordsGrowInTheWholeWindowAndStaySoTheNextTime() throws Exception {
        double usual;
        try (var window = open()) {
            begin("Teal");
            write("left wing panel 212 g");
            write("a line of text");
            usual = size(heading());
            var before = shown().stream().mapToDouble(ViewTest::size).toArray();
            key(window, "ctrl PLUS");
            key(window, "ctrl EQUALS");
            key(window, "ctrl ADD");
            var after = shown().stream().mapToDouble(ViewTest::size).toArray();
            for (int i = 0; i < before.length; i++) {
                assertThat(after[i] / before[i]).as("%d", i).isBetween(1.2, 1.4);
            }
            assertThat(Hands.text("status")).isEqualTo("Text at 130 %");
            key(window, "ctrl MINUS");
            Hands.click("view");
            Hands.click("look-DARK");
            Hands.waitUntil(
                    "dark",
                    () -> window.frame().getContentPane().getBackground().getRed() < 100);
        }
        assertThat(Files.readAllLines(user.data().resolve("window.txt"))).contains("text-size=120", "look=dark");
        try (var window = open()) {
            assertThat(Hands.onEventThread(() ->
                            window.frame().getContentPane().getBackground().getRed()))
                    .isLessThan(100);
            assertThat(size(heading()) / usual).isBetween(1.1, 1.3);
            Hands.click("view");
            Hands.click("text-usual");
            Hands.click("view");
            Hands.click("look-LIGHT");
            var shown = heading();
            Hands.waitUntil("as usual", () -> shown.getFont().getSize2D() == usual);
        }
    }

    @Test
    void aHeadingOfTheShelfStaysBold() throws Exception {
        try (var window = open()) {
            begin("Teal");
            assertThat(headingOfShelf()).isTrue();
            key(window, "ctrl PLUS");
            Hands.waitUntil(
                    "larger",
                    () -> Hands.all(JLabel.class).stream().anyMatch(label -> "Text at 110 %".equals(label.getText())));
            assertThat(headingOfShelf()).isTrue();
        }
    }

    /** Whether it is as wide as in bold letters. */
    private static boolean headingOfShelf() {
        @SuppressWarnings("unchecked") // whatever it holds has a renderer
        JList<Object> list = Hands.find(JList.class, "builds");
        return Hands.onEventThread(() -> {
            var heading = (JLabel) list.getCellRenderer()
                    .getListCellRendererComponent(list, list.getModel().getElementAt(0), 0, false, false);
            var edge = heading.getInsets();
            var bold = heading.getFontMetrics(heading.getFont().deriveFont(Font.BOLD));
            return heading.getPreferredSize().width - edge.left - edge.right
                    >= bold.stringWidth(String.valueOf(list.getModel().getElementAt(0)));
        });
    }

    @Test
    void whatNobodySeesFollowsSoon() throws Exception {
        try (var window = open()) {
            begin("Teal");
            write("left wing panel 212 g");
            var tabs = Hands.find(JTabbedPane.class, "pages");
            var hidden = Hands.onEventThread(() -> Stream.of(tabs.getComponents())
                    .filter(page -> page instanceof JPanel && !page.isVisible())
                    .toList());
            assertThat(window.frame().isShowing()).isTrue();
            assertThat(hidden).hasSize(6);
            assertThat(red(hidden)).allMatch(red -> red > 200);
            Hands.click("view");
            Hands.click("look-DARK");
            Hands.waitUntil("pages behind", () -> red(hidden).stream().allMatch(red -> red < 100));
            Hands.click("view");
            Hands.click("look-LIGHT");
            Hands.click("view");
            Hands.click("look-DARK");
            Hands.click("view");
            Hands.click("look-LIGHT");
            Hands.waitUntil("the last one counts", () -> red(hidden).stream().allMatch(red -> red > 200));
        }
    }

    private static List<Integer> red(List<Component> pages) {
        return pages.stream().map(page -> page.getBackground().getRed()).toList();
    }

    /** Words of many kinds: a heading, running words, rows, a field, a button. */
    private static List<Component> shown() {
        return List.of(
                heading(),
                Hands.find(
                        JTextComponent.class,
                        "of the line",
                        area -> area.getText().contains("a line of text")),
                Hands.find(JList.class, "builds"),
                Hands.find(JTextComponent.class, "capture-line"),
                Hands.find(AbstractButton.class, "show-bin"));
    }

    private static JLabel heading() {
        return Hands.find(JLabel.class, "of the build", label -> "Teal".equals(label.getText()));
    }

    private static double size(Component component) {
        return Hands.onEventThread(() -> (double) component.getFont().getSize2D());
    }

    private static void key(OpenWindow window, String stroke) {
        var content = (JComponent) window.frame().getContentPane();
        Hands.onEventThread(() -> {
            var pressed = KeyStroke.getKeyStroke(stroke);
            var bound = content.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).get(pressed);
            if (bound == null) {
                bound = content.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                        .get(pressed);
            }
            content.getActionMap().get(bound).actionPerformed(null);
            return bound;
        });
    }
}
