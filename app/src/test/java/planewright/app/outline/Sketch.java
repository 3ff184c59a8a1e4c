package planewright.app.outline;

import java.awt.Shape;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import planewright.api.figure.Drawing;
import planewright.api.figure.Outline;
import planewright.api.figure.Point;

/** SVG for tests, and measures of what was read from it. */
final class Sketch {
    private Sketch() {}

    /** A sheet of 1000 mm × 600 mm whose unit is a millimetre. */
    static Outline read(String shapes) throws OutlineRefused {
        return SvgReader.read(bytes("<svg xmlns='http://www.w3.org/2000/svg' width='1000mm' height='600mm'"
                + " viewBox='0 0 1000 600'>" + shapes + "</svg>"));
    }

    static Outline path(String data) throws OutlineRefused {
        return read("<path d='" + data + "'/>");
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    static List<Drawing.Path> flat(Outline outline, double tolerance) {
        return outline.drawing("", tolerance).layers().get(0).shapes().stream()
                .map(Drawing.Path.class::cast)
                .toList();
    }

    /** Enclosed area by the surveyor's formula, mm². */
    static double area(Drawing.Path path) {
        double twice = 0;
        var points = path.points();
        for (int i = 0; i < points.size(); i++) {
            var a = points.get(i);
            var b = points.get((i + 1) % points.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(twice) / 2;
    }

    /** A shape of java.awt as straight pieces, y turned upwards on the sheet of 600 mm. */
    static List<List<Point2D>> lines(Shape shape) {
        var lines = new ArrayList<List<Point2D>>();
        var at = new double[6];
        for (var pieces = new FlatteningPathIterator(shape.getPathIterator(null), 1e-3, 20);
                !pieces.isDone();
                pieces.next()) {
            int kind = pieces.currentSegment(at);
            if (kind == PathIterator.SEG_MOVETO) {
                lines.add(new ArrayList<>());
            }
            var line = lines.get(lines.size() - 1);
            if (kind == PathIterator.SEG_CLOSE) {
                line.add(line.get(0));
                lines.add(new ArrayList<>(List.of(line.get(0))));
            } else {
                line.add(new Point2D.Double(at[0], 600 - at[1]));
            }
        }
        return lines.stream().filter(line -> line.size() > 1).toList();
    }

    static List<Point2D> points(Drawing.Path path) {
        var points =
                new ArrayList<Point2D>(path.points().stream().map(Sketch::point).toList());
        if (path.closed()) {
            points.add(points.get(0));
        }
        return points;
    }

    /** How far the points of one line stray from the other line at most, mm. */
    static double stray(List<Point2D> points, List<Point2D> from) {
        double most = 0;
        for (var point : points) {
            double least = Double.MAX_VALUE;
            for (int i = 1; i < from.size() && least > 0; i++) {
                least = Math.min(
                        least,
                        Line2D.ptSegDist(
                                from.get(i - 1).getX(),
                                from.get(i - 1).getY(),
                                from.get(i).getX(),
                                from.get(i).getY(),
                                point.getX(),
                                point.getY()));
            }
            most = Math.max(most, least);
        }
        return most;
    }

    private static Point2D point(Point point) {
        return new Point2D.Double(point.x(), point.y());
    }
}
