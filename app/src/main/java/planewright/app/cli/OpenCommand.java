package planewright.app.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Stands here for help and for machines without a display; where there is one, the window opens before commands are read. */
@Command(name = "open", description = "Open the window on a journal.")
final class OpenCommand implements Callable<Integer> {
    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Tell what this command does.")
    private boolean help;

    @Parameters(paramLabel = "FOLDER", arity = "0..1", description = "The journal; else the one of the environment.")
    private String folder;

    @Override
    public Integer call() {
        throw CommandFailed.work(
                "the window needs a display and there is none; accepted here: new, add, find, show, calc, print, check"
                        + (folder == null ? "" : " with --journal " + folder));
    }
}
