package planewright.app.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.quantity.Measured;
import planewright.app.Program;
import planewright.app.Settings;
import planewright.app.calc.Described;
import planewright.app.calc.PluginHost;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.JointRecord;
import planewright.app.journal.Kept;
import planewright.app.journal.PictureRecord;
import planewright.app.journal.TemplateRecord;
import planewright.app.store.JsonFiles;
import planewright.app.store.RecordFiles;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;

/** What every command needs: settings, the clock, where to write, and finding things by what the user calls them. */
record Desk(Settings settings, Clock clock, PrintWriter out) {
    private static final int HEADING = 70;

    LocalDateTime now() {
        return LocalDateTime.now(clock).truncatedTo(ChronoUnit.MINUTES);
    }

    /** The journal that the option names, else the one of the environment. */
    Path journal(Optional<Path> option) {
        return option.or(settings::journal)
                .orElseThrow(
                        () -> CommandFailed.words(
                                "no journal is named; accepted: --journal FOLDER, or the environment variable PLANEWRIGHT_JOURNAL"));
    }

    Program open(Optional<Path> option) throws IOException {
        return Program.open(journal(option), settings.user(), settings.pluginPlaces(), clock);
    }

    void json(ObjectNode node) {
        out.print(JsonFiles.text(node));
    }

    /** The build of that name, id, or unmistakable beginning of its name, letter case aside. */
    static BuildRecord build(Program program, String called) {
        return only("build", called, program.journal().builds(), BuildRecord::name);
    }

    /** The template that is called so, likewise. */
    static TemplateRecord template(Program program, String called) {
        return only("template", called, program.journal().templates(), TemplateRecord::name);
    }

    private static <T extends Kept> T only(String what, String called, List<T> all, Function<T, String> name) {
        var wanted = called.strip().toLowerCase(Locale.ROOT);
        var exact = all.stream()
                .filter(each -> name.apply(each).toLowerCase(Locale.ROOT).equals(wanted)
                        || each.id().equalsIgnoreCase(wanted))
                .toList();
        var found = exact.isEmpty()
                ? all.stream()
                        .filter(each ->
                                name.apply(each).toLowerCase(Locale.ROOT).startsWith(wanted))
                        .toList()
                : exact;
        if (found.size() != 1 || wanted.isEmpty()) {
            throw CommandFailed.work(what + " '" + called + "' is "
                    + (found.isEmpty() ? "not in the journal" : "not the only one so called") + "; accepted: "
                    + (all.isEmpty()
                            ? "none, the journal has no " + what + "s yet"
                            : all.stream().map(name).sorted().collect(Collectors.joining(", "))));
        }
        return found.get(0);
    }

    /** Today, or the date of an option. */
    LocalDate day(String option, Optional<String> typed) {
        return typed.map(text -> date(option, text)).orElseGet(() -> now().toLocalDate());
    }

    static LocalDate date(String option, String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeException wrong) {
            throw CommandFailed.words(option + " is '" + text + "'; accepted: a date such as 2025-03-14");
        }
    }

    /** The quantity of an option; a number alone is taken in the unit. */
    static <Q extends Quantity<Q>> Measured<Q> quantity(String option, String text, Unit<Q> unit, Class<Q> kind) {
        try {
            return QuantityText.parseLike(text, unit).measured().asType(kind);
        } catch (QuantityProblem problem) {
            throw CommandFailed.words(option + ": " + problem.getMessage());
        }
    }

    /** Tells what was done with a record: in words, or as JSON what is written of it now. */
    void said(boolean json, Kept record, String words) {
        if (json) {
            json(RecordFiles.json(record));
        } else {
            out.println(words);
        }
    }

    /** The entry of that id or ending of an id. */
    static EntryRecord entry(Program program, BuildRecord build, String id) {
        var found = program.journal().log(build.id()).stream()
                .filter(entry -> entry.id().endsWith(id.toUpperCase(Locale.ROOT)))
                .toList();
        if (found.size() != 1) {
            throw CommandFailed.work("entry '" + id + "' of '" + build.name() + "' is "
                    + (found.isEmpty() ? "not in its log" : "not the only one so called")
                    + "; accepted: an id that 'show' lists");
        }
        return found.get(0);
    }

    /** The line that stands for an entry in a list: its title, else what is first in it. */
    static String heading(EntryRecord entry) {
        var heading = Stream.of(
                        Stream.of(entry.title()),
                        entry.text().stream(),
                        entry.measurements().stream()
                                .map(each -> each.name() + " " + each.quantity().text()),
                        entry.joints().stream().map(JointRecord::name),
                        entry.pictures().stream().map(PictureRecord::caption))
                .flatMap(each -> each)
                .filter(line -> !line.isBlank())
                .findFirst()
                .orElse("")
                .replaceAll("\\s+", " ");
        return heading.length() > HEADING ? heading.substring(0, HEADING) + "…" : heading;
    }

    /** A time to the minute: {@code 2025-03-14 20:15}. */
    static String time(LocalDateTime time) {
        return time.truncatedTo(ChronoUnit.MINUTES).toString().replace('T', ' ');
    }

    /** How many, and of what: {@code 1 entry}, {@code 2 entries}. */
    static String count(int number, String one, String more) {
        return number + " " + (number == 1 ? one : more);
    }

    static Described calculator(PluginHost plugins, String id) {
        return plugins.calculator(id)
                .orElseThrow(() -> CommandFailed.words("calculator '" + id + "' is not there; accepted: "
                        + plugins.calculators().stream().map(Described::id).collect(Collectors.joining(", "))
                        + (plugins.problems().isEmpty()
                                ? ""
                                : "; plugins that cannot be used: "
                                        + plugins.problems().stream()
                                                .map(problem ->
                                                        problem.file().getFileName() + " (" + problem.reason() + ")")
                                                .collect(Collectors.joining(", ")))));
    }

    /** Texts in columns; numeric columns to the right. */
    void table(List<Boolean> right, List<List<String>> rows) {
        var widths = new int[right.size()];
        for (var row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        for (var row : rows) {
            var line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                var gap = " ".repeat(widths[i] - row.get(i).length());
                line.append(right.get(i) ? gap + row.get(i) : row.get(i) + gap).append("  ");
            }
            out.println(line.toString().stripTrailing());
        }
    }
}
