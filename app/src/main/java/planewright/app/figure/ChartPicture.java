package planewright.app.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.DateAxis;
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
    private static final double MILLIS_OF_AN_HOUR = 3_600_000;
    private static final double ROW_HEIGHT = 14;

    /** A lower curve is flat, as a share of how high it lies. */
    private static final double FLAT = 1e-7;

    private ChartPicture() {}

    /** Paints a chart into an area. */
    public static void paint(Chart chart, Graphics2D g, Rectangle2D area, FigureColours colours) {
        var info = new ChartRenderingInfo();
        var picture = of(chart, colours);
        picture.draw(g, area, info);
        if (chart instanceof Chart.Scatter || chart instanceof Chart.Region) {
            DotNames.paint(chart, picture.getXYPlot(), g, info.getPlotInfo().getDataArea(), colours);
        }
    }

    private static JFreeChart of(Chart chart, FigureColours colours) {
        var plot = plot(chart, colours);
        int least = chart instanceof Chart.Region ? 1 : 2;
        boolean legend = plot instanceof XYPlot lines && lines.getLegendItems().getItemCount() >= least;
        return framed(chart.title(), plot, legend, colours);
    }

    /** The last label of an axis stands half beyond it; a month with its year is six letters wide to either side. */
    private static double roomAtTheEnd(Plot plot, FigureColours colours) {
        boolean ofTime = plot instanceof XYPlot lines && lines.getDomainAxis() instanceof DateAxis;
        return ofTime ? 3 * colours.font().getSize2D() : 12;
    }

    /** A plot with its title, in the colours given. */
    static JFreeChart framed(String title, Plot plot, boolean legend, FigureColours colours) {
        plot.setBackgroundPaint(colours.paper());
        plot.setOutlineVisible(false);
        plot.setInsets(new RectangleInsets(4, 4, 4, roomAtTheEnd(plot, colours)));
        var picture = new JFreeChart(title, colours.font().deriveFont(Font.BOLD, 12f), plot, legend);
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

    private static Plot plot(Chart chart, FigureColours colours) {
        if (chart instanceof Chart.Bars bars) {
            return bars(bars, colours);
        }
        if (chart instanceof Chart.Bands bands) {
            return XyCharts.bands(bands, colours);
        }
        if (chart instanceof Chart.BandsOverTime bands) {
            return bandsOverTime(bands, colours);
        }
        if (chart instanceof Chart.Scatter scatter) {
            return XyCharts.scatter(scatter, colours);
        }
        if (chart instanceof Chart.Region region) {
            return XyCharts.region(region, colours);
        }
        return chart instanceof Chart.Lines lines ? lines(lines, colours) : overTime((Chart.OverTime) chart, colours);
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

    private static XYPlot lines(Chart.Lines chart, FigureColours colours) {
        var across = new NumberAxis(label(chart.across()));
        across.setAutoRangeIncludesZero(false);
        return plot(data(chart.series(), x -> x), across, chart.values(), chart.levels(), colours);
    }

    private static XYPlot overTime(Chart.OverTime chart, FigureColours colours) {
        var plot = plot(data(chart.series(), clock(chart.from())), dates(), chart.values(), chart.levels(), colours);
        return marked(plot, chart.moments(), colours);
    }

    private static XYPlot bandsOverTime(Chart.BandsOverTime chart, FigureColours colours) {
        var across = dates();
        style(across, colours);
        var plot = XyCharts.bands(chart.bands(), clock(chart.from()), across, chart.values(), chart.levels(), colours);
        return marked(plot, chart.moments(), colours);
    }

    private static ValueAxis dates() {
        return TimeAxis.of(Locale.getDefault(Locale.Category.FORMAT));
    }

    /** Hours after an instant as the axis counts time. */
    private static DoubleUnaryOperator clock(LocalDateTime from) {
        double start = millis(from);
        return hours -> start + hours * MILLIS_OF_AN_HOUR;
    }

    private static XYPlot marked(XYPlot plot, List<Chart.Moment> moments, FigureColours colours) {
        double middle = plot.getDomainAxis().getRange().getCentralValue();
        for (int i = 0; i < moments.size(); i++) {
            plot.addDomainMarker(marker(moments.get(i), i, middle, colours));
        }
        return plot;
    }

    private static XYSeriesCollection data(List<Chart.Series> lines, DoubleUnaryOperator across) {
        var data = new XYSeriesCollection();
        for (var series : lines) {
            var points = new XYSeries(new Key(data.getSeriesCount(), series.name()), false);
            series.points().forEach(point -> points.add(across.applyAsDouble(point.x()), point.y()));
            data.addSeries(points);
        }
        return data;
    }

    private static XYPlot plot(
            XYSeriesCollection data,
            ValueAxis across,
            Chart.Axis upwards,
            List<Chart.Level> levels,
            FigureColours colours) {
        var renderer = new XYLineAndShapeRenderer(true, false);
        for (int i = 0; i < data.getSeriesCount(); i++) {
            renderer.setSeriesPaint(i, colours.of(i));
            renderer.setSeriesStroke(i, new BasicStroke(2f));
        }
        var values = new NumberAxis(label(upwards));
        values.setAutoRangeIncludesZero(false);
        style(across, colours);
        style(values, colours);
        var plot = new XYPlot(data, across, values, renderer);
        grid(plot, colours);
        levels(plot, levels, colours);
        notFlat(plot);
        return plot;
    }

    /** Around a value that never changes the axis reaches a tenth of it, else its marks would differ in no figure. */
    static void notFlat(XYPlot plot) {
        var range = plot.getRangeAxis().getRange();
        double middle = range.getCentralValue();
        if (range.getLength() <= FLAT * Math.max(1, Math.abs(middle))) {
            double beyond = middle == 0 ? 1 : Math.abs(middle) / 10;
            plot.getRangeAxis().setRange(middle - beyond, middle + beyond);
        }
    }

    static void grid(XYPlot plot, FigureColours colours) {
        plot.setDomainGridlinePaint(colours.quiet());
        plot.setRangeGridlinePaint(colours.quiet());
    }

    static void levels(XYPlot plot, List<Chart.Level> levels, FigureColours colours) {
        levels.forEach(level -> plot.addRangeMarker(marker(level, colours)));
    }

    static double millis(LocalDateTime time) {
        return time.toInstant(ZoneOffset.UTC).toEpochMilli();
    }

    /** Its words stand on the side where there is more room, each in a row of its own. */
    private static Marker marker(Chart.Moment moment, int row, double middle, FigureColours colours) {
        var marker = new ValueMarker(millis(moment.at()), colours.second(), new BasicStroke(1.5f));
        words(marker, moment.name(), colours);
        boolean early = marker.getValue() < middle;
        marker.setLabelAnchor(
                early
                        ? org.jfree.chart.ui.RectangleAnchor.BOTTOM_RIGHT
                        : org.jfree.chart.ui.RectangleAnchor.BOTTOM_LEFT);
        marker.setLabelTextAnchor(
                early ? org.jfree.chart.ui.TextAnchor.BOTTOM_LEFT : org.jfree.chart.ui.TextAnchor.BOTTOM_RIGHT);
        marker.setLabelOffset(new RectangleInsets(3, 3, 3 + row * ROW_HEIGHT, 3));
        return marker;
    }

    private static Marker marker(Chart.Level level, FigureColours colours) {
        Marker marker = level.to().isPresent()
                ? new IntervalMarker(level.from(), level.to().get(), colours.faint(colours.second(), 50))
                : new ValueMarker(level.from(), colours.second(), new BasicStroke(1.5f));
        words(marker, level.name(), colours);
        marker.setLabelAnchor(org.jfree.chart.ui.RectangleAnchor.TOP_LEFT);
        marker.setLabelTextAnchor(org.jfree.chart.ui.TextAnchor.BOTTOM_LEFT);
        return marker;
    }

    private static void words(Marker marker, String words, FigureColours colours) {
        marker.setLabel(words);
        marker.setLabelFont(colours.font());
        marker.setLabelPaint(colours.ink());
        marker.setLabelBackgroundColor(new Color(0, 0, 0, 0));
    }

    static void style(ValueAxis axis, FigureColours colours) {
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

    static String label(Chart.Axis axis) {
        var symbol = Units.ofCode(axis.unit()).map(Units::symbolOf).orElse(axis.unit());
        return symbol.isEmpty() ? axis.label() : axis.label() + " (" + symbol + ")";
    }

    /** A name that stays apart from the same name elsewhere in the chart. */
    record Key(int place, String name) implements Comparable<Key> {
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
