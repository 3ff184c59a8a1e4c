package planewright.balance;

import static planewright.api.quantity.Units.CUBIC_METRE;
import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.GRAM_MILLIMETRE;
import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.KILOGRAM_METRE;
import static planewright.api.quantity.Units.KILOGRAM_PER_CUBIC_METRE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.PERCENT;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units.Density;
import planewright.api.quantity.Units.MomentOfMass;
import planewright.balance.LeanMoments.Moment;

/**
 * Sets causes against what was seen.
 *
 * @param words in which it is told
 * @param lean the moment to explain: what was seen on the bench, else what the parts add up to
 * @param byParts what the weighed parts add up to
 * @param tip where ballast could go, m from the centre line
 */
record LeanAnswer(Words words, Lean.Inputs inputs, LeanMoments moments, Moment lean, Moment byParts, double tip) {
    /** Within this share of the lean a cause explains it; below the lesser share it is too small. Common practice. */
    private static final double NEAR = 0.25;

    /** A place is told to a tenth of a millimetre. */
    private static final double TENTHS = 1e4;

    /** Two standard uncertainties hold 95 of 100 readings: JCGM 100:2008, annex G. */
    static final double COVER = 2;

    static LeanAnswer of(Words words, Lean.Inputs inputs) throws UnsuitableInput {
        var moments = new LeanMoments(words, inputs);
        LeanChecks.require(words, inputs, moments);
        var byParts = moments.parts().stream().reduce(new Moment("parts", 0, 0), LeanMoments::sum);
        return new LeanAnswer(words, inputs, moments, best(moments).orElse(byParts), byParts, tip(inputs, moments));
    }

    /** The surest of what was seen. */
    private static Optional<Moment> best(LeanMoments moments) {
        return moments.seen().stream()
                .min(Comparator.comparingDouble(moment -> moment.spread() > 0 ? moment.spread() : Double.MAX_VALUE));
    }

    private static double tip(Lean.Inputs inputs, LeanMoments moments) {
        return Stream.of(inputs.tip(), inputs.levelledAt(), inputs.tipReadingAt())
                .flatMap(Optional::stream)
                .findFirst()
                .map(known -> Math.abs(known.in(METRE)))
                .orElseGet(() -> moments.halfSpan().orElseThrow());
    }

    boolean wasSeen() {
        return !moments.seen().isEmpty();
    }

    Lean.Results results() {
        var causes = causes();
        return new Lean.Results(
                moment(lean),
                moment(byParts),
                moments.mass().map(mass -> offset(mass)),
                levelMass(),
                Measured.of(levelSide() * Math.rint(TENTHS * tip) / TENTHS, METRE)
                        .to(MILLIMETRE),
                new LeanFindings(this, causes).all(),
                causes,
                inputs.suspects().stream().map(this::suspect).toList(),
                LeanFigures.plan(this),
                LeanFigures.pull(words, causes),
                lean.value() == 0
                        ? List.of()
                        : List.of(new Proposal.NewMeasurement("tip ballast to level", levelMass())));
    }

    /** Ballast on the light tip: a magnitude, whose ± stays that of the lean where the lean is next to none. */
    Measured<Mass> levelMass() {
        return WeighingAnswer.measured(Math.abs(lean.value()) / tip, lean.spread() / tip, KILOGRAM)
                .to(GRAM);
    }

    /** Side of the light tip: 1 right, −1 left. */
    int levelSide() {
        return lean.value() > 0 ? -1 : 1;
    }

    private Measured<Length> offset(Moment mass) {
        double y = lean.value() / mass.value();
        double spread = Math.hypot(lean.spread(), y * mass.spread()) / mass.value();
        return WeighingAnswer.measured(y, spread, METRE).to(MILLIMETRE);
    }

    private List<Lean.CauseLine> causes() {
        var causes = new ArrayList<Lean.CauseLine>();
        moments.parts().stream()
                .sorted(Comparator.comparingDouble((Moment cause) -> -Math.abs(cause.value())))
                .forEach(cause ->
                        causes.add(cause(cause, words.say("hung and in flight"), share(cause), benchVerdict(cause))));
        Stream.of(moments.halves(), moments.twist())
                .flatMap(Optional::stream)
                .forEach(cause ->
                        causes.add(cause(cause, words.say("in flight only"), Optional.empty(), flightVerdict(cause))));
        return causes;
    }

