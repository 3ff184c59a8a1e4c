package planewright.acceptance.window;

import java.io.IOException;
import java.nio.file.Path;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;

/** A new journal for each test of the window, a watch on the event thread, and what a builder does on many pages. */
abstract class InNewJournal {
    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    Path journal;
    UserFolders user;

    @BeforeEach
    final void newJournal() throws IOException {
        journal = folder.resolve("journal");
        user = UserFolders.under(folder.resolve("user"));
        JournalFolder.create(journal, "Shed");
    }

    /** The window on that journal. */
    OpenWindow open() throws IOException {
        return OpenWindow.on(journal, user);
    }

    /** Begins a build on the shelf. */
    static void begin(String build) {
        Hands.type("new-build-name", build);
        Hands.click("new-build");
        Hands.find(JLabel.class, "with the name", label -> build.equals(label.getText()));
    }

    /** Writes a line into the capture line, and waits until it is saved. */
    static void write(String line) {
        Hands.type("capture-line", line);
        Hands.enter("capture-line");
        Hands.find(
                JTextField.class,
                "of the line, empty again",
                field -> "capture-line".equals(field.getName())
                        && field.getText().isEmpty());
    }

    /** Waits for running words. */
    static void see(String words) {
        Hands.find(
                JTextArea.class, "with '" + words + "'", area -> area.getText().contains(words));
    }
}
