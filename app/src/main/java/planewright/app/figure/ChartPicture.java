package planewright.app.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.renderer.category.StatisticalBarRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.statistics.DefaultStatisticalCategoryDataset;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import planewright.api.figure.Chart;
import planewright.api.quantity.Units;

/** Paints a chart. */
public final class ChartPicture {
    private ChartPicture() {}

    /** Paints a chart into an area. */
    public static void paint(Chart chart, Graphics2D g, Rectangle2D area, FigureColours colours) {
        of(chart, colours).draw(g, area);
    }

    private static JFreeChart of(Chart chart, FigureColours colours) {
        Plot plot = chart instanceof Chart.Bars bars ? bars(bars, colours) : lines((Chart.Lines) chart, colours);
        plot.setBackgroundPaint(colours.paper());
        plot.setOutlineVisible(false);
        plot.setInsets(new RectangleInsets(4, 4, 4, 12));
        boolean legend = chart instanceof Chart.Lines lines && lines.series().size() > 1;
        var picture = new JFreeChart(chart.title(), colours.font().deriveFont(Font.BOLD, 12f), plot, legend);
        picture.setBackgroundPaint(colours.paper());
        picture.getTitle().setPaint(colours.ink());
        if (legend) {
            picture.getLegend().setItemFont(colours.font());
            picture.getLegend().setItemPaint(colours.ink());
            picture.getLegend().setBackgroundPaint(colours.paper());
            picture.getLegend().setFrame(org.jfree.chart.block.BlockBorder.NONE);
        }
        return picture;
    }

    private static Plot bars(Chart.Bars chart, FigureColours colours) {
        var data = new DefaultStatisticalCategoryDataset();
        for (var bar : chart.bars()) {
            data.add(bar.value(), bar.plusMinus(), chart.values().label(), new Key(data.getColumnCount(), bar.name()));
        }
        var renderer = new StatisticalBarRenderer();
        renderer.setBarPainter(new StandardBarPainter());
        renderer.setShadowVisible(false);
        renderer.setMaximumBarWidth(0.12);
        renderer.setSeriesPaint(0, colours.accent());
        renderer.setErrorIndicatorPaint(colours.ink());
        renderer.setErrorIndicatorStroke(new BasicStroke(1.2f));
        renderer.setDrawBarOutline(false);
        var categories = new CategoryAxis(null);
        var values = new NumberAxis(label(chart.values()));
        style(categories, colours);
        style(values, colours);
        var plot = new CategoryPlot(data, categories, values, renderer);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeGridlinePaint(colours.quiet());
        plot.setDomainGridlinesVisible(false);
        categories.setMaximumCategoryLabelWidthRatio(0.4f);
        return plot;
    }

    private static Plot lines(Chart.Lines chart, FigureColours colours) {
        var data = new XYSeriesCollection();
        for (var series : chart.series()) {
            var points = new XYSeries(new Key(data.getSeriesCount(), series.name()), false);
            series.points().forEach(point -> points.add(point.x(), point.y()));
            data.addSeries(points);
        }
        var renderer = new XYLineAndShapeRenderer(true, false);
        Color[] paints = {colours.accent(), colours.second(), colours.ink(), colours.quiet()};
        for (int i = 0; i < chart.series().size(); i++) {
            renderer.setSeriesPaint(i, paints[i % paints.length]);
            renderer.setSeriesStroke(i, new BasicStroke(2f));
        }
        var across = new NumberAxis(label(chart.across()));
        var values = new NumberAxis(label(chart.values()));
        across.setAutoRangeIncludesZero(false);
        values.setAutoRangeIncludesZero(false);
        style(across, colours);
        style(values, colours);
        var plot = new XYPlot(data, across, values, renderer);
        plot.setDomainGridlinePaint(colours.quiet());
        plot.setRangeGridlinePaint(colours.quiet());
        chart.levels().forEach(level -> plot.addRangeMarker(marker(level, colours)));
        return plot;
    }

    private static Marker marker(Chart.Level level, FigureColours colours) {
        Marker marker = level.to().isPresent()
                ? new IntervalMarker(level.from(), level.to().get(), colours.faint(colours.second(), 50))
                : new ValueMarker(level.from(), colours.second(), new BasicStroke(1.5f));
        marker.setLabel(level.name());
        marker.setLabelFont(colours.font());
        marker.setLabelPaint(colours.ink());
        marker.setLabelBackgroundColor(new Color(0, 0, 0, 0));
        marker.setLabelAnchor(org.jfree.chart.ui.RectangleAnchor.TOP_LEFT);
        marker.setLabelTextAnchor(org.jfree.chart.ui.TextAnchor.BOTTOM_LEFT);
        return marker;
    }

    private static void style(ValueAxis axis, FigureColours colours) {
        axis.setLabelFont(colours.font());
        axis.setLabelPaint(colours.ink());
        axis.setTickLabelFont(colours.font());
        axis.setTickLabelPaint(colours.ink());
        axis.setAxisLinePaint(colours.quiet());
        axis.setTickMarkPaint(colours.quiet());
    }

    private static void style(CategoryAxis axis, FigureColours colours) {
        axis.setTickLabelFont(colours.font());
        axis.setTickLabelPaint(colours.ink());
        axis.setAxisLinePaint(colours.quiet());
        axis.setTickMarkPaint(colours.quiet());
        axis.setCategoryMargin(0.3);
    }

    private static String label(Chart.Axis axis) {
        var symbol = Units.ofCode(axis.unit()).map(Units::symbolOf).orElse(axis.unit());
        return symbol.isEmpty() ? axis.label() : axis.label() + " (" + symbol + ")";
    }

    /** A name that stays apart from the same name elsewhere in the chart. */
    private record Key(int place, String name) implements Comparable<Key> {
        @Override
        public int compareTo(Key other) {
            return Integer.compare(place, other.place);
        }

        @Override
        public String toString() {
            return name;
        }
    }
}
