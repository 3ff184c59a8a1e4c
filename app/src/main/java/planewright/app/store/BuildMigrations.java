package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** Builds of older schemas, brought to the next one; what is not known stays in them. */
final class BuildMigrations {
    private static final String NEW_IN_TWO = "controls";

    private BuildMigrations() {}

    /** Surfaces have control surfaces. What bore that name, and so meant something else, is kept under another. */
    static ObjectNode toTwo(ObjectNode tree) {
        for (var row : tree.path("planform").path("surfaces")) {
            if (row instanceof ObjectNode surface && surface.has(NEW_IN_TWO)) {
                var old = surface.remove(NEW_IN_TWO);
                surface.set(Schema.oldName(surface, NEW_IN_TWO, 1), old);
            }
        }
        return tree;
    }
}
