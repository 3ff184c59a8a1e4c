package planewright.balance;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.GRAM_PER_SQUARE_DECIMETRE;
import static planewright.api.quantity.Units.GRAM_PER_SQUARE_METRE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.NUMBER;
import static planewright.api.quantity.Units.PERCENT;
import static planewright.api.quantity.Units.SQUARE_DECIMETRE;
import static planewright.api.quantity.Units.SQUARE_METRE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.Run;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.Planform.Surface;
import planewright.api.quantity.Measured;
import planewright.shared.lattice.Derivatives;
import planewright.shared.lattice.Lattice;
import planewright.shared.lattice.Motion;
import planewright.shared.lattice.NeutralPoint;
import planewright.shared.lattice.Reference;
import planewright.shared.lattice.Resolution;
import planewright.shared.lattice.SlenderBody;
import planewright.shared.lattice.Trefftz;
import planewright.shared.lattice.Vector;
import planewright.shared.planform.SurfaceGeometry;
import planewright.shared.planform.SurfaceGeometry.View;

/**
 * Puts the answer together.
 *
 * @param inputs what was given
 * @param band the static margin wanted
 * @param wing the wings that carry the aircraft, taken together
 * @param surfaces where its surfaces alone are neutral
 * @param bodyShift how far its bodies move that, m
 * @param derivatives about where it balances, at the lift coefficient of cruise
 */
