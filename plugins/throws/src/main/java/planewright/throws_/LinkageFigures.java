package planewright.throws_;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.MILLIMETRE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;

/** Charts and drawing of a linkage. */
final class LinkageFigures {
    private static final int STEPS = 40;
    private static final double MM = 1000;

    /** Only drawn: surfaces taper to their trailing edge. */
    private static final double THICKNESS = 0.06;

    /** Of a surface whose chord is not known, over the horn's length. */
    private static final double DRAWN_CHORD = 2.5;

    /** Words stand a little beyond the trailing edge. */
    private static final double BEYOND = 1.06;

    private final Words words;
    private final LinkageAnswer answer;
    private final Setting setting;
    private final Linkage linkage;

    LinkageFigures(LinkageAnswer answer) {
        this.words = answer.words();
        this.answer = answer;
        this.setting = answer.setting();
        this.linkage = setting.linkage();
    }

    /** Up to where it locks; beside it a surface that would follow the stick evenly. */
    Chart curve() {
        double slope = setting.deflection(1e-6) - setting.deflection(-1e-6);
        double evenly = Math.toDegrees(slope / 2e-6);
        double centre = Math.toDegrees(setting.deflection(0));
        return new Chart.Lines(
                words.say("Surface against stick"),
                new Chart.Axis(words.say("Stick, towards the surface positive"), "%"),
                new Chart.Axis(words.say("Surface, up positive"), "deg"),
                List.of(
                        new Chart.Series(
                                words.say("surface"),
                                commands()
                                        .map(command -> new Point(
                                                100 * command,
                                                Math.toDegrees(setting.deflection(setting.turn(command)))))
                                        .toList()),
                        new Chart.Series(
                                words.say("as at centre"),
                                commands()
                                        .map(command ->
                                                new Point(100 * command, centre + evenly * setting.turn(command)))
                                        .toList())),
                wanted());
    }

    private List<Chart.Level> wanted() {
        return Stream.of(
                        answer.inputs()
                                .wantedUp()
                                .map(up -> new Chart.Level(words.say("wanted up"), up.in(DEGREE), Optional.empty())),
                        answer.inputs()
                                .wantedDown()
                                .map(down ->
                                        new Chart.Level(words.say("wanted down"), -down.in(DEGREE), Optional.empty())))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Leaves out what stands beyond all measure, near to over centre. */
    Chart leverage() {
        double most = Math.min(LinkageAnswer.MOST_LEVERAGE, 4 * leverage(0));
        return new Chart.Lines(
                words.say("Leverage against stick"),
                new Chart.Axis(words.say("Stick, towards the surface positive"), "%"),
                new Chart.Axis(words.say("Torque, hinge over servo"), "1"),
                List.of(new Chart.Series(
                        words.say("leverage"),
                        commands()
                                .filter(command -> leverage(command) <= most)
                                .map(command -> new Point(100 * command, leverage(command)))
                                .toList())),
                List.of());
    }

    private double leverage(double command) {
        return 1 / Math.abs(linkage.ratio(setting.turn(command)));
    }

    private Stream<Double> commands() {
        double from = setting.turn(-1) / setting.away();
        double to = setting.turn(1) / setting.towards();
        return IntStream.rangeClosed(-STEPS, STEPS).mapToObj(i -> i < 0 ? -from * i / STEPS : to * i / STEPS);
    }

    Drawing drawing() {
        double high = setting.highest();
        double low = setting.lowest();
        return new Drawing(
                words.say("Linkage at true size"),
                List.of(
                        new Drawing.Layer(Drawing.Use.OUTLINE, List.of(surface())),
                        new Drawing.Layer(
                                Drawing.Use.FOLD,
                                Stream.of(high, low)
                                        .flatMap(turn -> Stream.concat(links(turn).stream(), Stream.of(middle(turn))))
                                        .toList()),
                        new Drawing.Layer(Drawing.Use.PART, neutral()),
                        new Drawing.Layer(
                                Drawing.Use.DIMENSION,
                                List.of(new Drawing.Dimension(
                                        drawn(linkage.armHole(0)),
                                        drawn(linkage.hornHole(0)),
                                        words.say("pushrod {0}", words.mm(linkage.pushrod()))))),
                        new Drawing.Layer(
                                Drawing.Use.NOTE, List.of(note(high, words.say("up")), note(low, words.say("down"))))));
    }

    /** Arm, pushrod and horn as three straight lines from shaft to hinge. */
    private List<Drawing.Shape> links(double turn) {
        return List.of(
                path(new Point(0, 0), linkage.armHole(turn)),
                path(linkage.armHole(turn), linkage.hornHole(turn)),
                path(linkage.hornHole(turn), hinge()));
    }

    private List<Drawing.Shape> neutral() {
        var shapes = new ArrayList<>(links(0));
        shapes.add(new Drawing.Disc(drawn(new Point(0, 0)), 2, words.say("servo")));
        shapes.add(new Drawing.Disc(drawn(linkage.armHole(0)), 0.8, ""));
        shapes.add(new Drawing.Disc(drawn(linkage.hornHole(0)), 0.8, ""));
        shapes.add(new Drawing.Disc(drawn(hinge()), 1.2, words.say("hinge")));
        return List.copyOf(shapes);
    }

    private Drawing.Path surface() {
        double half = THICKNESS * chord();
        return new Drawing.Path(
                Stream.of(
                                linkage.onSurface(0, half, 0),
                                linkage.onSurface(chord(), 0, 0),
                                linkage.onSurface(0, -half, 0))
                        .map(this::drawn)
                        .toList(),
                true);
    }

    private Drawing.Path middle(double turn) {
        return path(hinge(), linkage.onSurface(chord(), 0, turn));
    }

    private Drawing.Note note(double turn, String word) {
        return new Drawing.Note(
                drawn(linkage.onSurface(BEYOND * chord(), 0, turn)),
                word + " " + words.degrees(setting.deflection(turn)));
    }

    private Point hinge() {
        return linkage.onSurface(0, 0, 0);
    }

    private double chord() {
        return answer.inputs()
                .chord()
                .map(chord -> chord.in(MILLIMETRE) / MM)
                .orElse(DRAWN_CHORD * linkage.geometry().hornLength());
    }

    private Drawing.Path path(Point from, Point to) {
        return new Drawing.Path(List.of(drawn(from), drawn(to)), false);
    }

    /** In millimetres, a horn below the surface drawn below it. */
    private Point drawn(Point metres) {
        return new Point(MM * metres.x(), -setting.up() * MM * metres.y());
    }
}
