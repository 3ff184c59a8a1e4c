package planewright.balance;

import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;
import planewright.shared.planform.Outlines;

/** Plan view with pockets and pieces, and the ballast in each pocket. */
final class BallastFigures {
    private static final double MM = 1000;
    private static final int ROUND = 24;

    private final Words words;
    private final BallastAnswer answer;
    private final Ballast.Inputs inputs;

    BallastFigures(BallastAnswer answer) {
        this.words = answer.words();
        this.answer = answer;
        inputs = answer.inputs();
    }

    Chart perPocket() {
        return new Chart.Bars(
                words.say("Ballast in each pocket"),
                words.say("Pocket"),
                new Chart.Axis(words.say("Mass"), "g"),
                IntStream.range(0, inputs.pockets().size())
                        .mapToObj(p -> new Chart.Bar(inputs.pockets().get(p).name(), MM * mass(p), MM * spread(p)))
                        .toList());
    }

    Drawing plan(MassProperties after) {
        var layers = new ArrayList<Drawing.Layer>();
        inputs.planform()
                .ifPresent(
                        shape -> layers.add(new Drawing.Layer(Drawing.Use.OUTLINE, List.copyOf(Outlines.plan(shape)))));
        layers.add(new Drawing.Layer(Drawing.Use.PART, pockets()));
        layers.add(new Drawing.Layer(Drawing.Use.DIMENSION, moves()));
        layers.add(new Drawing.Layer(Drawing.Use.NOTE, names()));
        layers.add(new Drawing.Layer(Drawing.Use.MARK, marks(after)));
        return new Drawing(words.say("From above, ballast and moves"), layers);
    }

    /** A ring where a pocket stays empty, a disc where something goes in. */
    private List<Drawing.Shape> pockets() {
        var shapes = new ArrayList<Drawing.Shape>();
        double most = IntStream.range(0, inputs.pockets().size())
                .mapToDouble(this::mass)
                .max()
                .orElse(0);
        double radius = 0.02 * size();
        for (int p = 0; p < inputs.pockets().size(); p++) {
            var centre = at(inputs.pockets().get(p));
            shapes.add(ring(centre, radius));
            if (mass(p) > 0) {
                shapes.add(new Drawing.Disc(
                        centre,
                        Math.max(0.2, Math.sqrt(mass(p) / most)) * radius,
                        inputs.pockets().get(p).name() + ", " + words.grams(mass(p))));
            }
        }
        return shapes;
    }

    private List<Drawing.Shape> names() {
        return IntStream.range(0, inputs.pockets().size())
                .filter(p -> mass(p) == 0)
                .mapToObj(p -> (Drawing.Shape) new Drawing.Note(
                        at(inputs.pockets().get(p)),
                        words.say("{0}, empty", inputs.pockets().get(p).name())))
                .toList();
    }

    private List<Drawing.Shape> moves() {
        return answer.moves(answer.search().plan()).stream()
                .map(move -> {
                    double y = answer.parts().stream()
                            .filter(part -> part.name().equals(move.part()))
                            .findFirst()
                            .orElseThrow()
                            .y()
                            .in(MILLIMETRE);
                    double by = move.by().in(MILLIMETRE);
                    return (Drawing.Shape) new Drawing.Dimension(
                            new Point(y, -move.from().in(MILLIMETRE)),
                            new Point(y, -move.to().in(MILLIMETRE)),
                            words.say(
                                    by > 0 ? "{0} {1} aft" : "{0} {1} forward",
                                    move.part(),
                                    words.mm(Math.abs(move.by().in(METRE)))));
                })
                .toList();
    }

    private List<Drawing.Shape> marks(MassProperties after) {
        var marks = new ArrayList<Drawing.Shape>();
        marks.add(new Drawing.Mark(new Point(0, 0), Drawing.Sign.DATUM, words.say("datum")));
        inputs.targetX()
                .ifPresent(target -> marks.add(new Drawing.Mark(
                        new Point(inputs.sideways() ? inputs.targetY().in(MILLIMETRE) : 0, -target.in(MILLIMETRE)),
                        Drawing.Sign.TARGET,
                        words.say("target"))));
        marks.add(balance(answer.before(), words.say("before")));
        marks.add(balance(after, words.say("after")));
        return marks;
    }

    private static Drawing.Mark balance(MassProperties properties, String label) {
        return new Drawing.Mark(
                new Point(
                        MM * properties.balance().y().value(),
                        -MM * properties.balance().x().value()),
                Drawing.Sign.BALANCE_POINT,
                label);
    }

    private double spread(int pocket) {
        return answer.spread(answer.search().plan(), pocket);
    }

    private double mass(int pocket) {
        return answer.mass(answer.search().plan(), pocket);
    }

    private static Point at(Ballast.PocketLine line) {
        return new Point(MM * line.y().in(METRE), -MM * line.x().in(METRE));
    }

    private static Drawing.Path ring(Point centre, double radius) {
        return new Drawing.Path(
                IntStream.range(0, ROUND)
                        .mapToObj(i -> new Point(
                                centre.x() + radius * Math.cos(2 * Math.PI * i / ROUND),
                                centre.y() + radius * Math.sin(2 * Math.PI * i / ROUND)))
                        .toList(),
                true);
    }

    /** The greatest extent of shape and pockets, mm. */
    private double size() {
        var extent = LedgerFigures.extent(inputs.planform()).orElse(new Rectangle2D.Double());
        inputs.pockets()
                .forEach(line -> extent.add(line.x().in(MILLIMETRE), line.y().in(MILLIMETRE)));
        return Math.max(10, Math.max(extent.getWidth(), extent.getHeight()));
    }
}
