package planewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import planewright.api.calculator.Run;
import planewright.app.calc.Calculation;
import planewright.app.calc.Described;
import planewright.app.calc.Outcome;

/**
 * Answers of a calculator to inputs that are drawn anew within their ±.
 *
 * @param calculator which
 * @param inputs as the program wrote them, so that every quantity is an object
 * @param run what it computes in
 */
record Draws(Described calculator, ObjectNode inputs, Run run) {
    /**
     * What a result came to.
     *
     * @param value its number
     * @param spread its ±; 0 where it tells none
     */
    record Told(double value, double spread) {
        boolean tellsSpread() {
            return spread > 0;
        }

        /** Its ± without that of another, which is none of the inputs'. */
        double without(Told exact) {
            return Math.sqrt(Math.max(0, spread * spread - exact.spread * exact.spread));
        }
    }

    /** Paths of the inputs that have a ±, in order. */
    List<String> uncertain() {
        var paths = new ArrayList<String>();
        quantities(inputs, "", (path, node) -> {
            if (node.path("plusMinus").doubleValue() > 0) {
                paths.add(path);
            }
        });
        return paths;
    }

    /** The answer as it stands. */
    Map<String, Told> answer() {
        return answer(inputs);
    }

    /** The answer where no input has a ±. */
    Map<String, Told> exact() {
        return answer(changed((path, node) -> node.remove("plusMinus")));
    }

    /** The answer with one input moved by so many of its ±, and with no ± but that input's. */
    Map<String, Told> moved(String input, double by) {
        return answer(changed((path, node) -> {
            if (path.equals(input)) {
                move(node, by);
            } else {
                node.remove("plusMinus");
            }
        }));
    }

    /** The answer with every input drawn from a normal distribution about it, and then taken as exact. */
    Map<String, Told> drawn(RandomGenerator random) {
        return answer(changed((path, node) -> {
            if (node.has("plusMinus")) {
                move(node, random.nextGaussian());
                node.remove("plusMinus");
            }
        }));
    }

    private static void move(ObjectNode node, double by) {
        node.put(
                "value",
                node.path("value").doubleValue() + by * node.path("plusMinus").doubleValue());
    }

    private ObjectNode changed(Changes change) {
        var copy = inputs.deepCopy();
        quantities(copy, "", change);
        return copy;
    }

    private Map<String, Told> answer(ObjectNode given) {
        var outcome = Calculation.run(calculator, given, run);
        assertThat(outcome).as("%s of %s", calculator.id(), given).isInstanceOf(Outcome.Answered.class);
        var told = new LinkedHashMap<String, Told>();
        quantities(((Outcome.Answered) outcome).json(), "", (path, node) -> {
            if (!path.startsWith("proposals")) {
                told.put(
                        path,
                        new Told(
                                node.path("value").doubleValue(),
                                node.path("plusMinus").doubleValue()));
            }
        });
        return told;
    }

    private interface Changes {
        void change(String path, ObjectNode quantity);
    }

    private static void quantities(JsonNode node, String path, Changes change) {
        if (node instanceof ObjectNode object && object.path("value").isNumber()) {
            change.change(path, object);
            return;
        }
        for (int i = 0; i < node.size() && node.isArray(); i++) {
            quantities(node.get(i), path + "[" + key(node.get(i), i) + "]", change);
        }
        node.properties()
                .forEach(field -> quantities(
                        field.getValue(), path.isEmpty() ? field.getKey() : path + "." + field.getKey(), change));
    }

    /** Rows are sorted by what came out: a row is known by its first words. */
    private static String key(JsonNode row, int number) {
        for (var field : row.properties()) {
            if (field.getValue().isTextual()) {
                return field.getValue().textValue();
            }
        }
        return String.valueOf(number);
    }
}
