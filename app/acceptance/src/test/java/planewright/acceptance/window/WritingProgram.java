package planewright.acceptance.window;

import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import planewright.app.store.UserFolders;

/** A builder who is writing an entry when the power fails: types, says {@code typed}, and waits for the end. */
final class WritingProgram {
    private WritingProgram() {}

    /** The words are the journal, the user's folder, the button that opens the editor, and what is typed as title. */
    @SuppressWarnings("try") // nobody closes it
    public static void main(String[] words) throws Exception {
        try (var window = OpenWindow.on(Path.of(words[0]), UserFolders.under(Path.of(words[1])))) {
            Hands.click(words[2]);
            Hands.type("entry-title", words[3]);
            System.out.println("typed");
            new CountDownLatch(1).await();
        }
    }
}
