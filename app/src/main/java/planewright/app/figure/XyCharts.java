package planewright.app.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Polygon;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.annotations.XYPolygonAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import planewright.api.figure.Chart;
import planewright.api.figure.Point;

/** Plots of bands, of dots and of areas. */
final class XyCharts {
    static final double DOT = 7;

    /** Between what is shown and the edge, as a share of it. */
    private static final double MARGIN = 0.05;

    /** Lines over dots and areas are ink, which neither of these is in. */
    private static final int FIRST_OF_LINES = 2;

    private static final int BAND_ALPHA = 56;
    private static final int AREA_ALPHA = 46;

    private XyCharts() {}

    static XYPlot bands(Chart.Bands chart, FigureColours colours) {
        var across = axis(chart.across(), colours);
        return bands(chart.bands(), x -> x, across, chart.values(), chart.levels(), colours);
    }

    static XYPlot bands(
            List<Chart.Band> bands,
            DoubleUnaryOperator place,
            ValueAxis across,
            Chart.Axis values,
            List<Chart.Level> levels,
            FigureColours colours) {
        var data = new YIntervalSeriesCollection();
        for (var band : bands) {
            var series = new YIntervalSeries(new ChartPicture.Key(data.getSeriesCount(), band.name()), false, true);
            band.spans()
                    .forEach(span -> series.add(place.applyAsDouble(span.x()), span.middle(), span.low(), span.high()));
            data.addSeries(series);
        }
        var renderer = new DeviationRenderer(true, false);
        renderer.setAlpha(1f);
        for (int i = 0; i < data.getSeriesCount(); i++) {
            var colour = colours.of(i);
            renderer.setSeriesPaint(i, colour);
            renderer.setSeriesFillPaint(i, colours.faint(colour, BAND_ALPHA));
            renderer.setSeriesStroke(i, new BasicStroke(2f));
        }
        var plot = new XYPlot(data, across, axis(values, colours), renderer);
        ChartPicture.grid(plot, colours);
        ChartPicture.levels(plot, levels, colours);
        ChartPicture.notFlat(plot);
        return plot;
    }

    static XYPlot scatter(Chart.Scatter chart, FigureColours colours) {
        var data = new XYSeriesCollection();
        var dots = new XYLineAndShapeRenderer(false, true);
        for (var group : chart.groups()) {
            int at = data.getSeriesCount();
            data.addSeries(series(
                    at, group.name(), group.dots().stream().map(Chart.Dot::at).toList()));
            dots.setSeriesPaint(at, colours.of(at));
            dots.setSeriesShape(at, dot(at));
        }
        var plot = new XYPlot(data, axis(chart.across(), colours), axis(chart.values(), colours), dots);
        ChartPicture.grid(plot, colours);
        chart.fitted().ifPresent(line -> lines(plot, List.of(line), colours));
        return plot;
    }

    static XYPlot region(Chart.Region chart, FigureColours colours) {
        var data = new XYSeriesCollection();
        data.addSeries(series(0, "", chart.dots().stream().map(Chart.Dot::at).toList()));
        var dots = new XYLineAndShapeRenderer(false, true);
        dots.setSeriesPaint(0, colours.ink());
        dots.setSeriesShape(0, dot(0));
        dots.setSeriesVisibleInLegend(0, false);
        var plot = new XYPlot(data, axis(chart.across(), colours), axis(chart.values(), colours), dots);
        ChartPicture.grid(plot, colours);
        lines(plot, chart.lines(), colours);
        makeRoom(plot, chart);
        for (var area : chart.areas()) {
            var colour = colour(area.sense(), colours);
            dots.addAnnotation(
                    new XYPolygonAnnotation(
                            corners(area), new BasicStroke(1.2f), colour, colours.faint(colour, AREA_ALPHA)),
                    Layer.BACKGROUND);
            dots.addAnnotation(words(area.name(), AreaName.place(area, chart), colours), Layer.FOREGROUND);
        }
        return plot;
    }

    /** The word in an area tells as much; the colour only helps. */
    private static Color colour(Chart.Sense sense, FigureColours colours) {
        return switch (sense) {
            case ALLOWED -> colours.accent();
            case DOUBTFUL -> colours.quiet();
            case REFUSED -> colours.second();
        };
    }

    private static void lines(XYPlot plot, List<Chart.Series> lines, FigureColours colours) {
        var data = new XYSeriesCollection();
        var renderer = new XYLineAndShapeRenderer(true, false);
        for (var line : lines) {
            int at = data.getSeriesCount();
            data.addSeries(series(at, line.name(), line.points()));
            renderer.setSeriesPaint(at, colours.of(at + FIRST_OF_LINES));
            renderer.setSeriesStroke(at, new BasicStroke(2f));
        }
        plot.setDataset(1, data);
        plot.setRenderer(1, renderer);
    }

    /** Areas have no say in how far JFreeChart's axes reach. */
    private static void makeRoom(XYPlot plot, Chart.Region chart) {
        var points = Stream.of(
                        chart.areas().stream().flatMap(area -> area.corners().stream()),
                        chart.lines().stream().flatMap(line -> line.points().stream()),
                        chart.dots().stream().map(Chart.Dot::at))
                .flatMap(each -> each)
                .toList();
        if (!points.isEmpty()) {
            plot.getDomainAxis().setRange(range(points.stream().mapToDouble(Point::x)));
            plot.getRangeAxis().setRange(range(points.stream().mapToDouble(Point::y)));
        }
    }

    private static Range range(DoubleStream values) {
        var found = values.summaryStatistics();
        double width = found.getMax() - found.getMin();
        double margin = width > 0 ? MARGIN * width : Math.max(1, Math.abs(found.getMax()) * MARGIN);
        return new Range(found.getMin() - margin, found.getMax() + margin);
    }

    private static XYTextAnnotation words(String words, Point at, FigureColours colours) {
        var text = new XYTextAnnotation(words, at.x(), at.y());
        text.setFont(colours.font());
        text.setPaint(colours.ink());
        text.setTextAnchor(TextAnchor.CENTER);
        return text;
    }

    private static XYSeries series(int place, String name, List<Point> points) {
        var series = new XYSeries(new ChartPicture.Key(place, name), false);
        points.forEach(point -> series.add(point.x(), point.y()));
        return series;
    }

    private static double[] corners(Chart.Area area) {
        return area.corners().stream()
                .flatMapToDouble(corner -> DoubleStream.of(corner.x(), corner.y()))
                .toArray();
    }

    private static NumberAxis axis(Chart.Axis axis, FigureColours colours) {
        var drawn = new NumberAxis(ChartPicture.label(axis));
        drawn.setAutoRangeIncludesZero(false);
        ChartPicture.style(drawn, colours);
        return drawn;
    }

    /** Round, and square where there is a second group: told apart without colour. */
    private static Shape dot(int group) {
        double r = DOT / 2;
        return switch (group % 3) {
            case 0 -> new Ellipse2D.Double(-r, -r, DOT, DOT);
            case 1 -> new Rectangle2D.Double(-r, -r, DOT, DOT);
            default -> new Polygon(new int[] {-4, 4, 0}, new int[] {4, 4, -4}, 3);
        };
    }
}
