package planewright.app.print;

import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import planewright.api.figure.Drawing;
import planewright.api.figure.Drawing.Use;
import planewright.app.figure.DrawingPicture;
import planewright.app.files.SafeFile;
import planewright.app.journal.Slow;

/**
 * The lines of drawings that are cut or folded along, as SVG (W3C Recommendation 1.1, second edition) for a machine that cuts:
 * one user unit is one millimetre, each use is a group of its name, drawings lie below each other.
 */
public final class CutLines {
    private static final String SVG = "http://www.w3.org/2000/svg";

    /** Around and between drawings, mm. */
    private static final double AROUND = 5;

    private CutLines() {}

    /** Whether a drawing is one to work by: true size matters of it. */
    public static boolean in(Drawing drawing) {
        return of(drawing).isPresent();
    }

    /**
     * Writes the lines of all drawings that have some; may take long, so not on the event thread.
     *
     * @throws IOException if the file cannot be written; then it is as it was
     * @throws IllegalArgumentException if none of them has any
     */
    public static void write(List<Drawing> drawings, Path svg) throws IOException {
        Slow.work("writing cut lines");
        var cut = drawings.stream().flatMap(each -> of(each).stream()).toList();
        if (cut.isEmpty()) {
            throw new IllegalArgumentException("no drawing has lines to cut");
        }
        SafeFile.write(svg.toAbsolutePath(), svg(cut));
    }

    /** The drawing with nothing else in it; empty where that is nothing. */
    private static Optional<Drawing> of(Drawing drawing) {
        var layers = drawing.layers().stream()
                .filter(layer -> layer.use() == Use.CUT || layer.use() == Use.FOLD)
                .filter(layer ->
                        layer.shapes().stream().anyMatch(shape -> outline(shape).isPresent()))
                .toList();
        return layers.isEmpty() ? Optional.empty() : Optional.of(new Drawing(drawing.title(), layers));
    }

    private static byte[] svg(List<Drawing> drawings) {
        var bounds = drawings.stream()
                .map(each -> DrawingPicture.bounds(each).orElseThrow())
                .toList();
        double width = 2 * AROUND
                + bounds.stream().mapToDouble(Rectangle2D::getWidth).max().orElse(0);
        double height = AROUND
                + bounds.stream().mapToDouble(each -> each.getHeight() + AROUND).sum();
        var bytes = new ByteArrayOutputStream();
        try {
            var xml = XMLOutputFactory.newInstance().createXMLStreamWriter(bytes, StandardCharsets.UTF_8.name());
            xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
            xml.writeStartElement("svg");
            xml.writeDefaultNamespace(SVG);
            xml.writeAttribute("width", number(width) + "mm");
            xml.writeAttribute("height", number(height) + "mm");
            xml.writeAttribute("viewBox", "0 0 " + number(width) + " " + number(height));
            double top = AROUND;
            for (int i = 0; i < drawings.size(); i++) {
                write(
                        drawings.get(i),
                        AROUND - bounds.get(i).getMinX(),
                        top + bounds.get(i).getMaxY(),
                        xml);
                top += bounds.get(i).getHeight() + AROUND;
            }
            xml.writeEndElement();
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("XML cannot be written to memory", impossible);
        }
        return bytes.toByteArray();
    }

    private static void write(Drawing drawing, double right, double down, XMLStreamWriter xml)
            throws XMLStreamException {
        xml.writeStartElement("g");
        xml.writeStartElement("title");
        xml.writeCharacters(drawing.title());
        xml.writeEndElement();
        for (var layer : drawing.layers()) {
            xml.writeStartElement("g");
            xml.writeAttribute("class", layer.use().name().toLowerCase(Locale.ROOT));
            xml.writeAttribute("fill", "none");
            xml.writeAttribute("stroke", "black");
            xml.writeAttribute("stroke-width", "0.1");
            if (layer.use() == Use.FOLD) {
                xml.writeAttribute("stroke-dasharray", "2 1");
            }
            for (var shape : layer.shapes()) {
                var outline = outline(shape);
                if (outline.isPresent()) {
                    xml.writeEmptyElement("path");
                    xml.writeAttribute("d", outline.get().data(right, down));
                }
            }
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    private static Optional<Outline> outline(Drawing.Shape shape) {
        if (shape instanceof Drawing.Path path) {
            return Optional.of((right, down) -> data(path, right, down));
        }
        return shape instanceof Drawing.Disc disc
                ? Optional.of((right, down) -> data(disc, right, down))
                : Optional.empty();
    }

    private static String data(Drawing.Path path, double right, double down) {
        var data = new StringBuilder();
        for (var point : path.points()) {
            data.append(data.isEmpty() ? "M" : " L")
                    .append(number(right + point.x()))
                    .append(' ')
                    .append(number(down - point.y()));
        }
        return data.append(path.closed() ? " Z" : "").toString();
    }

    /** Two half circles. */
    private static String data(Drawing.Disc disc, double right, double down) {
        double y = down - disc.centre().y();
        double from = right + disc.centre().x() - disc.radius();
        double to = right + disc.centre().x() + disc.radius();
        var arc = " A" + number(disc.radius()) + " " + number(disc.radius()) + " 0 0 1 ";
        return "M" + number(from) + " " + number(y) + arc + number(to) + " " + number(y) + arc + number(from) + " "
                + number(y) + " Z";
    }

    /** To the thousandth of a millimetre, without an exponent. */
    private static String number(double millimetres) {
        return BigDecimal.valueOf(millimetres)
                .setScale(3, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** What an SVG path of a shape says, once it is known how far right and down the drawing's origin lies. */
    private interface Outline {
        String data(double right, double down);
    }
}
