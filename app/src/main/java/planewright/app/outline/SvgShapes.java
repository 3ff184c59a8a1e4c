package planewright.app.outline;

import java.util.Optional;
import javax.xml.stream.XMLStreamReader;

/** The shapes of SVG 1.1, 8 and 9, drawn with a pen. */
final class SvgShapes {
    private final XMLStreamReader xml;
    private final Pen pen;

    private SvgShapes(XMLStreamReader xml, Pen pen) {
        this.xml = xml;
        this.pen = pen;
    }

    /**
     * Draws the element that the reader is at.
     *
     * @return false where it is none of the shapes
     */
    static boolean draw(String name, XMLStreamReader xml, Pen pen) throws OutlineRefused {
        var shape = new SvgShapes(xml, pen);
        switch (name) {
            case "path" -> PathData.draw(shape.text("d"), pen);
            case "line" -> shape.line();
            case "polyline" -> shape.points(false);
            case "polygon" -> shape.points(true);
            case "rect" -> shape.rectangle();
            case "circle" -> shape.ellipse(shape.length("r"), shape.length("r"));
            case "ellipse" -> shape.ellipse(shape.length("rx"), shape.length("ry"));
            default -> {
                return false;
            }
        }
        return true;
    }

    private void line() throws OutlineRefused {
        pen.move(length("x1"), length("y1"));
        pen.line(length("x2"), length("y2"));
    }

    private void points(boolean closed) throws OutlineRefused {
        var numbers = new PathNumbers(text("points")).all();
        if (numbers.length < 4 || numbers.length % 2 != 0) {
            throw new OutlineRefused(
                    "points of '{0}' are {1} numbers; accepted: an even number, 4 or more",
                    xml.getLocalName(), numbers.length);
        }
        pen.move(numbers[0], numbers[1]);
        for (int i = 2; i < numbers.length; i += 2) {
            pen.line(numbers[i], numbers[i + 1]);
        }
        if (closed) {
            pen.close();
        }
    }

    /** Source: SVG 1.1, 9.2: where one radius is missing it is that of the other, and none is more than half a side. */
    private void rectangle() throws OutlineRefused {
        double x = length("x");
        double y = length("y");
        double width = length("width");
        double height = length("height");
        var rx = optional("rx");
        var ry = optional("ry");
        double a = Math.min(rx.or(() -> ry).orElse(0.0), width / 2);
        double b = Math.min(ry.or(() -> rx).orElse(0.0), height / 2);
        if (!(width > 0) || !(height > 0)) {
            return;
        }
        var corner = new Arc(a, b, 0, false, true);
        pen.move(x + a, y);
        pen.line(x + width - a, y);
        corner.draw(pen, x + width, y + b);
        pen.line(x + width, y + height - b);
        corner.draw(pen, x + width - a, y + height);
        pen.line(x + a, y + height);
        corner.draw(pen, x, y + height - b);
        pen.line(x, y + b);
        corner.draw(pen, x + a, y);
        pen.close();
    }

    private void ellipse(double rx, double ry) throws OutlineRefused {
        if (!(rx > 0) || !(ry > 0)) {
            return;
        }
        double x = length("cx");
        double y = length("cy");
        var half = new Arc(rx, ry, 0, false, true);
        pen.move(x + rx, y);
        half.draw(pen, x - rx, y);
        half.draw(pen, x + rx, y);
        pen.close();
    }

    private String text(String attribute) {
        return Optional.ofNullable(xml.getAttributeValue(null, attribute)).orElse("");
    }

    private double length(String attribute) throws OutlineRefused {
        return optional(attribute).orElse(0.0);
    }

    private Optional<Double> optional(String attribute) throws OutlineRefused {
        var text = text(attribute);
        if (text.isBlank()) {
            return Optional.empty();
        }
        try {
            var numbers = new PathNumbers(text).all();
            if (numbers.length == 1) {
                return Optional.of(numbers[0]);
            }
        } catch (OutlineRefused unit) {
            // said below
        }
        throw new OutlineRefused(
                "{0} of '{1}' is '{2}'; accepted: a number in the unit of the viewBox",
                attribute, xml.getLocalName(), text);
    }
}
