package planewright.balance;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.shared.planform.Outlines;

/** Collects what cannot be computed with, beyond the bounds that stand with the inputs themselves. */
final class Refusals {
    /** Farthest from the datum that anything is drawn, and the greatest ± of a station, m. */
    static final double FARTHEST = 100;

    /** A smaller ± than a nanogram or a picometre is none: no scale and no rule resolves it. In kg or m. */
    static final double LEAST_SPREAD = 1e-12;

    private final Words words;
    private final List<InputProblem> problems = new ArrayList<>();

    Refusals(Words words) {
        this.words = words;
    }

    /** The standard uncertainty in a unit of the SI; 0 where none is known or it is too small to mean anything. */
    static <Q extends Quantity<Q>> double spread(Measured<Q> value, Unit<Q> unit) {
        double spread = value.spreadIn(unit);
        return spread < LEAST_SPREAD ? 0 : spread;
    }

    void add(String input, String name, String value, String accepted, String wayOut) {
        problems.add(new InputProblem(input, name, value, accepted, wayOut));
    }

    /** Refuses a ± greater than a limit. */
    <Q extends Quantity<Q>> void spread(String input, String name, Measured<Q> value, Measured<Q> limit) {
        var unit = value.value().getUnit();
        if (value.plusMinus().isPresent() && value.spreadIn(unit) > limit.in(unit)) {
            add(
                    input,
                    words.say("± of {0}", name),
                    bare(value.plusMinus().orElseThrow()),
                    words.say("up to {0}", bare(limit.value())),
                    words.say("Weigh or measure it again"));
        }
    }

    /** Refuses a name that is blank or that stands there already. */
    void name(String input, String row, String name, HashSet<String> taken, String wayOut) {
        if (name.isBlank()) {
            add(
                    input,
                    words.say("name of {0}", row),
                    words.say("empty"),
                    words.say("a name"),
                    words.say("Say what it is"));
        } else if (!taken.add(name.strip().toLowerCase(Locale.ROOT))) {
            add(input, "'" + name + "'", words.say("there twice"), words.say("each name once"), wayOut);
        }
    }

    /** Refuses a shape that reaches farther than any model. */
    void shape(Optional<Planform> planform) {
        planform.map(Outlines::reach)
                .filter(reach -> !(reach <= FARTHEST))
                .ifPresent(reach -> add(
                        "planform",
                        words.say("Shape"),
                        words.say("farther than {0} from the datum", words.metres(FARTHEST)),
                        words.say("all of it within {0}", words.metres(FARTHEST)),
                        words.say("Look at its units and at sweep angles near 90°")));
    }

    void throwIfAny() throws UnsuitableInput {
        if (!problems.isEmpty()) {
            throw new UnsuitableInput(problems);
        }
    }

    private <Q extends Quantity<Q>> String bare(Quantity<Q> quantity) {
        return words.show(new Measured<>(quantity, Optional.empty()));
    }
}
