package planewright.balance;

import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.METRE_PER_SECOND;
import static planewright.api.quantity.Units.RADIAN;
import static planewright.api.quantity.Units.SQUARE_METRE;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Surface;
import planewright.api.quantity.Measured;
import planewright.shared.lattice.BalanceBand;
import planewright.shared.lattice.Lattice;
import planewright.shared.lattice.Motion;
import planewright.shared.lattice.Resolution;
import planewright.shared.planform.Outlines;
import planewright.shared.planform.SurfaceGeometry;
import planewright.shared.planform.SurfaceGeometry.View;
import planewright.shared.uncertainty.Propagation;

/**
 * Rolling moments as masses times arms, in kg·m; what pushes the right wing down is positive.
 *
 * <p>On the scale: Σm·y. A mass that levels it at y stands for −m·y; a scale under a tip for r·y; hung from a pivot h above the
 * balance point, a lean φ for M·h·tan φ, as the balance point comes to hang under the pivot. In flight at one g each half lifts
 * by its area, so unequal halves roll it by −M·(Aᵣyᵣ − Aₗyₗ)/(Aᵣ + Aₗ), y being each half's centroid, at any speed. A
 * difference δ of tip twist that grows evenly from the root meets the air as a wing that rolls at p = V·δ/(2·s) does, so it
 * rolls it by the damping of that roll, and in that roll it would end. The damping comes from a vortex lattice over the wing;
 * real sections and wings that stall at the root differ, so twist is good to a tenth or so (common practice, no source).
 */
final class LeanMoments {
    /** Sea level, International Standard Atmosphere, ISO 2533, kg/m³. */
    private static final double AIR = 1.225;

    /** Standard acceleration of free fall, m/s², exact. */
    private static final double GRAVITY = 9.80665;

    /** Relative ± of what twist does. */
    private static final double TWIST = 0.1;

    /** A smaller wing is none, m². */
    private static final double LEAST_AREA = 1e-6;

    private final Words words;
    private final Lean.Inputs inputs;

    /**
     * A moment.
     *
     * @param name what it comes from
     * @param value kg·m, right wing down positive
     * @param spread its standard uncertainty
     */
    record Moment(String name, double value, double spread) {}

    LeanMoments(Words words, Lean.Inputs inputs) {
        this.words = words;
        this.inputs = inputs;
    }

    /** What was seen on the bench, each way that was tried. */
    List<Moment> seen() {
        var seen = new ArrayList<Moment>();
        var ballast = ballast();
        var by = inputs.levelledBy().or(() -> ballast.flatMap(Lean.PartLine::mass));
        var at = inputs.levelledAt().or(() -> ballast.map(Lean.PartLine::y));
        if (by.isPresent() && at.isPresent() && at.get().in(METRE) != 0) {
            seen.add(product(words.say("the ballast that levels it"), -1, by.get(), KILOGRAM, at.get(), METRE));
        }
        if (inputs.tipReading().isPresent() && inputs.tipReadingAt().isPresent()) {
            seen.add(product(
                    words.say("the scale under the tip"),
                    1,
                    inputs.tipReading().get(),
                    KILOGRAM,
                    inputs.tipReadingAt().get(),
                    METRE));
        }
        if (inputs.lean().isPresent() && inputs.hangingHeight().isPresent() && mass().isPresent()) {
            var hung = inputs.lean().get();
            var height = inputs.hangingHeight().get();
            var mass = mass().get();
            var moment = Propagation.through(
                    of -> of[0] * of[1] * Math.tan(of[2]),
                    new double[] {mass.value(), height.in(METRE), hung.in(RADIAN)},
                    new double[] {mass.spread(), Refusals.spread(height, METRE), Refusals.spread(hung, RADIAN)});
            seen.add(new Moment(words.say("the lean while hung"), moment.value(), moment.spread()));
        }
        return seen;
    }

    /** The part that is the ballast, where it stands in the ledger. */
    Optional<Lean.PartLine> ballast() {
        return inputs.parts().stream().filter(this::isBallast).findFirst();
    }

