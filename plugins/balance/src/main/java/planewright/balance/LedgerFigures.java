package planewright.balance;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;
import planewright.api.journal.Planform;
import planewright.shared.planform.Outlines;

/** Drawings and charts of a ledger. */
final class LedgerFigures {
    /** Lighter parts carry no name in a drawing, or names would hide the aircraft. */
    private static final double NAMED_SHARE = 0.03;

    private static final int MOST_BARS = 14;
    private static final double MM = 1000;

    private LedgerFigures() {}

    static Drawing plan(LedgerAnswer answer) {
        return drawing(
                answer,
                answer.words().say("From above"),
                answer.inputs().planform().map(Outlines::plan),
                false);
    }

    static Drawing side(LedgerAnswer answer) {
        return drawing(
                answer,
                answer.words().say("From the side"),
                answer.inputs().planform().map(Outlines::side),
                true);
    }

    static Chart massByGroup(LedgerAnswer answer) {
        var groups = new LinkedHashMap<String, double[]>();
        for (var part : answer.parts()) {
            var group = part.line().group().isBlank()
                    ? answer.words().say("other")
                    : part.line().group();
            var sums = groups.computeIfAbsent(group, name -> new double[2]);
            sums[0] += MM * part.point().mass();
            sums[1] = Math.hypot(sums[1], MM * part.point().massSpread());
        }
        return new Chart.Bars(
                answer.words().say("Mass by group"),
                answer.words().say("Group"),
                new Chart.Axis(answer.words().say("Mass"), "g"),
                groups.entrySet().stream()
                        .map(group -> new Chart.Bar(group.getKey(), group.getValue()[0], group.getValue()[1]))
                        .sorted(Comparator.comparingDouble(bar -> -bar.value()))
                        .toList());
    }

    static Chart pull(LedgerAnswer answer) {
        double x = answer.total().balance().x().value();
        return new Chart.Bars(
                answer.words().say("Who pulls the nose down (−) and the tail down (+)"),
                answer.words().say("Part"),
                new Chart.Axis(answer.words().say("Moment about the balance point"), "g.mm"),
                answer.parts().stream()
                        .map(part -> new Chart.Bar(
                                part.name(),
                                MM
                                        * MM
                                        * part.point().mass()
                                        * (part.point().at().x() - x),
                                0))
                        .sorted(Comparator.comparingDouble(bar -> -Math.abs(bar.value())))
                        .limit(MOST_BARS)
                        .toList());
    }

    /** What the shape covers along x and y, mm; empty where it is not known or holds nothing. */
    static Optional<Rectangle2D> extent(Optional<Planform> planform) {
        var points = planform.map(Outlines::plan).orElse(List.of()).stream()
                .flatMap(path -> path.points().stream())
                .toList();
        if (points.isEmpty()) {
            return Optional.empty();
        }
        var extent = new Rectangle2D.Double(-points.get(0).y(), points.get(0).x(), 0, 0);
        points.forEach(point -> extent.add(-point.y(), point.x()));
        return Optional.of(extent);
    }

    /** Half the span of the shape, or the outermost part where there is none, m. */
    static double halfSpan(LedgerAnswer answer) {
        return extent(answer.inputs().planform())
                .map(extent -> Math.max(Math.abs(extent.getMinY()), Math.abs(extent.getMaxY())) / MM)
                .orElseGet(() -> answer.parts().stream()
                        .mapToDouble(part -> Math.abs(part.point().at().y()))
                        .max()
                        .orElse(0));
    }

    private static Drawing drawing(
            LedgerAnswer answer, String title, Optional<List<Drawing.Path>> outline, boolean side) {
        var layers = new ArrayList<Drawing.Layer>();
        outline.ifPresent(paths -> layers.add(new Drawing.Layer(Drawing.Use.OUTLINE, List.copyOf(paths))));
        layers.add(new Drawing.Layer(Drawing.Use.PART, parts(answer, side)));
        layers.add(new Drawing.Layer(Drawing.Use.DIMENSION, List.of(dimension(answer, side))));
        layers.add(new Drawing.Layer(Drawing.Use.MARK, marks(answer, side)));
        return new Drawing(title, layers);
    }

    private static List<Drawing.Shape> parts(LedgerAnswer answer, boolean side) {
        var shapes = new ArrayList<Drawing.Shape>();
        double heaviest = answer.parts().stream()
                .mapToDouble(part -> part.point().mass())
                .max()
                .orElseThrow();
        double largest = 0.03 * size(answer);
        for (var part : answer.parts()) {
            var point = part.point();
            double across = side ? point.size().z() : point.size().y();
            if (point.size().x() > 0 && across > 0) {
                shapes.add(box(point, across, side));
            }
            boolean named = point.mass() >= NAMED_SHARE * answer.total().mass().value();
            double radius = Math.max(0.12 * largest, largest * Math.sqrt(point.mass() / heaviest));
            shapes.add(new Drawing.Disc(at(point.at(), side), radius, named ? part.name() : ""));
        }
        return shapes;
    }

    private static Drawing.Path box(MassPoint point, double across, boolean side) {
        double length = point.size().x() / 2;
        var corners = new ArrayList<Point>();
        for (int[] corner : new int[][] {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
            double x = point.at().x() + corner[0] * length;
            double other = (side ? point.at().z() : point.at().y()) + corner[1] * across / 2;
            corners.add(side ? new Point(MM * x, MM * other) : new Point(MM * other, -MM * x));
        }
        return new Drawing.Path(corners, true);
    }

    private static Drawing.Dimension dimension(LedgerAnswer answer, boolean side) {
        var balance = answer.total().balance().at();
        var from = side ? new Point(0, MM * balance.z()) : new Point(MM * balance.y(), 0);
        return new Drawing.Dimension(from, at(balance, side), answer.words().mm(balance.x()));
    }

    private static List<Drawing.Shape> marks(LedgerAnswer answer, boolean side) {
        var marks = new ArrayList<Drawing.Shape>();
        var datum = answer.inputs().datum();
        marks.add(new Drawing.Mark(
                new Point(0, 0),
                Drawing.Sign.DATUM,
                datum.isBlank() ? answer.words().say("datum") : answer.words().say("datum: {0}", datum)));
        answer.target()
                .ifPresent(target -> marks.add(new Drawing.Mark(
                        at(
                                new MassPoint.Vector(
                                        target,
                                        answer.targetY(),
                                        answer.total().balance().z().value()),
                                side),
                        Drawing.Sign.TARGET,
                        answer.words().say("target"))));
        marks.add(new Drawing.Mark(
                at(answer.total().balance().at(), side),
                Drawing.Sign.BALANCE_POINT,
                answer.words().say("balances here")));
        return marks;
    }

    /** The greatest extent of shape and parts, mm. */
    private static double size(LedgerAnswer answer) {
        var extent = extent(answer.inputs().planform()).orElse(new Rectangle2D.Double());
        answer.parts()
                .forEach(part -> extent.add(
                        MM * part.point().at().x(), MM * part.point().at().y()));
        return Math.max(10, Math.max(extent.getWidth(), extent.getHeight()));
    }

    private static Point at(MassPoint.Vector station, boolean side) {
        return side ? new Point(MM * station.x(), MM * station.z()) : new Point(MM * station.y(), -MM * station.x());
    }
}
