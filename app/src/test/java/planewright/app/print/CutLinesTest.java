package planewright.app.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import planewright.api.figure.Drawing;
import planewright.api.figure.Drawing.Use;
import planewright.api.figure.Point;
import planewright.app.figure.Figures;

/** SVG 1.1, second edition: 7.11 (units and viewBox), 8.3 (path data), read back with an XML parser. */
class CutLinesTest {
    @TempDir
    private Path folder;

    /** 7.7 and 7.11: with a viewBox as large as width and height in mm, one user unit is one millimetre. */
    @Test
    void oneUnitIsOneMillimetre() throws Exception {
        var svg = written(Figures.rectangle(123.4567, 50));
        assertThat(svg.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
        assertThat(svg.getAttribute("width")).isEqualTo("133.457mm");
        assertThat(svg.getAttribute("height")).isEqualTo("60mm");
        assertThat(svg.getAttribute("viewBox")).isEqualTo("0 0 133.457 60");
        var numbers = numbers(elements(svg, "path").get(0));
        assertThat(numbers).containsExactly(new double[] {5, 55, 128.457, 55, 128.457, 5, 5, 5}, within(1e-9));
        assertThat(elements(svg, "path").get(0).getAttribute("d"))
                .startsWith("M")
                .endsWith("Z");
    }

    @Test
    void onlyWhatIsCutOrFoldedIsThere() throws Exception {
        var drawing = new Drawing(
                "Rib <1> & former",
                List.of(
                        layer(Use.OUTLINE, new Drawing.Path(List.of(new Point(-900, 0), new Point(900, 0)), false)),
                        layer(Use.CUT, new Drawing.Disc(new Point(10, 10), 4, "hole")),
                        layer(Use.CUT, new Drawing.Path(List.of(new Point(0, 0), new Point(20, 20)), false)),
                        layer(Use.FOLD, new Drawing.Path(List.of(new Point(0, 20), new Point(20, 0)), false)),
                        layer(Use.NOTE, new Drawing.Note(new Point(0, 0), "words"))));
        var svg = written(drawing);
        assertThat(elements(svg, "title").get(0).getTextContent()).isEqualTo("Rib <1> & former");
        assertThat(elements(svg, "g").stream().map(group -> group.getAttribute("class")))
                .containsExactly("", "cut", "cut", "fold");
        assertThat(elements(svg, "path").stream().map(path -> path.getAttribute("d")))
                .containsExactly("M11 15 A4 4 0 0 1 19 15 A4 4 0 0 1 11 15 Z", "M5 25 L25 5", "M5 5 L25 25");
        assertThat(elements(svg, "text")).isEmpty();
    }

    @Test
    void drawingsLieBelowEachOther() throws Exception {
        var svg = written(Figures.rectangle(100, 50), Figures.crowded(3), Figures.rectangle(30, 10));
        assertThat(svg.getAttribute("viewBox")).isEqualTo("0 0 110 75");
        var second = numbers(elements(svg, "path").get(1));
        assertThat(IntStream.of(1, 3, 5, 7).mapToDouble(i -> second[i]).toArray())
                .containsExactly(new double[] {70, 70, 60, 60}, within(1e-9));
    }

    @Test
    void drawingWithoutLinesToCutIsNone() {
        assertThat(CutLines.in(Figures.rectangle(10, 10))).isTrue();
        assertThat(Figures.drawings().filter(CutLines::in)).hasSize(1);
        assertThat(CutLines.in(new Drawing(
                        "n", List.of(layer(Use.CUT, new Drawing.Note(new Point(0, 0), "nothing to cut"))))))
                .isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CutLines.write(List.of(Figures.crowded(2)), folder.resolve("x.svg")));
        assertThat(folder).isEmptyDirectory();
    }

    private static Drawing.Layer layer(Use use, Drawing.Shape shape) {
        return new Drawing.Layer(use, List.of(shape));
    }

    private Element written(Drawing... drawings) throws Exception {
        var file = folder.resolve("cut.svg");
        CutLines.write(List.of(drawings), file);
        var factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(file.toFile()).getDocumentElement();
    }

    private static List<Element> elements(Element svg, String name) {
        var found = svg.getElementsByTagName(name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    private static double[] numbers(Element path) {
        return Stream.of(path.getAttribute("d").replaceAll("[MLZ]", "").strip().split("\\s+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
