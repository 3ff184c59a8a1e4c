package planewright.acceptance.window;

import java.awt.EventQueue;
import java.awt.event.WindowEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import planewright.app.Settings;
import planewright.app.store.UserFolders;
import planewright.app.ui.MainWindow;

/** The program's window on a journal, with the packaged plugins. Closing it waits until the journal is closed. */
final class OpenWindow implements AutoCloseable {
    /** The day of all tests of the window. */
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-28T19:30:00Z"), ZoneOffset.UTC);

    private final JFrame frame;

    private OpenWindow(JFrame frame) {
        this.frame = frame;
    }

    static OpenWindow on(Path journal, UserFolders user) throws java.io.IOException {
        return on(journal, user, CLOCK);
    }

    static OpenWindow on(Path journal, UserFolders user, Clock clock) throws java.io.IOException {
        MainWindow.start(new Settings(user, plugins(), Optional.of(journal)), Optional.of(journal), clock);
        Hands.find(JList.class, "builds");
        return new OpenWindow(Hands.find(JFrame.class, "planewright"));
    }

    JFrame frame() {
        return frame;
    }

    /** Brings a page of the build to the front. */
    void page(String title) {
        var tabs = Hands.find(JTabbedPane.class, "pages");
        EventQueue.invokeLater(() -> tabs.setSelectedIndex(tabs.indexOfTab(title)));
        Hands.waitUntil(
                "page " + title, () -> tabs.getTitleAt(tabs.getSelectedIndex()).equals(title));
    }

    /** Chooses a build on the shelf. */
    void build(String name) {
        JList<?> list = Hands.find(JList.class, "builds");
        EventQueue.invokeLater(() -> {
            for (int i = 0; i < list.getModel().getSize(); i++) {
                if (list.getModel().getElementAt(i).toString().equals(name)) {
                    list.setSelectedIndex(i);
                }
            }
        });
        Hands.waitUntil(
                "build " + name,
                () -> list.getSelectedValue() != null
                        && list.getSelectedValue().toString().equals(name));
        Hands.find(JLabel.class, "with the name", label -> name.equals(label.getText()));
    }

    /** Looks for what other programs have written, as whenever it comes to the front. */
    void comeToFront() {
        Hands.onEventThread(() -> {
            var event = new WindowEvent(frame, WindowEvent.WINDOW_GAINED_FOCUS);
            for (var listener : frame.getWindowFocusListeners()) {
                listener.windowGainedFocus(event);
            }
            return frame;
        });
    }

    /** Closes as the builder does, and waits for the end. */
    @Override
    public void close() {
        close(frame);
    }

    static void close(JFrame frame) {
        EventQueue.invokeLater(() -> frame.dispatchEvent(new WindowEvent(frame, WindowEvent.WINDOW_CLOSING)));
        Hands.waitUntil("the window closed", () -> !frame.isDisplayable());
    }

    /** The repository's folder. */
    static Path root() {
        return Path.of(System.getProperty("planewright.root")).normalize();
    }

    /** The plugins as they are packaged. */
    static List<Path> plugins() throws java.io.IOException {
        try (Stream<Path> found = Files.find(
                root().resolve("plugins"),
                3,
                (file, attributes) -> file.getFileName().toString().matches("planewright-.*\\.zip"))) {
            return found.toList();
        }
    }
}