    private boolean isBallast(Lean.PartLine part) {
        return !inputs.ballastPart().isBlank()
                && part.name().strip().equalsIgnoreCase(inputs.ballastPart().strip());
    }

    /** All-up mass as given, else the parts' sum; empty where neither is known. */
    Optional<Moment> mass() {
        if (inputs.mass().isPresent()) {
            var mass = inputs.mass().get();
            return Optional.of(new Moment("mass", mass.in(KILOGRAM), Refusals.spread(mass, KILOGRAM)));
        }
        double sum = 0;
        double spread = 0;
        for (var part : inputs.parts()) {
            sum += part.mass().map(mass -> mass.in(KILOGRAM)).orElse(0.0);
            spread = Math.hypot(
                    spread,
                    part.mass().map(mass -> Refusals.spread(mass, KILOGRAM)).orElse(0.0));
        }
        return sum > 0 ? Optional.of(new Moment("mass", sum, spread)) : Optional.empty();
    }

    /** Of each pair, and of each single part beside the centre line. */
    List<Moment> parts() {
        var sums = new LinkedHashMap<String, Moment>();
        for (var part : inputs.parts()) {
            if (part.mass().isPresent() && !isBallast(part)) {
                var own = product(part.name(), 1, part.mass().get(), KILOGRAM, part.y(), METRE);
                if (own.value() != 0 || own.spread() != 0) {
                    sums.merge(pair(part.name()), own, LeanMoments::sum);
                }
            }
        }
        return sums.entrySet().stream()
                .map(sum -> new Moment(
                        sum.getKey(), sum.getValue().value(), sum.getValue().spread()))
                .toList();
    }

    /** {@code left wing panel} and {@code right wing panel} make {@code wing panel, left and right}. */
    private String pair(String name) {
        var stripped = name.strip();
        var lower = stripped.toLowerCase(Locale.ROOT);
        for (var side : List.of("left ", "right ")) {
            if (lower.startsWith(side)) {
                return words.say(
                        "{0}, left and right", stripped.substring(side.length()).strip());
            }
        }
        return stripped;
    }

    static Moment sum(Moment one, Moment other) {
        return new Moment(one.name(), one.value() + other.value(), Math.hypot(one.spread(), other.spread()));
    }

    /** The wing: the largest surface as seen from above. */
    Optional<Surface> wing() {
        return inputs.planform()
                .flatMap(shape -> SurfaceGeometry.wings(shape).stream()
                        .filter(Surface::mirrored)
                        .filter(surface -> Outlines.projectedArea(surface) > LEAST_AREA)
                        .findFirst());
    }

    /** Distance of the tip from the centre line; empty where it is not known, m. */
    Optional<Double> halfSpan() {
        return wing().map(wing -> {
            var edge = SurfaceGeometry.leadingEdge(wing);
            return Math.abs(edge.get(edge.size() - 1).y());
        });
    }

    /** Of unequal halves; empty where they were not measured. */
    Optional<Moment> halves() {
        boolean spans = inputs.leftSpan().isPresent() && inputs.rightSpan().isPresent();
        boolean areas = inputs.leftArea().isPresent() && inputs.rightArea().isPresent();
        if (mass().isEmpty() || !spans && !areas) {
            return Optional.empty();
        }
        double share = centroidShare();
        var half = halfSpan().orElse(1.0);
        var values = new double[] {
            spans ? inputs.leftSpan().get().in(METRE) : half,
            spans ? inputs.rightSpan().get().in(METRE) : half,
            areas ? inputs.leftArea().get().in(SQUARE_METRE) : 0,
            areas ? inputs.rightArea().get().in(SQUARE_METRE) : 0,
            mass().get().value()
        };
        var spreads = new double[] {
            spans ? Refusals.spread(inputs.leftSpan().get(), METRE) : 0,
            spans ? Refusals.spread(inputs.rightSpan().get(), METRE) : 0,
            areas ? Refusals.spread(inputs.leftArea().get(), SQUARE_METRE) : 0,
            areas ? Refusals.spread(inputs.rightArea().get(), SQUARE_METRE) : 0,
            mass().get().spread()
        };
        var moment = Propagation.through(
                of -> {
                    double left = areas ? of[2] : of[0];
                    double right = areas ? of[3] : of[1];
                    return -of[4] * share * (right * of[1] - left * of[0]) / (right + left);
                },
                values,
                spreads);
        return Optional.of(new Moment(words.say("unequal wing halves"), moment.value(), moment.spread()));
    }

