package planewright.shared;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;

/** A published case of {@code published.json}, which names its source, and how its numbers are known. */
public record Published(JsonNode node) {
    public static Published of(String id) {
        try (var in = Published.class.getResourceAsStream("published.json")) {
            for (var published : new ObjectMapper().readTree(in).path("cases")) {
                if (published.path("id").asText().equals(id)) {
                    return new Published(published);
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        throw new IllegalArgumentException("no published case " + id);
    }

    public double input(String name) {
        return number("/inputs/" + name + "/value");
    }

    public double input(String name, int position) {
        return number("/inputs/" + name + "/value/" + position);
    }

    public double expected(String name) {
        return number("/expected/" + name + "/value");
    }

    public double expected(String name, int position) {
        return number("/expected/" + name + "/value/" + position);
    }

    /** How many numbers an input has. */
    public int count(String name) {
        return node.at("/inputs/" + name + "/value").size();
    }

    /** The tolerance that the case states, never 0: adding doubles rounds. */
    public double tolerance(String name) {
        var expected = node.at("/expected/" + name);
        double relative = expected.path("tol_rel").asDouble()
                * Math.abs(expected.path("value").asDouble());
        return Math.max(1e-9, Math.max(expected.path("tol_abs").asDouble(), relative));
    }

    private double number(String pointer) {
        var number = node.at(pointer);
        if (!number.isNumber()) {
            throw new IllegalArgumentException(node.path("id").asText() + " has no number at " + pointer);
        }
        return number.asDouble();
    }
}
