package planewright.app.cli;

import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A word that needs a second one; alone it tells which there are. */
abstract class Group implements Runnable {
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Tell what these commands do.")
    private boolean help;

    @Override
    public final void run() {
        throw CommandFailed.words("'" + spec.name() + "' needs a second word; accepted: "
                + String.join(", ", spec.subcommands().keySet()));
    }
}
