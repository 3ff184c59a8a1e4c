package planewright.app.calc;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import planewright.app.journal.KeptResult;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.UnitChoice;

/** The main values of a kept result where somebody prefers other units than the calculator's own, in which its title tells them. */
public final class KeptValues {
    private KeptValues() {}

    /** Label and value, in the order of the answer; empty where all is told in the preferred units already. */
    public static List<String> texts(KeptResult kept, Described described, UnitChoice units) {
        var fields = described.results().fields();
        var ends = fields.stream().map(Field::upTo).collect(Collectors.toSet());
        return fields.stream()
                .filter(field -> field.kind() == Kind.QUANTITY && field.under().isEmpty())
                .filter(field -> !ends.contains(field.name()))
                .filter(field -> !field.in(units).unit().equals(field.unit()))
                .flatMap(field -> text(field.in(units), kept.results()).stream())
                .toList();
    }

    private static Optional<String> text(Field field, JsonNode results) {
        return value(field, results.path(field.name()))
                .map(begin -> field.label() + " "
                        + value(field, results.path(field.upTo()))
                                .map(end -> field.language().say("{0} to {1}", begin, end))
                                .orElse(begin));
    }

    private static Optional<String> value(Field field, JsonNode node) {
        if (node.isMissingNode() || node.isNull()) {
            return Optional.empty();
        }
        try {
            var unit = field.unit().orElseThrow();
            return Optional.of(QuantityText.result(
                    QuantityJson.read(node, unit).measured(),
                    unit,
                    field.language().locale()));
        } catch (QuantityProblem unreadable) {
            return Optional.empty();
        }
    }
}
