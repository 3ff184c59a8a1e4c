package planewright.balance;

import static planewright.api.quantity.Units.METRE;

import java.util.HashSet;
import javax.measure.quantity.Length;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Which ledgers cannot be computed with. */
final class LedgerChecks {
    private static final Measured<Length> FARTHEST = Measured.of(Refusals.FARTHEST, METRE);

    private final Words words;
    private final Refusals refusals;
    private final HashSet<String> taken = new HashSet<>();

    private LedgerChecks(Words words) {
        this.words = words;
        this.refusals = new Refusals(words);
    }

    /**
     * @param empty whether not a single part has both mass and station
     */
    static void require(Words words, Ledger.Inputs inputs, boolean empty) throws UnsuitableInput {
        var checks = new LedgerChecks(words);
        if (empty) {
            checks.refusals.add(
                    "parts",
                    words.say("Parts"),
                    inputs.parts().isEmpty()
                            ? words.say("empty")
                            : words.say("without a single part that has both mass and station x"),
                    words.say("1 or more parts with mass and station"),
                    words.say("Weigh the parts and measure where they sit"));
        }
        for (int i = 0; i < inputs.parts().size(); i++) {
            checks.line("parts[" + i + "].", i + 1, inputs.parts().get(i));
        }
        checks.range(inputs);
        checks.mayMove(inputs);
        checks.refusals.shape(inputs.planform());
        checks.refusals.throwIfAny();
    }

    private void line(String path, int number, Ledger.PartLine line) {
        refusals.name(
                path + "name",
                words.say("row {0} of Parts", number),
                line.name(),
                taken,
                words.say("Tell them apart, such as '{0} 1' and '{1} 2'", line.name(), line.name()));
        var name = "'" + line.name() + "'";
        line.mass().ifPresent(mass -> refusals.spread(path + "mass", words.say("mass of {0}", name), mass, mass));
        line.x().ifPresent(x -> refusals.spread(path + "x", words.say("x of {0}", name), x, FARTHEST));
        refusals.spread(path + "y", words.say("y of {0}", name), line.y(), FARTHEST);
        refusals.spread(path + "z", words.say("z of {0}", name), line.z(), FARTHEST);
        line.length()
                .ifPresent(
                        length -> refusals.spread(path + "length", words.say("length of {0}", name), length, length));
        line.width().ifPresent(width -> refusals.spread(path + "width", words.say("width of {0}", name), width, width));
        line.height()
                .ifPresent(
                        height -> refusals.spread(path + "height", words.say("height of {0}", name), height, height));
    }

    private void range(Ledger.Inputs inputs) {
        inputs.rangeFrom()
                .filter(from -> inputs.rangeTo()
                        .filter(to -> !(from.in(Units.METRE) < to.in(Units.METRE)))
                        .isPresent())
                .ifPresent(from -> refusals.add(
                        "rangeFrom",
                        words.say("Range from"),
                        words.show(from),
                        words.say(
                                "less than its other end, {0}",
                                words.show(inputs.rangeTo().orElseThrow())),
                        words.say("Exchange the two")));
    }

    private void mayMove(Ledger.Inputs inputs) {
        inputs.mayMove()
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .filter(name -> inputs.parts().stream()
                        .noneMatch(line -> line.name().strip().equalsIgnoreCase(name)
                                && line.mass().isPresent()
                                && line.x().isPresent()))
                .ifPresent(name -> refusals.add(
                        "mayMove",
                        words.say("Part that may move"),
                        "'" + name + "'",
                        words.say("the name of a part with mass and station"),
                        words.say("Write it as in the list of parts, or leave it empty")));
    }
}
