package planewright.app.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where something taken out may go. */
final class Target {
    private Target() {}

    /**
     * @param replace whether a file that is there may be replaced
     * @return its absolute path
     * @throws ExchangeRefused if it may not be written there
     */
    static Path file(Path file, boolean replace) throws IOException {
        if (Files.isDirectory(file)) {
            throw new ExchangeRefused(ExchangeWords.say("'{0}' is a folder; accepted: a file", file));
        }
        if (Files.exists(file) && !replace) {
            throw new ExchangeRefused(
                    ExchangeWords.say("file {0} is there already; name another one, or say to replace it", file));
        }
        return file.toAbsolutePath().normalize();
    }

    /** Refuses what would lie in the journal itself. */
    static void outside(Path target, Path journal) throws IOException {
        if (target.startsWith(journal.toAbsolutePath().normalize())
                || Files.isDirectory(target.getParent())
                        && target.getParent().toRealPath().startsWith(journal.toRealPath())) {
            throw new ExchangeRefused(ExchangeWords.say("'{0}' lies in the journal; name a place outside it", target));
        }
    }
}
