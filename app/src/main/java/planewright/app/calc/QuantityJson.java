package planewright.app.calc;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.store.JsonFiles;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/**
 * Quantities as calculators' JSON carries them: {@code {"value": 212, "unit": "g", "plusMinus": 1}}, or on the way in the
 * text {@code "212 g ± 1 g"} or a number in the input's own unit.
 */
public final class QuantityJson {
    private QuantityJson() {}

    /** What a quantity is in JSON, with the numbers as computed. */
    public static ObjectNode write(Measured<?> measured) {
        var node = JsonFiles.object();
        var unit = measured.value().getUnit();
        node.put("value", measured.value().getValue().doubleValue());
        node.put("unit", Units.codeOf(unit));
        if (measured.plusMinus().isPresent()) {
            node.put("plusMinus", spread(measured));
        }
        return node;
    }

    /** What a quantity is in JSON, its number as it was typed and its ± in full. */
    static ObjectNode write(String number, Measured<?> measured) {
        var node = JsonFiles.object();
        node.put("value", number);
        node.put("unit", Units.codeOf(measured.value().getUnit()));
        if (measured.plusMinus().isPresent()) {
            node.put("plusMinus", digits(spread(measured)));
        }
        return node;
    }

    /** All digits of a number, without an exponent: {@code 140}, {@code 0.0625}. */
    static String digits(double number) {
        var digits = BigDecimal.valueOf(number).stripTrailingZeros();
        return (digits.scale() < 0 ? digits.setScale(0) : digits).toPlainString();
    }

    /**
     * The quantity that a node stands for.
     *
     * @throws QuantityProblem if it is none, or of another kind than the unit given
     */
    public static Written read(JsonNode node, Unit<?> kind) throws QuantityProblem {
        return QuantityText.parseLike(text(node, kind), kind);
    }

    private static String text(JsonNode node, Unit<?> kind) throws QuantityProblem {
        if (node.isTextual() || node.isNumber()) {
            return node.asText();
        }
        if (!node.isObject() || !isNumber(node.get("value"))) {
            throw new QuantityProblem(
                    "'{0}' is not a quantity",
                    "{1} or a text such as {2}",
                    node.toString(),
                    "{\"value\": 12, \"unit\": \"" + Units.codeOf(kind) + "\"}",
                    "\"12 " + Units.symbolOf(kind) + "\"");
        }
        var unit = node.path("unit").asText(Units.codeOf(kind));
        var code = unit.equals("1") ? "" : " " + unit;
        var spread = node.get("plusMinus");
        return node.get("value").asText() + code + (isNumber(spread) ? " ± " + spread.asText() + code : "");
    }

    private static boolean isNumber(JsonNode node) {
        return node != null && (node.isNumber() || node.isTextual());
    }

    private static <Q extends Quantity<Q>> double spread(Measured<Q> measured) {
        return measured.spreadIn(measured.value().getUnit());
    }
}
