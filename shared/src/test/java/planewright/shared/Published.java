package planewright.shared;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.stream.IntStream;

/** A published case of a {@code published.json}, which names its source, and how its numbers are known. */
public record Published(JsonNode node) {
    public static Published of(String id) {
        return of(Published.class, id);
    }

    /**
     * The case of that id.
     *
     * @param beside a class of the package whose cases they are
     */
    public static Published of(Class<?> beside, String id) {
        try (var in = beside.getResourceAsStream("published.json")) {
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

    /** All numbers of an input. */
    public double[] inputs(String name) {
        return IntStream.range(0, count(name)).mapToDouble(i -> input(name, i)).toArray();
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
