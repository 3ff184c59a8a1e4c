package planewright.app.calc;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import planewright.shared.quantity.UnitChoice;

/** Answers of one calculator to different inputs, kept beside each other for as long as one thinks about them. */
public final class Variants {
    /** More columns than these nobody compares. */
    public static final int MOST = 4;

    private final Described described;
    private final List<Outcome.Answered> kept = new ArrayList<>();

    public Variants(Described described) {
        this.described = described;
    }

    /** Whether they are answers of that calculator. */
    public boolean isOf(Described other) {
        return described == other;
    }

    public boolean isEmpty() {
        return kept.isEmpty();
    }

    /** Keeps an answer as the next variant; of too many the first goes. */
    public void keep(Outcome.Answered answer) {
        kept.add(answer);
        if (kept.size() > MOST) {
            kept.remove(0);
        }
    }

    public void forget() {
        kept.clear();
    }

    /**
     * The variants as columns: first the inputs in which they differ, then the single values.
     *
     * @param now the answer that is shown, as the first column
     * @param units that are preferred
     * @param headings of the columns: what is in a row, the answer now, and the word for a variant before its number
     */
    public ResultView.Table table(Outcome.Answered now, Headings headings, UnitChoice units) {
        var answers = Stream.concat(Stream.of(now), kept.stream()).toList();
        var names = new ArrayList<>(List.of("", headings.now()));
        for (int number = 1; number <= kept.size(); number++) {
            names.add(headings.variant() + " " + number);
        }
        var rows = new ArrayList<List<String>>();
        for (var field : described.inputs().fields()) {
            var nodes = answers.stream()
                    .map(answer -> answer.inputs().path(field.name()))
                    .toList();
            if (nodes.stream().distinct().count() > 1) {
                rows.add(row(field.label(), nodes.stream().map(node -> text(field, node, headings, units))));
            }
        }
        rows.addAll(values(answers, units));
        var numeric = new ArrayList<>(List.of(false));
        answers.forEach(each -> numeric.add(true));
        return new ResultView.Table(headings.title(), names, numeric, rows);
    }

    /**
     * Words of the table.
     *
     * @param title over it
     * @param now over the answer that is shown
     * @param variant before the number of a variant
     * @param rows before the number of rows of an input that is a list
     */
    public record Headings(String title, String now, String variant, String rows) {}

    private List<List<String>> values(List<Outcome.Answered> answers, UnitChoice units) {
        var views = answers.stream()
                .map(answer -> ResultView.of(described, answer, units).values())
                .map(Variants::byLabel)
                .toList();
        var labels = views.stream().flatMap(view -> view.keySet().stream()).distinct();
        return labels.map(label -> row(
                        label,
                        views.stream()
                                .map(view ->
                                        Optional.ofNullable(view.get(label)).orElse(""))))
                .toList();
    }

    private static Map<String, String> byLabel(List<ResultView.Value> values) {
        var texts = new LinkedHashMap<String, String>();
        values.forEach(value -> texts.put(value.label(), value.text()));
        return texts;
    }

    private static String text(Field field, JsonNode node, Headings headings, UnitChoice units) {
        if (node.isMissingNode() || node.isNull()) {
            return "";
        }
        return node.isArray() ? node.size() + " " + headings.rows() : InputTexts.shown(field, node, units);
    }

    private static List<String> row(String label, Stream<String> texts) {
        return Stream.concat(Stream.of(label), texts).toList();
    }
}
