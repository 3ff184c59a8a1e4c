package planewright.app.calc;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/**
 * Inputs as far as the journal has them.
 *
 * @param inputs by component name
 * @param origins where each came from, by path: {@code parts[0].mass}
 */
public record Filled(ObjectNode inputs, Map<String, Origin> origins) {}
