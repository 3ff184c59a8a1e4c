package planewright.balance;

import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.METRE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import planewright.api.calculator.Finding;

/** What a builder should know before ballast is glued in. */
final class BallastFindings {
    /** Ballast beyond this share of the all-up mass asks for another lay-out: common practice, no source. */
    private static final double MUCH = 0.05;

    /** A saving below this is nothing to speak of, kg. */
    private static final double LEAST = 1e-4;

    private final Words words;
    private final BallastAnswer answer;
    private final Ballast.Inputs inputs;
    private final BallastSearch search;
    private final MassProperties after;
    private final List<Finding> findings = new ArrayList<>();

    BallastFindings(BallastAnswer answer, MassProperties after) {
        this.words = answer.words();
        this.answer = answer;
        this.after = after;
        inputs = answer.inputs();
        search = answer.search();
    }

    List<Finding> all() {
        switch (search.how()) {
            case AS_IT_IS ->
                findings.add(Finding.fine(
                        words.say("It balances within the tolerance as it is: nothing to add, nothing to move.")));
            case MOVES_ALONE -> findings.add(Finding.fine(words.say("Moving {0} is enough: nothing to add.", moves())));
            case BALLAST -> ballast();
            case LENGTHWISE_ONLY -> lengthwiseOnly();
            case NEAREST -> nearest();
        }
        still();
        leftOut();
        share();
        doubt();
        uncounted();
        return List.copyOf(findings);
    }

    private void ballast() {
        findings.add(Finding.fine(words.say(
                "{0}. Together {1}{2}.",
                answer.told(search.plan()),
                grams(added()),
                moves().isEmpty() ? "" : words.say(", after moving {0}", moves()))));
        proof(words.say("No lighter choice of these pieces does it, and none as light with fewer."));
    }

    private void proof(String proven) {
        findings.add(
                search.answer().proven()
                        ? Finding.fine(proven)
                        : Finding.lookAgain(words.say(
                                "The lightest that was found in the work allowed; it is not proven that none "
                                        + "between {0} and {1} does it. Fewer kinds of pieces or a wider tolerance let it "
                                        + "be proven.",
                                grams(search.answer().least() / BallastStock.STEPS), grams(added()))));
    }

    private void lengthwiseOnly() {
        findings.add(Finding.lookAgain(
                offY() > 0
                        ? words.say(
                                "Lengthwise it reaches the target: {0}{1}. Sideways it stays {2} too far right. {3}",
                                answer.told(search.plan()),
                                moves().isEmpty() ? "" : words.say(", after moving {0}", moves()),
                                mm(Math.abs(offY())),
                                needed())
                        : words.say(
                                "Lengthwise it reaches the target: {0}{1}. Sideways it stays {2} too far left. {3}",
                                answer.told(search.plan()),
                                moves().isEmpty() ? "" : words.say(", after moving {0}", moves()),
                                mm(Math.abs(offY())),
                                needed())));
    }

    private void nearest() {
        findings.add(Finding.stop(words.say(
                "The target is not reached with these pieces and pockets. The nearest found is "
                        + "{0} with {1}{2}. {3}",
                off(),
                answer.told(search.plan()),
                moves().isEmpty() ? "" : words.say(", after moving {0}", moves()),
                needed())));
    }

    private String off() {
        var off = new ArrayList<String>();
        inputs.targetX().ifPresent(target -> {
            double x = after.balance().x().value() - target.in(METRE);
            off.add(
                    x > 0
                            ? words.say("{0} behind the target", mm(Math.abs(x)))
                            : words.say("{0} ahead of the target", mm(Math.abs(x))));
        });
        if (inputs.sideways()) {
            off.add(
                    offY() > 0
                            ? words.say("{0} too far right", mm(Math.abs(offY())))
                            : words.say("{0} too far left", mm(Math.abs(offY()))));
        }
        return String.join(" " + words.say("and") + " ", off);
    }

    private double offY() {
        return after.balance().y().value() - inputs.targetY().in(METRE);
    }

    /** What would do instead. */
    private String needed() {
        if (new MomentReach(search.problem()).masses().isPresent()) {
            return words.say("There is room and mass enough, but the pieces are too coarse: take finer ones, "
                    + "lead to cut, or a wider tolerance.");
        }
        return search.needed().isPresent()
                ? words.say(
                        "With room and pieces enough, {0} in these pockets would do.",
                        grams(search.needed().getAsDouble()))
                : elsewhere();
    }

    /** Where a pocket is missing, from where the aircraft balances without ballast and with parts moved their best. */
    private String elsewhere() {
        var rest = search.problem().rest();
        var missing = new ArrayList<String>();
        double step = BallastStock.STEPS * 1e6;
        double allowedX = rest.toleranceX() * rest.mass();
        if (rest.xLow() > allowedX && none(pocket -> -pocket.x())) {
            missing.add(place(words.say("ahead of the target"), rest.xLow() / step, true, -1));
        } else if (-rest.xHigh() > allowedX && none(PieceProblem.Pocket::x)) {
            missing.add(place(words.say("behind the target"), -rest.xHigh() / step, true, 1));
        }
        int side = rest.y() > 0 ? -1 : 1;
        if (Math.abs(rest.y()) > rest.toleranceY() * rest.mass() && none(pocket -> side * pocket.y())) {
            missing.add(place(
                    side > 0 ? words.say("to the right") : words.say("to the left"),
                    Math.abs(rest.y()) / step,
                    false,
                    side));
        }
        return missing.isEmpty()
                ? words.say("No mass in these pockets would do: what helps one way harms the other.")
                : words.say(
                        "No mass in these pockets would do. What is missing is a pocket {0}.",
                        String.join(" " + words.say("and one") + " ", missing));
    }

