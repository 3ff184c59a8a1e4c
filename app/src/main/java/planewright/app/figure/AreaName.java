package planewright.app.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import planewright.api.figure.Chart;
import planewright.api.figure.Point;

/** Where the name of an area stands: in its middle, or beside that where lines and dots are further away. */
final class AreaName {
    private static final double ASIDE = 0.25;

    private final Chart.Region chart;
    private final double width;
    private final double height;

    private AreaName(Chart.Region chart) {
        this.chart = chart;
        var corners =
                chart.areas().stream().flatMap(area -> area.corners().stream()).toList();
        var across = corners.stream().mapToDouble(Point::x).summaryStatistics();
        var upwards = corners.stream().mapToDouble(Point::y).summaryStatistics();
        this.width = Math.max(Double.MIN_NORMAL, across.getMax() - across.getMin());
        this.height = Math.max(Double.MIN_NORMAL, upwards.getMax() - upwards.getMin());
    }

    static Point place(Chart.Area area, Chart.Region chart) {
        var names = new AreaName(chart);
        var middle = middle(area.corners());
        double aside = ASIDE
                * (area.corners().stream().mapToDouble(Point::x).max().orElseThrow()
                        - area.corners().stream().mapToDouble(Point::x).min().orElseThrow());
        var shape = shape(area);
        return Stream.of(middle, new Point(middle.x() - aside, middle.y()), new Point(middle.x() + aside, middle.y()))
                .filter(point -> point.equals(middle) || shape.contains(point.x(), point.y()))
                .max(Comparator.comparingDouble(names::clearance))
                .orElse(middle);
    }

    /** The distance to the nearest line or dot, as a share of all areas. */
    private double clearance(Point at) {
        double nearest = chart.dots().stream()
                .mapToDouble(dot ->
                        Math.hypot((dot.at().x() - at.x()) / width, (dot.at().y() - at.y()) / height))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        for (var line : chart.lines()) {
            for (int i = 1; i < line.points().size(); i++) {
                var from = line.points().get(i - 1);
                var to = line.points().get(i);
                nearest = Math.min(
                        nearest,
                        Line2D.ptSegDist(
                                (from.x() - at.x()) / width,
                                (from.y() - at.y()) / height,
                                (to.x() - at.x()) / width,
                                (to.y() - at.y()) / height,
                                0,
                                0));
            }
        }
        return nearest;
    }

    private static Path2D shape(Chart.Area area) {
        var shape = new Path2D.Double();
        shape.moveTo(area.corners().get(0).x(), area.corners().get(0).y());
        area.corners().forEach(corner -> shape.lineTo(corner.x(), corner.y()));
        shape.closePath();
        return shape;
    }

    /** The centre of its surface: Bourke, Calculating the area and centroid of a polygon (1988); of one without, its first corner. */
    private static Point middle(List<Point> corners) {
        double twice = 0;
        double x = 0;
        double y = 0;
        var first = corners.get(0);
        for (int i = 0; i < corners.size(); i++) {
            var a = corners.get(i);
            var b = corners.get((i + 1) % corners.size());
            double cross = (a.x() - first.x()) * (b.y() - first.y()) - (b.x() - first.x()) * (a.y() - first.y());
            twice += cross;
            x += (a.x() + b.x() - 2 * first.x()) * cross;
            y += (a.y() + b.y() - 2 * first.y()) * cross;
        }
        return twice == 0 ? first : new Point(first.x() + x / (3 * twice), first.y() + y / (3 * twice));
    }
}
