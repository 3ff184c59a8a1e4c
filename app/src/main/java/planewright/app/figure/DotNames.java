package planewright.app.figure;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.plot.XYPlot;
import planewright.api.figure.Chart;
import planewright.api.figure.Point;

/** Names of dots, each where it covers neither another nor a line; drawn over a plot that has its place. */
final class DotNames {
    /** So many can be read beside one another. */
    private static final int MOST = 40;

    private final XYPlot plot;
    private final Rectangle2D area;
    private final Labels labels;
    private final Graphics2D g;
    private final FigureColours colours;

    DotNames(XYPlot plot, Graphics2D g, Rectangle2D area, FigureColours colours) {
        this.plot = plot;
        this.area = area;
        this.g = g;
        this.colours = colours;
        this.labels = new Labels(g, colours, 1, area);
    }

    /** Paints them, where the chart has some. */
    static void paint(Chart chart, XYPlot plot, Graphics2D g, Rectangle2D area, FigureColours colours) {
        var own = (Graphics2D) g.create();
        var names = new DotNames(plot, own, area, colours);
        if (chart instanceof Chart.Scatter scatter) {
            scatter.fitted().ifPresent(names::avoid);
            names.dots(scatter.groups().stream()
                    .flatMap(group -> group.dots().stream())
                    .toList());
        } else if (chart instanceof Chart.Region region) {
            region.lines().forEach(names::avoid);
            region.areas().forEach(named -> names.avoid(named, region));
            names.dots(region.dots());
        }
        names.labels.paint();
        own.dispose();
    }

    /** Paints names of dots beside lines. */
    void paint(List<Chart.Dot> dots, List<Chart.Series> lines) {
        lines.forEach(this::avoid);
        dots(dots);
        labels.paint();
    }

    private void dots(List<Chart.Dot> dots) {
        int named = 0;
        for (var dot : dots) {
            named += dot.name().isBlank() ? 0 : 1;
            labels.add(at(dot.at()), named > MOST ? "" : dot.name(), colours.ink(), XyCharts.DOT);
        }
    }

    private void avoid(Chart.Series line) {
        for (int i = 1; i < line.points().size(); i++) {
            labels.avoid(new Line2D.Double(
                    at(line.points().get(i - 1)), at(line.points().get(i))));
        }
    }

    /** The name of an area. */
    private void avoid(Chart.Area named, Chart.Region chart) {
        var middle = at(AreaName.place(named, chart));
        double half = g.getFontMetrics(colours.font()).stringWidth(named.name()) / 2.0;
        labels.avoid(new Line2D.Double(middle.getX() - half, middle.getY(), middle.getX() + half, middle.getY()));
    }

    /** Where a point of the chart lies on the paper. */
    Point2D at(Point point) {
        return new Point2D.Double(
                plot.getDomainAxis().valueToJava2D(point.x(), area, plot.getDomainAxisEdge()),
                plot.getRangeAxis().valueToJava2D(point.y(), area, plot.getRangeAxisEdge()));
    }
}
