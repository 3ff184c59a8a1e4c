package planewright.balance;

import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.METRE;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;

/** Which questions about ballast cannot be answered. */
final class BallastChecks {
    /** Kinds of pieces and pockets that a search is made for. */
    static final int MOST_KINDS = 12;

    static final int MOST_POCKETS = 12;
    private static final double MOST_KILOGRAMS = 200;
    private static final Measured<Length> FARTHEST = Measured.of(Refusals.FARTHEST, METRE);

    private final Words words;
    private final Ballast.Inputs inputs;
    private final Refusals refusals;

    private BallastChecks(Words words, Ballast.Inputs inputs) {
        this.words = words;
        this.refusals = new Refusals(words);
        this.inputs = inputs;
    }

    static void require(Words words, Ballast.Inputs inputs) throws UnsuitableInput {
        var checks = new BallastChecks(words, inputs);
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
                        words.say("Part to leave out"),
                        "'" + name + "'",
                        words.say("the name of a part with mass and station"),
                        words.say("Write it as in the list of parts, or leave it empty")));
        double mass = inputs.parts().stream()
                .filter(BallastChecks::counts)
                .filter(line -> out.map(name -> !line.name().strip().equalsIgnoreCase(name))
                        .orElse(true))
                .mapToDouble(line -> line.mass().orElseThrow().in(KILOGRAM))
                .sum();
        if (mass == 0) {
            refusals.add(
                    "parts",
                    words.say("Parts"),
                    inputs.parts().isEmpty()
                            ? words.say("empty")
                            : words.say("without a part that stays and has both mass and station x"),
                    words.say("1 or more parts with mass and station"),
                    words.say("Weigh the parts and measure where they sit"));
        }
        together("parts", words.say("Mass of all parts"), mass, words.say("Look at the units of the masses"));
    }

    private void part(String path, int number, Ballast.PartLine line, HashSet<String> taken) {
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
    }

    private void target() {
        if (inputs.targetX().isEmpty() && !inputs.sideways()) {
            refusals.add(
                    "targetX",
                    words.say("Target"),
                    words.say("empty, and sideways is left out too"),
                    words.say("a target x, or sideways too, or both"),
                    words.say("Say where it should balance"));
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
                path + "part",
                words.say("row {0} of Parts that may move", number),
                line.part(),
                taken,
                words.say("Give one range to it"));
        var name = "'" + line.part() + "'";
        if (line.from().in(METRE) > line.to().in(METRE)) {
            refusals.add(
                    path + "from",
                    words.say("foremost station of {0}", name),
                    words.show(line.from()),
                    words.say("up to its rearmost, {0}", words.show(line.to())),
                    words.say("Stations grow towards the tail"));
            return;
        }
        var part = counted(inputs.parts(), line.part());
        boolean out = inputs.leaveOut()
                .map(leave -> leave.strip().equalsIgnoreCase(line.part().strip()))
                .orElse(false);
        if (!line.part().isBlank() && (part.isEmpty() || out)) {
            refusals.add(
                    path + "part",
                    words.say("part that may move"),
                    name,
                    words.say("the name of a part that stays and has mass and station"),
                    words.say("Write it as in the list of parts"));
        }
        part.map(known -> known.x().orElseThrow())
                .filter(x -> x.in(METRE) < line.from().in(METRE) - 1e-6
                        || x.in(METRE) > line.to().in(METRE) + 1e-6)
                .ifPresent(x -> refusals.add(
                        path + "from",
                        words.say("station of {0}", name),
                        words.show(x),
                        words.say(
                                "within the range in which it may move, {0} to {1}",
                                words.show(line.from()), words.show(line.to())),
                        words.say("Widen the range, or correct its station in the list of parts")));
    }

    private void pockets() {
        var taken = new HashSet<String>();
        for (int i = 0; i < inputs.pockets().size(); i++) {
            var line = inputs.pockets().get(i);
            var path = "pockets[" + i + "].";
            refusals.name(
                    path + "name",
                    words.say("row {0} of Pockets", (i + 1)),
                    line.name(),
                    taken,
                    words.say("Name each pocket once"));
            refusals.spread(path + "x", words.say("x of pocket '{0}'", line.name()), line.x(), FARTHEST);
            refusals.spread(path + "y", words.say("y of pocket '{0}'", line.name()), line.y(), FARTHEST);
        }
        most(
                "pockets",
                words.say("Pockets"),
                inputs.pockets().size(),
                MOST_POCKETS,
                words.say("Leave out those you would not use"));
    }

    private void stock() {
        var taken = new HashSet<String>();
        for (int i = 0; i < inputs.stock().size(); i++) {
            var line = inputs.stock().get(i);
            var path = "stock[" + i + "].";
            refusals.name(
                    path + "name",
                    words.say("row {0} of Pieces", (i + 1)),
                    line.name(),
                    taken,
                    words.say("Name each kind once"));
            refusals.spread(path + "mass", words.say("mass of '{0}'", line.name()), line.mass(), line.mass());
        }
        var kinds = BallastStock.of(words, inputs);
        most(
                "stock",
                words.say("Kinds of pieces"),
                kinds.size(),
                MOST_KINDS,
                words.say("Leave out the kinds you would not use"));
        double mass = kinds.stream().mapToDouble(BallastStock.Kind::allOfIt).sum();
        together("stock", words.say("Mass of all pieces"), mass, words.say("Put in fewer of them"));
    }

    private void most(String input, String name, int count, int most, String wayOut) {
        if (count > most) {
            refusals.add(input, name, words.say("{0} in number", count), words.say("up to {0}", most), wayOut);
        }
    }

    private void together(String input, String name, double kilograms, String wayOut) {
        if (kilograms > MOST_KILOGRAMS) {
            Measured<Mass> sum = Measured.of(kilograms, KILOGRAM);
            refusals.add(
                    input,
                    name,
                    words.show(sum),
                    words.say("up to {0}", words.show(Measured.of(MOST_KILOGRAMS, KILOGRAM))),
                    wayOut);
        }
    }
}
