package planewright.app.print;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import planewright.app.across.BuildValue;
import planewright.app.across.Pairs;
import planewright.app.across.Relation;
import planewright.app.across.View;
import planewright.app.figure.Fitted;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** One thing over all builds, and how it goes with another. */
public final class AcrossSheet {
    private AcrossSheet() {}

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
        var headings =
                new ArrayList<>(List.of("Build", "On", view.pairs().value().name(), "From"));
        var numeric = new ArrayList<>(List.of(false, false, true, false));
        view.pairs().against().ifPresent(against -> {
            headings.addAll(List.of(against.name(), "Counts"));
            numeric.addAll(List.of(true, false));
        });
        blocks.add(new Sheet.Table(
                headings,
                numeric,
                view.pairs().pairs().stream().map(pair -> row(view, pair)).toList()));
        return new Sheet(title + " · " + journal, blocks);
    }

    /** What was found, a line each. */
    public static List<String> said(View view) {
        var lines = new ArrayList<String>();
        view.relation().problem().ifPresent(problem -> lines.add("No line: " + problem.said() + "."));
        view.relation()
                .formula(Locale.ENGLISH)
                .ifPresent(formula -> lines.add("By " + view.relation().counting() + " builds: " + formula
                        + ", x and y in the units of the axes. " + Math.round(100 * Relation.SHARE)
                        + " of 100 further builds made alike lie in the band."));
        view.asked()
                .ifPresent(asked -> view.next()
                        .ifPresent(next -> lines.add("At " + QuantityText.show(view.onAxisAcross(asked)) + ": "
                                + QuantityText.show(view.onAxis(next.middle()))
                                + ", between "
                                + QuantityText.show(view.onAxis(next.low())) + " and "
                                + QuantityText.show(view.onAxis(next.high()))
                                + "."
                                + (view.relation().isAmong(asked)
                                        ? ""
                                        : " That is outside of what was built so far: the line may not hold there."))));
        return lines;
    }

    private static String title(Pairs pairs) {
        return pairs.value().name()
                + pairs.against().map(against -> " against " + against.name()).orElse("");
    }

    private static List<String> row(View view, Pairs.Pair pair) {
        var cells = new ArrayList<>(List.of(
                pair.value().build().name(),
                pair.value()
                        .at()
                        .map(LocalDateTime::toLocalDate)
                        .map(Object::toString)
                        .orElse(""),
                pair.value().quantity().text(),
                pair.value().source().word()));
        if (view.pairs().against().isPresent()) {
            cells.add(
                    pair.against().map(BuildValue::quantity).map(Written::text).orElse(""));
            cells.add(pair.against().isPresent() && view.counts(pair) ? "yes" : "no");
        }
        return cells;
    }
}
