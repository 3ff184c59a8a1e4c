package planewright.app.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Builds of older schemas, brought to the next one; what is not known stays in them. */
final class BuildMigrations {
    private static final String CONTROLS = "controls";
    private static final String CARRIED = "carried";
    private static final String BEGUN_FROM = "begunFrom";

    private BuildMigrations() {}

    /**
     * Surfaces have control surfaces, parts a mass that may be carried over, and a build tells what it was begun from. What bore
     * such a name, and so meant something else, is kept under another.
     */
    static ObjectNode toTwo(ObjectNode tree) {
        rename(tree, BEGUN_FROM);
        tree.path("parts").forEach(part -> rename(part, CARRIED));
        tree.path("planform").path("surfaces").forEach(surface -> rename(surface, CONTROLS));
        return tree;
    }

    private static void rename(JsonNode node, String name) {
        if (node instanceof ObjectNode object && object.has(name)) {
            var old = object.remove(name);
            object.set(Schema.oldName(object, name, 1), old);
        }
    }
}
