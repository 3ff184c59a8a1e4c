package planewright.balance;

import static planewright.api.quantity.Units.GRAM_MILLIMETRE;

import java.util.ArrayList;
import java.util.List;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;
import planewright.shared.planform.Outlines;
import planewright.shared.planform.SurfaceGeometry;
import planewright.shared.planform.SurfaceGeometry.View;

/** Plan view with the parts that pull, the balance point and the tip ballast; and which wing each cause pulls down. */
final class LeanFigures {
    private static final double MM = 1000;
    private static final int MOST_BARS = 14;

    private LeanFigures() {}

    static Chart pull(Words words, List<Lean.CauseLine> causes) {
        return new Chart.Bars(
                words.say("Which wing each cause pulls down: left (−), right (+)"),
                words.say("Cause"),
                new Chart.Axis(words.say("Rolling moment"), "g.mm"),
                causes.stream()
                        .limit(MOST_BARS)
                        .map(cause -> new Chart.Bar(
                                cause.cause(),
                                cause.moment().in(GRAM_MILLIMETRE),
                                cause.moment().spreadIn(GRAM_MILLIMETRE)))
                        .toList());
    }

    static Drawing plan(LeanAnswer answer) {
        var words = answer.words();
        var layers = new ArrayList<Drawing.Layer>();
        answer.inputs()
                .planform()
                .ifPresent(
                        shape -> layers.add(new Drawing.Layer(Drawing.Use.OUTLINE, List.copyOf(Outlines.plan(shape)))));
        double x = answer.moments()
                .wing()
                .map(wing -> SurfaceGeometry.of(wing, View.ABOVE).quarterChord())
                .orElse(0.0);
        double at = answer.levelSide() * answer.tip();
        double tipX = tipX(answer, x);
        var marks = new ArrayList<Drawing.Shape>();
        marks.add(new Drawing.Mark(new Point(0, -MM * x), Drawing.Sign.TARGET, words.say("centre line")));
        answer.moments()
                .mass()
                .ifPresent(mass -> marks.add(new Drawing.Mark(
                        new Point(MM * answer.lean().value() / mass.value(), -MM * x),
                        Drawing.Sign.BALANCE_POINT,
                        words.say("balances here sideways"))));
        layers.add(new Drawing.Layer(
                Drawing.Use.PART,
                List.of(new Drawing.Disc(
                        new Point(MM * at, -MM * tipX),
                        0.015 * 2 * MM * answer.tip(),
                        words.say("{0} levels it", words.show(answer.levelMass()))))));
        layers.add(new Drawing.Layer(
                Drawing.Use.DIMENSION,
                List.of(new Drawing.Dimension(
                        new Point(0, -MM * tipX), new Point(MM * at, -MM * tipX), words.mm(answer.tip(), 0)))));
        layers.add(new Drawing.Layer(Drawing.Use.MARK, marks));
        return new Drawing(words.say("From above, what levels it"), layers);
    }

    /** Middle of the tip chord where the shape is known. */
    private static double tipX(LeanAnswer answer, double otherwise) {
        return answer.moments()
                .wing()
                .map(wing -> {
                    var edge = SurfaceGeometry.leadingEdge(wing);
                    var panels = wing.panels();
                    return edge.get(edge.size() - 1).x()
                            + panels.get(panels.size() - 1).tipChord() / 2;
                })
                .orElse(otherwise);
    }
}
