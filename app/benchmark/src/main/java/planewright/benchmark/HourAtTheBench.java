package planewright.benchmark;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.Frame;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.TransferHandler;
import javax.swing.text.JTextComponent;

/**
 * What a builder does in an hour, in a few minutes: looks through builds and pictures, searches, writes, measures, drags a shape,
 * computes, takes back. Tells how long the event thread was held up by each event, and how soon a builder had what was asked for.
 */
public final class HourAtTheBench {
    private static final List<String> PAGES = List.of(
            "pictures-page", "measurements-page", "parts-page", "planform-page", "set-up-page", "calculators", "log");
    private static final List<String> SEARCHES =
            List.of("wing", "hinge gap", "\"leading edge\"", "epoxy fillet", "spackle", "landing too fast");
    private static final List<String> LINES = List.of(
            "left wing panel 212 g",
            "fin joint contact adhesive 12 h",
            "sanded the leading edge with 240 grit",
            "right wing panel 214.5 g ± 0.5 g",
            "tail 3 1/2 in");

    private final EventTimes times = EventTimes.begin();
    private final Random random = new Random(1);
    private final List<Double> opened = new ArrayList<>();
    private final List<Double> saved = new ArrayList<>();
    private final JList<?> builds = Fingers.find(JList.class, "builds");

    private final double share;

    private HourAtTheBench(double share) {
        this.share = share;
    }

    /**
     * Runs it.
     *
     * @param words which share of the hour, up to 1
     */
    public static void main(String[] words) throws InterruptedException {
        OneSession.untilFilled();
        var hour = new HourAtTheBench(Math.min(1, Double.parseDouble(words[0])));
        try {
            hour.go();
        } catch (RuntimeException failure) {
            System.err.println("the hour broke off: " + failure.getMessage());
            System.exit(1);
        }
        hour.times.tell();
        hour.times.tellLongest();
        ChildJvm.tell("build opened and shown, median", Median.of(hour.opened));
        ChildJvm.tell("line written and saved, median", Median.of(hour.saved));
        ChildJvm.tell("heap in use", IdleHeap.whenStill());
        EventQueue.invokeLater(OneSession::close);
    }

    private void go() {
        step("opening builds and scrolling their logs", this::readLogs);
        step("looking far back in a log", this::readOldEntries);
        step("searching", this::search);
        step("writing lines", this::writeLines);
        step("writing entries", this::writeEntries);
        step("pasting a picture", this::paste);
        step("looking at pictures", this::lookAtPictures);
        step("measuring on a picture", this::measureOnPicture);
        step("turning pages", this::turnPages);
        step("reading measurements and parts", this::readTables);
        step("dragging a shape", this::dragShapes);
        step("computing", this::compute);
        step("comparing builds", this::compare);
        step("looking across builds", this::lookAcross);
        step("going to the pages over all builds", this::visit);
        step("taking back and making again", this::takeBack);
        step("coming back to the window", this::comeBack);
        step("resizing the window", this::resize);
        step("changing the look", this::changeLook);
    }

    private void step(String what, Runnable step) {
        times.doing(what);
        try {
            step.run();
        } catch (RuntimeException failure) {
            throw new IllegalStateException(what + ": " + failure.getMessage(), failure);
        }
    }

    private void readLogs() {
        for (int i = 0; i < times(20); i++) {
            openAnother();
            Fingers.scrollPage("log", 60);
        }
    }

    private void readOldEntries() {
        for (int i = 0; i < times(15); i++) {
            Fingers.clickIfThere("older");
            Fingers.scrollPage("log", 20);
        }
        Fingers.scrollPage("log", -200);
        openAnother();
        openAnother();
    }

    private void search() {
        for (var words : SEARCHES.subList(0, times(SEARCHES.size()))) {
            Fingers.type("search", words.substring(0, words.length() - 1));
            Fingers.glance();
            Fingers.type("search", words);
            Fingers.until("hits", () -> Fingers.isThere(JPanel.class, HourAtTheBench::isHit));
            Fingers.glance();
            Fingers.scrollPage("search-page", 40);
            Fingers.type("search", "");
        }
        Fingers.type("search", SEARCHES.get(0));
        for (int i = 0; i < times(3); i++) {
            Fingers.clickIfThere("more-hits");
            Fingers.glance();
        }
        Fingers.press(Fingers.find(JPanel.class, "a hit", HourAtTheBench::isHit), 5, 5);
        Fingers.type("search", "");
        log();
    }

