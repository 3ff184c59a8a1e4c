package planewright.balance;

import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.METRE;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.shared.quantity.QuantityText;

/** Which questions about ballast cannot be answered. */
final class BallastChecks {
    /** Kinds of pieces and pockets that a search is made for. */
    static final int MOST_KINDS = 12;

    static final int MOST_POCKETS = 12;
    private static final double MOST_KILOGRAMS = 200;
    private static final Measured<Length> FARTHEST = Measured.of(Refusals.FARTHEST, METRE);

    private final Ballast.Inputs inputs;
    private final Refusals refusals = new Refusals();

    private BallastChecks(Ballast.Inputs inputs) {
        this.inputs = inputs;
    }

    static void require(Ballast.Inputs inputs) throws UnsuitableInput {
        var checks = new BallastChecks(inputs);
        checks.parts();
        checks.target();
        checks.movable();
        checks.pockets();
        checks.stock();
        checks.refusals.shape(inputs.planform());
        checks.refusals.throwIfAny();
    }

    /** The part of that name, if it counts. */
    static Optional<Ballast.PartLine> counted(List<Ballast.PartLine> parts, String name) {
        return parts.stream()
                .filter(BallastChecks::counts)
                .filter(line -> line.name().strip().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    static boolean counts(Ballast.PartLine line) {
        return line.mass().isPresent() && line.x().isPresent();
    }

    private void parts() {
        var taken = new HashSet<String>();
        for (int i = 0; i < inputs.parts().size(); i++) {
            part("parts[" + i + "].", i + 1, inputs.parts().get(i), taken);
        }
        var out = inputs.leaveOut().map(String::strip).filter(name -> !name.isEmpty());
        out.filter(name -> counted(inputs.parts(), name).isEmpty())
                .ifPresent(name -> refusals.add(
                        "leaveOut",
                        "Part to leave out",
                        "'" + name + "'",
                        "the name of a part with mass and station",
                        "Write it as in the list of parts, or leave it empty"));
        double mass = inputs.parts().stream()
                .filter(BallastChecks::counts)
                .filter(line -> out.map(name -> !line.name().strip().equalsIgnoreCase(name))
                        .orElse(true))
                .mapToDouble(line -> line.mass().orElseThrow().in(KILOGRAM))
                .sum();
        if (mass == 0) {
            refusals.add(
                    "parts",
                    "Parts",
                    inputs.parts().isEmpty() ? "empty" : "without a part that stays and has both mass and station x",
                    "1 or more parts with mass and station",
                    "Weigh the parts and measure where they sit");
        }
        together("parts", "Mass of all parts", mass, "Look at the units of the masses");
    }

    private void part(String path, int number, Ballast.PartLine line, HashSet<String> taken) {
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
    }

    private void target() {
        if (inputs.targetX().isEmpty() && !inputs.sideways()) {
            refusals.add(
                    "targetX",
                    "Target",
                    "empty, and sideways is left out too",
                    "a target x, or sideways too, or both",
                    "Say where it should balance");
        }
    }

    private void movable() {
        var taken = new HashSet<String>();
        for (int i = 0; i < inputs.movable().size(); i++) {
            movable("movable[" + i + "].", i + 1, inputs.movable().get(i), taken);
        }
    }

    private void movable(String path, int number, Ballast.MovableLine line, HashSet<String> taken) {
        refusals.name(
                path + "part", "row " + number + " of Parts that may move", line.part(), taken, "Give one range to it");
        var name = "'" + line.part() + "'";
        if (line.from().in(METRE) > line.to().in(METRE)) {
            refusals.add(
                    path + "from",
                    "foremost station of " + name,
                    QuantityText.show(line.from()),
                    "up to its rearmost, " + QuantityText.show(line.to()),
                    "Stations grow towards the tail");
            return;
        }
        var part = counted(inputs.parts(), line.part());
        boolean out = inputs.leaveOut()
                .map(leave -> leave.strip().equalsIgnoreCase(line.part().strip()))
                .orElse(false);
        if (!line.part().isBlank() && (part.isEmpty() || out)) {
            refusals.add(
                    path + "part",
                    "part that may move",
                    name,
                    "the name of a part that stays and has mass and station",
                    "Write it as in the list of parts");
        }
        part.map(known -> known.x().orElseThrow())
                .filter(x -> x.in(METRE) < line.from().in(METRE) - 1e-6
                        || x.in(METRE) > line.to().in(METRE) + 1e-6)
                .ifPresent(x -> refusals.add(
                        path + "from",
                        "station of " + name,
                        QuantityText.show(x),
                        "within the range in which it may move, " + QuantityText.show(line.from()) + " to "
                                + QuantityText.show(line.to()),
                        "Widen the range, or correct its station in the list of parts"));
    }

    private void pockets() {
        var taken = new HashSet<String>();
        for (int i = 0; i < inputs.pockets().size(); i++) {
            var line = inputs.pockets().get(i);
            var path = "pockets[" + i + "].";
            refusals.name(path + "name", "row " + (i + 1) + " of Pockets", line.name(), taken, "Name each pocket once");
            refusals.spread(path + "x", "x of pocket '" + line.name() + "'", line.x(), FARTHEST);
            refusals.spread(path + "y", "y of pocket '" + line.name() + "'", line.y(), FARTHEST);
        }
        most("pockets", "Pockets", inputs.pockets().size(), MOST_POCKETS, "Leave out those you would not use");
    }

    private void stock() {
        var taken = new HashSet<String>();
        for (int i = 0; i < inputs.stock().size(); i++) {
            var line = inputs.stock().get(i);
            var path = "stock[" + i + "].";
            refusals.name(path + "name", "row " + (i + 1) + " of Pieces", line.name(), taken, "Name each kind once");
            refusals.spread(path + "mass", "mass of '" + line.name() + "'", line.mass(), line.mass());
        }
        var kinds = BallastStock.of(inputs);
        most("stock", "Kinds of pieces", kinds.size(), MOST_KINDS, "Leave out the kinds you would not use");
        double mass = kinds.stream().mapToDouble(BallastStock.Kind::allOfIt).sum();
        together("stock", "Mass of all pieces", mass, "Put in fewer of them");
    }

    private void most(String input, String name, int count, int most, String wayOut) {
        if (count > most) {
            refusals.add(input, name, count + " in number", "up to " + most, wayOut);
        }
    }

    private void together(String input, String name, double kilograms, String wayOut) {
        if (kilograms > MOST_KILOGRAMS) {
            Measured<Mass> sum = Measured.of(kilograms, KILOGRAM).to(GRAM);
            refusals.add(input, name, QuantityText.show(sum, KILOGRAM), "up to 200 kg", wayOut);
        }
    }
}
