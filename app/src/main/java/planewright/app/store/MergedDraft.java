package planewright.app.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import planewright.app.journal.EntryDraft;

/**
 * What somebody was writing and what was saved meanwhile, put together field by field. A field that one side left alone is the other
 * side's; rows of lists are joined; of a field that both changed the saved value stays, and the other is told. Text is kept from both.
 *
 * @param draft both together
 * @param told fields that both changed, with what was being written: {@code title: 'Fin'}
 */
public record MergedDraft(EntryDraft draft, List<String> told) {
    private static final String TEXT = "text";
    private static final String ID = "id";
    private static final String HASH = "hash";

    /**
     * Puts them together.
     *
     * @param base what both began with
     * @param written what was being written
     * @param saved what is saved
     */
    public static MergedDraft of(EntryDraft base, EntryDraft written, EntryDraft saved) {
        var told = new ArrayList<String>();
        var merged = fields(Drafts.tree(base), Drafts.tree(written), Drafts.tree(saved), told);
        try {
            return new MergedDraft(Drafts.draft(merged), List.copyOf(told));
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("fields of three drafts that make none", impossible);
        }
    }

    private static ObjectNode fields(JsonNode base, JsonNode written, JsonNode saved, List<String> told) {
        var merged = JsonFiles.object();
        written.fieldNames()
                .forEachRemaining(name ->
                        merged.set(name, field(name, base.path(name), written.path(name), saved.path(name), told)));
        return merged;
    }

    private static JsonNode field(String name, JsonNode base, JsonNode written, JsonNode saved, List<String> told) {
        if (written.equals(base) || written.equals(saved)) {
            return saved;
        }
        if (saved.equals(base)) {
            return written;
        }
        if (written instanceof ArrayNode rows) {
            return rows(base, rows, (ArrayNode) saved);
        }
        if (name.equals(TEXT)) {
            return JsonFiles.object().textNode(saved.asText() + "\n\n" + written.asText());
        }
        told.add(name + ": '" + written.asText() + "'");
        return saved;
    }

    /** Saved rows but those that were being taken away or changed; then rows that were being added. */
    private static ArrayNode rows(JsonNode base, ArrayNode written, ArrayNode saved) {
        var before = set(base);
        var mine = set(written);
        var used = set(saved);
        var merged = JsonFiles.object().arrayNode();
        for (var row : saved) {
            if (mine.contains(row) || !before.contains(row)) {
                merged.add(row);
            } else {
                written.forEach(changed -> {
                    if (isSameRow(row, changed) && used.add(changed)) {
                        merged.add(changed);
                    }
                });
            }
        }
        for (var row : written) {
            if (!before.contains(row) && used.add(row)) {
                add(row, merged);
            }
        }
        return merged;
    }

    /** A row whose id is taken gets a new one when it is saved; a picture is shown once, with the words that are saved. */
    private static void add(JsonNode row, ArrayNode merged) {
        for (var other : merged) {
            if (isSameRow(row, other)) {
                if (row.has(ID)) {
                    merged.add(row.<ObjectNode>deepCopy().put(ID, ""));
                }
                return;
            }
        }
        merged.add(row);
    }

    private static boolean isSameRow(JsonNode one, JsonNode other) {
        var key = one.has(ID) ? one.path(ID) : one.path(HASH);
        return !key.asText().isEmpty() && key.equals(one.has(ID) ? other.path(ID) : other.path(HASH));
    }

    private static Set<JsonNode> set(JsonNode rows) {
        var set = new HashSet<JsonNode>();
        rows.forEach(set::add);
        return set;
    }
}
