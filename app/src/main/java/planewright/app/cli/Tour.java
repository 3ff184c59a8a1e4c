package planewright.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import planewright.api.calculator.From;
import planewright.app.Settings;
import planewright.app.calc.Described;
import planewright.app.journal.BuildRecord;

/** The main job without a window: look at a log, compute, keep, find again, print. */
public final class Tour {
    private final Settings settings;
    private final Clock clock;
    private final PrintWriter out;
    private final PrintWriter err;

    public Tour(Settings settings, Clock clock, PrintWriter out, PrintWriter err) {
        this.settings = settings;
        this.clock = clock;
        this.out = out;
        this.err = err;
    }

    /** Shows each command before it runs; the exit code is that of the first that fails, or 0. */
    public int run() {
        out.println("There is no display, so here is the main job on the command line. With one, the window opens.");
        try {
            for (var words : commands()) {
                out.println();
                out.println("$ ./planewright "
                        + String.join(" ", words.stream().map(Tour::quoted).toList()));
                int code = new CommandLineProgram(settings, clock, out, err).run(words.toArray(String[]::new));
                if (code != 0) {
                    return code;
                }
            }
            return 0;
        } catch (CommandFailed told) {
            err.println(told.getMessage());
            return told.code();
        } catch (IOException failure) {
            err.println(failure.getMessage());
            return 1;
        }
    }

    /** On the build with the longest mass ledger, with the calculator that reads one and asks for least. */
    private List<List<String>> commands() throws IOException {
        try (var program = new Desk(settings, clock, out).open(Optional.empty())) {
            var build = program.journal().builds().stream()
                    .max(Comparator.comparingInt(each -> each.parts().size()))
                    .map(BuildRecord::name)
                    .orElseThrow(() ->
                            CommandFailed.work("the journal has no builds yet; begin one with ./planewright new NAME"));
            var commands = new ArrayList<List<String>>();
            commands.add(List.of("show"));
            commands.add(List.of("show", build));
            program.plugins().join().calculators().stream()
                    .filter(Tour::readsLedger)
                    .min(Comparator.comparingInt(
                            calculator -> calculator.inputs().fields().size()))
                    .ifPresent(calculator -> addCalculation(commands, calculator, build));
            commands.add(List.of("check"));
            return commands;
        }
    }

    private void addCalculation(List<List<String>> commands, Described calculator, String build) {
        var sheet = settings.user().data().resolve(calculator.id() + ".pdf").toString();
        commands.add(List.of("calc", calculator.id(), "--build", build, "--keep", "--print", sheet));
        commands.add(List.of("find", calculator.title(), "--build", build, "--limit", "3"));
    }

    private static boolean readsLedger(Described calculator) {
        return calculator.inputs().fields().stream()
                .anyMatch(field -> field.from()
                        .map(from -> from.value() == From.Place.PART_ROWS)
                        .orElse(false));
    }

    private static String quoted(String word) {
        return word.contains(" ") ? "'" + word + "'" : word;
    }
}
