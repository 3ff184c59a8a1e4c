package planewright.throws_;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.NUMBER;
import static planewright.api.quantity.Units.PERCENT;
import static planewright.api.quantity.Units.RADIAN;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.shared.uncertainty.Propagation;

/**
 * The answer for one linkage.
 *
 * @param words in which it is told
 * @param inputs what was given
 * @param setting the linkage with its travel
 * @param pairs holes compared, best first; empty where no throw is wanted
 */
record LinkageAnswer(Words words, ServoLinkage.Inputs inputs, Setting setting, List<Holes.Pair> pairs) {
    /** The usual pulse, centred and for an end point of 100 %, µs: see the sources of {@link ServoLinkage}. */
    private static final double PULSE_CENTRED = 1500;

    private static final double PULSE_OF_FULL_TRAVEL = 500;

    /** Beyond it the arm or the surface hardly moves, and a factor says nothing. */
    static final double MOST_LEVERAGE = 100;

    private static final int MOST_PAIRS = 12;

    static LinkageAnswer of(Words words, ServoLinkage.Inputs inputs) throws UnsuitableInput {
        var geometry = Measures.geometry(inputs);
        LinkageChecks.require(words, inputs, geometry);
        var setting = Measures.setting(inputs, Linkage.of(geometry).orElseThrow());
        return new LinkageAnswer(words, inputs, setting, pairs(inputs, setting));
    }

    private static List<Holes.Pair> pairs(ServoLinkage.Inputs inputs, Setting setting) {
        if (inputs.wantedUp().isEmpty() && inputs.wantedDown().isEmpty()) {
            return List.of();
        }
        return holes(inputs)
                .ranked(
                        setting,
                        metres(inputs.armHoles(), inputs.armLength()),
                        metres(inputs.hornHoles(), inputs.hornLength()));
    }

    private static Holes holes(ServoLinkage.Inputs inputs) {
        return new Holes(radians(inputs.wantedUp()), radians(inputs.wantedDown()));
    }

    private static OptionalDouble radians(Optional<Measured<Angle>> wanted) {
        return wanted.map(angle -> OptionalDouble.of(angle.in(RADIAN))).orElse(OptionalDouble.empty());
    }

    private static List<Double> metres(List<ServoLinkage.HoleLine> holes, Measured<Length> inUse) {
        return holes.isEmpty()
                ? List.of(inUse.in(METRE))
                : holes.stream()
                        .map(hole -> hole.distance().in(METRE))
                        .distinct()
                        .toList();
    }

    ServoLinkage.Results results() {
        var figures = new LinkageFigures(this);
        var ratio = spread(x -> Math.abs(x.linkage().ratio(0)), NUMBER);
        return new ServoLinkage.Results(
                up(),
                down(),
                atPoint(up()),
                atPoint(down()),
                differential(),
                neutral(),
                neutralPushrod(),
                ratio,
                surfaceStep(ratio),
                new LinkageFindings(this).all(),
                places(),
                limits(),
                pairs.stream().limit(MOST_PAIRS).map(this::line).toList(),
                figures.curve(),
                figures.leverage(),
                figures.drawing(),
                proposals());
    }

    /** The most that the surface goes up, with the ± of all that was measured where the linkage goes on smoothly. */
    Measured<Angle> up() {
        return throwAt(setting.highest(), 1);
    }

    Measured<Angle> down() {
        return throwAt(setting.lowest(), -1);
    }

    private static double differential(Setting setting) {
        return 1 + setting.deflection(setting.lowest()) / setting.deflection(setting.highest());
    }

    private boolean throwAtLock(double turn) {
        return setting.locks(turn > 0 ? 1 : -1) && turn == setting.turn(Math.signum(turn));
    }

    private Measured<Angle> throwAt(double turn, int sign) {
        double command = turn / (turn > 0 ? setting.towards() : setting.away());
        ToDoubleFunction<Setting> function = moved -> sign * moved.deflection(moved.turn(command));
        return throwAtLock(turn)
                ? Measured.of(Math.toDegrees(function.applyAsDouble(setting)), DEGREE)
                : spread(function, RADIAN).to(DEGREE);
    }

    Measured<Angle> neutral() {
        return inputs.pushrodLength().isEmpty()
                ? Measured.of(0, DEGREE)
                : spread(moved -> moved.deflection(0), RADIAN).to(DEGREE);
    }

    Measured<Length> neutralPushrod() {
        return spread(moved -> moved.linkage().geometry().neutralPushrod(), METRE)
                .to(MILLIMETRE);
    }

    private Measured<Angle> surfaceStep(Measured<Dimensionless> ratio) {
        var step = Propagation.through(
                x -> x[0] * x[1],
                new double[] {ratio.in(NUMBER), inputs.servoStep().in(RADIAN)},
                new double[] {ratio.spreadIn(NUMBER), inputs.servoStep().spreadIn(RADIAN)});
        return (Double.isFinite(step.spread()) ? step.in(RADIAN) : Measured.of(step.value(), RADIAN)).to(DEGREE);
    }

    /** In percent; empty where the surface does not go up. */
    Optional<Measured<Dimensionless>> differential() {
        return setting.deflection(setting.highest()) < Math.toRadians(0.1)
                ? Optional.empty()
                : Optional.of(
                        throwAtLock(setting.highest()) || throwAtLock(setting.lowest())
                                ? Measured.of(100 * differential(setting), PERCENT)
                                : spread(LinkageAnswer::differential, NUMBER).to(PERCENT));
    }

