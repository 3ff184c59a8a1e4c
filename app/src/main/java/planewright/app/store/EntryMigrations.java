package planewright.app.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Entries of older schemas, brought to the next one; what is not known stays in them. */
final class EntryMigrations {
    /** The id of the flight of an entry of schema 1, which had one at most; the same on every machine. */
    static final String FIRST_FLIGHT = "flight";

    private static final List<String> NEW_IN_TWO = List.of("flights", "repairs", "tasks");

    private EntryMigrations() {}

    /** One {@code flight} becomes a list of flights. What bore a name that now means something is kept under another. */
    static ObjectNode toTwo(ObjectNode tree) {
        var migrated = JsonFiles.object();
        for (var field : tree.properties()) {
            var name = field.getKey();
            if (name.equals("flight")) {
                migrated.putArray("flights").add(identified(field.getValue()));
            } else if (NEW_IN_TWO.contains(name)) {
                migrated.set(Schema.oldName(tree, name, 1), field.getValue());
            } else {
                migrated.set(name, field.getValue());
            }
        }
        return migrated;
    }

    private static JsonNode identified(JsonNode flight) {
        if (!(flight instanceof ObjectNode fields) || fields.path("id").isTextual()) {
            return flight;
        }
        var row = JsonFiles.object().put("id", FIRST_FLIGHT);
        fields.properties()
                .forEach(field -> row.set(
                        field.getKey().equals("id") ? Schema.oldName(fields, "id", 1) : field.getKey(),
                        field.getValue()));
        return row;
    }
}
