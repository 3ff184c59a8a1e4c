package planewright.app.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;

/** Figures paint whatever they are given, inside their area, and at true size to the tenth of a millimetre. */
class FiguresTest {
    private static final Color AROUND = Color.MAGENTA;
    private static final Rectangle AREA = new Rectangle(40, 30, 420, 300);
    private static final Chart.Axis AXIS = new Chart.Axis("along", "mm");
    private static final FigureColours COLOURS = FigureColours.onPaper();

    static Stream<Chart> charts() {
        return Figures.charts();
    }

    static Stream<Drawing> drawings() {
        return Figures.drawings();
    }

    @ParameterizedTest
    @MethodSource("charts")
    void chartStaysInItsArea(Chart chart) {
        assertInside(g -> ChartPicture.paint(chart, g, AREA, COLOURS));
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void drawingStaysInItsArea(Drawing drawing) {
        assertInside(g -> DrawingPicture.paint(drawing, g, AREA, COLOURS));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 12, 60})
    void areaMayBeAsSmallAsAWindowCanBe(int edge) {
        var image = new BufferedImage(100, 100, BufferedImage.TYPE_INT_RGB);
        var small = new Rectangle2D.Double(0, 0, edge, edge);
        var g = image.createGraphics();
        Figures.drawings().forEach(drawing -> DrawingPicture.paint(drawing, g, small, COLOURS));
        Figures.charts().limit(4).forEach(chart -> ChartPicture.paint(chart, g, small, COLOURS));
        g.dispose();
        assertThat(image.getRGB(99, 99)).isEqualTo(Color.BLACK.getRGB());
    }

    /** A triangle is half of the square about it, whatever the scales of the axes: Euclid, Elements, book I, proposition 41. */
    @Test
    void areasAreFilledWhereTheyLie() {
        var corners = List.of(new Point(0, 0), new Point(100, 0), new Point(100, 100));
        var triangle = new Chart.Area("", Chart.Sense.ALLOWED, corners);
        double share = (double) tinted(region(triangle)) / tinted(region(Figures.square(0, 0, 100)));
        assertThat(share).isCloseTo(0.5, within(0.03));
    }

    @Test
    void aValueThatNeverChangesHasRoomAboutIt() {
        var still = new Chart.Band("", List.of(new Chart.Span(0, 20, 20, 20), new Chart.Span(9, 20, 20, 20)));
        var axis = XyCharts.bands(new Chart.Bands("", AXIS, AXIS, List.of(still), List.of()), COLOURS)
                .getRangeAxis();
        assertThat(axis.getLowerBound()).isCloseTo(18, within(1e-6));
        assertThat(axis.getUpperBound()).isCloseTo(22, within(1e-6));
    }

    /** Between levels that hold the axis still, a band half as wide fills half as much. */
    @Test
    void bandsAreFilledBetweenTheirEdges() {
        double wide = tinted(band(40));
        assertThat(tinted(band(20)) / wide).isCloseTo(0.5, within(0.05));
        assertThat(tinted(band(0))).as("no more than the grid").isLessThan((long) (0.2 * wide));
    }

    /** Each dot is seen where it lies: four in the corners of the plot, then one in its middle as well. */
    @Test
    void everyDotIsDrawn() {
        var corners = List.of(dot(0, 0), dot(10, 0), dot(0, 10), dot(10, 10));
        var more = new ArrayList<>(corners);
        more.add(dot(5, 5));
        long one = coloured(scatter(more)) - coloured(scatter(corners));
        // a disc of 7 pixels has 38 of them, those on its edge mixed with paper
        assertThat(one).isBetween(20L, 45L);
    }

    @Test
    void graphicsIsLeftAsItWas() {
        var g = new BufferedImage(500, 400, BufferedImage.TYPE_INT_RGB).createGraphics();
        var transform = g.getTransform();
        var font = g.getFont();
        DrawingPicture.paint(Figures.crowded(20), g, AREA, COLOURS);
        assertThat(g.getTransform()).isEqualTo(transform);
        assertThat(g.getFont()).isEqualTo(font);
        assertThat(g.getClip()).isNull();
        g.dispose();
    }

    @Test
    void wordsOfADrawingLeaveItsTitleAlone() {
        assertThat(titleOf("")).isEqualTo(titleOf("datum: wing leading edge at the centre line"));
    }

    /** What stands where the title is, of a drawing that has a mark at its very top. */
    private static int[] titleOf(String label) {
        var image = new BufferedImage(500, 400, BufferedImage.TYPE_INT_RGB);
        var g = image.createGraphics();
        var mark = new Drawing.Mark(new Point(50, 200), Drawing.Sign.DATUM, label);
        var drawing = new Drawing(
                "From above",
                List.of(
                        new Drawing.Layer(
                                Drawing.Use.PART,
                                List.of(new Drawing.Path(
                                        List.of(new Point(0, 0), new Point(50, 200), new Point(100, 0)), true))),
                        new Drawing.Layer(Drawing.Use.MARK, List.of(mark))));
        DrawingPicture.paint(drawing, g, new Rectangle2D.Double(0, 0, 500, 400), COLOURS);
        g.dispose();
        return image.getRGB(0, 0, 500, 22, null, 0, 500);
    }

