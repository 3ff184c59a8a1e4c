package planewright.ducts;

import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.SQUARE_MILLIMETRE;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;

/** Which inlets cannot be drawn, beyond the bounds that stand with the inputs themselves. */
final class InletChecks {
    /** A ± greater than this share of its value is no measure to cut by: chosen, no source. */
    private static final double WIDEST_SPREAD = 0.2;

    /** An entrance wider than this many radii of the skin opens sideways more than forward: chosen, no source. */
    private static final double WIDEST_IN_RADII = 1.2;

    /** A ramp longer than this many radii of the skin runs round a corner: chosen, no source. */
    private static final double LONGEST_IN_RADII = 1;

    private final Words words;
    private final SubmergedInlet.Inputs inputs;
    private final List<InputProblem> problems = new ArrayList<>();

    private InletChecks(Words words, SubmergedInlet.Inputs inputs) {
        this.words = words;
        this.inputs = inputs;
    }

    static void require(Words words, SubmergedInlet.Inputs inputs) throws UnsuitableInput {
        var checks = new InletChecks(words, inputs);
        checks.size();
        checks.spreads();
        if (checks.problems.isEmpty()) {
            checks.round();
        }
        if (!checks.problems.isEmpty()) {
            throw new UnsuitableInput(checks.problems);
        }
    }

    private void size() {
        if (inputs.width().isPresent() == inputs.area().isPresent()) {
            problems.add(new InputProblem(
                    "width",
                    words.say("Width or area"),
                    inputs.width().isPresent() ? words.say("given twice") : words.say("missing"),
                    words.say(
                            "one of the two, such as a width of {0} or an area of {1}",
                            words.show(Measured.of(40, MILLIMETRE)), words.show(Measured.of(400, SQUARE_MILLIMETRE))),
                    words.say("The other follows from it and from width over depth")));
        }
    }

    private void spreads() {
        inputs.width().ifPresent(width -> spread("width", words.say("width"), width));
        inputs.area().ifPresent(area -> spread("area", words.say("area"), area));
        spread("ratio", words.say("width over depth"), inputs.ratio());
        spread("ramp", words.say("ramp angle"), inputs.ramp());
        spread("skinThickness", words.say("skin thickness"), inputs.skinThickness());
        inputs.radiusAcross().ifPresent(radius -> spread("radiusAcross", words.say("skin radius across"), radius));
        inputs.radiusAlong().ifPresent(radius -> spread("radiusAlong", words.say("skin radius along"), radius));
        inputs.foamThickness().ifPresent(foam -> spread("foamThickness", words.say("foam thickness"), foam));
    }

    private <Q extends Quantity<Q>> void spread(String input, String name, Measured<Q> value) {
        var unit = value.value().getUnit();
        double limit = WIDEST_SPREAD * value.in(unit);
        if (value.spreadIn(unit) > limit) {
            problems.add(new InputProblem(
                    input,
                    words.say("± of {0}", name),
                    words.show(Measured.of(value.spreadIn(unit), unit)),
                    words.say("up to {0}, a fifth of it", words.show(Measured.of(limit, unit))),
                    words.say("Measure it again")));
        }
    }

    private void round() {
        var shape = InletAnswer.shape(inputs);
        inputs.radiusAcross()
                .ifPresent(radius -> within(
                        words.say("Width of the inlet"), shape.width(), WIDEST_IN_RADII * radius.in(METRE), radius));
        inputs.radiusAlong()
                .ifPresent(radius -> within(
                        words.say("Length of the inlet"), shape.length(), LONGEST_IN_RADII * radius.in(METRE), radius));
    }

    private void within(String name, double size, double most, Measured<Length> radius) {
        if (size > most) {
            problems.add(new InputProblem(
                    inputs.width().isPresent() ? "width" : "area",
                    name,
                    words.mm(size),
                    words.say("up to {0} on a skin of radius {1}", words.mm(most), words.show(radius)),
                    words.say("Make it smaller, or use two of them")));
        }
    }
}
