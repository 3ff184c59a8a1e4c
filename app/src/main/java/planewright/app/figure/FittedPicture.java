package planewright.app.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.data.Range;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import planewright.api.figure.Chart;
import planewright.api.figure.Point;

/** Paints dots with the line through them: those that count are filled, the others hollow. */
public final class FittedPicture {
    private static final Shape DOT =
            new Ellipse2D.Double(-XyCharts.DOT / 2, -XyCharts.DOT / 2, XyCharts.DOT, XyCharts.DOT);
    private static final Shape ASKED = new Polygon(new int[] {-6, 0, 6, 0}, new int[] {0, -6, 0, 6}, 4);

    private final Fitted fitted;
    private final FigureColours colours;
    private final XYPlot plot;

    private FittedPicture(Fitted fitted, FigureColours colours) {
        this.fitted = fitted;
        this.colours = colours;
        this.plot = XyCharts.bands(
                new Chart.Bands(
                        fitted.title(),
                        fitted.across(),
                        fitted.values(),
                        fitted.band().stream().toList(),
                        List.of()),
                colours);
    }

    /** Paints it into an area, and tells where its dots have come to lie, in their order. */
    public static List<Point2D> paint(Fitted fitted, Graphics2D g, Rectangle2D area, FigureColours colours) {
        return new FittedPicture(fitted, colours).paint(g, area);
    }

    private List<Point2D> paint(Graphics2D g, Rectangle2D area) {
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        add(fitted.dots().stream().filter(dot -> !dot.counts()).toList(), DOT, false, colours.quiet());
        add(fitted.dots().stream().filter(Fitted.Dot::counts).toList(), DOT, true, colours.accent());
        fitted.asked().ifPresent(asked -> add(asked));
        makeRoom();
        var info = new ChartRenderingInfo();
        ChartPicture.framed(fitted.title(), plot, false, colours).draw(g, area, info);
        var places = new DotNames(plot, g, info.getPlotInfo().getDataArea(), colours);
        var dots = fitted.dots().stream()
                .map(dot -> new Chart.Dot(dot.name(), new Point(dot.x(), dot.y())))
                .toList();
        places.paint(
                dots,
                fitted.band().stream()
                        .map(band -> new Chart.Series(
                                band.name(),
                                band.spans().stream()
                                        .map(span -> new Point(span.x(), span.middle()))
                                        .toList()))
                        .toList());
        return dots.stream().map(dot -> places.at(dot.at())).toList();
    }

    private void add(List<Fitted.Dot> dots, Shape shape, boolean filled, Color colour) {
        var series = new XYIntervalSeries(new ChartPicture.Key(plot.getDatasetCount(), ""), false, true);
        for (var dot : dots) {
            series.add(
                    dot.x(),
                    dot.x() - dot.xPlusMinus(),
                    dot.x() + dot.xPlusMinus(),
                    dot.y(),
                    dot.y() - dot.yPlusMinus(),
                    dot.y() + dot.yPlusMinus());
        }
        add(series, shape, filled, colour);
    }

    private void add(Chart.Span asked) {
        var series = new XYIntervalSeries(new ChartPicture.Key(plot.getDatasetCount(), ""), false, true);
        series.add(asked.x(), asked.x(), asked.x(), asked.middle(), asked.low(), asked.high());
        add(series, ASKED, true, colours.second());
    }

    private void add(XYIntervalSeries series, Shape shape, boolean filled, Color colour) {
        var data = new XYIntervalSeriesCollection();
        data.addSeries(series);
        var renderer = new XYErrorRenderer();
        renderer.setSeriesPaint(0, colour);
        renderer.setSeriesShape(0, shape);
        renderer.setSeriesShapesFilled(0, filled);
        renderer.setErrorPaint(colour);
        renderer.setErrorStroke(new BasicStroke(1.2f));
        renderer.setCapLength(0);
        int place = plot.getDatasetCount();
        plot.setDataset(place, data);
        plot.setRenderer(place, renderer);
    }

    /** A band about very few dots is so wide that they would lie on one another: it is shown as far as they lie apart once more. */
    private void makeRoom() {
        var middles = DoubleStream.concat(
                fitted.dots().stream()
                        .flatMapToDouble(
                                dot -> DoubleStream.of(dot.y() - dot.yPlusMinus(), dot.y() + dot.yPlusMinus())),
                DoubleStream.concat(
                        fitted.asked().stream().flatMapToDouble(asked -> DoubleStream.of(asked.low(), asked.high())),
                        spans().map(Chart.Span::middle).mapToDouble(y -> y)));
        var seen = middles.summaryStatistics();
        if (seen.getCount() == 0) {
            return;
        }
        double most = Math.max(seen.getMax() - seen.getMin(), Math.abs(seen.getMax()) * 0.02);
        double low = Math.max(spans().mapToDouble(Chart.Span::low).min().orElse(seen.getMin()), seen.getMin() - most);
        double high = Math.min(spans().mapToDouble(Chart.Span::high).max().orElse(seen.getMax()), seen.getMax() + most);
        double margin = 0.05 * Math.max(high - low, most);
        double bottom = Math.min(low, seen.getMin()) - margin;
        plot.getRangeAxis()
                .setRange(new Range(
                        fitted.fromZero() ? Math.max(0, bottom) : bottom, Math.max(high, seen.getMax()) + margin));
        var across = plot.getDomainAxis();
        if (across.getLowerBound() < 0 && fitted.dots().stream().allMatch(dot -> dot.x() >= 0)) {
            across.setLowerBound(0);
        }
    }

    private java.util.stream.Stream<Chart.Span> spans() {
        return fitted.band().stream().flatMap(band -> band.spans().stream());
    }
}
