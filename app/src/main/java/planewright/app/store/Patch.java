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
 * Carries a change over to a tree that may hold more than we know, and may say something newer than what was changed. What is
 * the same before and after stays as it is in the tree, spelling and place included.
 */
final class Patch {
    private static final List<String> KEYS = List.of("id", "hash", "build", "date", "day", "at", "name");

    private final List<String> clashes = new ArrayList<>();

    private Patch() {}

    /**
     * Makes a tree say {@code after} where it said {@code before}. Where it says something else than both, {@code after}
     * counts; rows and paragraphs that only the tree has stay.
     *
     * @param tree as read; changed in place
     * @param before what we would write for the record as it was read
     * @param after what we would write for it now
     * @return the fields in which the tree's own change gave way to ours
     */
    static List<String> apply(ObjectNode tree, ObjectNode before, ObjectNode after) {
        var patch = new Patch();
        patch.object("", tree, before, after);
        return patch.clashes;
    }

    private void object(String path, ObjectNode tree, ObjectNode before, ObjectNode after) {
        before.fieldNames().forEachRemaining(name -> {
            if (!after.has(name)) {
                giveWay(path + name, tree.remove(name), before.get(name), null);
            }
        });
        for (var field : after.properties()) {
            var name = field.getKey();
            var old = before.get(name);
            if (!field.getValue().equals(old)) {
                put(tree, name, merged(path + name, tree.get(name), old, field.getValue()), after);
            }
        }
    }

    private JsonNode merged(String path, JsonNode inTree, JsonNode old, JsonNode changed) {
        if (inTree instanceof ObjectNode tree
                && old instanceof ObjectNode before
                && changed instanceof ObjectNode after) {
            object(path + ".", tree, before, after);
            return tree;
        }
        if (inTree instanceof ArrayNode tree && changed instanceof ArrayNode after) {
            var before = old instanceof ArrayNode array ? array : after.arrayNode();
            return isOfTexts(tree) && isOfTexts(before) && isOfTexts(after)
                    ? texts(path, tree, before, after)
                    : rows(path, tree, before, after);
        }
        giveWay(path, inTree, old, changed);
        return changed.deepCopy();
    }

    private void giveWay(String path, JsonNode inTree, JsonNode old, JsonNode changed) {
        if (inTree != null && !inTree.equals(old) && !inTree.equals(changed)) {
            clashes.add(path);
        }
    }

    private static boolean isOfTexts(ArrayNode array) {
        for (var element : array) {
            if (!element.isTextual()) {
                return false;
            }
        }
        return true;
    }

    private ArrayNode texts(String path, ArrayNode tree, ArrayNode before, ArrayNode after) {
        var merged = Sequence.merged(Sequence.of(before), Sequence.of(tree), Sequence.of(after));
        if (merged.isEmpty()) {
            clashes.add(path);
        }
        tree.removeAll();
        merged.orElse(Sequence.of(after)).forEach(tree::add);
        return tree;
    }

    /** Rows that kept their key keep what we do not know of them. */
    private ArrayNode rows(String path, ArrayNode tree, ArrayNode before, ArrayNode after) {
        Map<String, JsonNode> known = byKey(before);
        Map<String, JsonNode> kept = byKey(tree);
        Map<String, JsonNode> wanted = byKey(after);
        var rows = new ArrayList<JsonNode>();
        wanted.forEach((key, row) -> {
            boolean same = row.equals(known.get(key));
            if (kept.containsKey(key)) {
                rows.add(same ? kept.get(key) : merged(path, kept.get(key), known.get(key), row));
            } else if (!same) {
                rows.add(row.deepCopy());
            }
        });
        kept.forEach((key, row) -> {
            if (!known.containsKey(key) && !wanted.containsKey(key)) {
                rows.add(row);
            } else if (!wanted.containsKey(key)) {
                giveWay(path, row, known.get(key), null);
            }
        });
        tree.removeAll();
        return tree.addAll(rows);
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
