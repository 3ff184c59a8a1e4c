package planewright.app.exchange;

import java.io.IOException;
import java.nio.file.Path;
import planewright.app.store.UserFolders;

/** Brings an archive in, in a process of its own with little memory, and says what came of it. */
final class BringingProgram {
    private BringingProgram() {}

    /** The words are the archive, where it is brought to, and the user's folder. */
    public static void main(String[] words) {
        try {
            var user = UserFolders.under(Path.of(words[2]));
            System.out.println(ArchiveIntake.bring(Path.of(words[0]), Path.of(words[1]), user, Watch.NONE));
        } catch (IOException | RuntimeException | OutOfMemoryError refused) {
            System.out.println(refused);
        }
    }
}
