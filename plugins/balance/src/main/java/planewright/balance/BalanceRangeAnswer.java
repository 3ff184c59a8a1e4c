package planewright.balance;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.GRAM_PER_SQUARE_DECIMETRE;
import static planewright.api.quantity.Units.GRAM_PER_SQUARE_METRE;
import static planewright.api.quantity.Units.KILOGRAM_PER_CUBIC_METRE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.METRE_PER_SECOND;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.NUMBER;
import static planewright.api.quantity.Units.PERCENT;
import static planewright.api.quantity.Units.RADIAN;
import static planewright.api.quantity.Units.SQUARE_DECIMETRE;
import static planewright.api.quantity.Units.SQUARE_METRE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.Run;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.Planform.Surface;
import planewright.api.quantity.Measured;
import planewright.shared.lattice.BalanceBand;
import planewright.shared.lattice.Derivatives;
import planewright.shared.lattice.Flow;
import planewright.shared.lattice.Lattice;
import planewright.shared.lattice.Motion;
import planewright.shared.lattice.Reference;
import planewright.shared.lattice.Resolution;
import planewright.shared.lattice.Trefftz;
import planewright.shared.lattice.Vector;
import planewright.shared.planform.MarginBand;
import planewright.shared.planform.SurfaceGeometry;
import planewright.shared.planform.SurfaceGeometry.View;

/**
 * Puts the answer together.
 *
 * @param words in which it is told
 * @param inputs what was given
 * @param band where it should balance
 * @param rigging how its surfaces are set and what turns on them
 * @param trimmed the aircraft in trim where it balances, its derivatives at the lift coefficient of cruise
 * @param stall when its first section stalls
 */
