package planewright.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;
import planewright.shared.planform.Outlines;

/** Drawing and charts of a balance range. */
final class BalanceRangeFigures {
    private static final double MM = 1000;

    /** Half the length of the range's lines in the drawing, as a share of the span. */
    private static final double ACROSS = 0.08;

    private BalanceRangeFigures() {}

    static Drawing plan(BalanceRangeAnswer answer) {
        var wing = answer.wing();
        double edge = wing.leadingEdge().x();
        double y = wing.leadingEdge().y();
        double half = ACROSS * wing.span();
        var marks = new ArrayList<Drawing.Shape>();
        marks.add(line(y, edge, y, edge + wing.meanChord()));
        if (y > 0) {
            marks.add(line(-y, edge, -y, edge + wing.meanChord()));
        }
        marks.add(line(-half, answer.from(), half, answer.from()));
        marks.add(line(-half, answer.to(), half, answer.to()));
        marks.add(line(-half, answer.neutral(), half, answer.neutral()));
        marks.add(new Drawing.Mark(new Point(0, 0), Drawing.Sign.DATUM, datum(answer)));
        answer.balancePoint()
                .ifPresent(x -> marks.add(new Drawing.Mark(
                        at(0, x), Drawing.Sign.BALANCE_POINT, answer.words().say("balances here"))));
        var notes = List.<Drawing.Shape>of(
                new Drawing.Note(
                        at(half, answer.neutral()), " " + answer.words().say("neutral point")),
                new Drawing.Note(
                        at(half, answer.from()),
                        " " + answer.words().say("from {0}", answer.words().mm(answer.from(), 0))),
                new Drawing.Note(
                        at(half, answer.to()),
                        " " + answer.words().say("to {0}", answer.words().mm(answer.to(), 0))));
        var chord = new Drawing.Dimension(
                at(y, edge),
                at(y, edge + wing.meanChord()),
                answer.words().say("mean chord {0}", answer.words().mm(wing.meanChord(), 0)));
        return new Drawing(
                answer.words().say("From above"),
                List.of(
                        new Drawing.Layer(
                                Drawing.Use.OUTLINE,
                                List.copyOf(Outlines.plan(answer.inputs().planform()))),
                        new Drawing.Layer(Drawing.Use.MARK, marks),
                        new Drawing.Layer(Drawing.Use.DIMENSION, List.of(chord)),
                        new Drawing.Layer(Drawing.Use.NOTE, notes)));
    }

    static Chart margin(BalanceRangeAnswer answer) {
        double chord = answer.wing().meanChord();
        double first =
                Math.min(answer.from() - 0.1 * chord, answer.balancePoint().orElse(answer.from()));
        double last =
                Math.max(answer.neutral() + 0.05 * chord, answer.balancePoint().orElse(answer.to()));
        double from = Math.max(0, 100 * answer.band().margin().from());
        double to = Math.max(from, 100 * answer.band().margin().to());
        double top = Math.max(to, point(answer, first).y());
        double bottom = Math.min(0, point(answer, last).y());
        return new Chart.Region(
                answer.words().say("Static margin against balance point"),
                new Chart.Axis(answer.words().say("Balance point"), "mm"),
                new Chart.Axis(answer.words().say("Static margin"), "%"),
                List.of(
                        across(
                                answer.words().say("behind the neutral point"),
                                Chart.Sense.REFUSED,
                                first,
                                last,
                                bottom,
                                0),
                        across(answer.words().say("less than wanted"), Chart.Sense.DOUBTFUL, first, last, 0, from),
                        across(answer.words().say("wanted"), Chart.Sense.ALLOWED, first, last, from, to),
                        across(answer.words().say("more than wanted"), Chart.Sense.DOUBTFUL, first, last, to, top)),
                List.of(new Chart.Series(
                        answer.words().say("static margin"), List.of(point(answer, first), point(answer, last)))),
                answer
                        .balancePoint()
                        .map(x -> new Chart.Dot(answer.words().say("balances here"), point(answer, x)))
                        .stream()
                        .toList());
    }

    /** From a station to another, m, and between two margins, %. */
    private static Chart.Area across(
            String name, Chart.Sense sense, double first, double last, double bottom, double top) {
        return new Chart.Area(
                name,
                sense,
                List.of(
                        new Point(MM * first, bottom),
                        new Point(MM * last, bottom),
                        new Point(MM * last, top),
                        new Point(MM * first, top)));
    }

    /** Local lift in trim at the speed asked for, else in slow flight, with what each surface's section bears. */
    static Chart lift(BalanceRangeAnswer answer) {
        var flying =
                answer.level().lift().filter(needed -> needed <= answer.stall().lift());
        double lift = flying.orElse(BalanceRangeAnswer.LIFT);
        var local = answer.trimmed().localLift(lift);
        var strips = answer.derivatives().lattice().strips();
        var surfaces = answer.inputs().planform().surfaces();
        var series = new ArrayList<Chart.Series>();
        for (int surface = 0; surface < surfaces.size(); surface++) {
            var points = new ArrayList<Point>();
            for (int i = 0; i < strips.size(); i++) {
                var strip = strips.get(i);
                if (strip.surface() == surface && Stall.level(strip)) {
                    points.add(new Point(MM * strip.middle().y(), local[i]));
                }
            }
            if (!points.isEmpty()) {
                points.sort(Comparator.comparingDouble(Point::x));
                var name = surfaces.get(surface).name();
                series.add(new Chart.Series(name, points));
                double limit = answer.rigging().section(surface).mostLift();
                series.add(new Chart.Series(
                        answer.words().say("limit of {0}", name),
                        List.of(
                                new Point(points.get(0).x(), limit),
                                new Point(points.get(points.size() - 1).x(), limit))));
            }
        }
        var title = flying.isPresent()
                ? answer.words()
                        .say(
                                "Local lift coefficient at {0} ({1} of the whole)",
                                answer.words().speed(answer.level().speed().orElseThrow()),
                                answer.words().number(lift, 2))
                : answer.words()
                        .say(
                                "Local lift coefficient in slow flight ({0} of the whole)",
                                answer.words().number(lift, 1));
        return new Chart.Lines(
                title,
                new Chart.Axis(answer.words().say("From the centre line"), "mm"),
                new Chart.Axis(answer.words().say("Local lift coefficient"), "1"),
                series,
                List.of());
    }

    private static Point point(BalanceRangeAnswer answer, double x) {
        return new Point(MM * x, 100 * (answer.neutral() - x) / answer.wing().meanChord());
    }

    private static Drawing.Path line(double y, double x, double toY, double toX) {
        return new Drawing.Path(List.of(at(y, x), at(toY, toX)), false);
    }

    /** From above the nose points up. */
    private static Point at(double y, double x) {
        return new Point(MM * y, -MM * x);
    }

    private static String datum(BalanceRangeAnswer answer) {
        var datum = answer.inputs().datum();
        return datum.isBlank() ? answer.words().say("datum") : answer.words().say("datum: {0}", datum);
    }
}
