package planewright.app.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javax.measure.Unit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import planewright.api.quantity.Units;
import planewright.app.Program;
import planewright.app.across.Across;
import planewright.app.across.BuildValue;
import planewright.app.across.Named;
import planewright.app.across.Pairs;
import planewright.app.across.View;
import planewright.app.exchange.AcrossTable;
import planewright.app.journal.EntryRecord;
import planewright.app.print.AcrossSheet;
import planewright.app.print.Paper;
import planewright.app.print.SheetPdf;
import planewright.app.store.JsonFiles;
import planewright.shared.fit.Law;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

@Command(
        name = "across",
        description =
                "Show what all builds have of one thing: a measurement, a set-up value, a part's mass, or a figure such as"
                        + " 'span' or 'wing loading'. Without a name: what there is. With --against, how the two go together: a line by"
                        + " least squares through the builds' last values, and the band in which 95 of 100 further builds lie. Each build"
                        + " counts alike, and what was carried over from another does not count.")
final class AcrossCommand implements Callable<Integer> {
    private static final int OFFERED = 12;

    private final Desk desk;

    @Mixin
    private JournalOption common;

    @Parameters(index = "0", paramLabel = "NAME", arity = "0..1")
    private Optional<String> name = Optional.empty();

    @Option(names = "--every", description = "All values of each build instead of the last.")
    private boolean every;

    @Option(
            names = "--unit",
            paramLabel = "UNIT",
            description = "Show values in this unit; else in the one most were written in.")
    private Optional<String> unit = Optional.empty();

    @Option(names = "--against", paramLabel = "NAME", description = "What the values are set against.")
    private Optional<String> against = Optional.empty();

    @Option(names = "--against-unit", paramLabel = "UNIT", description = "Likewise for what stands beside them.")
    private Optional<String> againstUnit = Optional.empty();

    @Option(names = "--power", description = "A power law y = a·x^b through logarithms instead of a straight line.")
    private boolean power;

    @Option(
            names = "--at",
            paramLabel = "VALUE",
            description = "Tell what the next build has by the line where it has this of what --against names.")
    private Optional<String> at = Optional.empty();

    @Option(
            names = "--leave-out",
            paramLabel = "BUILD",
            description = "A build that does not count for the line; again for more.")
    private List<String> leftOut = List.of();

    @Option(names = "--csv", paramLabel = "FILE", description = "Write the table as CSV; - for here.")
    private Optional<String> csv = Optional.empty();