    private Lean.CauseLine cause(Moment cause, String shows, Optional<Measured<Dimensionless>> share, String verdict) {
        return new Lean.CauseLine(
                cause.name(),
                shows,
                moment(cause),
                WeighingAnswer.measured(Math.abs(cause.value()) / tip, cause.spread() / tip, KILOGRAM)
                        .to(GRAM),
                share,
                verdict);
    }

    private Optional<Measured<Dimensionless>> share(Moment cause) {
        double share = cause.value() / lean.value();
        return lean.value() != 0 && Math.abs(share) < 1e6
                ? Optional.of(Measured.of(Math.rint(100 * share), PERCENT))
                : Optional.empty();
    }

    private String benchVerdict(Moment cause) {
        double share = cause.value() / lean.value();
        if (Math.abs(cause.value()) <= COVER * cause.spread()) {
            return Math.abs(share - 1) <= NEAR
                    ? words.say("fits, but its ± is as large: weigh and measure again")
                    : words.say("not certain: its ± is as large");
        }
        if (!leans() || !Double.isFinite(share)) {
            return cause.value() > 0 ? words.say("pulls right") : words.say("pulls left");
        }
        if (share < 0) {
            return words.say("works the other way");
        }
        if (accountsFor(cause)) {
            return words.say("explains it");
        }
        return share > 1
                ? words.say("more than explains it")
                : share >= NEAR ? words.say("explains part of it") : words.say("too small");
    }

    /** Whether there is a lean to explain: more than its own ± could feign. */
    boolean leans() {
        return Math.abs(lean.value()) > COVER * lean.spread();
    }

    /** Whether a cause is large enough for the lean, alone, and surely there. */
    boolean explains(Moment cause) {
        return leans()
                && Math.abs(cause.value()) > COVER * cause.spread()
                && cause.value() * lean.value() > 0
                && (accountsFor(cause) || Math.abs(cause.value()) > Math.abs(lean.value()));
    }

    private boolean accountsFor(Moment cause) {
        double off = Math.abs(cause.value() - lean.value());
        return Math.abs(cause.value() / lean.value() - 1) <= NEAR
                || off <= COVER * Math.hypot(cause.spread(), lean.spread());
    }

    private String flightVerdict(Moment cause) {
        if (Math.abs(cause.value()) <= COVER * cause.spread()) {
            return words.say("not certain: its ± is as large");
        }
        boolean right = cause.value() > 0;
        return switch (inputs.flight()) {
            case NOT_FLOWN -> right ? words.say("would roll it right") : words.say("would roll it left");
            case LEVEL -> words.say("was not felt");
            case ROLLS_LEFT -> right ? words.say("works the other way") : words.say("fits");
            case ROLLS_RIGHT -> right ? words.say("fits") : words.say("works the other way");
        };
    }

    private Lean.SuspectAnswer suspect(Lean.SuspectLine line) {
        double arm = line.arm().in(METRE);
        double mass = Math.abs(lean.value()) / arm;
        double spread = Math.hypot(lean.spread(), mass * Refusals.spread(line.arm(), METRE)) / arm;
        Optional<Double> density = line.volume().map(volume -> mass / volume.in(CUBIC_METRE));
        Optional<Double> range = line.densityFrom()
                .map(from -> line.densityTo().orElseThrow().in(KILOGRAM_PER_CUBIC_METRE)
                        - from.in(KILOGRAM_PER_CUBIC_METRE));
        return new Lean.SuspectAnswer(
                line.name(),
                lean.value() > 0 ? words.say("right") : words.say("left"),
                WeighingAnswer.measured(mass, spread, KILOGRAM).to(GRAM),
                density.map(LeanAnswer::density),
                range.map(LeanAnswer::density),
                verdict(density, range));
    }

    private String verdict(Optional<Double> density, Optional<Double> range) {
        if (density.isEmpty() || range.isEmpty()) {
            return words.say("not known: give volume and densities");
        }
        return density.get() <= range.get()
                ? words.say("plausible: the material differs by as much")
                : words.say("not plausible alone: the material does not differ that much");
    }

    private static Measured<Density> density(double value) {
        return Measured.of(value, KILOGRAM_PER_CUBIC_METRE);
    }

    static Measured<MomentOfMass> moment(Moment moment) {
        return WeighingAnswer.measured(moment.value(), moment.spread(), KILOGRAM_METRE)
                .to(GRAM_MILLIMETRE);
    }
}
