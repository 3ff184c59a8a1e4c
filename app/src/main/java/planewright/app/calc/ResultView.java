package planewright.app.calc;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Proposal;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Outline;
import planewright.api.journal.Picture;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.app.journal.PictureRecord;
import planewright.shared.planform.Outlines;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.UnitChoice;

/**
 * A computation's answer in the order in which it is read, for window, paper and terminal alike.
 *
 * @param values single values, as label and text
 * @param findings remarks, those on unusual inputs first
 * @param tables rows
 * @param charts charts
 * @param drawings drawings
 * @param pictures of the journal
 * @param proposals what may be written into the journal
 */
public record ResultView(
        List<Value> values,
        List<Finding> findings,
        List<Table> tables,
        List<Chart> charts,
        List<Drawing> drawings,
        List<PictureRecord> pictures,
        List<Proposal> proposals) {
    /** Finer than a knife cuts and a printer prints, mm. */
    private static final double FINE_ENOUGH = 0.02;

    /**
     * A single value.
     *
     * @param label what it is
     * @param text what it came to, in the figures that are of use
     * @param exact the same in more figures, where there are more
     * @param help how to read it; may be empty
     * @param under the heading it stands under; empty for a main figure
     */
    public record Value(String label, String text, Optional<String> exact, String help, String under) {}

    /** Rows of texts under headings; {@code numeric} tells which columns hold quantities. */
    public record Table(String title, List<String> headings, List<Boolean> numeric, List<List<String>> rows) {}

    /** The view of an answer in the units of its sentences. */
    public static ResultView of(Described described, Outcome.Answered answered) {
        return of(described, answered, answered.units());
    }

    /** The view of an answer in the units that somebody prefers by now; its sentences stay in those in which it was told. */
    public static ResultView of(Described described, Outcome.Answered answered, UnitChoice units) {
        var view = new ResultView(
                new ArrayList<>(),
                new ArrayList<>(answered.unusual()),
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>());
        var fields = described.results().in(units).fields();
        var ends = fields.stream().map(Field::upTo).collect(Collectors.toSet());
        for (var field : fields) {
            if (!ends.contains(field.name())) {
                present(RecordJson.component(answered.results(), field.name()))
                        .ifPresent(value -> view.add(field, value, answered.results(), units));
            }
        }
        return view;
    }

    /** Single values by the headings they stand under, main figures first. */
    public Map<String, List<Value>> byHeading() {
        var all = new LinkedHashMap<String, List<Value>>();
        all.put("", new ArrayList<>());
        values.forEach(value ->
                all.computeIfAbsent(value.under(), heading -> new ArrayList<>()).add(value));
        return all;
    }

    /** A value as a builder reads it; empty for an absent one. */
    static String text(Field field, Object value) {
        return present(value)
                .map(present -> switch (field.kind()) {
                    case QUANTITY ->
                        QuantityText.result(
                                (Measured<?>) present,
                                field.unit().orElseThrow(),
                                field.language().locale());
                    case YES_NO -> field.language().say((Boolean) present ? "yes" : "no");
                    case CHOICE -> field.told(ShapeReader.word(present));
                    case DATE_TIME ->
                        ClockText.show((LocalDateTime) present, field.language().locale());
                    case PLANFORM, OUTLINE, CALENDAR, PICTURE ->
                        InputTexts.text(field, RecordJson.node(field, present));
                    default -> present.toString();
                })
                .orElse("");
    }

    private static Optional<?> present(Object value) {
        return value instanceof Optional<?> optional ? optional : Optional.ofNullable(value);
    }

    private void add(Field field, Object value, Record results, UnitChoice units) {
        switch (field.kind()) {
            case QUANTITY, TEXT, YES_NO, WHOLE_NUMBER, CHOICE, DATE_TIME, CALENDAR ->
                values.add(value(field, value, results));
            case OUTLINE -> drawings.add(((Outline) value).drawing(field.label(), FINE_ENOUGH));
            case PICTURE -> pictures.add(Shelved.record((Picture) value));
            case ROWS -> tables.add(table(field, (List<?>) value));
            case CHART -> charts.add(ChartUnits.in((Chart) value, units));
            case DRAWING -> drawings.add((Drawing) value);
            case FINDINGS -> ((List<?>) value).forEach(each -> findings.add((Finding) each));
            case PROPOSALS -> ((List<?>) value).forEach(each -> proposals.add((Proposal) each));
            case PLANFORM ->
                drawings.add(new Drawing(
                        field.label(),
                        List.of(new Drawing.Layer(Drawing.Use.OUTLINE, shapes(Outlines.plan((Planform) value))))));
        }
    }

    private static Value value(Field field, Object value, Record results) {
        var end = field.upTo().isEmpty() ? Optional.empty() : present(RecordJson.component(results, field.upTo()));
        UnaryOperator<String> range = end.isEmpty()
                ? begin -> begin
                : begin -> field.language().say("{0} to {1}", begin, text(field, end.get()));
        var text = range.apply(text(field, value));
        var exact = Optional.of(field)
                .filter(each -> each.kind() == Kind.QUANTITY)
                .map(each -> Stream.concat(Stream.of(value), end.stream())
                        .map(shown -> exact(each, shown))
                        .collect(Collectors.joining(", ")))
                .filter(figures -> !figures.equals(text));
        return new Value(field.label(), text, exact, field.help(), field.under());
    }

    private static String exact(Field field, Object value) {
        return QuantityText.show(
                QuantityText.in((Measured<?>) value, field.unit().orElseThrow()),
                field.language().locale());
    }

    private static List<Drawing.Shape> shapes(List<Drawing.Path> outlines) {
        return List.copyOf(outlines);
    }

    private static Table table(Field field, List<?> rows) {
        var columns = field.row().orElseThrow().fields();
        return new Table(
                field.label(),
                columns.stream().map(Field::label).toList(),
                columns.stream()
                        .map(column -> column.kind() == Kind.QUANTITY || column.kind() == Kind.WHOLE_NUMBER)
                        .toList(),
                rows.stream()
                        .map(row -> columns.stream()
                                .map(column -> text(column, RecordJson.component((Record) row, column.name())))
                                .toList())
                        .toList());
    }
}