record BalanceRangeAnswer(
        Words words, BalanceRange.Inputs inputs, BalanceBand band, Rigging rigging, Trimmed trimmed, Stall stall) {
    /** Lift coefficient of slow flight, at which lift along the span is told. */
    static final double LIFT = 0.8;

    /** Lift coefficient of cruise, at which responses are told. */
    private static final double CRUISE = 0.3;

    private static final double MOST_CRUISE = Math.toRadians(10);

    /** A smaller derivative is what rounding leaves of 0. */
    private static final double ROUNDED = 1e-12;

    static BalanceRangeAnswer of(BalanceRange.Inputs inputs, Run run) throws UnsuitableInput {
        var words = new Words(run.language().and(MarginBand.class));
        var margin = margin(inputs);
        BalanceRangeChecks.require(words, inputs, margin);
        try {
            return solved(words, inputs, margin, run);
        } catch (ArithmeticException nothing) {
            throw BalanceRangeChecks.noAnswer(words);
        }
    }

    /** As wanted, else what is usual. */
    private static MarginBand margin(BalanceRange.Inputs inputs) {
        var usual = MarginBand.usual(inputs.layout(), inputs.planform());
        var from = inputs.marginFrom().map(margin -> margin.in(NUMBER));
        var to = inputs.marginTo().map(margin -> margin.in(NUMBER));
        return from.isEmpty() && to.isEmpty()
                ? usual
                : new MarginBand(from.orElse(usual.from()), to.orElse(usual.to()), "as wanted");
    }

    private static BalanceRangeAnswer solved(Words words, BalanceRange.Inputs inputs, MarginBand margin, Run run) {
        var planform = inputs.planform();
        var band = BalanceBand.settled(
                planform,
                margin,
                step -> run.progress(
                        1 - 1.0 / step.fineness(), words.say("lattice of {0} panels solved", step.panels())));
        var wing = band.wing();
        var centre = centre(inputs, band);
        var lattice = Lattice.of(planform, Resolution.fineness(3), centre);
        var reference = new Reference(wing.area(), wing.span(), wing.meanChord(), centre);
        var rigging = Rigging.of(inputs);
        var straight = rigging.straight(lattice);
        return of(
                words,
                inputs,
                band,
                rigging,
                Derivatives.of(lattice, reference, straight, cruise(lattice, straight, wing.area())));
    }

    private static BalanceRangeAnswer of(
            Words words, BalanceRange.Inputs inputs, BalanceBand band, Rigging rigging, Derivatives derivatives) {
        double margin = (band.neutral() - derivatives.reference().centre().x())
                / band.wing().meanChord();
        var trimmed = Trimmed.of(derivatives, rigging, margin);
        return new BalanceRangeAnswer(words, inputs, band, rigging, trimmed, Stall.of(trimmed, rigging));
    }

    /** Level flight with other settings, sections, mass, air and balance point on the same lattice; no derivatives. */
    BalanceRangeAnswer with(BalanceRange.Inputs changed) {
        var rigging = Rigging.of(changed);
        var lattice = derivatives().lattice();
        var reference = new Reference(wing().area(), wing().span(), wing().meanChord(), centre(changed, band));
        return of(
                words,
                changed,
                band,
                rigging,
                new Derivatives(lattice, reference, rigging.straight(lattice), 0, 0, 0, Map.of()));
    }

    /** Where it balances, else the middle of where it should. */
    private static Vector centre(BalanceRange.Inputs inputs, BalanceBand band) {
        return new Vector(
                inputs.balancePoint().map(point -> point.in(METRE)).orElse((band.from() + band.to()) / 2),
                0,
                band.wing().leadingEdge().z());
    }

    BalanceRangeResults results() {
        var spread = FlightSpread.of(this);
        var level = level();
        return new BalanceRangeResults(
                length(from()),
                length(to()),
                Measured.of(1000 * neutral(), 1000 * doubt(), MILLIMETRE),
                margin().map(now -> spread.of(
                                answer -> answer.margin().orElse(Double.NaN), doubt() / wing().meanChord(), NUMBER)
                        .to(PERCENT)),
                level.stallSpeed()
                        .map(slowest -> spread.of(
                                answer -> answer.level().stallSpeed().orElse(Double.NaN),
                                slowest * Math.min(1, stall.spread() / stall.lift() / 2),
                                METRE_PER_SECOND)),
                new BalanceRangeFindings(this).all(),
                level.lift()
                        .map(lift -> spread.of(answer -> answer.level().lift().orElse(Double.NaN), NUMBER)),
                level.state()
                        .map(state -> degrees(
                                spread,
                                answer -> answer.level()
                                        .state()
                                        .map(Longitudinal.State::incidence)
                                        .orElse(Double.NaN))),
                level.trimAngle()
                        .map(angle -> degrees(
                                spread, answer -> answer.level().trimAngle().orElse(Double.NaN))),
                spread.of(answer -> answer.stall().lift(), stall.spread(), NUMBER),
                percent(stall.along()),
                percent(stall.tipReserve()),
                spread.of(answer -> answer.level().density(), KILOGRAM_PER_CUBIC_METRE),
                area(wing().area()),
                length(wing().span()),
                Measured.of(wing().aspectRatio(), NUMBER),
                length(wing().meanChord()),
                length(wing().leadingEdge().x()),
                percent((neutral() - wing().leadingEdge().x()) / wing().meanChord()),
                length(band.bodyShift()),
                length(band.surfaces().error()),
                Measured.of(band.surfaces().liftSlope() / wing().area(), NUMBER),
                Measured.of(efficiency(), NUMBER),
                degrees(spread, answer -> answer.trimmed().linear().untrimmed(0)),
                inputs.mass()
                        .map(mass -> spread.of(BalanceRangeAnswer::loading, GRAM_PER_SQUARE_METRE)
                                .to(GRAM_PER_SQUARE_DECIMETRE)),
                BalanceRangeFigures.plan(this),
                BalanceRangeFigures.margin(this),
                BalanceRangeFigures.lift(this),
                IntStream.range(0, inputs.planform().surfaces().size())
                        .mapToObj(this::surface)
                        .toList(),
                responses(),
                rigging.controls().stream().map(this::power).toList(),
                band.surfaces().steps().stream()
                        .map(step ->
                                new BalanceRangeResults.LatticeLine(step.panels(), length(step.x() + band.bodyShift())))
                        .toList(),
                proposals());
    }

    Derivatives derivatives() {
        return trimmed.derivatives();
    }

    /** Level flight at the speed asked for. */
    LevelFlight level() {
        return LevelFlight.of(this);
    }

    SurfaceGeometry wing() {
        return band.wing();
    }

    double neutral() {
        return band.neutral();
    }

    double doubt() {
        return band.doubt();
    }

    double from() {
        return band.from();
    }

    double to() {
        return band.to();
    }

    Optional<Double> balancePoint() {
        return inputs.balancePoint().map(point -> point.in(METRE));
    }

    /** The static margin it flies with, in mean chords. */
    Optional<Double> margin() {
        return balancePoint().map(point -> (neutral() - point) / wing().meanChord());
    }

    String wings() {
        return SurfaceGeometry.wings(inputs.planform()).stream()
                .map(Surface::name)
                .collect(Collectors.joining(" and "));
    }

    /** Incidence of cruise, for a slender wing no more than such wings fly at. */
    private static double cruise(Lattice lattice, Flow straight, double area) {
        double none = incidence(lattice, straight, area, 0);
        return none + Math.min(MOST_CRUISE, incidence(lattice, straight, area, CRUISE) - none);
    }

    private static double incidence(Lattice lattice, Flow straight, double area, double lift) {
        double twist = lattice.load(straight, Motion.AHEAD).force().z();
        double slope = lattice.load(Motion.INCIDENCE, Motion.AHEAD).force().z();
        return (lift * area / 2 - twist) / slope;
    }

    /** With controls neutral. */
    private double efficiency() {
        var lattice = derivatives().lattice();
        var flow = derivatives()
                .straight()
                .plus(lattice.flow(Motion.INCIDENCE).times(trimmed.linear().untrimmed(LIFT)));
        double drag = 2 * Trefftz.drag(lattice, lattice.stripCirculation(flow)) / wing().area();
        return LIFT * LIFT / (Math.PI * wing().aspectRatio() * drag);
    }

    private BalanceRangeResults.PowerLine power(Rigging.Control control) {
        var slopes = derivatives().by(control.turn());
        return new BalanceRangeResults.PowerLine(
                control.told(words),
                perDegree(slopes.lift()),
                perDegree(slopes.pitch()),
                perDegree(slopes.roll()),
                perDegree(slopes.yaw()),
                perDegree(slopes.side()));
    }

    /** The range, the measures that other calculators ask for, and what each control surface is for, by its degree. */
    private List<Proposal> proposals() {
        var proposals = new ArrayList<Proposal>();
        proposals.add(new Proposal.NewSetUpValue("balance point from", length(from())));
        proposals.add(new Proposal.NewSetUpValue("balance point to", length(to())));
        proposals.add(new Proposal.NewSetUpValue("neutral point", length(neutral())));
        proposals.add(new Proposal.NewSetUpValue("wing area", area(wing().area())));
        proposals.add(new Proposal.NewSetUpValue("wing span", length(wing().span())));
        proposals.add(new Proposal.NewSetUpValue("mean aerodynamic chord", length(wing().meanChord())));
        proposals.add(new Proposal.NewSetUpValue(
                "leading edge of the mean chord", length(wing().leadingEdge().x())));
        proposals.add(value("lift slope", band.surfaces().liftSlope() / wing().area()));
        proposals.add(value("pitch damping", derivatives().by(Motion.PITCH).pitch()));
        proposals.add(value("roll damping", derivatives().by(Motion.ROLL).roll()));
        proposals.add(value("yaw damping", derivatives().by(Motion.YAW).yaw()));
        for (var control : rigging.controls()) {
            var slopes = derivatives().by(control.turn());
            switch (control.responds()) {
                case LIFT -> proposals.add(power(control, "lift", slopes.lift()));
                case PITCH -> proposals.add(power(control, "pitch", slopes.pitch()));
                case ROLL -> proposals.add(power(control, "roll", slopes.roll()));
                case YAW -> proposals.add(power(control, "yaw", slopes.yaw()));
            }
        }
        return List.copyOf(proposals);
    }

    private static Proposal power(Rigging.Control control, String axis, double slope) {
        return new Proposal.NewSetUpValue(control.name() + ", " + axis + " for each degree", perDegree(slope));
    }

    private static Proposal value(String name, double number) {
        return new Proposal.NewSetUpValue(name, Measured.of(number, NUMBER));
    }

    private static Measured<Dimensionless> perDegree(double slope) {
        return Measured.of(Math.abs(slope) < ROUNDED ? 0 : Math.toRadians(slope), NUMBER);
    }

    private BalanceRangeResults.SurfaceLine surface(int number) {
        var surface = inputs.planform().surfaces().get(number);
        var geometry = SurfaceGeometry.of(surface, View.ALONG);
        var lattice = band.surfaces().finest();
        double share =
                lattice.load(Motion.INCIDENCE, Motion.AHEAD, number).force().z()
                        / lattice.load(Motion.INCIDENCE, Motion.AHEAD).force().z();
        return new BalanceRangeResults.SurfaceLine(
                surface.name(),
                area(geometry.area()),
                length(geometry.span()),
                Measured.of(geometry.aspectRatio(), NUMBER),
                length(geometry.meanChord()),
                length(geometry.leadingEdge().x()),
                percent(share));
    }

    private List<BalanceRangeResults.ResponseLine> responses() {
        var lines = new ArrayList<BalanceRangeResults.ResponseLine>();
        var derivatives = derivatives();
        var incidence = derivatives.by(Motion.INCIDENCE);
        var slip = derivatives.by(Motion.SIDESLIP);
        lines.add(line(
                words.say("pitch to incidence"),
                incidence.pitch(),
                words.say("− brings the nose back; bodies not counted")));
        lines.add(line(
                words.say("pitch to pitch rate"), derivatives.by(Motion.PITCH).pitch(), words.say("− damps")));
        lines.add(line(
                words.say("lift to pitch rate"),
                derivatives.by(Motion.PITCH).lift(),
                words.say("+ lifts while the nose comes up")));
        lines.add(
                line(words.say("roll to roll rate"), derivatives.by(Motion.ROLL).roll(), words.say("− damps")));
        lines.add(line(
                words.say("yaw to roll rate"),
                derivatives.by(Motion.ROLL).yaw(),
                words.say("− turns the nose out of the turn")));
        lines.add(line(
                words.say("side force to sideslip"),
                slip.side(),
                words.say("− pushes away from the wind; bodies not counted")));
        lines.add(line(
                words.say("yaw to sideslip"),
                slip.yaw(),
                words.say("+ turns the nose into the wind; bodies not counted")));
        lines.add(line(words.say("roll to sideslip"), slip.roll(), words.say("− lifts the wing that the wind meets")));
        lines.add(line(words.say("yaw to yaw rate"), derivatives.by(Motion.YAW).yaw(), words.say("− damps")));
        lines.add(line(
                words.say("roll to yaw rate"), derivatives.by(Motion.YAW).roll(), words.say("+ rolls into the turn")));
        return lines;
    }

    private static BalanceRangeResults.ResponseLine line(String response, double derivative, String meaning) {
        return new BalanceRangeResults.ResponseLine(response, Measured.of(derivative, NUMBER), meaning);
    }

    private double loading() {
        return inputs.mass().map(mass -> mass.in(GRAM) / wing().area()).orElse(Double.NaN);
    }

    private static Measured<Angle> degrees(FlightSpread spread, ToDoubleFunction<BalanceRangeAnswer> radians) {
        return spread.of(radians, RADIAN).to(DEGREE);
    }

    private static Measured<Length> length(double metres) {
        return Measured.of(1000 * metres, MILLIMETRE);
    }

    private static Measured<Area> area(double squareMetres) {
        return Measured.of(squareMetres, SQUARE_METRE).to(SQUARE_DECIMETRE);
    }

    private static Measured<Dimensionless> percent(double share) {
        return Measured.of(100 * share, PERCENT);
    }
}
