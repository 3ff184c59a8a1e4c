package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import planewright.acceptance.Workplace;
import planewright.app.calc.PluginHost;
import planewright.app.store.UserFolders;
import planewright.app.ui.common.FigureView;
import planewright.app.ui.common.MeasurementChip;
import planewright.app.ui.common.PictureTile;

/** The window on the sample journal, page by page. */
class EveryPageTest {
    /** A label cut to less tells nothing, px. */
    private static final int LEAST_LABEL = 30;

    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    private Path journal;
    private UserFolders user;

    @BeforeEach
    void sample() throws Exception {
        journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        user = UserFolders.under(folder.resolve("user"));
    }

    @Test
    void everyControlHasANameForThoseWhoCannotSeeIt() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            Hands.find(PictureTile.class, "of the log", PictureTile::isShown);
            assertThat(nameless()).isEmpty();
            Hands.click("edit-entry");
            Hands.find(Component.class, "editor");
            for (var rows : List.of("add-measurements", "add-joints", "add-setUp")) {
                Hands.click(rows);
            }
            Hands.find(JTextComponent.class, "setUp-name-0");
            assertThat(nameless()).isEmpty();
            Hands.click("discard-entry");
            picturesAreNamed(window);
            window.page("Measurements");
            Hands.find(JTable.class, "measurements");
            assertThat(nameless()).isEmpty();
            window.page("Parts");
            assertThat(nameless()).isEmpty();
            window.page("Planform");
            Hands.find(Component.class, "planform-drawing");
            assertThat(nameless()).isEmpty();
            window.page("Set-up");
            Hands.find(JTable.class, "set-up");
            assertThat(nameless()).isEmpty();
            window.page("Calculators");
            Hands.find(Component.class, "result");
            assertThat(nameless()).isEmpty();
            Hands.type("search", "fin");
            Hands.waitUntil(
                    "hits",
                    () -> Hands.all(JLabel.class).stream()
                            .anyMatch(label -> "found".equals(label.getName())
                                    && !label.getText().isBlank()));
            assertThat(nameless()).isEmpty();
            Hands.click("show-notices");
            Hands.find(Component.class, "notices");
            assertThat(nameless()).isEmpty();
            Hands.click("show-notices");
            Hands.click("show-templates");
            Hands.find(Component.class, "template-Core with the hot wire");
            assertThat(nameless()).isEmpty();
            Hands.click("new-procedure");
            Hands.find(Component.class, "template-form");
            assertThat(nameless()).isEmpty();
            Hands.click("discard-template");
            Hands.click("start-from");
            Hands.find(Component.class, "carried");
            assertThat(nameless()).isEmpty();
            Hands.click("leave-start");
            Hands.click("compare-build");
            Hands.find(Component.class, "compared");
            assertThat(nameless()).isEmpty();
            Hands.click("leave-compare");
            Hands.click("show-across");
            Hands.find(JTable.class, "across-table");
            assertThat(nameless()).isEmpty();
            Hands.click("show-journals");
            Hands.find(Component.class, "new-journal-name");
            assertThat(nameless()).isEmpty();
            Hands.click("show-help");
            Hands.find(Component.class, "help");
            assertThat(nameless()).isEmpty();
            Hands.click("show-help");
            window.page("Log");
        }
    }

    private static void picturesAreNamed(OpenWindow window) {
        window.page("Pictures");
        var grid = Hands.find(JComponent.class, "picture-grid");
        assertThat(nameless()).isEmpty();
        Hands.press(grid, "END");
        Hands.press(grid, "shift LEFT");
        Hands.click("picture-compare");
        Hands.find(Component.class, "compare-then");
        assertThat(nameless()).isEmpty();
        Hands.click("compare-back");
        Hands.press(grid, "ENTER");
        Hands.find(Component.class, "large-picture");
        Hands.click("large-measure");
        Hands.find(Component.class, "measure-panel");
        assertThat(nameless()).isEmpty();
        Hands.click("large-back");
        Hands.find(JComponent.class, "picture-grid");
    }

    /** Goes through all of them, from the last to the first. */
    private static void everyCalculatorsFormIsNamed(JComboBox<?> choice) throws Exception {
        for (int i = choice.getItemCount() - 1; i >= 0; i--) {
            int item = i;
            Hands.onEventThread(() -> {
                choice.setSelectedIndex(item);
                return item;
            });
            assertThat(nameless()).isEmpty();
        }
    }

    @Test
    void everyPackagedCalculatorIsOfferedAndTheFirstAnswersForEveryBuildThatHasTheirData() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            window.page("Calculators");
            JList<?> builds = Hands.find(JList.class, "builds");
            JComboBox<?> choice = Hands.find(JComboBox.class, "calculator");
            int packaged = packagedCalculators();
            Hands.waitUntil(packaged + " calculators", () -> choice.getItemCount() == packaged);
            everyCalculatorsFormIsNamed(choice);
            int answered = 0;
            for (int i = 0; i < builds.getModel().getSize(); i++) {
                var name = builds.getModel().getElementAt(i).toString();
                int row = i;
                Hands.onEventThread(() -> {
                    builds.setSelectedIndex(row);
                    return row;
                });
                Hands.waitUntil(
                        "an answer for " + name,
                        () -> !Hands.all(FigureView.class).isEmpty());
                answered++;
            }
            assertThat(answered).isGreaterThanOrEqualTo(6);
        }
    }

    private int packagedCalculators() throws Exception {
        try (var host = PluginHost.open(Workplace.pluginZips(), journal.resolveSibling("unpacked"))) {
            return host.calculators().size();
        }
    }

    @Test
    void lightAndDarkAndSmallAllPaint() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            Hands.find(PictureTile.class, "of the log", PictureTile::isShown);
            var light =
                    Hands.onEventThread(() -> window.frame().getContentPane().getBackground());
            Hands.click("view");
            Hands.click("look-DARK");
            Hands.waitUntil(
                    "dark",
                    () -> !window.frame().getContentPane().getBackground().equals(light));
            assertThat(Hands.onEventThread(() ->
                            window.frame().getContentPane().getBackground().getRed()))
                    .isLessThan(light.getRed());
            Hands.onEventThread(() -> {
                window.frame().setSize(new Dimension(820, 560));
                window.frame().validate();
                return window;
            });
            assertThat(cutOff()).isEmpty();
            Hands.click("view");
            Hands.click("look-LIGHT");
            Hands.waitUntil(
                    "light",
                    () -> window.frame().getContentPane().getBackground().equals(light));
        }
    }

    /** With the keyboard alone each control is reached, and none keeps it for itself. */
    @Test
    void tabGoesThroughEveryControlOfAPage() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            for (var page : List.of("Pictures", "Measurements", "Planform", "Set-up")) {
                window.page(page);
                var tabs = Hands.find(JTabbedPane.class, "pages");
                var reached = Hands.onEventThread(() -> {
                    var shown = (JComponent) tabs.getSelectedComponent();
                    var order = window.frame().getFocusTraversalPolicy();
                    var found = new LinkedHashSet<Component>();
                    var at = order.getFirstComponent(window.frame());
                    while (at != null && found.add(at)) {
                        at = order.getComponentAfter(window.frame(), at);
                    }
                    var missed = Hands.all(JComponent.class).stream()
                            .filter(shown::isAncestorOf)
                            .filter(each -> each instanceof AbstractButton
                                    || each instanceof JTextField
                                    || each instanceof JTable
                                    || "picture-grid".equals(each.getName()))
                            .filter(each -> each.isEnabled() && each.isFocusable() && each.isShowing())
                            .filter(each -> !found.contains(each))
                            .filter(each -> !"TextField.clearButton".equals(each.getName()))
                            .map(Component::getName)
                            .toList();
                    assertThat(found).anyMatch(shown::isAncestorOf);
                    return missed;
                });
                assertThat(reached).as("never reached on %s", page).isEmpty();
            }
        }
    }

    @Test
    void theTopBarIsNoHigherThanItsLinesHoweverTheWindowIsResized() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            var bar = Hands.find(JTextField.class, "search").getParent();
            for (int width : List.of(820, 1500, 820, 1500)) {
                Hands.onEventThread(() -> {
                    window.frame().setSize(new Dimension(width, 760));
                    window.frame().validate();
                    return width;
                });
                Hands.waitUntil(
                        "the bar at " + width,
                        () -> bar.getWidth() > width - 100 && bar.getHeight() == bar.getPreferredSize().height);
            }
        }
    }

    @Test
    void everyPageFitsIntoASmallWindow() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            Hands.onEventThread(() -> {
                window.frame().setSize(new Dimension(820, 560));
                window.frame().validate();
                return window;
            });
            for (var page : List.of("Log", "Pictures", "Measurements", "Parts", "Planform", "Set-up", "Calculators")) {
                window.page(page);
                assertThat(cutOff()).as(page).isEmpty();
                assertThat(unread()).as(page).isEmpty();
                var tabs = Hands.find(JTabbedPane.class, "pages");
                Hands.waitUntil(
                        "room for the page " + page,
                        () -> tabs.getSelectedComponent().getHeight() > 120);
                assertThat(Hands.onEventThread(() -> tabs.getY() + tabs.getHeight()))
                        .as("lower edge of the pages")
                        .isLessThanOrEqualTo(
                                Hands.onEventThread(() -> tabs.getParent().getHeight()));
            }
        }
    }

    /** Labels of fields of which nearly nothing is left to read. */
    private static List<String> unread() {
        return Hands.onEventThread(() -> laidOut(JLabel.class).stream()
                .filter(label -> label.getLabelFor() != null && label.isShowing())
                .filter(label -> label.getWidth() < Math.min(LEAST_LABEL, label.getPreferredSize().width))
                .map(label -> label.getText() + " " + label.getWidth() + " px")
                .toList());
    }

    /** What comes to a page a moment later is laid out a moment after that. On the event thread. */
    private static <T extends Component> List<T> laidOut(Class<T> type) {
        Hands.all(JFrame.class).forEach(Component::validate);
        return Hands.all(type);
    }

    /** Controls whose words do not fit: a button narrower than it wants to be. A chip may shorten its name, but not its value. */
    private static List<String> cutOff() {
        return Hands.onEventThread(() -> {
            var cut = new ArrayList<String>();
            for (var button : laidOut(AbstractButton.class)) {
                var words = button instanceof MeasurementChip ? button.getComponent(1) : button;
                if (button.isShowing() && words.getWidth() < words.getPreferredSize().width - 1) {
                    cut.add(button.getName() + " '" + button.getText() + "' " + button.getWidth() + " px of "
                            + button.getPreferredSize().width);
                }
            }
            return cut;
        });
    }

    /** Controls that a reader of the screen could not tell; what the toolkit makes for itself has no name of ours. */
    private static List<String> nameless() {
        return Hands.onEventThread(() -> {
            var nameless = new ArrayList<String>();
            for (var component : Hands.all(Component.class)) {
                boolean control = component instanceof AbstractButton
                        || component instanceof JTextComponent
                        || component instanceof JComboBox
                        || component instanceof JTable
                        || component instanceof JList
                        || component instanceof PictureTile
                        || component instanceof FigureView;
                boolean ours = component.getParent() != null
                        && !component.getParent().getClass().getName().startsWith("javax.swing.plaf")
                        && !component.getClass().getName().contains(".plaf.")
                        && !(component.getParent() instanceof JComboBox)
                        && !"TextField.clearButton".equals(component.getName())
                        && !component.getClass().getName().startsWith("com.formdev");
                if (control && ours && component.isShowing() && isBlank(name(component))) {
                    nameless.add(component.getClass().getName() + " '" + component.getName() + "' in "
                            + component.getParent().getName());
                }
            }
            return nameless;
        });
    }

    private static String name(Component component) {
        var context = component.getAccessibleContext();
        return context == null ? null : context.getAccessibleName();
    }

    private static boolean isBlank(String name) {
        return name == null || name.isBlank();
    }
}
