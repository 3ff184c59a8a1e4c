package planewright.app.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * What a calculator was given and what it answered.
 *
 * @param calculator its id
 * @param version the version of its computation
 * @param inputs by component name, as {@code calc --inputs} reads them
 * @param origins where inputs came from, by path
 * @param results by component name, as {@code calc --json} writes them
 */
public record KeptResult(
        String calculator, String version, ObjectNode inputs, ObjectNode origins, ObjectNode results) {}
