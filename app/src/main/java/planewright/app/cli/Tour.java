package planewright.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import planewright.app.Program;
import planewright.app.Settings;

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
        var build = build();
        if (build.isEmpty()) {
            return 1;
        }
        var sheet = settings.user().data().resolve("balance.pdf").toString();
        var commands = new ArrayList<List<String>>();
        commands.add(List.of("show"));
        commands.add(List.of("show", build));
        commands.add(List.of("calc", "balance.ledger", "--build", build, "--keep", "--print", sheet));
        commands.add(List.of("find", "ledger", "balance", "--build", build, "--limit", "3"));
        commands.add(List.of("check"));
        for (var words : commands) {
            out.println();
            out.println("$ ./planewright "
                    + String.join(" ", words.stream().map(Tour::quoted).toList()));
            int code = new CommandLineProgram(settings, clock, out, err).run(words.toArray(String[]::new));
            if (code != 0) {
                return code;
            }
        }
        return 0;
    }

    /** The build with the longest ledger. */
    private String build() {
        try (var program =
                Program.open(settings.journal().orElse(Path.of("")), settings.user(), settings.pluginPlaces(), clock)) {
            return program.journal().builds().stream()
                    .max(java.util.Comparator.comparingInt(
                            build -> build.parts().size()))
                    .map(planewright.app.journal.BuildRecord::name)
                    .orElse("");
        } catch (java.io.IOException failure) {
            err.println(failure.getMessage());
            return "";
        }
    }

    private static String quoted(String word) {
        return word.contains(" ") ? "'" + word + "'" : word;
    }
}
