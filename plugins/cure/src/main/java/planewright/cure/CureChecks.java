package planewright.cure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.material.Materials;

/** Refuses what cannot be computed with, beyond the bounds that stand with the inputs themselves. */
final class CureChecks {
    private static final int MOST_READINGS = 500;

    private final Words words;
    private final List<InputProblem> problems = new ArrayList<>();

    CureChecks(Words words) {
        this.words = words;
    }

    void inputs(CureTime.Inputs inputs) throws UnsuitableInput {
        spread("temperature", words.say("temperature"), inputs.temperature(), 20, Units.KELVIN);
        for (int i = 0; i < inputs.readings().size(); i++) {
            spread(
                    "readings[" + i + "].temperature",
                    words.say("temperature of reading {0}", (i + 1)),
                    inputs.readings().get(i).temperature(),
                    20,
                    Units.KELVIN);
        }
        spread("humidity", words.say("relative humidity"), inputs.humidity(), 50, Units.PERCENT);
        inputs.thickness()
                .ifPresent(thick -> spread(
                        "thickness", words.say("thickness"), thick, thick.in(Units.MILLIMETRE), Units.MILLIMETRE));
        inputs.ownHandsOff()
                .ifPresent(own -> spread("ownHandsOff", words.say("my hands off"), own, 90 * 24, Units.HOUR));
        inputs.ownFullyCured()
                .ifPresent(own -> spread("ownFullyCured", words.say("my fully cured"), own, 90 * 24, Units.HOUR));
        if (inputs.readings().size() > MOST_READINGS) {
            problems.add(new InputProblem(
                    "readings",
                    words.say("Readings"),
                    words.say("{0} rows", inputs.readings().size()),
                    words.say("up to {0}", MOST_READINGS),
                    words.say("Keep one an hour, or one night with 'the same every day'")));
        }
        throwIfAny();
    }

    void material(String typed) throws UnsuitableInput {
        problems.add(new InputProblem(
                "material",
                words.say("Material"),
                typed.isBlank() ? words.say("missing") : "'" + typed.strip() + "'",
                Materials.table().names(Materials.CURE).stream().map(words::say).collect(Collectors.joining(", ")),
                words.say("Any other word needs your own times for hands off and fully cured")));
        throwIfAny();
    }

    void neverEnds(CureTime.Inputs inputs, Curing curing) throws UnsuitableInput {
        boolean dry = curing.way() == Curing.Way.MOISTURE && inputs.humidity().in(Units.PERCENT) < 5;
        problems.add(
                dry
                        ? new InputProblem(
                                "humidity",
                                words.say("Relative humidity"),
                                words.show(inputs.humidity()),
                                words.say("enough for {0}, which cures by moisture", curing.told(words)),
                                words.say("Mist one face with water, or dampen the air"))
                        : new InputProblem(
                                "",
                                words.say("Time to cure"),
                                words.say("more than 400 days"),
                                words.say("a joint that cures within 400 days"),
                                words.say("Warm the shop, or make the layer thinner")));
        throwIfAny();
    }

    private <Q extends Quantity<Q>> void spread(
            String input, String name, Measured<Q> value, double limit, Unit<Q> unit) {
        if (value.spreadIn(unit) > limit) {
            problems.add(new InputProblem(
                    input,
                    words.say("± of {0}", name),
                    words.spread(value.spreadIn(unit), unit),
                    words.say("up to {0}", words.spread(limit, unit)),
                    words.say("Measure it again")));
        }
    }

    private void throwIfAny() throws UnsuitableInput {
        if (!problems.isEmpty()) {
            throw new UnsuitableInput(problems);
        }
    }
}
