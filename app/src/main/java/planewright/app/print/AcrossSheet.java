package planewright.app.print;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import planewright.app.across.BuildValue;
import planewright.app.across.Pairs;
import planewright.app.across.Relation;
import planewright.app.across.View;
import planewright.app.figure.Fitted;
import planewright.shared.fit.StraightLine;

/** One thing over all builds, and how it goes with another. */
public final class AcrossSheet {
    private AcrossSheet() {}

    /** Has the words read by the time it returns, so that whoever may not wait for a file can ask afterwards. */
    public static void prepare() {
        PrintWords.prepare();
    }

    /**
     * The sheet.
     *
     * @param fitted the picture; empty where one thing alone is looked at
     */
    public static Sheet of(String journal, View view, Optional<Fitted> fitted) {
        var blocks = new ArrayList<Sheet.Block>();
        var title = title(view.pairs());
        blocks.add(new Sheet.Heading(1, title));
        fitted.ifPresent(picture -> {
            blocks.add(new Sheet.FittedBlock(picture));
            said(view).forEach(line -> blocks.add(new Sheet.Paragraph(line)));
        });
        var headings = new ArrayList<>(List.of(
                PrintWords.say("Build"),
                PrintWords.say("Measured"),
                PrintWords.say(view.pairs().value().name()),
                PrintWords.say("Source")));
        var numeric = new ArrayList<>(List.of(false, false, true, false));
        view.pairs().against().ifPresent(against -> {
            headings.addAll(List.of(PrintWords.say(against.name()), PrintWords.say("Counts")));
            numeric.addAll(List.of(true, false));
        });
        blocks.add(new Sheet.Table(
                headings,
                numeric,
                view.pairs().pairs().stream().map(pair -> row(view, pair)).toList()));
        return new Sheet(title + " · " + journal, blocks);
    }

    /** What was found, or why nothing was, a sentence or two each, in the language that is shown. */
    public static List<String> said(View view) {
        var relation = view.relation();
        var lines = new ArrayList<String>();
        relation.problem().map(AcrossSheet::why).ifPresent(lines::add);
        view.formula(PrintWords::say, PrintWords.locale())
                .ifPresent(formula -> lines.add(PrintWords.say(
                        "By {0} builds: {1}. Of 100 further builds made alike, {2} lie in the band.",
                        relation.counting(), formula, Math.round(100 * Relation.SHARE))));
        if (relation.trend().isPresent() && !relation.isTelling()) {
            lines.add(PrintWords.say(
                    "By these builds one does not go with the other: their scatter hides whether the line"
                            + " rises or falls."));
        }
        if (relation.isCut(view.asked())) {
            lines.add(PrintWords.say(
                    "The band ends at 0, for nothing below means anything here; a power law never falls below."));
        }
        view.asked().ifPresent(asked -> lines.addAll(said(view, asked)));
        return lines;
    }

    private static List<String> said(View view, double asked) {
        var at = PrintWords.quantity(view.onAxisAcross(asked));
        if (view.relation().fallsBelowZero(asked)) {
            return List.of(PrintWords.say("At {0} the line is below 0, where nothing can be: try a power law.", at));
        }
        return view.next().stream()
                .flatMap(next -> Stream.concat(
                        Stream.of(PrintWords.say(
                                "At {0} expect {1}, between {2} and {3}.",
                                at,
                                PrintWords.quantity(view.onAxis(next.middle())),
                                PrintWords.quantity(view.onAxis(next.low())),
                                PrintWords.quantity(view.onAxis(next.high())))),
                        view.relation().isAmong(asked)
                                ? Stream.empty()
                                : Stream.of(PrintWords.say(
                                        "That is outside of what was built so far: the line may not hold there."))))
                .toList();
    }

    /** Why there is no line, in the language that is shown. */
    public static String why(Relation.Problem problem) {
        if (problem instanceof Relation.TooFew few) {
            return PrintWords.say(
                    "No line: builds that have both and count: {0}; it takes {1} or more.",
                    few.count(), StraightLine.LEAST);
        } else if (problem instanceof Relation.AllAlike alike) {
            return PrintWords.say(
                    "No line: all builds that count have {0} across; it takes two that differ.",
                    PrintWords.quantity(alike.value()));
        } else if (problem instanceof Relation.NotAbove0 wrong) {
            return PrintWords.say(
                    "No line: a power law goes through values above 0 only, and '{0}' has {1}. Leave it out, or take a"
                            + " straight line.",
                    wrong.build(), PrintWords.quantity(wrong.value()));
        }
        return PrintWords.say("No line: a power of a temperature in °C means nothing; take a straight line.");
    }

    private static String title(Pairs pairs) {
        var value = PrintWords.say(pairs.value().name());
        return pairs.against()
                .map(against -> PrintWords.say("{0} against {1}", value, PrintWords.say(against.name())))
                .orElse(value);
    }

    private static List<String> row(View view, Pairs.Pair pair) {
        var cells = new ArrayList<>(List.of(
                pair.value().build().name(),
                pair.value()
                        .at()
                        .map(LocalDateTime::toLocalDate)
                        .map(PrintWords::day)
                        .orElse(""),
                PrintWords.quantity(pair.value().quantity()),
                PrintWords.say(pair.value().source().word())));
        if (view.pairs().against().isPresent()) {
            cells.add(pair.against()
                    .map(BuildValue::quantity)
                    .map(PrintWords::quantity)
                    .orElse(""));
            cells.add(PrintWords.say(pair.against().isPresent() && view.counts(pair) ? "yes" : "no"));
        }
        return cells;
    }
}
