package planewright.ducts;

import static planewright.api.quantity.Units.METRE;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.shared.quantity.QuantityText;

/** Which inlets cannot be drawn, beyond the bounds that stand with the inputs themselves. */
final class InletChecks {
    /** A ± greater than this share of its value is no measure to cut by: chosen, no source. */
    private static final double WIDEST_SPREAD = 0.2;

    /** An entrance wider than this many radii of the skin opens sideways more than forward: chosen, no source. */
    private static final double WIDEST_IN_RADII = 1.2;

    /** A ramp longer than this many radii of the skin runs round a corner: chosen, no source. */
    private static final double LONGEST_IN_RADII = 1;

    private final SubmergedInlet.Inputs inputs;
    private final List<InputProblem> problems = new ArrayList<>();

    private InletChecks(SubmergedInlet.Inputs inputs) {
        this.inputs = inputs;
    }

    static void require(SubmergedInlet.Inputs inputs) throws UnsuitableInput {
        var checks = new InletChecks(inputs);
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
                    "Width or area",
                    inputs.width().isPresent() ? "given twice" : "missing",
                    "one of the two, such as a width of 40 mm or an area of 400 mm²",
                    "The other follows from it and from width over depth"));
        }
    }

    private void spreads() {
        inputs.width().ifPresent(width -> spread("width", "width", width));
        inputs.area().ifPresent(area -> spread("area", "area", area));
        spread("ratio", "width over depth", inputs.ratio());
        spread("ramp", "ramp angle", inputs.ramp());
        spread("skinThickness", "skin thickness", inputs.skinThickness());
        inputs.radiusAcross().ifPresent(radius -> spread("radiusAcross", "skin radius across", radius));
        inputs.radiusAlong().ifPresent(radius -> spread("radiusAlong", "skin radius along", radius));
        inputs.foamThickness().ifPresent(foam -> spread("foamThickness", "foam thickness", foam));
    }

    private <Q extends Quantity<Q>> void spread(String input, String name, Measured<Q> value) {
        var unit = value.value().getUnit();
        double limit = WIDEST_SPREAD * value.in(unit);
        if (value.spreadIn(unit) > limit) {
            problems.add(new InputProblem(
                    input,
                    "± of " + name,
                    QuantityText.show(Measured.of(value.spreadIn(unit), unit)),
                    "up to " + QuantityText.show(Measured.of(limit, unit)) + ", a fifth of it",
                    "Measure it again"));
        }
    }

    private void round() {
        var shape = InletAnswer.shape(inputs);
        inputs.radiusAcross()
                .ifPresent(radius -> within("Width", shape.width(), WIDEST_IN_RADII * radius.in(METRE), radius));
        inputs.radiusAlong()
                .ifPresent(radius -> within("Length", shape.length(), LONGEST_IN_RADII * radius.in(METRE), radius));
    }

    private void within(String name, double size, double most, Measured<Length> radius) {
        if (size > most) {
            problems.add(new InputProblem(
                    inputs.width().isPresent() ? "width" : "area",
                    name + " of the inlet",
                    Words.mm(size),
                    "up to " + Words.mm(most) + " on a skin of radius " + QuantityText.show(radius),
                    "Make it smaller, or use two of them"));
        }
    }
}
