package planewright.app.calc;

import com.fasterxml.jackson.databind.node.ObjectNode;
import planewright.api.figure.Outline;
import planewright.app.store.JsonFiles;

/** JSON Schema of values that are made of many numbers. */
final class StructureSchemas {
    private static final int OF_A_POINT = 2;
    private static final int OF_A_CURVE = 6;

    private StructureSchemas() {}

    /** An outline, or on the way in the name of a template. */
    static ObjectNode outline(boolean input) {
        return input ? named(outline(), "the name of an outline template of the journal") : outline();
    }

    /** A picture that the journal keeps, or on the way in what it is called. */
    static ObjectNode picture(boolean input) {
        var picture = object();
        var properties = picture.putObject("properties");
        properties.putObject("hash").put("type", "string").put("pattern", "^[0-9a-f]{64}$");
        properties.putObject("type").put("type", "string").put("pattern", "^[a-z0-9]{1,8}$");
        properties.putObject("caption").put("type", "string");
        picture.putArray("required").add("hash").add("type");
        return input ? named(picture, "the caption of a picture of the journal, or how its hash begins") : picture;
    }

    /** A calendar as the journal's own file has it. */
    static ObjectNode calendar() {
        var calendar = object();
        var properties = calendar.putObject("properties");
        for (var list : new String[] {"week", "otherDays", "shop"}) {
            properties.putObject(list).put("type", "array").putObject("items").put("type", "object");
        }
        return calendar;
    }

    private static ObjectNode outline() {
        var outline = object();
        var properties = outline.putObject("properties");
        for (var edge : new String[] {"width", "height"}) {
            properties
                    .putObject(edge)
                    .put("type", "number")
                    .put("exclusiveMinimum", 0)
                    .put("maximum", Outline.MOST_MILLIMETRES)
                    .put("description", "mm");
        }
        properties.putObject("paths").put("type", "array").put("minItems", 1).set("items", path());
        outline.putArray("required").add("width").add("height").add("paths");
        return outline;
    }

    private static ObjectNode path() {
        var path = object();
        var properties = path.putObject("properties");
        properties.set("start", numbers(OF_A_POINT));
        var pieces = properties.putObject("pieces").put("type", "array").put("minItems", 1);
        pieces.putObject("items").putArray("anyOf").add(numbers(OF_A_POINT)).add(numbers(OF_A_CURVE));
        properties.putObject("closed").put("type", "boolean");
        path.putArray("required").add("start").add("pieces");
        return path;
    }

    private static ObjectNode numbers(int count) {
        var numbers =
                JsonFiles.object().put("type", "array").put("minItems", count).put("maxItems", count);
        numbers.putObject("items").put("type", "number");
        return numbers;
    }

    private static ObjectNode named(ObjectNode object, String what) {
        var schema = JsonFiles.object();
        schema.putArray("anyOf").add(object).addObject().put("type", "string").put("description", what);
        return schema;
    }

    private static ObjectNode object() {
        return JsonFiles.object().put("type", "object");
    }
}
