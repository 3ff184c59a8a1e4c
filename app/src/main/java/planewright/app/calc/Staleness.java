package planewright.app.calc;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import planewright.api.journal.JournalReader;
import planewright.app.journal.KeptResult;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.UnitChoice;

/** Tells what has changed in the journal since a result was kept. */
public final class Staleness {
    private static final Set<Kind> STRUCTURES = EnumSet.of(Kind.PLANFORM, Kind.OUTLINE, Kind.CALENDAR, Kind.PICTURE);

    private final Described described;
    private final JournalReader journal;
    private final KeptResult kept;
    private final UnitChoice units;
    private final List<String> changes = new ArrayList<>();

    private Staleness(Described described, JournalReader journal, KeptResult kept, UnitChoice units) {
        this.units = units;
        this.described = described;
        this.journal = journal;
        this.kept = kept;
    }

    /**
     * What differs, a line each; empty while the result is fresh. Only inputs that came from the journal count.
     *
     * @param described the calculator as it is now
     * @param units in which it is told; whether it differs is asked in the calculator's own
     */
    public static List<String> changes(
            KeptResult kept, Described described, JournalReader journal, String buildId, UnitChoice units) {
        var staleness = new Staleness(described, journal, kept, units);
        staleness.compare(Prefill.of(described, journal, buildId).inputs());
        return List.copyOf(staleness.changes);
    }

    private void compare(ObjectNode now) {
        if (!kept.version().equals(described.about().version())) {
            changes.add(described
                    .language()
                    .say(
                            "the calculator was version {0}, now {1}",
                            kept.version(), described.about().version()));
        }
        for (var field : described.inputs().fields()) {
            if (field.kind() == Kind.ROWS) {
                rows(field, now.path(field.name()));
            } else if (kept.origins().has(field.name())) {
                value(field, field.label(), kept.inputs().get(field.name()), now.get(field.name()));
            }
        }
    }

    private void rows(Field field, JsonNode now) {
        var then = kept.inputs().path(field.name());
        var key = field.row().orElseThrow().fields().stream()
                .filter(cell -> cell.kind() == Kind.TEXT)
                .map(Field::name)
                .findFirst();
        if (!cameFromJournal(field) || key.isEmpty()) {
            return;
        }
        for (int i = 0; i < then.size(); i++) {
            var row = then.get(i);
            var name = row.path(key.get()).asText();
            var current = find(now, key.get(), name);
            if (current.isEmpty()) {
                changes.add(described.language().say("'{0}' is no longer among {1}", name, inSentence(field)));
            } else {
                row(field, field.name() + "[" + i + "].", name, row, current.get());
            }
        }
        for (var row : now) {
            var name = row.path(key.get()).asText();
            if (find(then, key.get(), name).isEmpty()) {
                changes.add(described.language().say("'{0}' is new among {1}", name, inSentence(field)));
            }
        }
    }

    private void row(Field field, String path, String name, JsonNode then, JsonNode now) {
        for (var cell : field.row().orElseThrow().fields()) {
            if (kept.origins().has(path + cell.name())) {
                value(
                        cell,
                        described.language().say("{0} of '{1}'", inSentence(cell), name),
                        then.get(cell.name()),
                        now.get(cell.name()));
            }
        }
    }

    private void value(Field field, String name, JsonNode then, JsonNode now) {
        if (now != null && STRUCTURES.contains(field.kind())) {
            if (then == null || !then.equals(Staleness::compareNumbers, whole(now))) {
                changes.add(described.language().say("{0} has changed", name));
            }
            return;
        }
        if (!shown(field, then).equals(shown(field, now))) {
            var told = field.in(units);
            changes.add(described.language().say("{0} was {1}, now {2}", name, shown(told, then), shown(told, now)));
        }
    }

    /** Numbers from a file have all digits, computed ones are doubles. */
    private static int compareNumbers(JsonNode one, JsonNode other) {
        if (one.isNumber() && other.isNumber()) {
            return Double.compare(one.doubleValue(), other.doubleValue());
        }
        return one.equals(other) ? 0 : 1;
    }

    /** The outline itself, where the journal's value names it. */
    private JsonNode whole(JsonNode now) {
        return now.isTextual()
                ? Shelved.outline(journal, now.textValue())
                        .flatMap(journal::outline)
                        .<JsonNode>map(OutlineJson::write)
                        .orElse(now)
                : now;
    }

    private static String inSentence(Field field) {
        return field.language().locale().getLanguage().equals("en")
                ? field.label().toLowerCase(Locale.ROOT)
                : field.label();
    }

    private static String shown(Field field, JsonNode node) {
        if (node == null) {
            return field.language().say("not known");
        }
        if (field.kind() == Kind.DATE_TIME) {
            return ClockText.typed(node.asText());
        }
        if (field.kind() != Kind.QUANTITY) {
            return InputTexts.text(field, node);
        }
        try {
            var unit = field.unit().orElseThrow();
            return QuantityText.show(
                    QuantityText.in(QuantityJson.read(node, unit).measured(), unit),
                    field.language().locale());
        } catch (QuantityProblem unreadable) {
            return node.toString();
        }
    }

    private boolean cameFromJournal(Field field) {
        for (var origin : kept.origins().properties()) {
            if (origin.getKey().startsWith(field.name() + "[")) {
                return true;
            }
        }
        return false;
    }

    private static Optional<JsonNode> find(JsonNode rows, String key, String name) {
        if (rows instanceof ArrayNode array) {
            for (var row : array) {
                if (row.path(key).asText().equalsIgnoreCase(name)) {
                    return Optional.of(row);
                }
            }
        }
        return Optional.empty();
    }
}
