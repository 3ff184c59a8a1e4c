package planewright.app.calc;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import planewright.api.calculator.Language;
import planewright.api.quantity.Units;
import planewright.app.store.JsonFiles;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.UnitChoice;
import planewright.shared.quantity.Written;

/** Inputs as people type them, in a form or behind an option. */
public final class InputTexts {
    private static final int SHORT_HASH = 12;

    private InputTexts() {}

    /** What is read of a value, in the unit that somebody prefers; empty for an absent one. */
    public static String shown(Field field, JsonNode node, UnitChoice units) {
        if (field.kind() == Kind.QUANTITY && node != null && !node.isNull()) {
            try {
                var kind = field.unit().orElseThrow();
                UnitChoice shown = unit -> units.preferred(unit).map(chosen -> units.shown(kind));
                return shown.written(QuantityJson.read(node, kind))
                        .text(field.language().locale());
            } catch (QuantityProblem unreadable) {
                return quantity(field, node);
            }
        }
        return text(field, node);
    }

    /** What a value is where nothing else is known, as it is read; may be empty. */
    public static String initial(Field field, UnitChoice units) {
        return field.kind() == Kind.QUANTITY ? shown(field, node(field.initial()), units) : field.toldInitial();
    }

    /** As {@link #node(String)}; a number alone is in the unit that is preferred. */
    public static JsonNode node(Field field, String typed, UnitChoice units) {
        var preferred = field.unit().map(units::shown);
        if (preferred.equals(field.unit())) {
            return node(typed);
        }
        try {
            var written = QuantityText.parse(typed, Units.NUMBER);
            return written.unit().equals(Units.NUMBER)
                    ? node(new Written(written.number(), preferred.orElseThrow(), written.plusMinus()).text())
                    : node(typed);
        } catch (QuantityProblem unreadable) {
            return node(typed);
        }
    }

    /** A value as it was given; empty for an absent one. */
    public static String text(Field field, JsonNode node) {
        if (node == null || node.isNull()) {
            return "";
        }
        return switch (field.kind()) {
            case QUANTITY -> quantity(field, node);
            case YES_NO -> field.language().say(node.asBoolean() ? "yes" : "no");
            case DATE_TIME -> ClockText.typed(node.asText());
            case PLANFORM -> planform(field.language(), node);
            case OUTLINE -> outline(field.language(), node);
            case CALENDAR -> calendar(field.language(), node);
            case PICTURE -> picture(node);
            default -> node.asText();
        };
    }

    /** The JSON of what was typed; an empty text is absent. */
    public static JsonNode node(String typed) {
        return typed.isBlank() ? JsonFiles.object().nullNode() : TextNode.valueOf(typed.strip());
    }

    /**
     * A row typed behind an option: {@code name=motor, mass=62 g, x=40 mm}.
     *
     * @throws IllegalArgumentException if a piece is no {@code name=value}; the message names it
     */
    public static ObjectNode row(Field field, String typed) {
        var row = JsonFiles.object();
        var names = field.row().orElseThrow().fields().stream().map(Field::name).collect(Collectors.joining(", "));
        for (var piece : typed.split(",\\s*(?=[A-Za-z]+\\s*=)")) {
            int at = piece.indexOf('=');
            if (at < 1) {
                throw new IllegalArgumentException(
                        "'" + piece.strip() + "' of " + field.option() + " is no name=value; accepted names: " + names);
            }
            row.set(piece.substring(0, at).strip(), node(piece.substring(at + 1)));
        }
        return row;
    }

    /** Fields under their headings, in order. */
    public static Map<String, java.util.List<Field>> byHeading(Shape shape) {
        return shape.fields().stream()
                .collect(Collectors.groupingBy(Field::under, LinkedHashMap::new, Collectors.toList()));
    }

    private static String quantity(Field field, JsonNode node) {
        try {
            return QuantityJson.read(node, field.unit().orElseThrow()).text();
        } catch (QuantityProblem unreadable) {
            return node.isTextual()
                    ? node.asText()
                    : node.path("value").asText() + " "
                            + Units.ofCode(node.path("unit").asText())
                                    .map(Units::symbolOf)
                                    .orElse(node.path("unit").asText());
        }
    }

    private static String outline(Language language, JsonNode node) {
        return node.isObject()
                ? size(node.path("width")) + " × " + size(node.path("height")) + " mm, "
                        + counted(language, node.path("paths").size(), "line", "lines")
                : node.asText();
    }

    private static String size(JsonNode millimetres) {
        return QuantityJson.digits(Math.rint(millimetres.asDouble() * 10) / 10);
    }

    private static String calendar(Language language, JsonNode node) {
        return language.say("{0} a week", counted(language, node.path("week").size(), "session", "sessions")) + ", "
                + counted(language, node.path("otherDays").size(), "other day", "other days");
    }

    private static String counted(Language language, int number, String one, String more) {
        return number + " " + language.say(number == 1 ? one : more);
    }

    /** Its caption; of one without, how its hash begins. */
    private static String picture(JsonNode node) {
        if (node.isTextual()) {
            return node.asText();
        }
        var caption = node.path("caption").asText();
        return caption.isBlank() ? node.path("hash").asText().substring(0, SHORT_HASH) : caption;
    }

    private static String planform(Language language, JsonNode node) {
        int controls = 0;
        for (var surface : node.path("surfaces")) {
            controls += surface.path("controls").size();
        }
        var words = counted(language, node.path("surfaces").size(), "surface", "surfaces") + ", "
                + counted(language, node.path("bodies").size(), "body", "bodies");
        return controls == 0
                ? words
                : words + ", " + counted(language, controls, "control surface", "control surfaces");
    }
}
