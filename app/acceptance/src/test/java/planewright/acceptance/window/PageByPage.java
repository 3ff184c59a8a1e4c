package planewright.acceptance.window;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import planewright.app.ui.common.Texts;

/** Goes through the window, every page, form and answer of a journal that has builds, entries and pictures. */
final class PageByPage {
    private final Consumer<String> visit;

    private PageByPage(Consumer<String> visit) {
        this.visit = visit;
    }

    /** Calls something with the name of each page while it is in front. */
    static void go(Consumer<String> visit) throws Exception {
        new PageByPage(visit).go();
    }

    /** The pages of the build but the last, the calculators. */
    static void ofTheBuild(Consumer<String> visit) {
        Hands.find(JComponent.class, "header");
        var tabs = Hands.find(JTabbedPane.class, "pages");
        for (int page = 0; page < tabs.getTabCount() - 1; page++) {
            bring(tabs, page);
            visit.accept(tabs.getTitleAt(page));
        }
    }

    /** The pages over all builds. */
    static void overAll(Consumer<String> visit) {
        for (var button : List.of(
                "show-across",
                "show-templates",
                "show-notices",
                "show-bin",
                "show-exchange",
                "show-journals",
                "show-help")) {
            Hands.click(button);
            Hands.waitUntil(
                    "all builds looked at",
                    () -> Hands.all(JTextArea.class).stream()
                            .noneMatch(each -> each.getText().equals(Texts.ACROSS_READING.text())));
            Hands.waitUntil(
                    "the bin looked into",
                    () -> !"show-bin".equals(button)
                            || Hands.all(JTextArea.class).stream()
                                    .map(JTextArea::getText)
                                    .anyMatch(List.of(Texts.BIN_EMPTY.text(), Texts.BIN_HINT.text())::contains));
            visit.accept(button);
            Hands.click(button);
        }
    }

    private void go() throws Exception {
        ofTheBuild(visit);
        var tabs = Hands.find(JTabbedPane.class, "pages");
        calculators(tabs);
        pictures(tabs);
        bring(tabs, 0);
        Hands.click("edit-entry");
        Hands.find(Component.class, "editor");
        visit.accept("editor");
        Hands.click("discard-entry");
        Hands.click("edit-build");
        Hands.find(Component.class, "build-layout");
        visit.accept("header");
        Hands.click("discard-build");
        overAll(visit);
        templates();
        Hands.click("start-from");
        Hands.find(Component.class, "carried");
        visit.accept("start");
        Hands.click("leave-start");
        Hands.click("compare-build");
        Hands.find(Component.class, "compared");
        visit.accept("compare");
        Hands.click("leave-compare");
        Hands.type("search", "fin");
        Hands.find(JLabel.class, "found");
        visit.accept("search");
    }

    private void pictures(JTabbedPane tabs) {
        bring(tabs, 1);
        var grid = Hands.find(JComponent.class, "picture-grid");
        Hands.press(grid, "END");
        Hands.press(grid, "shift LEFT");
        Hands.click("picture-compare");
        Hands.find(Component.class, "compare-then");
        visit.accept("pictures compared");
        Hands.click("compare-back");
        Hands.press(grid, "ENTER");
        Hands.find(JComponent.class, "large-picture");
        visit.accept("large picture");
        Hands.click("large-measure");
        Hands.find(Component.class, "measure-panel");
        visit.accept("measuring");
        Hands.click("large-back");
        Hands.find(JComponent.class, "picture-grid");
    }

    private void templates() {
        Hands.click("show-templates");
        for (var form : List.of("new-procedure", "new-set-up")) {
            Hands.click(form);
            Hands.find(Component.class, "template-form");
            visit.accept(form);
            Hands.click("discard-template");
            Hands.waitUntil(
                    "no form",
                    () -> Hands.all(Component.class).stream()
                            .noneMatch(each -> "template-form".equals(each.getName())));
        }
        Hands.click("show-templates");
    }

    /** The form and the answer of each. */
    private void calculators(JTabbedPane tabs) throws Exception {
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
            visit.accept("calculator " + item);
        }
        Hands.click("show-plugins");
        Hands.find(Component.class, "plugins-back");
        visit.accept("plugins");
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
}
