package planewright.ducts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import planewright.api.figure.Drawing;
import planewright.api.figure.Drawing.Layer;
import planewright.api.figure.Drawing.Path;
import planewright.api.figure.Drawing.Shape;
import planewright.api.figure.Drawing.Use;
import planewright.api.figure.Outline;
import planewright.api.figure.Point;
import planewright.api.quantity.Units;

/**
 * The drawings of an inlet, in millimetres. The plan lies as the skin does when it is flat, so that paper cut to it fits; the
 * section along the centre line stands below it. Air comes from the left.
 */
final class InletFigures {
    private static final double MM = 1000;
    private static final int PIECES = 100;
    private static final int LIP_PIECES = 40;

    /** Between what is drawn and its measure, and past the ends of the skin. */
    private static final double ASIDE = 8;

    private static final double BEYOND = 15;

    /** Room between plan and section. */
    private static final double BETWEEN = 26;

    /** Stations closer together than this carry a depth at every second. */
    private static final double ROOM_FOR_DEPTH = 14;

    private final Words words;
    private final InletAnswer answer;
    private final InletShape shape;
    private final double length;
    private final double end;
    private final double floor;
    private final double paperHalf;

    InletFigures(InletAnswer answer) {
        this.words = answer.words();
        this.answer = answer;
        this.shape = answer.shape();
        this.length = MM * shape.length();
        this.end = length + MM * shape.lip().length();
        this.floor = MM * shape.floorDepth();
        this.paperHalf = MM * shape.halfWidthOnSkin(shape.length());
    }

    Drawing planAndSection() {
        var section = new Section();
        return new Drawing(
                words.say("Plan and section"),
                List.of(
                        new Layer(Use.OUTLINE, section.body()),
                        new Layer(Use.MARK, planMarks()),
                        new Layer(Use.FOLD, List.of(apex())),
                        new Layer(Use.CUT, List.of(cutOut(), section.ramp(), section.lip())),
                        new Layer(Use.DIMENSION, dimensions(section)),
                        new Layer(Use.NOTE, notes(section))));
    }

    private double half(double x) {
        return MM * shape.halfWidthOnSkin(x / MM);
    }

    /** What is cut out of the skin, the apex closed; empty where it is larger than any sheet. */
    Optional<Outline> outline() {
        return Math.max(length, 2 * paperHalf) > Outline.MOST_MILLIMETRES
                ? Optional.empty()
                : Optional.of(Outline.around(List.of(new Path(cutOut().points(), true))));
    }

    /** From one end of the apex along a wall, across at the lip, and back. */
    private Path cutOut() {
        var points = new ArrayList<Point>();
        for (int i = 0; i <= PIECES; i++) {
            double x = length * i / PIECES;
            points.add(new Point(x, half(x)));
        }
        for (int i = PIECES; i >= 0; i--) {
            double x = length * i / PIECES;
            points.add(new Point(x, -half(x)));
        }
        return new Path(points, false);
    }

    private Path apex() {
        return line(0, half(0), 0, -half(0));
    }

    private List<Shape> planMarks() {
        var marks = new ArrayList<Shape>();
        marks.add(line(-BEYOND, 0, end + BEYOND, 0));
        for (int i = 1; i + 1 < Wall.STATIONS; i++) {
            double x = length * Wall.place(i);
            marks.add(line(x, -half(x), x, carriesDepth(i) ? paperHalf + 5 : half(x)));
        }
        return marks;
    }

    private boolean carriesDepth(int station) {
        return station % 2 == 0 || length / (Wall.STATIONS - 1) >= ROOM_FOR_DEPTH;
    }

    private List<Shape> dimensions(Section section) {
        double below = -paperHalf - ASIDE;
        var dimensions = new ArrayList<Shape>();
        dimensions.add(new Drawing.Dimension(new Point(0, below), new Point(length, below), mm(length)));
        dimensions.add(new Drawing.Dimension(
                new Point(length + ASIDE, -paperHalf), new Point(length + ASIDE, paperHalf), mm(2 * paperHalf)));
        dimensions.add(new Drawing.Dimension(new Point(-ASIDE, -half(0)), new Point(-ASIDE, half(0)), mm(2 * half(0))));
        dimensions.addAll(section.dimensions());
        return dimensions;
    }

    private List<Shape> notes(Section section) {
        var notes = new ArrayList<Shape>();
        for (int i = 1; i + 1 < Wall.STATIONS; i++) {
            if (carriesDepth(i)) {
                double x = length * Wall.place(i);
                notes.add(new Drawing.Note(new Point(x, paperHalf + 4), number(MM * shape.floorBelow(x / MM))));
            }
        }
        notes.add(new Drawing.Note(
                new Point(-BEYOND, paperHalf + 4),
                words.say("depth, {0}", Units.symbolOf(words.language().unit(Units.MILLIMETRE)))));
        notes.add(new Drawing.Note(
                new Point(0, -paperHalf - 2 * ASIDE),
                words.say("full line: cut   dashed: here the ramp begins, score it")));
        notes.addAll(section.notes());
        return notes;
    }

