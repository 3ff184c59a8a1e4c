package planewright.app.calc;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Collectors;
import planewright.api.quantity.Units;
import planewright.app.store.JsonFiles;

/** JSON Schema (2020-12) of a calculator's inputs and results. */
public final class JsonSchemas {
    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

    private JsonSchemas() {}

    /** One schema of an object with the properties {@code inputs} and {@code results}. */
    public static ObjectNode describe(Described described) {
        var schema = JsonFiles.object()
                .put("$schema", DIALECT)
                .put("title", described.about().title())
                .put("description", described.about().question())
                .put("type", "object");
        var properties = schema.putObject("properties");
        properties.putObject("calculator").put("const", described.id());
        properties.putObject("version").put("type", "string");
        properties.set("inputs", record(described.inputs(), true));
        properties.set("results", record(described.results(), false));
        schema.putArray("required").add("inputs");
        return schema;
    }

    private static ObjectNode record(Shape shape, boolean input) {
        var schema = JsonFiles.object().put("type", "object");
        var properties = schema.putObject("properties");
        var required = JsonFiles.object().arrayNode();
        for (var field : shape.fields()) {
            properties.set(field.name(), field(field, input));
            if (input && !field.optional() && field.initial().isEmpty() && needed(field)) {
                required.add(field.name());
            }
        }
        if (!required.isEmpty()) {
            schema.set("required", required);
        }
        return schema.put("additionalProperties", false);
    }

    private static boolean needed(Field field) {
        return field.kind() != Kind.TEXT && field.kind() != Kind.YES_NO;
    }

    private static ObjectNode field(Field field, boolean input) {
        var schema = switch (field.kind()) {
            case QUANTITY -> quantity(field, input);
            case TEXT -> text(field);
            case YES_NO -> JsonFiles.object().put("type", "boolean");
            case WHOLE_NUMBER -> JsonFiles.object().put("type", "integer");
            case CHOICE -> choice(field);
            case DATE_TIME -> dateTime(input);
            case PLANFORM, DRAWING -> JsonFiles.object().put("type", "object");
            case OUTLINE -> StructureSchemas.outline(input);
            case CALENDAR -> StructureSchemas.calendar();
            case PICTURE -> StructureSchemas.picture(input);
            case CHART -> chart();
            case ROWS -> list(record(field.row().orElseThrow(), input));
            case FINDINGS -> list(finding());
            case PROPOSALS -> list(proposal());
        };
        schema.put("title", field.label());
        if (!field.help().isEmpty()) {
            schema.put("description", field.help());
        }
        if (!field.initial().isEmpty()) {
            schema.put("default", field.initial());
        }
        return schema;
    }

    private static ObjectNode quantity(Field field, boolean input) {
        var unit = field.unit().orElseThrow();
        var object = JsonFiles.object().put("type", "object");
        var properties = object.putObject("properties");
        var number = input
                ? JsonFiles.object().set("type", texts("number", "string"))
                : JsonFiles.object().put("type", "number");
        properties.set("value", number);
        var codes = properties.putObject("unit").putArray("enum");
        Units.alike(unit).forEach(coded -> codes.add(coded.code()));
        properties.set("plusMinus", number.deepCopy());
        object.putArray("required").add("value").add("unit");
        if (!input) {
            return object;
        }
        var schema = JsonFiles.object();
        var any = schema.putArray("anyOf").add(object);
        any.addObject()
                .put("type", "string")
                .put(
                        "description",
                        "such as \"12 " + Units.symbolOf(unit) + " ± 1 "
                                + Units.symbolOf(unit) + "\"; units: "
                                + Units.alike(unit).stream()
                                        .map(Units.Coded::symbol)
                                        .collect(Collectors.joining(", ")));
        any.addObject().put("type", "number").put("description", "in " + Units.codeOf(unit));
        var accepted = field.bounds().accepted(field.language());
        return accepted.isEmpty() ? schema : schema.put("$comment", "accepted: " + accepted);
    }

    private static com.fasterxml.jackson.databind.node.ArrayNode texts(String... texts) {
        var array = JsonFiles.object().arrayNode();
        for (var text : texts) {
            array.add(text);
        }
        return array;
    }

    private static ObjectNode choice(Field field) {
        var schema = JsonFiles.object();
        var words = schema.putArray("enum");
        field.choices().forEach(words::add);
        return schema;
    }

    private static ObjectNode text(Field field) {
        var schema = JsonFiles.object().put("type", "string");
        if (!field.choices().isEmpty()) {
            var examples = schema.putArray("examples");
            field.choices().forEach(examples::add);
        }
        return schema;
    }

    private static ObjectNode dateTime(boolean input) {
        var schema = JsonFiles.object().put("type", "string");
        return input
                ? schema.put(
                                "pattern",
                                "^\\s*(now|NOW|Now|\\d{4}-\\d{2}-\\d{2}[T ]\\d{2}:\\d{2}(:\\d{2}(\\.\\d+)?)?)\\s*$")
                        .put("$comment", "accepted: " + ClockText.ACCEPTED)
                : schema.put("pattern", "^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}");
    }

    private static ObjectNode list(ObjectNode items) {
        return JsonFiles.object().put("type", "array").set("items", items);
    }

    private static ObjectNode chart() {
        var schema = JsonFiles.object().put("type", "object");
        schema.putObject("properties")
                .set(
                        "kind",
                        JsonFiles.object()
                                .set(
                                        "enum",
                                        texts(FigureJson.KINDS.keySet().stream()
                                                .sorted()
                                                .toArray(String[]::new))));
        schema.putArray("required").add("kind").add("title");
        return schema;
    }

    private static ObjectNode finding() {
        var schema = JsonFiles.object().put("type", "object");
        var properties = schema.putObject("properties");
        properties.set("grade", JsonFiles.object().set("enum", texts("fine", "look again", "stop")));
        properties.putObject("text").put("type", "string");
        schema.putArray("required").add("grade").add("text");
        return schema;
    }

    private static ObjectNode proposal() {
        var schema = JsonFiles.object().put("type", "object");
        var properties = schema.putObject("properties");
        properties.set(
                "kind",
                JsonFiles.object()
                        .set("enum", texts("measurement", "set-up value", "joint", "task", "outline", "text")));
        properties.putObject("name").put("type", "string");
        properties.putObject("value").put("type", "object");
        for (var joint : List.of("material", "start", "handsOffUntil", "fullyCured")) {
            properties.putObject(joint).put("type", "string");
        }
        properties.putObject("handsOn").put("type", "object");
        properties.set("outline", StructureSchemas.outline(false));
        for (var texts : List.of("notes", "text")) {
            properties.set(texts, list(JsonFiles.object().put("type", "string")));
        }
        schema.putArray("required").add("kind").add("name");
        return schema;
    }
}
