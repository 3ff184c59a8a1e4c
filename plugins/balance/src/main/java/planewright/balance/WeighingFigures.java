package planewright.balance;

import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;
import planewright.api.quantity.Measured;
import planewright.shared.planform.Outlines;

/** Drawings and chart of a weighing. */
final class WeighingFigures {
    private static final double MM = 1000;

    private final Words words;
    private final WeighingAnswer answer;

    WeighingFigures(WeighingAnswer answer) {
        this.words = answer.words();
        this.answer = answer;
    }

    Drawing plan() {
        double across = answer.lateral() ? answer.y().value() : 0;
        return drawing(
                words.say("From above"),
                answer.inputs().planform().map(Outlines::plan),
                (x, y) -> new Point(MM * y, -MM * x),
                across);
    }

    /** Supports stand below the lowest point of the shape; the height of the balance point is not weighed. */
    Drawing side() {
        var outline = answer.inputs().planform().map(Outlines::side);
        double ground = outline.stream()
                .flatMap(List::stream)
                .flatMap(path -> path.points().stream())
                .mapToDouble(Point::y)
                .min()
                .orElse(0);
        return drawing(words.say("From the side, height not weighed"), outline, (x, y) -> new Point(MM * x, ground), 0);
    }

    Chart chart() {
        return new Chart.Bars(
                words.say("Net load on each support"),
                words.say("Support"),
                new Chart.Axis(words.say("Load"), "g"),
                answer.loads().stream()
                        .map(load -> new Chart.Bar(
                                load.round().isEmpty() ? load.name() : load.name() + ", " + load.round(),
                                load.load().in(GRAM),
                                load.load().spreadIn(GRAM)))
                        .toList());
    }

    /** One that lies apart is seen at once, and whether it does in mass, in balance or in both. */
    Chart rounds() {
        var rounds = answer.roundLines().stream()
                .map(round -> new Chart.Dot(
                        round.round(),
                        new Point(round.x().in(MILLIMETRE), round.mass().in(GRAM))))
                .toList();
        var taken = new Chart.Dot(
                words.say("taken"),
                new Point(MM * answer.x().value(), MM * answer.mass().value()));
        return new Chart.Scatter(
                words.say("Rounds against each other"),
                new Chart.Axis(words.say("Balance point x"), "mm"),
                new Chart.Axis(words.say("Mass"), "g"),
                List.of(
                        new Chart.Group(words.say("rounds"), rounds),
                        new Chart.Group(words.say("taken together"), List.of(taken))),
                Optional.empty());
    }

    private Drawing drawing(
            String title, Optional<List<Drawing.Path>> outline, BiFunction<Double, Double, Point> at, double across) {
        double x = answer.x().value();
        var layers = new ArrayList<Drawing.Layer>();
        outline.ifPresent(paths -> layers.add(new Drawing.Layer(Drawing.Use.OUTLINE, List.copyOf(paths))));
        layers.add(new Drawing.Layer(
                Drawing.Use.DIMENSION,
                List.of(new Drawing.Dimension(
                        at.apply(0.0, across),
                        at.apply(x, across),
                        words.show(Measured.of(Math.rint(x * 1e4) / 10, MILLIMETRE))))));
        var marks = new LinkedHashSet<Drawing.Shape>();
        answer.inputs().supports().forEach(line -> marks.add(support(line, at)));
        marks.add(new Drawing.Mark(at.apply(0.0, 0.0), Drawing.Sign.DATUM, words.say("datum")));
        answer.inputs()
                .targetX()
                .ifPresent(target -> marks.add(
                        new Drawing.Mark(at.apply(target.in(METRE), 0.0), Drawing.Sign.TARGET, words.say("target"))));
        marks.add(new Drawing.Mark(at.apply(x, across), Drawing.Sign.BALANCE_POINT, words.say("balances here")));
        layers.add(new Drawing.Layer(Drawing.Use.MARK, List.copyOf(marks)));
        return new Drawing(title, layers);
    }

    /** With its load, unless several rounds put different loads on it. */
    private Drawing.Mark support(Weighing.SupportLine line, BiFunction<Double, Double, Point> at) {
        var label =
                answer.rounds().size() > 1 ? line.name() : line.name() + ", " + words.show(WeighingAnswer.net(line));
        return new Drawing.Mark(at.apply(line.x().in(METRE), line.y().in(METRE)), Drawing.Sign.SUPPORT, label);
    }
}