    /** Whether no pocket lies on a side of the target. */
    private boolean none(ToLongFunction<PieceProblem.Pocket> arm) {
        return search.problem().pockets().stream().noneMatch(pocket -> arm.applyAsLong(pocket) > 0);
    }

    /** With what it would take at the end of the shape on that side, where the shape is known. */
    private String place(String where, double moment, boolean lengthwise, int side) {
        return where
                + LedgerFigures.extent(inputs.planform())
                        .map(extent -> {
                            double end = lengthwise
                                    ? side < 0 ? extent.getMinX() : extent.getMaxX()
                                    : side < 0 ? extent.getMinY() : extent.getMaxY();
                            double target = lengthwise
                                    ? inputs.targetX().orElseThrow().in(METRE)
                                    : inputs.targetY().in(METRE);
                            double arm = side * (end / 1000 - target);
                            return arm > 0
                                    ? lengthwise
                                            ? words.say(": about {0} at x {1}", grams(moment / arm), mm(end / 1000))
                                            : words.say(": about {0} at y {1}", grams(moment / arm), mm(end / 1000))
                                    : "";
                        })
                        .orElse("");
    }

    /** What it would have taken with nothing moved. */
    private void still() {
        search.still()
                .ifPresent(still -> still.best()
                        .ifPresentOrElse(
                                plan -> {
                                    double saved = plan.mass() / BallastStock.STEPS - added();
                                    if (saved > LEAST) {
                                        findings.add(Finding.fine(
                                                words.say("With nothing moved it would take {0} more.", grams(saved))));
                                    }
                                },
                                () -> findings.add(Finding.fine(
                                        words.say("With nothing moved these pieces would not reach the target.")))));
    }

    private void leftOut() {
        inputs.leaveOut()
                .flatMap(name -> BallastChecks.counted(inputs.parts(), name))
                .ifPresent(part -> {
                    double old = part.mass().orElseThrow().in(KILOGRAM);
                    double saved = old - added();
                    findings.add(Finding.fine(words.say(
                            saved >= 0
                                    ? "'{0}' with its {1} is taken out first: all in all {2} lighter."
                                    : "'{0}' with its {1} is taken out first: all in all {2} heavier.",
                            part.name(),
                            grams(old),
                            grams(Math.abs(saved)))));
                });
    }

    private void share() {
        double share = added() / after.mass().value();
        if (share > MUCH) {
            findings.add(Finding.lookAgain(words.say(
                    "The ballast is {0} of the all-up mass. Look first for something heavy that can sit elsewhere: pack,"
                            + " controller, servos.",
                    words.percent(share, 0))));
        }
    }

    private void doubt() {
        double spread = after.balance().x().spread();
        if (inputs.targetX().isPresent() && spread > inputs.tolerance().in(METRE)) {
            findings.add(Finding.lookAgain(words.say(
                    "The balance point is only known to ± {0}, more than the tolerance: weigh and "
                            + "measure again before anything is glued in.",
                    mm(spread))));
        }
        double sideways = after.balance().y().spread();
        if (inputs.sideways() && sideways > inputs.toleranceY().in(METRE)) {
            findings.add(Finding.lookAgain(words.say(
                    "Sideways it is only known to ± {0}, more than the tolerance: hang it up and look "
                            + "before anything is glued in.",
                    mm(sideways))));
        }
    }

    private void uncounted() {
        var left = inputs.parts().stream()
                .filter(line -> !BallastChecks.counts(line))
                .map(line -> line.mass().isEmpty()
                        ? words.say("'{0}' (no mass)", line.name())
                        : words.say("'{0}' (no station)", line.name()))
                .collect(Collectors.joining(", "));
        if (!left.isEmpty()) {
            findings.add(Finding.lookAgain(words.say("Not counted: {0}.", left)));
        }
    }

    /** {@code 'pack' 12.0 mm forward, to station 58.0 mm}; empty where nothing moves. */
    private String moves() {
        return answer.moves(search.plan()).stream()
                .map(move -> {
                    double by = move.by().in(METRE);
                    return by > 0
                            ? words.say(
                                    "'{0}' {1} aft, to station {2}",
                                    move.part(), mm(Math.abs(by)), mm(move.to().in(METRE)))
                            : words.say(
                                    "'{0}' {1} forward, to station {2}",
                                    move.part(), mm(Math.abs(by)), mm(move.to().in(METRE)));
                })
                .collect(Collectors.joining(" " + words.say("and") + " "));
    }

    private double added() {
        return search.plan().mass() / BallastStock.STEPS;
    }

    private String grams(double kilograms) {
        return words.grams(kilograms, kilograms < 0.1 ? 2 : 1);
    }

    private String mm(double metres) {
        return words.mm(metres);
    }
}
