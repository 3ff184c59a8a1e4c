package planewright.app.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The options that commands share. */
final class JournalOption {
    @Option(
            names = "--journal",
            paramLabel = "FOLDER",
            description = "The journal; else the one of the environment variable PLANEWRIGHT_JOURNAL.")
    private Optional<Path> journal = Optional.empty();

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Tell what this command does.")
    private boolean help;

    Optional<Path> journal() {
        return journal;
    }

    boolean json() {
        return json;
    }
}
