package planewright.app.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The options that commands on a journal share. */
final class JournalOption {
    @Option(
            names = "--journal",
            paramLabel = "FOLDER",
            description = "The journal; else the one of the environment variable PLANEWRIGHT_JOURNAL.")
    private Optional<Path> journal = Optional.empty();

    @Mixin
    private PlainOptions plain;

    Optional<Path> journal() {
        return journal;
    }

    boolean json() {
        return plain.json();
    }
}