    /** Straight from where the measuring point is with the surface neutral. */
    Optional<Measured<Length>> atPoint(Measured<Angle> angle) {
        return inputs.chord().map(chord -> Ruler.STRAIGHT.millimetres(angle, chord));
    }

    private <Q extends Quantity<Q>> Measured<Q> spread(ToDoubleFunction<Setting> function, Unit<Q> unit) {
        return Measures.spread(inputs, setting, function, unit);
    }

    private List<ServoLinkage.PlaceLine> places() {
        return Stream.of(-1.0, -0.5, 0.0, 0.5, 1.0).map(this::place).toList();
    }

    private ServoLinkage.PlaceLine place(double command) {
        double turn = setting.turn(command);
        double ratio = Math.abs(setting.linkage().ratio(turn));
        return new ServoLinkage.PlaceLine(
                Measured.of(100 * command, PERCENT),
                pulse(command),
                tenths(Math.toDegrees(turn), DEGREE),
                tenths(Math.toDegrees(setting.deflection(turn)), DEGREE),
                factor(1 / ratio),
                tenths(Math.toDegrees(setting.linkage().pushrodToHorn(turn)), DEGREE),
                tenths(Math.toDegrees(setting.linkage().pushrodToArm(turn)), DEGREE));
    }

    private String pulse(double command) {
        return Math.round(PULSE_CENTRED + PULSE_OF_FULL_TRAVEL * command * endPoint(command) / 100) + " µs";
    }

    /** In percent. */
    double endPoint(double command) {
        return (command > 0 ? inputs.endTowards() : inputs.endAway()).in(PERCENT);
    }

    private static Optional<Measured<Dimensionless>> factor(double factor) {
        return factor <= MOST_LEVERAGE
                ? Optional.of(Measured.of(Math.rint(factor * 100) / 100, NUMBER))
                : Optional.empty();
    }

    private List<ServoLinkage.LimitLine> limits() {
        var lines = new ArrayList<ServoLinkage.LimitLine>();
        for (double turn : setting.linkage().limits()) {
            if (Math.abs(turn) < Math.PI) {
                lines.add(limit(words.say("pushrod and horn"), words.say("it locks"), turn));
            }
        }
        setting.linkage()
                .overCentre()
                .forEach(turn ->
                        lines.add(limit(words.say("arm and pushrod"), words.say("the surface turns back"), turn)));
        lines.sort(Comparator.comparingDouble(line -> line.arm().in(DEGREE)));
        return lines;
    }

    private ServoLinkage.LimitLine limit(String inLine, String then, double turn) {
        return new ServoLinkage.LimitLine(
                inLine,
                then,
                degrees(turn),
                Measured.of(endPointFor(turn), PERCENT),
                degrees(setting.deflection(turn)),
                -setting.away() <= turn && turn <= setting.towards());
    }

    /** The end point at which the arm stops at a turn, in percent. */
    double endPointFor(double turn) {
        return 100 * Math.abs(turn) / inputs.travel().in(RADIAN);
    }

    private ServoLinkage.PairLine line(Holes.Pair pair) {
        var holes = holes(inputs);
        var commands = Stream.of(holes.commandUp(pair), holes.commandDown(pair))
                .flatMap(Optional::stream)
                .toList();
        return new ServoLinkage.PairLine(
                Measured.of(1000 * pair.arm(), MILLIMETRE),
                Measured.of(1000 * pair.horn(), MILLIMETRE),
                tenths(1000 * pair.setting().linkage().pushrod(), MILLIMETRE),
                tenths(Math.toDegrees(pair.setting().deflection(pair.setting().highest())), DEGREE),
                tenths(-Math.toDegrees(pair.setting().deflection(pair.setting().lowest())), DEGREE),
                end(commands, 1),
                end(commands, -1),
                verdict(pair));
    }

    private Optional<Measured<Dimensionless>> end(List<Double> commands, int side) {
        return commands.stream()
                .filter(command -> command * side > 0)
                .findFirst()
                .map(command -> tenths(Math.abs(command) * endPoint(command), PERCENT));
    }

    private String verdict(Holes.Pair pair) {
        if (!pair.sound()) {
            return words.say("locks or turns back");
        }
        return pair.reaches() ? words.say("gives it") : words.say("{0} short", words.percent(1 - pair.least()));
    }

    private List<Proposal> proposals() {
        var up = atPoint(up()).<Measured<?>>map(length -> length).orElse(up());
        var down = atPoint(down()).<Measured<?>>map(length -> length).orElse(down());
        var surface = inputs.surface().isBlank() ? "" : inputs.surface().strip() + " ";
        return List.of(
                new Proposal.NewSetUpValue(surface + "throw up", up),
                new Proposal.NewSetUpValue(surface + "throw down", down));
    }

    private static Measured<Angle> degrees(double radians) {
        return Measured.of(shown(Math.toDegrees(radians)), DEGREE);
    }

    /** What is left of rounding at neutral or at a lock is told as 0. */
    private static double shown(double value) {
        return Math.abs(value) < 1e-4 ? 0 : value;
    }

    /** To a tenth, as a table is read: nobody sets more. */
    private static <Q extends Quantity<Q>> Measured<Q> tenths(double value, Unit<Q> unit) {
        return Measured.of(Math.round(value * 10) / 10.0, unit);
    }
}