    /** Where a half's centroid lies, as a share of its span; half way where the shape is not known. */
    private double centroidShare() {
        return wing().filter(wing -> halfSpan().orElse(0.0) > 0)
                .map(wing -> SurfaceGeometry.of(wing, View.ABOVE).centroid().y()
                        / halfSpan().orElseThrow())
                .orElse(0.5);
    }

    /** Right tip's twist minus left's, rad. */
    Optional<Moment> twistDifference() {
        if (inputs.leftTwist().isEmpty() || inputs.rightTwist().isEmpty()) {
            return Optional.empty();
        }
        var left = inputs.leftTwist().get();
        var right = inputs.rightTwist().get();
        return Optional.of(new Moment(
                "twist",
                right.in(RADIAN) - left.in(RADIAN),
                Math.hypot(Refusals.spread(left, RADIAN), Refusals.spread(right, RADIAN))));
    }

    /** Of unequal twist; empty where twist, speed or shape is not known. */
    Optional<Moment> twist() {
        var twist = twistDifference();
        var damping = wing().filter(surface -> halfSpan().orElse(0.0) > 0).flatMap(LeanMoments::damping);
        if (twist.isEmpty() || damping.isEmpty() || inputs.speed().isEmpty()) {
            return Optional.empty();
        }
        var speed = inputs.speed().get();
        double perRadian = damping.get() / (2 * halfSpan().orElseThrow()) / GRAVITY;
        var moment = Propagation.through(
                of -> -AIR * of[0] * of[0] * perRadian * of[1],
                new double[] {speed.in(METRE_PER_SECOND), twist.get().value()},
                new double[] {
                    Refusals.spread(speed, METRE_PER_SECOND), twist.get().spread()
                });
        return Optional.of(new Moment(
                words.say("unequal tip twist"),
                moment.value(),
                Math.hypot(moment.spread(), TWIST * Math.abs(moment.value()))));
    }

    /** Roll rate that the difference of twist would end in, rad/s, right wing down positive. */
    Optional<Double> rollRate() {
        return twist().map(moment -> -inputs.speed().orElseThrow().in(METRE_PER_SECOND)
                * twistDifference().orElseThrow().value()
                / (2 * halfSpan().orElseThrow()));
    }

    /** Rolling moment against a roll, per ρU² and radian per metre flown, m⁴; empty for a wing that no lattice fits. */
    static Optional<Double> damping(Surface wing) {
        try {
            var alone = new Planform(List.of(wing), List.of());
            if (!BalanceBand.isFeasible(alone)) {
                return Optional.empty();
            }
            var lattice = Lattice.of(alone, Resolution.fineness(2));
            return Optional.of(lattice.load(Motion.ROLL, Motion.AHEAD).moment().x())
                    .filter(moment -> moment > 0);
        } catch (ArithmeticException flat) {
            return Optional.empty();
        }
    }

    private static <P extends Quantity<P>, Q extends Quantity<Q>> Moment product(
            String name, int sign, Measured<P> mass, Unit<P> kilogram, Measured<Q> arm, Unit<Q> metre) {
        double m = mass.in(kilogram);
        double y = arm.in(metre);
        return new Moment(
                name, sign * m * y, Math.hypot(y * Refusals.spread(mass, kilogram), m * Refusals.spread(arm, metre)));
    }
}
