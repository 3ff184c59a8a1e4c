package planewright.app.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import planewright.app.journal.Slow;
import planewright.app.store.UserFolders;

/** What the window remembers from one time to the next: light or dark. It is no loss if it cannot. */
final class WindowMemory {
    private static final String DARK = "dark";
    private static final String LIGHT = "light";

    private WindowMemory() {}

    static boolean isDark(UserFolders user) {
        Slow.work("reading the window's memory");
        try {
            return Files.readString(file(user)).strip().equals(DARK);
        } catch (IOException notRemembered) {
            return false;
        }
    }

    static void remember(UserFolders user, boolean dark) throws IOException {
        Slow.work("writing the window's memory");
        Files.createDirectories(user.data());
        Files.writeString(file(user), dark ? DARK : LIGHT);
    }

    private static Path file(UserFolders user) {
        return user.data().resolve("look.txt");
    }
}
