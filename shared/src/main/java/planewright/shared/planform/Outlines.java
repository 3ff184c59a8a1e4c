package planewright.shared.planform;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;
import planewright.api.journal.Planform;

/**
 * Outlines of a planform, in millimetres. From above the nose points up and the right wing to the right; from the side the
 * nose points left; from ahead one looks at the nose, so the right wing is at the left. A body's sections are joined by a
 * smooth line that passes through each of them and never bulges beyond its neighbours; what lies between them is not known.
 */
public final class Outlines {
    private static final double MM = 1000;

    /** Corners of a round outline. */
    private static final int ROUND = 48;

    private Outlines() {}

    /** From above: a point at station (x, y) is drawn at (y, −x). */
    public static List<Drawing.Path> plan(Planform planform) {
        var paths = surfaces(planform, Outlines::fromAbove);
        planform.bodies()
                .forEach(body -> paths.add(body(
                        body,
                        section -> new Point(mm(body.y() + section.width() / 2), mm(-section.x())),
                        section -> new Point(mm(body.y() - section.width() / 2), mm(-section.x())))));
        return paths;
    }

    /** From the left side: a point at station (x, z) is drawn at (x, z). */
    public static List<Drawing.Path> side(Planform planform) {
        var paths = surfaces(planform, corner -> new Point(mm(corner.x()), mm(corner.z())));
        planform.bodies()
                .forEach(body -> paths.add(body(
                        body,
                        section -> new Point(mm(section.x()), mm(section.top())),
                        section -> new Point(mm(section.x()), mm(section.bottom())))));
        return paths;
    }

    /** From ahead: a point at station (y, z) is drawn at (−y, z). */
    public static List<Drawing.Path> front(Planform planform) {
        var paths = surfaces(planform, corner -> new Point(mm(-corner.y()), mm(corner.z())));
        planform.bodies().forEach(body -> paths.add(largestSection(body)));
        return paths;
    }

    /** Distance between the outermost points of the surfaces along y, m. */
    public static double span(Planform planform) {
        var across = planform.surfaces().stream()
                .flatMap(surface -> sides(surface).stream())
                .flatMap(List::stream)
                .mapToDouble(Corner::y)
                .summaryStatistics();
        return across.getCount() == 0 ? 0 : across.getMax() - across.getMin();
    }

    /** The largest coordinate of all corners and sections, of either sign, m; NaN where one is. */
    public static double reach(Planform planform) {
        var corners = planform.surfaces().stream()
                .flatMap(surface -> sides(surface).stream())
                .flatMap(List::stream)
                .flatMapToDouble(corner -> DoubleStream.of(corner.x(), corner.y(), corner.z()));
        var sections = planform.bodies().stream()
                .flatMap(body -> body.sections().stream().map(section -> new double[] {
                    section.x(), Math.abs(body.y()) + section.width() / 2, section.top(), section.bottom()
                }))
                .flatMapToDouble(DoubleStream::of);
        return DoubleStream.concat(corners, sections).map(Math::abs).max().orElse(0);
    }

    /** Area of a surface as seen from above, both sides, m²: the sum of its trapezoids. */
    public static double projectedArea(Planform.Surface surface) {
        double oneSide = surface.panels().stream()
                .mapToDouble(panel -> (panel.rootChord() + panel.tipChord())
                        / 2
                        * panel.span()
                        * Math.abs(Math.cos(panel.dihedral())))
                .sum();
        return surface.mirrored() ? 2 * oneSide : oneSide;
    }

    private static List<Drawing.Path> surfaces(Planform planform, Function<Corner, Point> view) {
        var paths = new ArrayList<Drawing.Path>();
        for (var surface : planform.surfaces()) {
            for (var side : sides(surface)) {
                paths.add(new Drawing.Path(side.stream().map(view).toList(), true));
            }
        }
        return paths;
    }

    /** The corners of each side; both sides as one where they meet at the centre line. */
    private static List<List<Corner>> sides(Planform.Surface surface) {
        var leading = new ArrayList<Corner>();
        var trailing = new ArrayList<Corner>();
        double x = surface.x();
        double y = surface.y();
        double z = surface.z();
        for (var panel : surface.panels()) {
            leading.add(new Corner(x, y, z));
            trailing.add(new Corner(x + panel.rootChord(), y, z));
            x += panel.span() * Math.tan(panel.sweep());
            y += panel.span() * Math.cos(panel.dihedral());
            z += panel.span() * Math.sin(panel.dihedral());
            leading.add(new Corner(x, y, z));
            trailing.add(new Corner(x + panel.tipChord(), y, z));
        }
        var right = ring(leading, trailing);
        if (!surface.mirrored()) {
            return List.of(right);
        }
        if (surface.y() == 0) {
            return List.of(whole(leading, trailing));
        }
        return List.of(right, right.stream().map(Corner::mirrored).toList());
    }

    private static List<Corner> ring(List<Corner> leading, List<Corner> trailing) {
        var ring = new ArrayList<>(leading);
        for (int i = trailing.size() - 1; i >= 0; i--) {
            ring.add(trailing.get(i));
        }
        return ring;
    }

    private static List<Corner> whole(List<Corner> leading, List<Corner> trailing) {
        var ring = ring(leading, trailing);
        for (var corner : trailing) {
            ring.add(corner.mirrored());
        }
        for (int i = leading.size() - 1; i >= 0; i--) {
            ring.add(leading.get(i).mirrored());
        }
        return ring;
    }

    private static Drawing.Path body(
            Planform.Body body, Function<Planform.Section, Point> one, Function<Planform.Section, Point> other) {
        var sections = SmoothSections.through(body.sections());
        var points = new ArrayList<Point>();
        sections.forEach(section -> points.add(one.apply(section)));
        for (int i = sections.size() - 1; i >= 0; i--) {
            points.add(other.apply(sections.get(i)));
        }
        return new Drawing.Path(points, true);
    }

    /** An ellipse as wide and high as the body's largest section. */
    private static Drawing.Path largestSection(Planform.Body body) {
        var largest = body.sections().stream()
                .max(Comparator.comparingDouble(section -> section.width() * (section.top() - section.bottom())))
                .orElseThrow();
        double middle = (largest.top() + largest.bottom()) / 2;
        var points = new ArrayList<Point>();
        for (int i = 0; i < ROUND; i++) {
            double angle = 2 * Math.PI * i / ROUND;
            points.add(new Point(
                    mm(-body.y() + largest.width() / 2 * Math.cos(angle)),
                    mm(middle + (largest.top() - middle) * Math.sin(angle))));
        }
        return new Drawing.Path(points, true);
    }

    private static Point fromAbove(Corner corner) {
        return new Point(mm(corner.y()), mm(-corner.x()));
    }

    /** Adding 0 makes a plain 0 of −0. */
    private static double mm(double metres) {
        return metres * MM + 0.0;
    }

    private record Corner(double x, double y, double z) {
        Corner mirrored() {
            return new Corner(x, -y, z);
        }
    }
}
