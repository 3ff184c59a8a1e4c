package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import planewright.app.ui.common.Completion.Offer;

/** Names complete while a capture line is typed, and never without being asked to. */
class CaptureCompletionTest extends InNewJournal {
    private static final String OFFERS = "capture-line-offers";

    @Test
    void namesAndMaterialsCompleteByKeysAndMouseAndEnterWritesWhatIsTyped() throws Exception {
        try (var window = open()) {
            assertThat(window.frame().isShowing()).isTrue();
            begin("Wigeon");
            write("right wing panel 215 g");
            write("spar joint laminating epoxy 40 h");
            begin("Teal");
            write("left wing panel 212 g");

            Hands.type("capture-line", "wi");
            offered("left wing panel");
            var line = Hands.find(JTextField.class, "capture-line");
            var search = Hands.find(JTextField.class, "search");
            Hands.onEventThread(search::requestFocusInWindow);
            Hands.waitUntil("nothing offered without the keyboard", () -> offers().isEmpty());
            Hands.waitUntil("the other build's name, once the index is open", () -> {
                line.requestFocusInWindow();
                line.setText("");
                line.setText("wi");
                return offers().contains("right wing panel");
            });
            assertThat(Hands.onEventThread(CaptureCompletionTest::offers))
                    .containsExactly("left wing panel", "right wing panel");
            assertThat(description(line)).contains("2 names");

            Hands.press(line, "DOWN");
            assertThat(description(line)).isEqualTo("left wing panel, measurement");
            Hands.press(line, "DOWN");
            Hands.press(line, "ENTER");
            holds(line, "right wing panel ");

            Hands.type("capture-line", "spar joint lam");
            offered("laminating epoxy");
            Hands.press(line, "TAB");
            holds(line, "spar joint laminating epoxy ");

            Hands.type("capture-line", "left");
            offered("left wing panel");
            Hands.press(line, "ESCAPE");
            assertThat(Hands.isThere(OFFERS)).isFalse();
            assertThat(Hands.text("capture-line")).isEqualTo("left");

            Hands.type("capture-line", "left w");
            offered("left wing panel");
            Hands.press(Hands.find(JList.class, OFFERS), 10, 5);
            holds(line, "left wing panel ");

            Hands.type("capture-line", "left");
            offered("left wing panel");
            Hands.press(line, "ENTER");
            Hands.find(
                    JTextComponent.class,
                    "with what was typed",
                    text -> text.getText().contains("left"));
            holds(line, "");
        }
    }

    @Test
    void aPartOfTheBuildIsOfferedAsAJoint() throws Exception {
        var workshop = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("workshop"));
        try (var window = OpenWindow.on(workshop, user)) {
            window.build("Slate Ray");
            Hands.onEventThread(Hands.find(JTextField.class, "capture-line")::requestFocusInWindow);
            Hands.hasKeyboard("capture-line");
            Hands.type("capture-line", "fi jo");
            offered("fin joint");
            var line = Hands.find(JTextField.class, "capture-line");
            Hands.press(line, "TAB");
            holds(line, "fin joint ");
            Hands.type("capture-line", "fin joint contact adhesive 12 h");
            Hands.waitUntil(
                    "it starts a joint",
                    () -> Hands.all(JLabel.class).stream()
                            .anyMatch(label -> "capture-preview".equals(label.getName())
                                    && label.getText()
                                            .startsWith("Enter starts a joint: fin joint, contact adhesive")));
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    private static void offered(String name) {
        Hands.waitUntil("'" + name + "' offered", () -> offers().contains(name));
    }

    private static List<String> offers() {
        var words = new ArrayList<String>();
        for (JList<?> rows : Hands.all(JList.class)) {
            if (OFFERS.equals(rows.getName())) {
                for (int i = 0; i < rows.getModel().getSize(); i++) {
                    words.add(((Offer) rows.getModel().getElementAt(i)).words());
                }
            }
        }
        return words;
    }

    private static void holds(JTextField line, String text) {
        Hands.waitUntil("the line holds '" + text + "'", () -> line.getText().equals(text));
    }

    private static String description(JTextField line) {
        return Hands.onEventThread(() -> line.getAccessibleContext().getAccessibleDescription());
    }
}
