package planewright.balance;

import static planewright.api.quantity.Units.METRE;

import java.util.HashSet;
import javax.measure.quantity.Length;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;

/** Which ledgers cannot be computed with. */
final class LedgerChecks {
    private static final Measured<Length> FARTHEST = Measured.of(Refusals.FARTHEST, METRE);

    private final Refusals refusals = new Refusals();
    private final HashSet<String> taken = new HashSet<>();

    private LedgerChecks() {}

    /**
     * @param empty whether not a single part has both mass and station
     */
    static void require(Ledger.Inputs inputs, boolean empty) throws UnsuitableInput {
        var checks = new LedgerChecks();
        if (empty) {
            checks.refusals.add(
                    "parts",
                    "Parts",
                    inputs.parts().isEmpty() ? "empty" : "without a single part that has both mass and station x",
                    "1 or more parts with mass and station",
                    "Weigh the parts and measure where they sit");
        }
        for (int i = 0; i < inputs.parts().size(); i++) {
            checks.line("parts[" + i + "].", i + 1, inputs.parts().get(i));
        }
        checks.mayMove(inputs);
        checks.refusals.shape(inputs.planform());
        checks.refusals.throwIfAny();
    }

    private void line(String path, int number, Ledger.PartLine line) {
        refusals.name(
                path + "name",
                "row " + number + " of Parts",
                line.name(),
                taken,
                "Tell them apart, such as '" + line.name() + " 1' and '" + line.name() + " 2'");
        var name = "'" + line.name() + "'";
        line.mass().ifPresent(mass -> refusals.spread(path + "mass", "mass of " + name, mass, mass));
        line.x().ifPresent(x -> refusals.spread(path + "x", "x of " + name, x, FARTHEST));
        refusals.spread(path + "y", "y of " + name, line.y(), FARTHEST);
        refusals.spread(path + "z", "z of " + name, line.z(), FARTHEST);
        line.length().ifPresent(length -> refusals.spread(path + "length", "length of " + name, length, length));
        line.width().ifPresent(width -> refusals.spread(path + "width", "width of " + name, width, width));
        line.height().ifPresent(height -> refusals.spread(path + "height", "height of " + name, height, height));
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
                        "Part that may move",
                        "'" + name + "'",
                        "the name of a part with mass and station",
                        "Write it as in the list of parts, or leave it empty"));
    }
}
