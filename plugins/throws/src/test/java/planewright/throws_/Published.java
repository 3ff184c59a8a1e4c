package planewright.throws_;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;

/** A case of {@code published.json}, which names its source, how its numbers are known, and how near an answer must come. */
record Published(JsonNode node) {
    static Published of(String id) {
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

    double input(String name) {
        return node.at("/inputs/" + name + "/value").asDouble();
    }

    JsonNode inputs(String name) {
        return node.at("/inputs/" + name + "/value");
    }

    double expected(String name) {
        return number("/expected/" + name + "/value");
    }

    JsonNode expectedList(String name) {
        return node.at("/expected/" + name + "/value");
    }

    double recomputed(String name) {
        return number("/recomputed_here/" + name);
    }

    double tolerance(String name) {
        return number("/expected/" + name + "/tol_abs");
    }

    private double number(String pointer) {
        var number = node.at(pointer);
        if (!number.isNumber()) {
            throw new IllegalArgumentException("no number at " + pointer);
        }
        return number.asDouble();
    }
}
