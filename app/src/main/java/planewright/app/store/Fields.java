package planewright.app.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.quantity.Written;

/** Reads the fields of an object; a refusal names the field, its value and what is accepted. */
final class Fields {
    private final String path;
    private final ObjectNode object;

    Fields(ObjectNode object) {
        this("", object);
    }

    private Fields(String path, ObjectNode object) {
        this.path = path;
        this.object = object;
    }

    /** A text that says something: an empty one would not be written again. */
    String text(String name) throws Unreadable {
        return optionalText(name)
                .filter(text -> !text.isEmpty())
                .orElseThrow(() -> problem(name, StoreWords.say(object.has(name) ? "empty" : "missing"), "a text"));
    }

    String textOr(String name, String otherwise) throws Unreadable {
        return optionalText(name).orElse(otherwise);
    }

    Optional<String> optionalText(String name) throws Unreadable {
        var node = object.get(name);
        if (node != null && !node.isTextual()) {
            throw problem(name, shown(node), "a text");
        }
        return Optional.ofNullable(node).map(JsonNode::textValue);
    }

    int whole(String name) throws Unreadable {
        var node = object.get(name);
        if (node == null || !node.isIntegralNumber() || !node.canConvertToInt()) {
            throw problem(name, shown(node), "a whole number");
        }
        return node.intValue();
    }

    double number(String name) throws Unreadable {
        var node = object.get(name);
        if (node == null || !node.isNumber() || !Double.isFinite(node.doubleValue())) {
            throw problem(name, shown(node), "a number");
        }
        return node.doubleValue();
    }

    double numberOr(String name, double otherwise) throws Unreadable {
        return object.has(name) ? number(name) : otherwise;
    }

    boolean flag(String name) throws Unreadable {
        var node = object.get(name);
        if (node != null && !node.isBoolean()) {
            throw problem(name, shown(node), "true or false");
        }
        return node != null && node.booleanValue();
    }

    LocalDate date(String name) throws Unreadable {
        return parsed(name, LocalDate::parse, "a date such as 2025-03-14");
    }

    LocalDateTime time(String name) throws Unreadable {
        return parsed(name, LocalDateTime::parse, "a date and time such as 2025-03-14T20:15");
    }

    LocalTime clock(String name) throws Unreadable {
        return parsed(name, LocalTime::parse, "a time of day such as 20:15");
    }

    Optional<LocalDateTime> optionalTime(String name) throws Unreadable {
        return object.has(name) ? Optional.of(time(name)) : Optional.empty();
    }

    <T> T word(String name, T[] values, Function<T, String> word) throws Unreadable {
        var text = text(name);
        for (var value : values) {
            if (word.apply(value).equals(text)) {
                return value;
            }
        }
        throw problem(
                name,
                "'" + text + "'",
                String.join(", ", List.of(values).stream().map(word).toList()));
    }

    List<String> texts(String name) throws Unreadable {
        var texts = new ArrayList<String>();
        for (var element : array(name)) {
            if (!element.isTextual()) {
                throw problem(name, shown(element), "texts only");
            }
            texts.add(element.textValue());
        }
        return texts;
    }

    <T> List<T> rows(String name, Reader<T> reader) throws Unreadable {
        var rows = new ArrayList<T>();
        int number = 0;
        for (var element : array(name)) {
            rows.add(read(path + name + "[" + number++ + "]", element, reader));
        }
        return rows;
    }

    <T> Optional<T> nested(String name, Reader<T> reader) throws Unreadable {
        var node = object.get(name);
        return node == null ? Optional.empty() : Optional.of(read(path + name, node, reader));
    }

    <T> T required(String name, Reader<T> reader) throws Unreadable {
        return nested(name, reader).orElseThrow(() -> problem(name, StoreWords.say("missing"), "an object"));
    }

    Optional<ObjectNode> tree(String name) throws Unreadable {
        var node = object.get(name);
        if (node != null && !node.isObject()) {
            throw problem(name, shown(node), "an object");
        }
        return Optional.ofNullable((ObjectNode) node).map(ObjectNode::deepCopy);
    }

    /** The quantity whose number, unit and ± stand in this object. */
    Written written() throws Unreadable {
        var code = text("unit");
        var unit =
                Units.ofCode(code).orElseThrow(() -> problem("unit", "'" + code + "'", "a UCUM code such as g or mm"));
        return checked("value", () -> new Written(text("value"), unit, optionalText("plusMinus")));
    }

    <Q extends Quantity<Q>> Optional<Measured<Q>> measured(String name, Class<Q> kind) throws Unreadable {
        return nested(
                name,
                fields ->
                        fields.checked("unit", () -> fields.written().measured().asType(kind)));
    }

    /** What a record's constructor makes of values, its refusal told as this object's. */
    <T> T checked(String name, Maker<T> maker) throws Unreadable {
        try {
            return maker.make();
        } catch (IllegalArgumentException | ClassCastException refused) {
            var place = (path + name).replaceFirst("\\.$", "");
            throw place.isEmpty()
                    ? new Unreadable(refused.getMessage())
                    : new Unreadable("field '{0}': {1}", place, refused.getMessage());
        }
    }

    /** Reads an object. */
    interface Reader<T> {
        T read(Fields fields) throws Unreadable;
    }

    /** Makes a value of what was read. */
    interface Maker<T> {
        T make() throws Unreadable;
    }

    private <T> T read(String place, JsonNode node, Reader<T> reader) throws Unreadable {
        if (!(node instanceof ObjectNode nested)) {
            throw new Unreadable("field '{0}' is {1}; accepted: an object", place, shown(node));
        }
        var fields = new Fields(place + ".", nested);
        return fields.checked("", () -> reader.read(fields));
    }

    private Iterable<JsonNode> array(String name) throws Unreadable {
        var node = object.get(name);
        if (node != null && !node.isArray()) {
            throw problem(name, shown(node), "a list");
        }
        return node == null ? List.of() : node;
    }

    private <T> T parsed(String name, Function<String, T> parser, String accepted) throws Unreadable {
        var text = text(name);
        try {
            return parser.apply(text);
        } catch (DateTimeException broken) {
            throw problem(name, "'" + text + "'", accepted);
        }
    }

    private Unreadable problem(String name, String value, String accepted) {
        return new Unreadable("field '{0}{1}' is {2}; accepted: {3}", path, name, value, StoreWords.say(accepted));
    }

    private static String shown(JsonNode node) {
        if (node == null) {
            return StoreWords.say("missing");
        }
        var text = node.toString();
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }
}