record BalanceRangeAnswer(
        BalanceRange.Inputs inputs,
        MarginBand band,
        SurfaceGeometry wing,
        NeutralPoint surfaces,
        double bodyShift,
        Derivatives derivatives) {
    /** Lift coefficient of slow flight, at which lift along the span is told. */
    static final double LIFT = 0.8;

    /** Lift coefficient of cruise, at which responses are told. */
    private static final double CRUISE = 0.3;

    /** How far the refinement goes, as a share of the mean chord, and how many panels it may take. */
    private static final double SETTLED = 1e-3;

    private static final int MOST_ALIKE = 2600;
    private static final int MOST_UNLIKE = 1300;

    /** The share of what bodies do that is doubted: common practice, no source. */
    private static final double BODY_DOUBT = 1.0 / 3;

    static BalanceRangeAnswer of(BalanceRange.Inputs inputs, Run run) throws UnsuitableInput {
        var band = MarginBand.of(inputs);
        BalanceRangeChecks.require(inputs, band);
        try {
            return solved(inputs, band, run);
        } catch (ArithmeticException nothing) {
            throw BalanceRangeChecks.noAnswer();
        }
    }

    private static BalanceRangeAnswer solved(BalanceRange.Inputs inputs, MarginBand band, Run run) {
        var planform = inputs.planform();
        var wing = SurfaceGeometry.of(SurfaceGeometry.wings(planform), View.ABOVE);
        boolean alike = Lattice.of(planform, Resolution.fineness(2)).bothSidesAlike();
        var surfaces = NeutralPoint.of(
                planform,
                SETTLED * wing.meanChord(),
                alike ? MOST_ALIKE : MOST_UNLIKE,
                step -> run.progress(1 - 1.0 / step.fineness(), "lattice of " + step.panels() + " panels solved"));
        double whole = SurfaceGeometry.of(planform.surfaces(), View.ALONG).area();
        if (surfaces.liftSlope() > 2 * Math.PI * whole) {
            throw new ArithmeticException("lift slope above that of a section");
        }
        double bodyShift = -SlenderBody.momentSlope(planform, surfaces.finest()) / surfaces.liftSlope();
        double neutral = surfaces.x() + bodyShift;
        double middle = neutral - (band.from() + band.to()) / 2 * wing.meanChord();
        var centre = new Vector(
                inputs.balancePoint().map(point -> point.in(METRE)).orElse(middle),
                0,
                wing.leadingEdge().z());
        var lattice = Lattice.of(planform, Resolution.fineness(3), centre);
        var reference = new Reference(wing.area(), wing.span(), wing.meanChord(), centre);
        var derivatives = Derivatives.of(lattice, reference, incidence(lattice, wing.area(), CRUISE));
        return new BalanceRangeAnswer(inputs, band, wing, surfaces, bodyShift, derivatives);
    }

    BalanceRange.Results results() {
        return new BalanceRange.Results(
                length(from()),
                length(to()),
                Measured.of(1000 * neutral(), 1000 * doubt(), MILLIMETRE),
                margin().map(BalanceRangeAnswer::percent),
                new BalanceRangeFindings(this).all(),
                area(wing.area()),
                length(wing.span()),
                Measured.of(wing.aspectRatio(), NUMBER),
                length(wing.meanChord()),
                length(wing.leadingEdge().x()),
                percent((neutral() - wing.leadingEdge().x()) / wing.meanChord()),
                length(bodyShift),
                length(surfaces.error()),
                Measured.of(surfaces.liftSlope() / wing.area(), NUMBER),
                Measured.of(efficiency(), NUMBER),
                Measured.of(Math.toDegrees(incidence(surfaces.finest(), wing.area(), 0)), DEGREE),
                inputs.mass()
                        .map(mass -> Measured.of(mass.in(GRAM) / wing.area(), GRAM_PER_SQUARE_METRE)
                                .to(GRAM_PER_SQUARE_DECIMETRE)),
                BalanceRangeFigures.plan(this),
                BalanceRangeFigures.margin(this),
                BalanceRangeFigures.lift(this),
                IntStream.range(0, inputs.planform().surfaces().size())
                        .mapToObj(this::surface)
                        .toList(),
                responses(),
                surfaces.steps().stream()
                        .map(step -> new BalanceRange.LatticeLine(step.panels(), length(step.x() + bodyShift)))
                        .toList(),
                List.of(
                        new Proposal.NewSetUpValue("balance point from", length(from())),
                        new Proposal.NewSetUpValue("balance point to", length(to())),
                        new Proposal.NewSetUpValue("neutral point", length(neutral()))));
    }

    double neutral() {
        return surfaces.x() + bodyShift;
    }

    double doubt() {
        return Math.hypot(surfaces.error(), BODY_DOUBT * bodyShift);
    }

    double from() {
        return neutral() - band.to() * wing.meanChord();
    }

    double to() {
        return neutral() - band.from() * wing.meanChord();
    }

    Optional<Double> balancePoint() {
        return inputs.balancePoint().map(point -> point.in(METRE));
    }

    /** The static margin it flies with, in mean chords. */
    Optional<Double> margin() {
        return balancePoint().map(point -> (neutral() - point) / wing.meanChord());
    }

    String wings() {
        return SurfaceGeometry.wings(inputs.planform()).stream()
                .map(Surface::name)
                .collect(Collectors.joining(" and "));
    }

    /** Circulation of each strip at a lift coefficient of the whole, per unit speed, m. */
    double[] circulation(double lift) {
        double incidence = incidence(surfaces.finest(), wing.area(), lift);
        var twist = surfaces.finest().stripCirculation(Motion.AHEAD);
        var slope = surfaces.finest().stripCirculation(Motion.INCIDENCE);
        return IntStream.range(0, twist.length)
                .mapToDouble(i -> twist[i] + incidence * slope[i])
                .toArray();
    }

    private static double incidence(Lattice lattice, double area, double lift) {
        double twist = lattice.load(Motion.AHEAD, Motion.AHEAD).force().z();
        double slope = lattice.load(Motion.INCIDENCE, Motion.AHEAD).force().z();
        return (lift * area / 2 - twist) / slope;
    }

    private double efficiency() {
        double drag = 2 * Trefftz.drag(surfaces.finest(), circulation(LIFT)) / wing.area();
        return LIFT * LIFT / (Math.PI * wing.aspectRatio() * drag);
    }

    private BalanceRange.SurfaceLine surface(int number) {
        var surface = inputs.planform().surfaces().get(number);
        var geometry = SurfaceGeometry.of(surface, View.ALONG);
        var lattice = surfaces.finest();
        double share =
                lattice.load(Motion.INCIDENCE, Motion.AHEAD, number).force().z()
                        / lattice.load(Motion.INCIDENCE, Motion.AHEAD).force().z();
        return new BalanceRange.SurfaceLine(
                surface.name(),
                area(geometry.area()),
                length(geometry.span()),
                Measured.of(geometry.aspectRatio(), NUMBER),
                length(geometry.meanChord()),
                length(geometry.leadingEdge().x()),
                percent(share));
    }

    private List<BalanceRange.ResponseLine> responses() {
        var lines = new ArrayList<BalanceRange.ResponseLine>();
        var incidence = derivatives.by(Motion.INCIDENCE);
        var slip = derivatives.by(Motion.SIDESLIP);
        lines.add(line("pitch to incidence", incidence.pitch(), "− brings the nose back; bodies not counted"));
        lines.add(line("pitch to pitch rate", derivatives.by(Motion.PITCH).pitch(), "− damps"));
        lines.add(line("roll to roll rate", derivatives.by(Motion.ROLL).roll(), "− damps"));
        lines.add(line("yaw to sideslip", slip.yaw(), "+ turns the nose into the wind; bodies not counted"));
        lines.add(line("roll to sideslip", slip.roll(), "− lifts the wing that the wind meets"));
        lines.add(line("yaw to yaw rate", derivatives.by(Motion.YAW).yaw(), "− damps"));
        lines.add(line("roll to yaw rate", derivatives.by(Motion.YAW).roll(), "+ rolls into the turn"));
        return lines;
    }

    private static BalanceRange.ResponseLine line(String response, double derivative, String meaning) {
        return new BalanceRange.ResponseLine(response, Measured.of(derivative, NUMBER), meaning);
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
