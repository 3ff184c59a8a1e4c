package planewright.app.figure;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Paints a history: a dot a reading, its ± as a bar through it. */
public final class HistoryPicture {
    private static final double TWO_WEEKS_MILLIS = 14 * 86_400_000.0;
    private static final double LEAST_SHARE = 0.02;

    private HistoryPicture() {}

    /** Paints it into an area. */
    public static void paint(History history, Graphics2D g, Rectangle2D area, FigureColours colours) {
        ChartPicture.framed(history.title(), plot(history, colours), false, colours)
                .draw(g, area);
    }

    private static XYPlot plot(History history, FigureColours colours) {
        var points = new YIntervalSeries(history.title(), false, true);
        for (var reading : history.readings()) {
            points.add(
                    ChartPicture.millis(reading.at()),
                    reading.value(),
                    reading.value() - reading.plusMinus(),
                    reading.value() + reading.plusMinus());
        }
        var data = new YIntervalSeriesCollection();
        data.addSeries(points);
        var renderer = new XYErrorRenderer();
        renderer.setDrawXError(false);
        renderer.setDefaultLinesVisible(true);
        renderer.setSeriesPaint(0, colours.accent());
        renderer.setSeriesStroke(0, new BasicStroke(1.5f));
        renderer.setErrorPaint(colours.ink());
        renderer.setErrorStroke(new BasicStroke(1.2f));
        var across = TimeAxis.of(Locale.getDefault(Locale.Category.FORMAT));
        across.setAutoRangeMinimumSize(TWO_WEEKS_MILLIS);
        var values = new NumberAxis(ChartPicture.label(history.values()));
        values.setAutoRangeIncludesZero(false);
        values.setAutoRangeMinimumSize(leastRange(history));
        ChartPicture.style(across, colours);
        ChartPicture.style(values, colours);
        var plot = new XYPlot(data, across, values, renderer);
        ChartPicture.grid(plot, colours);
        return plot;
    }

    /** Readings that are all but the same are not drawn as mountains. */
    private static double leastRange(History history) {
        double largest = history.readings().stream()
                .mapToDouble(reading -> Math.abs(reading.value()))
                .max()
                .orElse(0);
        return largest > 0 ? largest * LEAST_SHARE : 1;
    }
}