    private void writeLines() {
        for (int i = 0; i < times(20); i++) {
            Fingers.type("capture-line", LINES.get(i % LINES.size()));
            var line = Fingers.find(JTextField.class, "capture-line");
            var watch = new Stopwatch();
            Fingers.key(line, KeyEvent.VK_ENTER);
            Fingers.until("the line written", () -> line.getText().isEmpty());
            saved.add(watch.milliseconds());
        }
    }

    private void writeEntries() {
        for (int i = 0; i < times(4); i++) {
            openAnother();
            Fingers.click("new-entry");
            Fingers.type("entry-title", "Fillet of the " + (i + 1) + ". rib");
            Fingers.type("entry-text", "Left wing sanded, weighed and hung up; the *fin* waits for better weather.");
            Fingers.click("add-measurements");
            Fingers.type("measurements-name-0", "left wing panel");
            Fingers.type("measurements-quantity-0", "212 g ± 1 g");
            Fingers.click("save-entry");
            Fingers.until("the entry saved", () -> !Fingers.isThere("editor"));
            Fingers.click("edit-entry");
            Fingers.type("entry-title", "Fillet of the " + (i + 1) + ". rib, again");
            Fingers.click("save-entry");
            Fingers.until("the entry changed", () -> !Fingers.isThere("editor"));
        }
    }

    private void paste() {
        var line = Fingers.find(JTextField.class, "capture-line");
        var picture = new Pasted(new BufferedImage(4000, 3000, BufferedImage.TYPE_INT_RGB));
        for (int i = 0; i < times(2); i++) {
            Fingers.act(() -> line.getTransferHandler().importData(new TransferHandler.TransferSupport(line, picture)));
            Fingers.glance();
        }
    }

    private void lookAtPictures() {
        for (int i = 0; i < times(5); i++) {
            openAnother();
            Fingers.page("pictures-page");
            Fingers.scroll(Fingers.find(JComponent.class, "picture-grid"), 30);
        }
        var grid = Fingers.find(JComponent.class, "picture-grid");
        Fingers.stroke(grid, "HOME");
        Fingers.stroke(grid, "ENTER");
        for (int i = 0; i < times(6); i++) {
            Fingers.glance();
            Fingers.click("large-next");
        }
        Fingers.click("large-closer");
        Fingers.click("large-fit");
    }

    private void measureOnPicture() {
        var view = Fingers.find(JPanel.class, "large-picture");
        Fingers.click("large-measure");
        Fingers.mark(view, -40, -20);
        Fingers.mark(view, 40, -20);
        Fingers.type("measure-known", "100 mm ± 0.5 mm");
        Fingers.key(Fingers.find(JTextField.class, "measure-known"), KeyEvent.VK_ENTER);
        Fingers.mark(view, -40, 20);
        Fingers.mark(view, 20, 20);
        Fingers.find(
                JLabel.class,
                "a length",
                label -> "measure-result".equals(label.getName())
                        && label.getText().contains("mm"));
        Fingers.type("measure-name", "fin height");
        Fingers.click("measure-keep");
        Fingers.said("fin height");
        Fingers.click("large-back");
        Fingers.page("log");
    }

    private void turnPages() {
        for (int i = 0; i < times(5); i++) {
            openAnother();
            for (var page : PAGES) {
                Fingers.page(page);
                Fingers.glance();
            }
        }
        for (var page : PAGES) {
            Fingers.page(page);
            openAnother();
            openAnother();
        }
    }

    private void readTables() {
        Fingers.page("measurements-page");
        var measurements = Fingers.find(JTable.class, "measurements");
        Fingers.type("measurements-filter", "wing");
        Fingers.glance();
        Fingers.type("measurements-filter", "");
        Fingers.glance();
        Fingers.scroll(measurements, 60);
        for (int row = 0; row < Math.min(12, Fingers.look(measurements::getRowCount)); row++) {
            int chosen = row;
            Fingers.act(() -> measurements.setRowSelectionInterval(chosen, chosen));
            Fingers.glance();
        }
        Fingers.page("parts-page");
        var parts = Fingers.find(JTable.class, "parts");
        for (int row = 0; row < 4; row++) {
            int chosen = row;
            var mass = 100 + row + " g";
            Fingers.act(() -> {
                parts.editCellAt(chosen, 2);
                ((JTextComponent) parts.getEditorComponent()).setText(mass);
                parts.getCellEditor().stopCellEditing();
            });
            Fingers.until(mass, () -> parts.getValueAt(chosen, 2).equals(mass));
        }
        Fingers.page("log");
    }

