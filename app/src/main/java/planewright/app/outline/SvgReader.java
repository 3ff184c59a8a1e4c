package planewright.app.outline;

import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import planewright.api.figure.Outline;
import planewright.app.files.ByteOrderMark;

/** Reads the lines and curves of an SVG file at their true size. The file is mistrusted. */
final class SvgReader {
    /** More than any outline has; chosen. */
    static final int MOST_BYTES = 4 << 20;

    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final int MOST_DEPTH = 64;
    private static final Pattern DECLARATIONS = Pattern.compile("<!ENTITY|<!DOCTYPE[^>\\[]*\\[");
    private static final Set<String> GROUPS = Set.of("g", "a", "switch");
    private static final Set<String> WITHOUT_LINES = Set.of(
            "title",
            "desc",
            "metadata",
            "defs",
            "text",
            "style",
            "symbol",
            "pattern",
            "marker",
            "clipPath",
            "mask",
            "filter",
            "linearGradient",
            "radialGradient",
            "view");

    /** What runs, moves or fetches something. */
    private static final Set<String> REFUSED = Set.of("script", "foreignObject", "image", "set");

    private static final Set<String> CUTTING = Set.of("clip-path", "mask");

    private final XMLStreamReader xml;
    private final List<Outline.Path> paths = new ArrayList<>();
    private final Deque<Transform> transforms = new ArrayDeque<>();
    private Sheet sheet;

    private SvgReader(XMLStreamReader xml) {
        this.xml = xml;
    }

    /**
     * The outline in the bytes of a file.
     *
     * @throws OutlineRefused if it is no SVG, has no true size, draws in a way that is not read, or could do harm
     */
    static Outline read(byte[] content) throws OutlineRefused {
        if (content.length > MOST_BYTES) {
            throw new OutlineRefused("it has {0} bytes; accepted: up to {1}", content.length, MOST_BYTES);
        }
        var text = text(content);
        if (DECLARATIONS.matcher(text).find()) {
            throw new OutlineRefused("it declares entities, which could do harm; accepted: SVG without them");
        }
        var factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
        try {
            var xml = factory.createXMLStreamReader(new StringReader(text));
            return new SvgReader(xml).outline();
        } catch (XMLStreamException broken) {
            var place = broken.getLocation();
            throw new OutlineRefused(
                    "it is not XML: line {0}, column {1}: {2}",
                    place.getLineNumber(),
                    place.getColumnNumber(),
                    broken.getMessage().replaceFirst("(?s)^ParseError.*\\nMessage: ", ""));
        } catch (IllegalArgumentException impossible) {
            throw new OutlineRefused(impossible.getMessage());
        }
    }

    private static String text(byte[] content) throws OutlineRefused {
        try {
            return ByteOrderMark.dropped(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .toString());
        } catch (CharacterCodingException broken) {
            throw new OutlineRefused("it is not UTF-8 text; accepted: SVG in UTF-8, not compressed");
        }
    }

    private Outline outline() throws XMLStreamException, OutlineRefused {
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                begin();
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                transforms.pop();
            }
        }
        if (paths.isEmpty()) {
            throw new OutlineRefused(
                    "it draws no lines; accepted: path, line, polyline, polygon, rect, circle, ellipse");
        }
        return new Outline(sheet.width(), sheet.height(), paths);
    }

    private void begin() throws XMLStreamException, OutlineRefused {
        var name = xml.getLocalName();
        boolean ours = SVG.equals(xml.getNamespaceURI());
        if (sheet == null) {
            if (!ours || !name.equals("svg")) {
                throw new OutlineRefused("it begins with '{0}'; accepted: svg of the namespace {1}", name, SVG);
            }
            sheet = Sheet.of(xml);
            transforms.push(sheet.toMillimetres());
            return;
        }
        if (!ours || WITHOUT_LINES.contains(name)) {
            skip(ours);
            return;
        }
        requireHarmless(name);
        if (isHidden()) {
            skip(true);
            return;
        }
        if (transforms.size() > MOST_DEPTH) {
            throw new OutlineRefused("its groups are nested deeper than {0}; accepted: up to that", MOST_DEPTH);
        }
        transforms.push(transform());
        if (!GROUPS.contains(name)) {
            draw(name);
        }
    }

    private void draw(String name) throws OutlineRefused {
        var pen = new Pen(transforms.peek());
        if (!SvgShapes.draw(name, xml, pen)) {
            throw new OutlineRefused(
                    "it draws with '{0}', which is not read; turn it into paths; accepted: g, path, line, polyline, "
                            + "polygon, rect, circle, ellipse",
                    name);
        }
        paths.addAll(pen.done());
    }

    private Transform transform() throws OutlineRefused {
        var text = xml.getAttributeValue(null, "transform");
        return text == null ? transforms.peek() : transforms.peek().after(Transform.of(text));
    }

    private boolean isHidden() {
        return "none".equals(xml.getAttributeValue(null, "display"))
                || style().replaceAll("\\s", "").contains("display:none");
    }

    private String style() {
        var style = xml.getAttributeValue(null, "style");
        return style == null ? "" : style;
    }

    private void requireHarmless(String name) throws OutlineRefused {
        if (REFUSED.contains(name) || name.startsWith("animate")) {
            throw new OutlineRefused("it has '{0}'; accepted: lines and curves alone", name);
        }
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            var attribute = xml.getAttributeLocalName(i);
            var value = xml.getAttributeValue(i);
            if (attribute.startsWith("on") || attribute.equals("href") && !value.startsWith("#")) {
                throw new OutlineRefused(
                        "'{0}' has '{1}', which runs or fetches something; accepted: lines and curves alone",
                        name, attribute);
            }
        }
        for (var attribute : CUTTING) {
            if (xml.getAttributeValue(null, attribute) != null) {
                throw new OutlineRefused(
                        "'{0}' has '{1}', which cuts off what it draws; accepted: lines and curves drawn whole",
                        name, attribute);
            }
        }
        if (style().contains("transform") || style().contains("url(")) {
            throw new OutlineRefused(
                    "the style of '{0}' is '{1}'; accepted: styles that move nothing and fetch nothing", name, style());
        }
    }

    /** Passes over an element and what is in it. */
    private void skip(boolean ours) throws XMLStreamException, OutlineRefused {
        int depth = 1;
        boolean style = ours && xml.getLocalName().equals("style");
        if (ours) {
            requireHarmless(xml.getLocalName());
        }
        while (depth > 0) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                depth++;
                if (SVG.equals(xml.getNamespaceURI())) {
                    requireHarmless(xml.getLocalName());
                }
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            } else if (style && event == XMLStreamConstants.CHARACTERS) {
                requirePlain(xml.getText());
            }
        }
    }

    private static void requirePlain(String rules) throws OutlineRefused {
        for (var word : List.of("transform", "url(", "@import", "display")) {
            if (rules.contains(word)) {
                throw new OutlineRefused(
                        "its style sheet has '{0}'; accepted: styles that move nothing, hide nothing and fetch nothing",
                        word);
            }
        }
    }
}