    @Test
    void boundsCoverDiscsAndAreNeverWithoutSize() {
        var disc = new Drawing(
                "d",
                List.of(new Drawing.Layer(
                        Drawing.Use.PART,
                        List.of(new Drawing.Disc(new Point(10, -5), 4, "far label that is no size")))));
        assertThat(DrawingPicture.bounds(disc)).contains(new Rectangle2D.Double(6, -9, 8, 8));
        assertThat(DrawingPicture.bounds(new Drawing("nothing", List.of()))).isEmpty();
        Figures.drawings()
                .flatMap(drawing -> DrawingPicture.bounds(drawing).stream())
                .forEach(bounds -> assertThat(Math.min(bounds.getWidth(), bounds.getHeight()))
                        .isPositive());
    }

    @Test
    void trueSizeIsTrue() {
        double perMillimetre = 10;
        var image = new BufferedImage(1400, 900, BufferedImage.TYPE_INT_RGB);
        var g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, 1400, 900);
        g.scale(perMillimetre, perMillimetre);
        DrawingPicture.paintTrueSize(Figures.rectangle(100, 50), g, 15, 12, AREA, COLOURS);
        g.dispose();
        var ink = inked(image);
        double line = 0.28 * perMillimetre;
        assertThat(ink.getX() + line / 2).isCloseTo(150, within(1.0));
        assertThat(ink.getY() + line / 2).isCloseTo(120, within(1.0));
        assertThat(ink.getWidth() - line).isCloseTo(1000, within(1.5));
        assertThat(ink.getHeight() - line).isCloseTo(500, within(1.5));
    }

    @Test
    void emptyDrawingHasNoTrueSize() {
        var g = new BufferedImage(9, 9, BufferedImage.TYPE_INT_RGB).createGraphics();
        assertThatThrownBy(() -> DrawingPicture.paintTrueSize(new Drawing("n", List.of()), g, 0, 0, AREA, COLOURS))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("empty drawing");
        g.dispose();
    }

    private static Chart region(Chart.Area area) {
        return new Chart.Region("", AXIS, AXIS, List.of(area), List.of(), List.of());
    }

    private static Chart band(double halfWidth) {
        return new Chart.Bands(
                "",
                AXIS,
                AXIS,
                List.of(
                        new Chart.Band("", List.of(new Chart.Span(0, -99, -99, -99), new Chart.Span(1, 99, 99, 99))),
                        new Chart.Band(
                                "",
                                List.of(
                                        new Chart.Span(0, -halfWidth, 0, halfWidth),
                                        new Chart.Span(1, -halfWidth, 0, halfWidth)))),
                List.of());
    }

    private static Chart scatter(List<Chart.Dot> dots) {
        return new Chart.Scatter("", AXIS, AXIS, List.of(new Chart.Group("", dots)), Optional.empty());
    }

    private static Chart.Dot dot(double x, double y) {
        return new Chart.Dot("", new Point(x, y));
    }

    /** Pixels of the colour that covers most, the paper's aside. */
    private static long tinted(Chart chart) {
        return pixels(chart)
                .filter(rgb -> (rgb & 0xffffff) != (COLOURS.paper().getRGB() & 0xffffff))
                .boxed()
                .collect(Collectors.groupingBy(rgb -> rgb, Collectors.counting()))
                .values()
                .stream()
                .max(Long::compare)
                .orElse(0L);
    }

    /** Pixels of the accent in full. */
    private static long coloured(Chart chart) {
        return pixels(chart)
                .filter(rgb -> (rgb & 0xffffff) == (COLOURS.accent().getRGB() & 0xffffff))
                .count();
    }

    private static IntStream pixels(Chart chart) {
        var image = new BufferedImage(420, 300, BufferedImage.TYPE_INT_RGB);
        var g = image.createGraphics();
        ChartPicture.paint(chart, g, new Rectangle(0, 0, 420, 300), COLOURS);
        g.dispose();
        return IntStream.of(image.getRGB(0, 0, 420, 300, null, 0, 420));
    }

    private static void assertInside(Consumer<Graphics2D> painter) {
        var image = new BufferedImage(500, 360, BufferedImage.TYPE_INT_RGB);
        var g = image.createGraphics();
        g.setColor(AROUND);
        g.fillRect(0, 0, 500, 360);
        painter.accept(g);
        g.dispose();
        int within = 0;
        for (int y = 0; y < 360; y++) {
            for (int x = 0; x < 500; x++) {
                boolean untouched = image.getRGB(x, y) == AROUND.getRGB();
                boolean inside = AREA.contains(x, y);
                assertThat(inside || untouched).as("painted at %d, %d", x, y).isTrue();
                within += inside && !untouched ? 1 : 0;
            }
        }
        assertThat(within).as("pixels painted inside").isEqualTo(AREA.width * AREA.height);
    }

    private static Rectangle inked(BufferedImage image) {
        Rectangle ink = null;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if ((image.getRGB(x, y) & 0xff) < 128) {
                    ink = ink == null ? new Rectangle(x, y, 1, 1) : ink.union(new Rectangle(x, y, 1, 1));
                }
            }
        }
        return ink;
    }
}
