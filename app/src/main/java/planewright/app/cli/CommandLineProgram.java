package planewright.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.time.Clock;
import java.util.concurrent.CancellationException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import planewright.app.Settings;

/** Runs one command. Exit codes: 0 done, 1 the work failed, 2 the command line is wrong. */
public final class CommandLineProgram {
    private final Settings settings;
    private final Clock clock;
    private final PrintWriter out;
    private final PrintWriter err;

    public CommandLineProgram(Settings settings, Clock clock, PrintWriter out, PrintWriter err) {
        this.settings = settings;
        this.clock = clock;
        this.out = out;
        this.err = err;
    }

    /** Runs the words of a command line and gives the exit code. */
    public int run(String... words) {
        var desk = new Desk(settings, clock, out);
        var line = new CommandLine(new Root())
                .addSubcommand(new NewCommand(desk))
                .addSubcommand(new AddCommand(desk))
                .addSubcommand(new FindCommand(desk))
                .addSubcommand(new ShowCommand(desk))
                .addSubcommand(new AcrossCommand(desk))
                .addSubcommand(new CalcCommand(desk))
                .addSubcommand(new PrintCommand(desk))
                .addSubcommand(PluginsCommand.line(desk))
                .addSubcommand(TemplateCommand.line(desk))
                .addSubcommand(CalendarCommand.line(desk))
                .addSubcommand(MaterialCommand.line(desk))
                .addSubcommand(BringCommand.line(desk))
                .addSubcommand(TakeCommand.line(desk))
                .addSubcommand(new CheckCommand(desk))
                .addSubcommand(new BinCommand(desk))
                .addSubcommand(new OpenCommand())
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExpandAtFiles(false)
                .registerConverter(int.class, CommandLineProgram::whole)
                .setParameterExceptionHandler((wrong, arguments) -> complain(Misread.words(wrong), 2))
                .setExecutionExceptionHandler((failure, command, result) -> failed(failure));
        try {
            return line.execute(words);
        } finally {
            out.flush();
        }
    }

    private static int whole(String text) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException wrong) {
            throw new CommandLine.TypeConversionException("'" + text + "'; accepted: a whole number");
        }
    }

    private int failed(Exception failure) {
        if (failure instanceof CommandFailed told) {
            return complain(told.getMessage(), told.code());
        }
        if (failure instanceof FileSystemException file) {
            return complain(words(file), 1);
        }
        if (failure instanceof IOException || failure instanceof UncheckedIOException) {
            return complain(failure.getMessage(), 1);
        }
        if (failure instanceof CancellationException) {
            return complain(failure.getMessage(), 1);
        }
        if (failure instanceof IllegalArgumentException) {
            return complain(failure.getMessage(), 2);
        }
        return complain("planewright itself failed: " + failure + ". The journal is as it was", 1);
    }

    /** The system's own messages are often the bare name of the file. */
    private static String words(FileSystemException failure) {
        var reason = failure instanceof NoSuchFileException
                ? "it is not there"
                : failure instanceof AccessDeniedException ? "access is denied" : failure.getReason();
        var file = failure.getOtherFile() == null ? failure.getFile() : failure.getOtherFile();
        return "file " + file + " cannot be read or written: "
                + (reason == null ? failure.getClass().getSimpleName() : reason);
    }

    private int complain(String message, int code) {
        err.println(message == null ? "failed" : message.lines().findFirst().orElse(""));
        err.flush();
        return code;
    }

    @Command(
            name = "planewright",
            description = "A journal of model aircraft, and calculators that work on it. Without a word: the window.",
            mixinStandardHelpOptions = true,
            version = "planewright 0.1.0",
            subcommands = HelpCommand.class,
            synopsisSubcommandLabel = "WORD")
    private static final class Root implements Runnable {
        @CommandLine.Spec
        private CommandLine.Model.CommandSpec spec;

        @Override
        public void run() {
            spec.commandLine().usage(spec.commandLine().getOut());
        }
    }
}
