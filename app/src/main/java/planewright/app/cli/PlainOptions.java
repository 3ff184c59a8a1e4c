package planewright.app.cli;

import picocli.CommandLine.Option;

/** The options that all commands share. */
final class PlainOptions {
    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Tell what this command does.")
    private boolean help;

    boolean json() {
        return json;
    }
}