    @Option(names = "--print", paramLabel = "FILE.pdf", description = "Print table and chart.")
    private Optional<Path> print = Optional.empty();

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            description = "${COMPLETION-CANDIDATES}; ${DEFAULT-VALUE} where not said.")
    private Paper paper = Paper.A4;

    AcrossCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws IOException {
        if (against.isEmpty() && (power || at.isPresent() || againstUnit.isPresent() || !leftOut.isEmpty())) {
            throw CommandFailed.words(
                    "--at, --power, --leave-out and --against-unit are of a line; accepted: with --against NAME");
        }
        try (var program = desk.open(common.journal())) {
            var across = new Across(program.journal(), program.index().join());
            var names = across.names();
            if (name.isEmpty()) {
                list(names);
                return 0;
            }
            var wanted = named(name.get(), names);
            var other = against.map(words -> named(words, names));
            tell(program, view(program, across.pairs(wanted, other, every)));
        }
        return 0;
    }

    private static Named named(String words, List<Named> names) {
        var found = Named.called(words, names);
        if (found.size() == 1) {
            return found.get(0);
        }
        var offered = found.isEmpty() ? names : found;
        throw CommandFailed.work("'" + words + "' is "
                + (found.isEmpty() ? "no value of any build" : "more than one thing")
                + "; accepted: "
                + (names.isEmpty()
                        ? "none, no build has values yet"
                        : offered.stream().limit(OFFERED).map(Named::text).collect(Collectors.joining(", "))
                                + (offered.size() > OFFERED ? ", …" : "")));
    }

    private View view(Program program, Pairs pairs) {
        Set<String> out = new HashSet<>(pairs.carried());
        leftOut.forEach(build -> out.add(Desk.build(program, build).id()));
        var shown = unit("--unit", unit, pairs.unit());
        var across = unit("--against-unit", againstUnit, pairs.againstUnit());
        var asked = at.map(text -> number(text, across));
        return View.of(pairs, power ? Law.POWER : Law.STRAIGHT, out, shown, across, asked);
    }

    private static Unit<?> unit(String option, Optional<String> typed, Unit<?> otherwise) {
        if (typed.isEmpty()) {
            return otherwise;
        }
        try {
            var unit = QuantityText.unit(typed.get());
            if (Units.alike(unit, otherwise)) {
                return unit;
            }
        } catch (QuantityProblem problem) {
            throw CommandFailed.words(option + ": " + problem.getMessage());
        }
        throw CommandFailed.words(option + " is '" + typed.get() + "'; accepted: "
                + Units.alike(otherwise).stream().map(Units.Coded::symbol).collect(Collectors.joining(", ")));
    }

    /** A number alone is taken in the unit. */
    private static double number(String text, Unit<?> unit) {
        try {
            return QuantityText.in(QuantityText.parseLike(text, unit).measured(), unit)
                    .value()
                    .getValue()
                    .doubleValue();
        } catch (QuantityProblem problem) {
            throw CommandFailed.words("--at: " + problem.getMessage());
        }
    }

    private void list(List<Named> names) {
        if (common.json()) {
            var node = JsonFiles.object();
            var array = node.putArray("names");
            names.forEach(each -> array.addObject()
                    .put("name", each.name())
                    .put("kind", Units.codeOf(each.kind()))
                    .put("builds", each.builds()));
            desk.json(node);
            return;
        }
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("NAME", "BUILDS"));
        names.forEach(each -> rows.add(List.of(each.text(), Integer.toString(each.builds()))));
        desk.table(List.of(false, true), rows);
    }

    private void tell(Program program, View view) throws IOException {
        if (print.isPresent()) {
            var fitted = view.pairs().against().map(other -> view.fitted("", UnaryOperator.identity()));
            SheetPdf.write(AcrossSheet.of(program.journal().name(), view, fitted), paper, print.get());
        }
        if (csv.isPresent()) {
            writeCsv(AcrossTable.text(view), csv.get());
        }
        if (csv.filter("-"::equals).isPresent()) {
            return;
        }
        if (common.json()) {
            json(view);
        } else {
            words(view);
        }
    }

    private void writeCsv(String text, String to) throws IOException {
        if (to.equals("-")) {
            desk.out().print(text);
        } else {
            java.nio.file.Files.writeString(Path.of(to), text, StandardCharsets.UTF_8);
        }
    }

    private void words(View view) {
        var pairs = view.pairs();
        var rows = new ArrayList<List<String>>();
        var headings = new ArrayList<>(
                List.of("BUILD", "ON", pairs.value().name().toUpperCase(java.util.Locale.ROOT), "FROM"));
        var right = new ArrayList<>(List.of(false, false, true, false));
        pairs.against().ifPresent(other -> {
            headings.addAll(List.of(other.name().toUpperCase(java.util.Locale.ROOT), "COUNTS"));
            right.addAll(List.of(true, false));
        });
        rows.add(headings);
        for (var pair : pairs.pairs()) {
            var row = new ArrayList<>(List.of(
                    pair.value().build().name(),
                    pair.value().at().map(at -> at.toLocalDate().toString()).orElse(""),
                    shown(pair.value(), unit, view.unit()),
                    pair.value().source().word()));
            if (pairs.against().isPresent()) {
                row.add(pair.against()
                        .map(value -> shown(value, againstUnit, view.againstUnit()))
                        .orElse(""));
                row.add(pair.against().isEmpty() ? "" : view.counts(pair) ? "yes" : "no");
            }
            rows.add(row);
        }
        desk.table(right, rows);
        if (pairs.against().isPresent()) {
            desk.out().println();
            AcrossSheet.said(view).forEach(desk.out()::println);
        }
    }

    /** As it was written, unless somebody wants it in a unit. */
    private static String shown(BuildValue value, Optional<String> wanted, Unit<?> unit) {
        return wanted.isEmpty()
                ? value.quantity().text()
                : QuantityText.show(value.quantity().measured(), unit);
    }

    private void json(View view) {
        var node = JsonFiles.object().put("name", view.pairs().value().name());
        view.pairs().against().ifPresent(other -> node.put("against", other.name()));
        var array = node.putArray("values");
        for (var pair : view.pairs().pairs()) {
            var each = array.addObject()
                    .put("build", pair.value().build().name())
                    .put("id", pair.value().build().id());
            put(each, pair.value());
            pair.against().ifPresent(value -> {
                put(each.putObject("against"), value);
                each.put("counts", view.counts(pair));
            });
        }
        if (view.pairs().against().isPresent()) {
            line(view, node.putObject("line"));
        }
        desk.json(node);
    }

    private static void put(ObjectNode node, BuildValue value) {
        Written quantity = value.quantity();
        node.put("value", quantity.measured().value().getValue().doubleValue())
                .put("unit", Units.codeOf(quantity.unit()));
        quantity.measured()
                .plusMinus()
                .ifPresent(spread -> node.put("plusMinus", spread.getValue().doubleValue()));
        node.put("from", value.source().word());
        value.at().ifPresent(time -> node.put("at", time.toString()));
        value.entry().map(EntryRecord::id).ifPresent(id -> node.put("entry", id));
    }

    private static void line(View view, ObjectNode node) {
        node.put("law", view.law() == Law.POWER ? "power" : "straight")
                .put("unit", Units.codeOf(view.unit()))
                .put("againstUnit", Units.codeOf(view.againstUnit()))
                .put("builds", view.relation().counting());
        view.relation().problem().ifPresent(problem -> node.put("problem", AcrossSheet.why(problem)));
        view.relation().trend().ifPresent(trend -> node.put("a", trend.factor()).put("b", trend.slope()));
        view.next()
                .ifPresent(next -> node.putObject("next")
                        .put("at", view.asked().orElseThrow())
                        .put("value", next.middle())
                        .put("low", next.low())
                        .put("high", next.high())
                        .put("among", view.relation().isAmong(view.asked().orElseThrow())));
    }
}
