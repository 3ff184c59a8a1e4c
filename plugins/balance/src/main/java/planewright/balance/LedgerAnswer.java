package planewright.balance;

import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.GRAM_MILLIMETRE;
import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.KILOGRAM_METRE;
import static planewright.api.quantity.Units.KILOGRAM_SQUARE_METRE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.PERCENT;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units.MomentOfMass;
import planewright.balance.MassPoint.Vector;

/** Puts the ledger's results together from the mass properties of the parts that count. */
record LedgerAnswer(Words words, Ledger.Inputs inputs, List<Counted> parts, MassProperties total) {
    /** A line of the ledger that has both mass and station. */
    private static final String AIRFRAME = "airframe";

    record Counted(Ledger.PartLine line, MassPoint point) {
        String name() {
            return line.name();
        }
    }

    static LedgerAnswer of(Words words, Ledger.Inputs inputs) throws UnsuitableInput {
        var counted = inputs.parts().stream()
                .filter(line -> line.mass().isPresent() && line.x().isPresent())
                .map(line -> new Counted(line, point(line)))
                .toList();
        LedgerChecks.require(words, inputs, counted.isEmpty());
        return new LedgerAnswer(
                words,
                inputs,
                counted,
                MassProperties.of(counted.stream().map(Counted::point).toList()));
    }

    Ledger.Results results() {
        var mass = measured(total.mass(), KILOGRAM).to(GRAM);
        var x = length(total.balance().x());
        return new Ledger.Results(
                mass,
                x,
                length(total.balance().y()),
                length(total.balance().z()),
                measured(total.roll(), KILOGRAM_SQUARE_METRE),
                measured(total.pitch(), KILOGRAM_SQUARE_METRE),
                measured(total.yaw(), KILOGRAM_SQUARE_METRE),
                measured(total.rollYaw(), KILOGRAM_SQUARE_METRE),
                new LedgerFindings(this).all(),
                parts.stream().map(LedgerAnswer::moments).toList(),
                parts.stream()
                        .map(this::contribution)
                        .sorted(Comparator.comparingDouble(
                                (Ledger.ContributionLine line) -> -line.share().in(PERCENT)))
                        .toList(),
                target().map(this::whatIf).orElse(List.of()),
                LedgerFigures.plan(this),
                LedgerFigures.side(this),
                LedgerFigures.massByGroup(this),
                LedgerFigures.pull(this),
                List.of(
                        new Proposal.NewMeasurement("all-up mass", mass),
                        new Proposal.NewMeasurement("balance point", x),
                        new Proposal.NewSetUpValue("balance point", x)));
    }

    /** Where it should balance, m. */
    Optional<Double> target() {
        return inputs.targetX().map(target -> target.in(METRE));
    }

    /** Whether both ends of a balance range are known. */
    boolean hasRange() {
        return inputs.rangeFrom().isPresent() && inputs.rangeTo().isPresent();
    }

    /** Where it should balance sideways, m. */
    double targetY() {
        return inputs.targetY().map(target -> target.in(METRE)).orElse(0.0);
    }

    /** Whether the builder can still shift a part: the one that is named or, where none is, any but those of the airframe. */
    boolean mayMove(String part) {
        return inputs.mayMove()
                .filter(name -> !name.isBlank())
                .map(name -> name.strip().equalsIgnoreCase(part.strip()))
                .orElseGet(() -> parts.stream()
                        .map(Counted::line)
                        .filter(line -> line.name().equals(part))
                        .noneMatch(line -> line.group().strip().equalsIgnoreCase(AIRFRAME)));
    }

    /** What would bring the balance point to the target, the smallest move first. */
    List<Ledger.WhatIfLine> whatIf(double target) {
        return parts.stream()
                .map(part -> whatIf(target, part))
                .sorted(Comparator.comparingDouble(
                        (Ledger.WhatIfLine line) -> Math.abs(line.move().in(MILLIMETRE))))
                .toList();
    }

    /** Whether a station lies between nose and tail; empty where the shape is not known. */
    Optional<Boolean> inside(double station) {
        return LedgerFigures.extent(inputs.planform())
                .map(extent -> station >= extent.getMinX() / 1000 && station <= extent.getMaxX() / 1000);
    }

    private Ledger.WhatIfLine whatIf(double target, Counted part) {
        var station = total.stationFor(target, part.point());
        var ballast = total.ballastFor(target, part.point());
        return new Ledger.WhatIfLine(
                part.name(),
                length(total.moveFor(target, part.point())),
                length(station),
                inside(station.value())
                        .map(inside -> inside ? words.say("yes") : words.say("no"))
                        .orElse(words.say("not known")),
                ballast.value() > 0 && ballast.value() < total.mass().value()
                        ? Optional.of(measured(ballast, KILOGRAM).to(GRAM))
                        : Optional.empty());
    }

    private Ledger.ContributionLine contribution(Counted part) {
        return new Ledger.ContributionLine(
                part.name(),
                Measured.of(100 * part.point().mass() / total.mass().value(), PERCENT),
                length(total.shiftWithout(part.point())),
                Measured.of(100 * total.varianceShare(part.point()), PERCENT));
    }

    private static Ledger.MomentLine moments(Counted part) {
        var point = part.point();
        return new Ledger.MomentLine(
                part.name(),
                part.line().group(),
                part.line().mass().orElseThrow().to(GRAM),
                part.line().x().orElseThrow().to(MILLIMETRE),
                moment(point, point.at().x(), point.atSpread().x()),
                moment(point, point.at().y(), point.atSpread().y()),
                moment(point, point.at().z(), point.atSpread().z()));
    }

    private static Measured<MomentOfMass> moment(MassPoint point, double arm, double armSpread) {
        double spread = Math.hypot(arm * point.massSpread(), point.mass() * armSpread);
        return WeighingAnswer.measured(point.mass() * arm, spread, KILOGRAM_METRE)
                .to(GRAM_MILLIMETRE);
    }

    private static MassPoint point(Ledger.PartLine line) {
        Measured<Mass> mass = line.mass().orElseThrow();
        var none = Measured.of(0, METRE);
        var at = List.of(line.x().orElseThrow(), line.y(), line.z());
        var size = List.of(
                line.length().orElse(none),
                line.width().orElse(none),
                line.height().orElse(none));
        return new MassPoint(
                mass.in(KILOGRAM),
                Refusals.spread(mass, KILOGRAM),
                vector(at, each -> each.in(METRE)),
                vector(at, each -> Refusals.spread(each, METRE)),
                vector(size, each -> each.in(METRE)),
                vector(size, each -> Refusals.spread(each, METRE)));
    }

    private static Vector vector(List<Measured<Length>> axes, ToDoubleFunction<Measured<Length>> number) {
        return new Vector(
                number.applyAsDouble(axes.get(0)),
                number.applyAsDouble(axes.get(1)),
                number.applyAsDouble(axes.get(2)));
    }

    private static <Q extends Quantity<Q>> Measured<Q> measured(MassProperties.Value value, Unit<Q> unit) {
        return WeighingAnswer.measured(value.value(), value.spread(), unit);
    }

    private static Measured<Length> length(MassProperties.Value metres) {
        return measured(metres, METRE).to(MILLIMETRE);
    }
}
