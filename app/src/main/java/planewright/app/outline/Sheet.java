package planewright.app.outline;

import java.util.Map;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamReader;

/**
 * The sheet that an SVG file is drawn on.
 *
 * @param width mm
 * @param height mm
 * @param toMillimetres from the file's coordinates, y downwards, to millimetres from the lower left corner, y upwards
 */
record Sheet(double width, double height, Transform toMillimetres) {
    /** CSS Values 3, 5.2: absolute lengths. Pixels are left out: programs disagree on how many make an inch. */
    private static final Map<String, Double> MILLIMETRES = Map.of("mm", 1.0, "cm", 10.0, "in", 25.4);

    private static final Pattern LENGTH = Pattern.compile("\\s*([0-9.eE+-]+?)\\s*(mm|cm|in)\\s*");

    /** How much the scales across and along may differ before a shape would be drawn out; rounding of files stays below. */
    private static final double ALIKE = 1e-3;

    static Sheet of(XMLStreamReader svg) throws OutlineRefused {
        double width = millimetres(svg, "width");
        double height = millimetres(svg, "height");
        var box = svg.getAttributeValue(null, "viewBox");
        if (box == null) {
            throw new OutlineRefused(
                    "it has no viewBox, which tells how long its unit is; accepted: width and height in mm, and a viewBox");
        }
        var numbers = new PathNumbers(box).all();
        if (numbers.length != 4 || !(numbers[2] > 0) || !(numbers[3] > 0)) {
            throw new OutlineRefused("its viewBox is '{0}'; accepted: four numbers, the last two above 0", box);
        }
        double across = width / numbers[2];
        double along = height / numbers[3];
        if (Math.abs(across / along - 1) > ALIKE) {
            throw new OutlineRefused(
                    "its viewBox '{0}' is not in proportion to {1} mm × {2} mm; accepted: one scale for both",
                    box, width, height);
        }
        return new Sheet(
                width,
                height,
                new Transform(across, 0, 0, -across, -across * numbers[0], height + across * numbers[1]));
    }

    private static double millimetres(XMLStreamReader svg, String attribute) throws OutlineRefused {
        var text = svg.getAttributeValue(null, attribute);
        var length = LENGTH.matcher(text == null ? "" : text);
        if (!length.matches()) {
            throw new OutlineRefused(
                    "its {0} is {1}, so its true size is not known; accepted: a length such as 212.5mm, 21.25cm or 8in",
                    attribute, text == null ? OutlineWords.say("missing") : "'" + text + "'");
        }
        try {
            return Double.parseDouble(length.group(1)) * MILLIMETRES.get(length.group(2));
        } catch (NumberFormatException wrong) {
            throw new OutlineRefused("its {0} is '{1}'; accepted: a length such as 212.5mm", attribute, text);
        }
    }
}
