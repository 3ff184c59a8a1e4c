package planewright.cure;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.material.Materials;
import planewright.shared.quantity.QuantityText;

/** Refuses what cannot be computed with, beyond the bounds that stand with the inputs themselves. */
final class CureChecks {
    private static final int MOST_READINGS = 500;

    private final List<InputProblem> problems = new ArrayList<>();

    void inputs(CureTime.Inputs inputs) throws UnsuitableInput {
        spread("temperature", "temperature", inputs.temperature(), 20, Units.KELVIN);
        for (int i = 0; i < inputs.readings().size(); i++) {
            spread(
                    "readings[" + i + "].temperature",
                    "temperature of reading " + (i + 1),
                    inputs.readings().get(i).temperature(),
                    20,
                    Units.KELVIN);
        }
        spread("humidity", "relative humidity", inputs.humidity(), 50, Units.PERCENT);
        inputs.thickness()
                .ifPresent(
                        thick -> spread("thickness", "thickness", thick, thick.in(Units.MILLIMETRE), Units.MILLIMETRE));
        inputs.ownHandsOff().ifPresent(own -> spread("ownHandsOff", "my hands off", own, 90 * 24, Units.HOUR));
        inputs.ownFullyCured().ifPresent(own -> spread("ownFullyCured", "my fully cured", own, 90 * 24, Units.HOUR));
        if (inputs.readings().size() > MOST_READINGS) {
            problems.add(new InputProblem(
                    "readings",
                    "Readings",
                    inputs.readings().size() + " rows",
                    "up to " + MOST_READINGS,
                    "Keep one an hour, or one night with 'the same every day'"));
        }
        throwIfAny();
    }

    void material(String words) throws UnsuitableInput {
        problems.add(new InputProblem(
                "material",
                "Material",
                words.isBlank() ? "missing" : "'" + words.strip() + "'",
                String.join(", ", Materials.table().names(Materials.CURE)),
                "Any other word needs your own times for hands off and fully cured"));
        throwIfAny();
    }

    void neverEnds(CureTime.Inputs inputs, Curing curing) throws UnsuitableInput {
        boolean dry = curing.way() == Curing.Way.MOISTURE && inputs.humidity().in(Units.PERCENT) < 5;
        problems.add(
                dry
                        ? new InputProblem(
                                "humidity",
                                "Relative humidity",
                                QuantityText.show(inputs.humidity()),
                                "enough for " + curing.name() + ", which cures by moisture",
                                "Mist one face with water, or dampen the air")
                        : new InputProblem(
                                "",
                                "Time to cure",
                                "more than 400 days",
                                "a joint that cures within 400 days",
                                "Warm the shop, or make the layer thinner"));
        throwIfAny();
    }

    private <Q extends Quantity<Q>> void spread(
            String input, String name, Measured<Q> value, double limit, Unit<Q> unit) {
        if (value.spreadIn(unit) > limit) {
            problems.add(new InputProblem(
                    input,
                    "± of " + name,
                    QuantityText.show(Measured.of(value.spreadIn(unit), unit)),
                    "up to " + QuantityText.show(Measured.of(limit, unit)),
                    "Measure it again"));
        }
    }

    private void throwIfAny() throws UnsuitableInput {
        if (!problems.isEmpty()) {
            throw new UnsuitableInput(problems);
        }
    }
}
