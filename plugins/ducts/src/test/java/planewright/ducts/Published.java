package planewright.ducts;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;

/** A published case of {@code published.json}, which names its source, and how its numbers are known. */
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

    double input(String name, int position) {
        return node.at("/inputs/" + name + "/value/" + position).asDouble();
    }

    int count(String name) {
        return node.at("/inputs/" + name + "/value").size();
    }

    double expected(String name) {
        return node.at("/expected/" + name + "/value").asDouble();
    }

    double expected(String name, int position) {
        return node.at("/expected/" + name + "/value/" + position).asDouble();
    }

    /** The tolerance that the case states, never 0: adding doubles rounds. */
    double tolerance(String name) {
        return Math.max(1e-9, node.at("/expected/" + name + "/tol_abs").asDouble());
    }
}