    private void dragShapes() {
        Fingers.page("planform-page");
        for (int i = 0; i < times(3); i++) {
            openAnother();
            var drawing = Fingers.find(JComponent.class, "planform-drawing");
            Fingers.glance();
            var handle = Fingers.look(() -> Fingers.handle(drawing));
            Fingers.drag(drawing, handle.x, handle.y, 60);
            Fingers.glance();
        }
        Fingers.page("log");
    }

    private void compute() {
        Fingers.page("calculators");
        JComboBox<?> choice = Fingers.find(JComboBox.class, "calculator");
        Fingers.until("calculators", () -> choice.getItemCount() > 0);
        for (int i = 0; i < times(Fingers.look(choice::getItemCount)); i++) {
            int chosen = i;
            Fingers.act(() -> choice.setSelectedIndex(chosen));
            Fingers.until("inputs", () -> Fingers.isThere("inputs"));
            Fingers.glance();
            Fingers.glance();
            if (Fingers.look(() -> Fingers.isThere(JTextField.class, HourAtTheBench::isInput))) {
                var input = Fingers.find(JTextField.class, "an input", HourAtTheBench::isInput);
                Fingers.type(input.getName(), Fingers.look(input::getText));
                Fingers.glance();
            }
        }
        Fingers.page("log");
    }

    private void compare() {
        Fingers.click("compare-build");
        var table = Fingers.find(JTable.class, "compared");
        Fingers.glance();
        Fingers.scroll(table, 30);
        Fingers.click("leave-compare");
        Fingers.click("start-from");
        Fingers.find(JComponent.class, "carried");
        Fingers.glance();
        Fingers.click("leave-start");
    }

    private void lookAcross() {
        Fingers.click("show-across");
        var table = Fingers.find(JTable.class, "across-table");
        Fingers.until("values", () -> table.getRowCount() > 0);
        Fingers.choose("across-value", 4);
        Fingers.choose("across-against", 4);
        Fingers.scroll(table, 30);
        Fingers.click("show-across");
    }

    private void visit() {
        for (var page : List.of("templates", "bin", "exchange", "journals", "notices", "bench", "help")) {
            Fingers.click("show-" + page);
            Fingers.glance();
            Fingers.click("show-" + page);
            Fingers.glance();
        }
    }

    private void takeBack() {
        for (int i = 0; i < times(20); i++) {
            Fingers.click("undo");
            Fingers.glance();
        }
        for (int i = 0; i < times(10); i++) {
            Fingers.click("redo");
            Fingers.glance();
        }
    }

    private void comeBack() {
        var frame = frame();
        for (int i = 0; i < times(5); i++) {
            Fingers.act(() -> frame.dispatchEvent(new WindowEvent(frame, WindowEvent.WINDOW_GAINED_FOCUS)));
            Fingers.glance();
            Fingers.glance();
        }
    }

    private void resize() {
        var frame = frame();
        for (int i = 0; i < times(4); i++) {
            Fingers.clickIfThere("older");
        }
        for (int i = 0; i < times(60); i++) {
            int width = 1500 - 10 * Math.abs(30 - i);
            Fingers.act(() -> frame.setSize(width, 900));
            Fingers.glance();
        }
    }

    private void changeLook() {
        openAnother();
        for (var choice : List.of("look-DARK", "look-LIGHT", "text-larger", "text-usual")) {
            Fingers.click("view");
            Fingers.click(choice);
            Fingers.glance();
            Fingers.glance();
        }
    }

    private int times(int whole) {
        return (int) Math.max(1, Math.round(whole * share));
    }

    /** Chooses a build on the shelf, and waits until it is shown. */
    private void openAnother() {
        int row = random.nextInt(Fingers.look(() -> builds.getModel().getSize()));
        var watch = new Stopwatch();
        Fingers.act(() -> {
            builds.setSelectedIndex(row);
            builds.ensureIndexIsVisible(row);
        });
        Fingers.until("the build", this::isShown);
        opened.add(watch.milliseconds());
    }

    private boolean isShown() {
        return builds.getSelectedValue() != null
                && Fingers.isThere(
                        JLabel.class,
                        label -> builds.getSelectedValue().toString().equals(label.getToolTipText()));
    }

    private static JComponent log() {
        return Fingers.find(
                JComponent.class,
                "an entry",
                each -> each.getName() != null && each.getName().matches("entry-[0-9A-Z]{26}"));
    }

    private static boolean isHit(Component component) {
        return component.getName() != null && component.getName().startsWith("hit-");
    }

    private static boolean isInput(Component component) {
        return component.getName() != null && component.getName().startsWith("input-");
    }

    private static Frame frame() {
        return Fingers.look(() -> Fingers.all(Frame.class).get(0));
    }
}
