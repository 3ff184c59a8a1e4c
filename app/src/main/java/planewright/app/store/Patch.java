package planewright.app.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Carries a change over to a tree that may hold more than we know. What is the same before and after stays as it is in the
 * tree, spelling and place included.
 */
final class Patch {
    private static final List<String> KEYS = List.of("id", "hash", "build", "date", "day", "at", "name");

    private Patch() {}

    /**
     * Makes a tree say {@code after} where it said {@code before}.
     *
     * @param tree as read; changed in place
     * @param before what we would write for the record as it was read
     * @param after what we would write for it now
     */
    static void apply(ObjectNode tree, ObjectNode before, ObjectNode after) {
        before.fieldNames().forEachRemaining(name -> {
            if (!after.has(name)) {
                tree.remove(name);
            }
        });
        for (var field : after.properties()) {
            var old = before.get(field.getKey());
            if (!field.getValue().equals(old)) {
                put(tree, field.getKey(), merged(tree.get(field.getKey()), old, field.getValue()), after);
            }
        }
    }

    private static JsonNode merged(JsonNode inTree, JsonNode old, JsonNode changed) {
        if (inTree instanceof ObjectNode tree
                && old instanceof ObjectNode before
                && changed instanceof ObjectNode after) {
            apply(tree, before, after);
            return tree;
        }
        if (inTree instanceof ArrayNode tree && old instanceof ArrayNode before && changed instanceof ArrayNode after) {
            return rows(tree, before, after);
        }
        return changed.deepCopy();
    }

    /** Rows that kept their key keep what we do not know of them. */
    private static ArrayNode rows(ArrayNode tree, ArrayNode before, ArrayNode after) {
        Map<String, JsonNode> known = byKey(before);
        Map<String, JsonNode> kept = byKey(tree);
        var rows = new ArrayList<JsonNode>();
        byKey(after).forEach((key, row) -> rows.add(mergedRow(kept.get(key), known.get(key), row)));
        tree.removeAll();
        return tree.addAll(rows);
    }

    private static JsonNode mergedRow(JsonNode kept, JsonNode known, JsonNode row) {
        return kept != null && row.equals(known) ? kept : merged(kept, known, row);
    }

    /** Rows of one key, and rows without any, are told apart by which of them comes first. */
    private static Map<String, JsonNode> byKey(ArrayNode rows) {
        var byKey = new LinkedHashMap<String, JsonNode>();
        var counts = new HashMap<String, Integer>();
        for (var row : rows) {
            var key = key(row);
            byKey.put(counts.merge(key, 1, Integer::sum) + " " + key, row);
        }
        return byKey;
    }

    private static String key(JsonNode row) {
        return KEYS.stream()
                .map(row::get)
                .filter(node -> node != null && node.isTextual())
                .map(JsonNode::textValue)
                .findFirst()
                .orElse("");
    }

    /** Puts a new field before the first field of ours that follows it, so that files keep one order of keys. */
    private static void put(ObjectNode tree, String name, JsonNode value, ObjectNode order) {
        if (tree.has(name)) {
            tree.set(name, value);
            return;
        }
        var later = new ArrayList<String>();
        boolean passed = false;
        for (var field : order.properties()) {
            if (passed && tree.has(field.getKey())) {
                later.add(field.getKey());
            }
            passed |= field.getKey().equals(name);
        }
        if (later.isEmpty()) {
            tree.set(name, value);
            return;
        }
        var rest = new ArrayList<Map.Entry<String, JsonNode>>();
        boolean moving = false;
        for (var field : List.copyOf(tree.properties())) {
            moving |= field.getKey().equals(later.get(0));
            if (moving) {
                rest.add(Map.entry(field.getKey(), field.getValue()));
            }
        }
        rest.forEach(field -> tree.remove(field.getKey()));
        tree.set(name, value);
        rest.forEach(field -> tree.set(field.getKey(), field.getValue()));
    }
}
