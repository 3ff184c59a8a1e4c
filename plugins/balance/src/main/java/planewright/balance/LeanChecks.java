package planewright.balance;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.KILOGRAM_PER_CUBIC_METRE;
import static planewright.api.quantity.Units.METRE;

import java.util.HashSet;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.shared.quantity.QuantityText;

/** Which questions about a lean cannot be answered. */
final class LeanChecks {
    /** A mass nearer to the centre line than this levels nothing, m. */
    private static final double LEAST_ARM = 0.001;

    private final Lean.Inputs inputs;
    private final LeanMoments moments;
    private final Refusals refusals = new Refusals();

    private LeanChecks(Lean.Inputs inputs, LeanMoments moments) {
        this.inputs = inputs;
        this.moments = moments;
    }

    static void require(Lean.Inputs inputs, LeanMoments moments) throws UnsuitableInput {
        var checks = new LeanChecks(inputs, moments);
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
            refusals.name(path + "name", "row " + (i + 1) + " of Parts", part.name(), taken, "Name each part once");
            part.mass().ifPresent(mass -> refusals.spread(path + "mass", "mass of '" + part.name() + "'", mass, mass));
            refusals.spread(path + "y", "y of '" + part.name() + "'", part.y(), Measured.of(Refusals.FARTHEST, METRE));
        }
        var pairs = new HashSet<String>();
        for (int i = 0; i < inputs.suspects().size(); i++) {
            suspect("suspects[" + i + "].", i + 1, inputs.suspects().get(i), pairs);
        }
    }

    private void suspect(String path, int number, Lean.SuspectLine line, HashSet<String> taken) {
        refusals.name(path + "name", "row " + number + " of Suspects", line.name(), taken, "Name each pair once");
        boolean from = line.densityFrom().isPresent();
        if (from != line.densityTo().isPresent()) {
            refusals.add(
                    path + (from ? "densityTo" : "densityFrom"),
                    "density of '" + line.name() + "'",
                    "given at one end only",
                    "the lightest and the heaviest, or neither",
                    "Look the material up, or weigh two scraps of it");
        } else if (from
                && line.densityFrom().get().in(KILOGRAM_PER_CUBIC_METRE)
                        > line.densityTo().get().in(KILOGRAM_PER_CUBIC_METRE)) {
            refusals.add(
                    path + "densityFrom",
                    "density of '" + line.name() + "' from",
                    QuantityText.show(line.densityFrom().get()),
                    "up to its other end, " + QuantityText.show(line.densityTo().get()),
                    "Exchange the two");
        }
    }

    private void places() {
        var ballast = moments.ballast();
        if (inputs.levelledBy().isPresent() && inputs.levelledAt().isEmpty() && ballast.isEmpty()) {
            refusals.add("levelledAt", "place of the mass that levels it", "empty", "its station y", "Measure it");
        }
        arm("levelledAt", "place of the mass that levels it", inputs.levelledAt());
        if (inputs.tipReading().isPresent() != inputs.tipReadingAt().isPresent()) {
            refusals.add(
                    inputs.tipReading().isPresent() ? "tipReadingAt" : "tipReading",
                    "scale under a tip",
                    "half given",
                    "its reading and its station y, or neither",
                    "Measure the other");
        }
        arm("tipReadingAt", "place of the scale", inputs.tipReadingAt());
    }

    private void arm(String input, String name, Optional<Measured<Length>> place) {
        place.filter(at -> Math.abs(at.in(METRE)) < LEAST_ARM)
                .ifPresent(at -> refusals.add(
                        input,
                        name,
                        QuantityText.show(at),
                        "at least 1 mm beside the centre line",
                        "The right wing is positive, the left negative"));
    }

    private void together() {
        if (inputs.lean().isPresent() && inputs.hangingHeight().isEmpty()) {
            refusals.add(
                    "hangingHeight",
                    "height of the pivot above the balance point",
                    "empty",
                    "a height, as the lean is given",
                    "Measure it, or level it with a mass at a tip instead");
        }
        if (inputs.lean().isPresent() && moments.mass().isEmpty()) {
            refusals.add("mass", "All-up mass", "empty", "a mass, as the lean is given", "Weigh it");
        }
        both(
                "rightSpan",
                "half spans",
                inputs.leftSpan().isPresent(),
                inputs.rightSpan().isPresent());
        both(
                "rightArea",
                "wing areas",
                inputs.leftArea().isPresent(),
                inputs.rightArea().isPresent());
        both(
                "rightTwist",
                "tip twists",
                inputs.leftTwist().isPresent(),
                inputs.rightTwist().isPresent());
        moments.mass()
                .filter(mass -> mass.value() > 200)
                .ifPresent(mass -> refusals.add(
                        "parts",
                        "Mass of all parts",
                        QuantityText.show(Measured.of(mass.value(), KILOGRAM)),
                        "up to 200 kg",
                        "Look at the units of the masses"));
    }

    private void both(String input, String name, boolean left, boolean right) {
        if (left != right) {
            refusals.add(
                    input, name, "given for one side only", "both sides, or neither", "Measure the other the same way");
        }
    }

    private void spreads() {
        spread("levelledBy", "mass that levels it", inputs.levelledBy());
        spread("levelledAt", "place of the mass that levels it", inputs.levelledAt());
        spread("tipReading", "scale under a tip", inputs.tipReading());
        spread("tipReadingAt", "place of the scale", inputs.tipReadingAt());
        spread("hangingHeight", "height of the pivot", inputs.hangingHeight());
        spread("mass", "all-up mass", inputs.mass());
        spread("leftSpan", "left half span", inputs.leftSpan());
        spread("rightSpan", "right half span", inputs.rightSpan());
        spread("leftArea", "left wing area", inputs.leftArea());
        spread("rightArea", "right wing area", inputs.rightArea());
        spread("speed", "speed", inputs.speed());
        inputs.lean().ifPresent(lean -> refusals.spread("lean", "lean", lean, Measured.of(20, DEGREE)));
        inputs.leftTwist()
                .ifPresent(twist -> refusals.spread("leftTwist", "left tip twist", twist, Measured.of(20, DEGREE)));
        inputs.rightTwist()
                .ifPresent(twist -> refusals.spread("rightTwist", "right tip twist", twist, Measured.of(20, DEGREE)));
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
                    "What is known of the lean",
                    "nothing",
                    "a mass that levels it, a scale under a tip, a lean while hung, or parts beside the centre line",
                    "Hang it by nose and tail and put coins on the high tip until it is level");
        }
        if (moments.halfSpan().filter(half -> half > LEAST_ARM).isEmpty()
                && inputs.tip().isEmpty()
                && inputs.levelledAt().isEmpty()
                && inputs.tipReadingAt().isEmpty()) {
            refusals.add(
                    "tip",
                    "Tip",
                    "empty, and no shape to take it from",
                    "a distance from the centre line",
                    "Measure it");
        }
    }
}
