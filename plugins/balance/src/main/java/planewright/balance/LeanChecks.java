package planewright.balance;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.KILOGRAM_PER_CUBIC_METRE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;

import java.util.HashSet;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;

/** Which questions about a lean cannot be answered. */
final class LeanChecks {
    /** A mass nearer to the centre line than this levels nothing, m. */
    private static final double LEAST_ARM = 0.001;

    private static final double MOST_KILOGRAMS = 200;

    private final Words words;
    private final Lean.Inputs inputs;
    private final LeanMoments moments;
    private final Refusals refusals;

    private LeanChecks(Words words, Lean.Inputs inputs, LeanMoments moments) {
        this.words = words;
        this.refusals = new Refusals(words);
        this.inputs = inputs;
        this.moments = moments;
    }

    static void require(Words words, Lean.Inputs inputs, LeanMoments moments) throws UnsuitableInput {
        var checks = new LeanChecks(words, inputs, moments);
        checks.rows();
        checks.places();
        checks.together();
        checks.spreads();
        checks.refusals.shape(inputs.planform());
        checks.refusals.throwIfAny();
        checks.something();
        checks.refusals.throwIfAny();
    }

    private void rows() {
        var taken = new HashSet<String>();
        for (int i = 0; i < inputs.parts().size(); i++) {
            var part = inputs.parts().get(i);
            var path = "parts[" + i + "].";
            refusals.name(
                    path + "name",
                    words.say("row {0} of Parts", (i + 1)),
                    part.name(),
                    taken,
                    words.say("Name each part once"));
            part.mass()
                    .ifPresent(mass ->
                            refusals.spread(path + "mass", words.say("mass of '{0}'", part.name()), mass, mass));
            refusals.spread(
                    path + "y", words.say("y of '{0}'", part.name()), part.y(), Measured.of(Refusals.FARTHEST, METRE));
        }
        var pairs = new HashSet<String>();
        for (int i = 0; i < inputs.suspects().size(); i++) {
            suspect("suspects[" + i + "].", i + 1, inputs.suspects().get(i), pairs);
        }
    }

    private void suspect(String path, int number, Lean.SuspectLine line, HashSet<String> taken) {
        refusals.name(
                path + "name",
                words.say("row {0} of Suspects", number),
                line.name(),
                taken,
                words.say("Name each pair once"));
        boolean from = line.densityFrom().isPresent();
        if (from != line.densityTo().isPresent()) {
            refusals.add(
                    path + (from ? "densityTo" : "densityFrom"),
                    words.say("density of '{0}'", line.name()),
                    words.say("given at one end only"),
                    words.say("the lightest and the heaviest, or neither"),
                    words.say("Look the material up, or weigh two scraps of it"));
        } else if (from
                && line.densityFrom().get().in(KILOGRAM_PER_CUBIC_METRE)
                        > line.densityTo().get().in(KILOGRAM_PER_CUBIC_METRE)) {
            refusals.add(
                    path + "densityFrom",
                    words.say("density of '{0}' from", line.name()),
                    words.show(line.densityFrom().get()),
                    words.say(
                            "up to its other end, {0}",
                            words.show(line.densityTo().get())),
                    words.say("Exchange the two"));
        }
    }

    private void places() {
        var ballast = moments.ballast();
        if (inputs.levelledBy().isPresent() && inputs.levelledAt().isEmpty() && ballast.isEmpty()) {
            refusals.add(
                    "levelledAt",
                    words.say("place of the mass that levels it"),
                    words.say("empty"),
                    words.say("its station y"),
                    words.say("Measure it"));
        }
        arm("levelledAt", words.say("place of the mass that levels it"), inputs.levelledAt());
        if (inputs.tipReading().isPresent() != inputs.tipReadingAt().isPresent()) {
            refusals.add(
                    inputs.tipReading().isPresent() ? "tipReadingAt" : "tipReading",
                    words.say("scale under a tip"),
                    words.say("half given"),
                    words.say("its reading and its station y, or neither"),
                    words.say("Measure the other"));
        }
        arm("tipReadingAt", words.say("place of the scale"), inputs.tipReadingAt());
    }

    private void arm(String input, String name, Optional<Measured<Length>> place) {
        place.filter(at -> Math.abs(at.in(METRE)) < LEAST_ARM)
                .ifPresent(at -> refusals.add(
                        input,
                        name,
                        words.show(at),
                        words.say(
                                "at least {0} beside the centre line",
                                words.show(Measured.of(LEAST_ARM, METRE).to(MILLIMETRE))),
                        words.say("The right wing is positive, the left negative")));
    }

