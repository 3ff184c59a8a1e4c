package planewright.benchmark.kernel;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import planewright.api.figure.Chart;
import planewright.api.figure.Point;
import planewright.app.figure.ChartPicture;
import planewright.app.figure.FigureColours;

/** A chart of two lines, as on a page of results. */
@State(Scope.Benchmark)
public class Figure {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 400;

    private final Chart chart = new Chart.Lines(
            "Lift along the span",
            new Chart.Axis("Station", "mm"),
            new Chart.Axis("Lift", "N/m"),
            List.of(series("left", 1), series("right", 1.1)),
            List.of());
    private final FigureColours colours = FigureColours.onPaper();
    private final BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);

    @Benchmark
    public BufferedImage chart() {
        var g = image.createGraphics();
        ChartPicture.paint(chart, g, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT), colours);
        g.dispose();
        return image;
    }

    private static Chart.Series series(String name, double scale) {
        return new Chart.Series(
                name,
                IntStream.range(0, 60)
                        .mapToObj(i -> new Point(10 * i, scale * Math.sqrt(60.0 * 60 - i * i)))
                        .toList());
    }
}
