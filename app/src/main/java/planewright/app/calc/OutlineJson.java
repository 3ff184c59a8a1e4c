package planewright.app.calc;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import planewright.api.figure.Outline;
import planewright.api.figure.Point;
import planewright.app.outline.OutlineShelf;
import planewright.app.store.JsonFiles;

/**
 * Outlines as calculators' JSON carries them, in millimetres: {@code {"width": 60, "height": 40, "paths": [{"start": [0, 0],
 * "pieces": [[60, 0], [60, 20, 40, 40, 0, 40]], "closed": true}]}}. A piece of two numbers is a straight line to a point, one
 * of six a cubic curve by its two control points.
 */
public final class OutlineJson {
    private static final String FORM = "an object with width, height and paths, each with start and pieces";

    private OutlineJson() {}

    /**
     * The outline of an SVG file.
     *
     * @throws planewright.app.outline.OutlineRefused if it cannot be read as an outline; the message says why
     */
    public static ObjectNode ofFile(Path svg) throws IOException {
        return write(OutlineShelf.of(svg));
    }

    static ObjectNode write(Outline outline) {
        var node = JsonFiles.object().put("width", outline.width()).put("height", outline.height());
        var paths = node.putArray("paths");
        for (var path : outline.paths()) {
            var object = paths.addObject();
            points(object.putArray("start"), path.start());
            var pieces = object.putArray("pieces");
            for (var piece : path.pieces()) {
                if (piece instanceof Outline.Curve curve) {
                    points(pieces.addArray(), curve.first(), curve.second(), curve.end());
                } else {
                    points(pieces.addArray(), piece.end());
                }
            }
            object.put("closed", path.closed());
        }
        return node;
    }

    /** @throws IllegalArgumentException where it is no outline; the message says what is accepted */
    static Outline read(JsonNode node) {
        var paths = new ArrayList<Outline.Path>();
        for (var path : array(node, "paths")) {
            var pieces = new ArrayList<Outline.Piece>();
            for (var piece : array(path, "pieces")) {
                pieces.add(piece(piece));
            }
            paths.add(new Outline.Path(
                    point(numbers(path.path("start"), 2), 0),
                    pieces,
                    path.path("closed").asBoolean()));
        }
        return new Outline(number(node.path("width")), number(node.path("height")), paths);
    }

    private static Outline.Piece piece(JsonNode node) {
        if (node.size() != 6) {
            return new Outline.Line(point(numbers(node, 2), 0));
        }
        var numbers = numbers(node, 6);
        return new Outline.Curve(point(numbers, 0), point(numbers, 2), point(numbers, 4));
    }

    private static Point point(List<Double> numbers, int from) {
        return new Point(numbers.get(from), numbers.get(from + 1));
    }

    private static List<Double> numbers(JsonNode node, int count) {
        if (!node.isArray() || node.size() != count) {
            throw new IllegalArgumentException("'" + node + "' is no point; accepted: two numbers, of a curve six");
        }
        var numbers = new ArrayList<Double>();
        node.forEach(each -> numbers.add(number(each)));
        return numbers;
    }

    private static double number(JsonNode node) {
        if (!node.isNumber()) {
            throw new IllegalArgumentException("'" + node.asText() + "' is no number; accepted: millimetres");
        }
        return node.doubleValue();
    }

    private static JsonNode array(JsonNode node, String name) {
        var array = node.path(name);
        if (!array.isArray()) {
            throw new IllegalArgumentException("'" + name + "' is missing or no list; accepted: " + FORM);
        }
        return array;
    }

    private static void points(ArrayNode array, Point... points) {
        for (var point : points) {
            array.add(point.x()).add(point.y());
        }
    }
}