    private void together() {
        if (inputs.lean().isPresent() && inputs.hangingHeight().isEmpty()) {
            refusals.add(
                    "hangingHeight",
                    words.say("height of the pivot above the balance point"),
                    words.say("empty"),
                    words.say("a height, as the lean is given"),
                    words.say("Measure it, or level it with a mass at a tip instead"));
        }
        if (inputs.lean().isPresent() && moments.mass().isEmpty()) {
            refusals.add(
                    "mass",
                    words.say("All-up mass"),
                    words.say("empty"),
                    words.say("a mass, as the lean is given"),
                    words.say("Weigh it"));
        }
        both(
                "rightSpan",
                words.say("half spans"),
                inputs.leftSpan().isPresent(),
                inputs.rightSpan().isPresent());
        both(
                "rightArea",
                words.say("wing areas"),
                inputs.leftArea().isPresent(),
                inputs.rightArea().isPresent());
        both(
                "rightTwist",
                words.say("tip twists"),
                inputs.leftTwist().isPresent(),
                inputs.rightTwist().isPresent());
        moments.mass()
                .filter(mass -> mass.value() > MOST_KILOGRAMS)
                .ifPresent(mass -> refusals.add(
                        "parts",
                        words.say("Mass of all parts"),
                        words.show(Measured.of(mass.value(), KILOGRAM)),
                        words.say("up to {0}", words.show(Measured.of(MOST_KILOGRAMS, KILOGRAM))),
                        words.say("Look at the units of the masses")));
    }

    private void both(String input, String name, boolean left, boolean right) {
        if (left != right) {
            refusals.add(
                    input,
                    name,
                    words.say("given for one side only"),
                    words.say("both sides, or neither"),
                    words.say("Measure the other the same way"));
        }
    }

    private void spreads() {
        spread("levelledBy", words.say("mass that levels it"), inputs.levelledBy());
        spread("levelledAt", words.say("place of the mass that levels it"), inputs.levelledAt());
        spread("tipReading", words.say("scale under a tip"), inputs.tipReading());
        spread("tipReadingAt", words.say("place of the scale"), inputs.tipReadingAt());
        spread("hangingHeight", words.say("height of the pivot"), inputs.hangingHeight());
        spread("mass", words.say("all-up mass"), inputs.mass());
        spread("leftSpan", words.say("left half span"), inputs.leftSpan());
        spread("rightSpan", words.say("right half span"), inputs.rightSpan());
        spread("leftArea", words.say("left wing area"), inputs.leftArea());
        spread("rightArea", words.say("right wing area"), inputs.rightArea());
        spread("speed", words.say("speed"), inputs.speed());
        inputs.lean().ifPresent(lean -> refusals.spread("lean", words.say("lean"), lean, Measured.of(20, DEGREE)));
        inputs.leftTwist()
                .ifPresent(twist ->
                        refusals.spread("leftTwist", words.say("left tip twist"), twist, Measured.of(20, DEGREE)));
        inputs.rightTwist()
                .ifPresent(twist ->
                        refusals.spread("rightTwist", words.say("right tip twist"), twist, Measured.of(20, DEGREE)));
    }

    /** No ± greater than half of what is measured: it would be no measurement. */
    private <Q extends Quantity<Q>> void spread(String input, String name, Optional<Measured<Q>> value) {
        value.ifPresent(known -> {
            var unit = known.value().getUnit();
            double most = Math.abs(known.in(unit)) / 2;
            refusals.spread(input, name, known, Measured.of(Math.max(most, Double.MIN_NORMAL), unit));
        });
    }

    private void something() {
        if (moments.seen().isEmpty() && moments.parts().isEmpty()) {
            refusals.add(
                    "",
                    words.say("What is known of the lean"),
                    words.say("nothing"),
                    words.say("a mass that levels it, a scale under a tip, a lean while hung, or parts beside "
                            + "the centre line"),
                    words.say("Hang it by nose and tail and put coins on the high tip until it is level"));
        }
        if (moments.halfSpan().filter(half -> half > LEAST_ARM).isEmpty()
                && inputs.tip().isEmpty()
                && inputs.levelledAt().isEmpty()
                && inputs.tipReadingAt().isEmpty()) {
            refusals.add(
                    "tip",
                    words.say("Tip"),
                    words.say("empty, and no shape to take it from"),
                    words.say("a distance from the centre line"),
                    words.say("Measure it"));
        }
    }
}