    /** What one sees looking aft: the skin, the opening below the lip, the foam. */
    Drawing entrance() {
        double half = MM * shape.width() / 2;
        double side = half + Math.min(BEYOND, half);
        double inner = MM * shape.lip().throatBelow();
        var opening = new ArrayList<>(across(half, y -> -drop(y) - inner));
        opening.add(new Point(half, -floor));
        opening.add(new Point(-half, -floor));
        var skin = shape.curvatureAcross() * side / MM < 1 ? across(side, y -> -drop(y)) : across(half, y -> -drop(y));
        var outlines = new ArrayList<Shape>();
        outlines.add(new Path(skin, false));
        answer.foam().ifPresent(foam -> outlines.add(line(-side, -MM * foam, side, -MM * foam)));
        double middle = inner + MM * (shape.depth() + shape.meanDrop());
        double atWall = floor - inner - drop(half);
        double below = -Math.max(floor, MM * answer.foam().orElse(0.0)) - ASIDE;
        return new Drawing(
                words.say("Entrance from ahead"),
                List.of(
                        new Layer(Use.OUTLINE, outlines),
                        new Layer(Use.PART, List.of(new Path(opening, true))),
                        new Layer(
                                Use.DIMENSION,
                                List.of(
                                        new Drawing.Dimension(
                                                new Point(0, -inner), new Point(0, -middle), mm(middle - inner)),
                                        new Drawing.Dimension(
                                                new Point(half + ASIDE / 2, -floor + atWall),
                                                new Point(half + ASIDE / 2, -floor),
                                                mm(atWall)),
                                        new Drawing.Dimension(
                                                new Point(-half, below), new Point(half, below), mm(2 * half))))));
    }

    private double drop(double y) {
        return MM * shape.drop(y / MM);
    }

    private static List<Point> across(double half, DoubleUnaryOperator height) {
        return IntStream.rangeClosed(-PIECES / 2, PIECES / 2)
                .mapToDouble(i -> half * 2 * i / PIECES)
                .mapToObj(y -> new Point(y, height.applyAsDouble(y)))
                .toList();
    }

    private static Path line(double fromX, double fromY, double toX, double toY) {
        return new Path(List.of(new Point(fromX, fromY), new Point(toX, toY)), false);
    }

    private String mm(double millimetres) {
        return words.mm(millimetres / MM);
    }

    private String number(double millimetres) {
        return words.language().number(millimetres, Units.MILLIMETRE, 1);
    }

    /** The section along the centre line, below the plan; where the skin bulges it is level half way along the ramp. */
    private final class Section {
        private final double skin = -paperHalf - ASIDE - BETWEEN;
        private final double curvature = answer.curvatureAlong() / MM;
        private final double throat = length + MM * shape.lip().throatBehind();

        /** A place along the skin and a depth square to it. */
        private Point at(double along, double below) {
            if (curvature == 0) {
                return new Point(along, skin - below);
            }
            double turn = curvature * (along - length / 2);
            return new Point(
                    length / 2 + Math.sin(turn) * (1 / curvature - below),
                    skin - 2 * Math.pow(Math.sin(turn / 2), 2) / curvature - below * Math.cos(turn));
        }

        private double floorBelow(double along) {
            return MM * shape.floorBelow(along / MM);
        }

        private List<Point> along(double from, double to, DoubleUnaryOperator below) {
            return IntStream.rangeClosed(0, PIECES)
                    .mapToDouble(i -> from + (to - from) * i / PIECES)
                    .mapToObj(along -> at(along, below.applyAsDouble(along)))
                    .toList();
        }

        Path ramp() {
            var points = new ArrayList<>(along(0, throat, this::floorBelow));
            points.addAll(along(throat, end, this::floorBelow));
            return new Path(points, false);
        }

        /** From the end of its inner side forward to the nose, round it and up to the skin. */
        Path lip() {
            var lip = shape.lip();
            var points = new ArrayList<Point>();
            for (int i = LIP_PIECES; i >= 0; i--) {
                double behind = lip.length() * i * i / LIP_PIECES / LIP_PIECES;
                points.add(at(length + MM * behind, MM * lip.below(behind)));
            }
            for (int i = 1; i <= LIP_PIECES / 2; i++) {
                double turn = Math.PI * i / LIP_PIECES;
                double radius = lip.noseRadius();
                points.add(at(length + MM * radius * (1 - Math.cos(turn)), MM * radius * (1 - Math.sin(turn))));
            }
            return new Path(points, false);
        }

        /** The skin, and the foam where its thickness is known. */
        List<Shape> body() {
            double behindNose = length + MM * shape.lip().noseRadius();
            var body = new ArrayList<Shape>();
            body.add(new Path(along(-BEYOND, 0, x -> 0), false));
            body.add(new Path(along(behindNose, end + BEYOND, x -> 0), false));
            answer.foam().ifPresent(foam -> body.add(new Path(along(-BEYOND, end + BEYOND, x -> MM * foam), false)));
            return body;
        }

        List<Shape> dimensions() {
            double behind = end + ASIDE;
            var dimensions = new ArrayList<Shape>();
            dimensions.add(new Drawing.Dimension(
                    at(throat, MM * shape.lip().throatBelow()),
                    at(throat, floor),
                    mm(floor - MM * shape.lip().throatBelow())));
            dimensions.add(new Drawing.Dimension(at(behind, 0), at(behind, floor), mm(floor)));
            answer.foam()
                    .ifPresent(foam ->
                            dimensions.add(new Drawing.Dimension(at(-ASIDE, 0), at(-ASIDE, MM * foam), mm(MM * foam))));
            return dimensions;
        }

        List<Shape> notes() {
            return List.of(
                    new Drawing.Note(at(length * 0.42, floorBelow(length * 0.42) / 2), words.degrees(shape.ramp())));
        }
    }
}
