package planewright.balance;

import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.METRE;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import planewright.api.calculator.Finding;

/** What a builder should know before ballast is glued in. */
final class BallastFindings {
    /** Ballast beyond this share of the all-up mass asks for another lay-out: common practice, no source. */
    private static final double MUCH = 0.05;

    /** A saving below this is nothing to speak of, kg. */
    private static final double LEAST = 1e-4;

    private final BallastAnswer answer;
    private final Ballast.Inputs inputs;
    private final BallastSearch search;
    private final MassProperties after;
    private final List<Finding> findings = new ArrayList<>();

    BallastFindings(BallastAnswer answer, MassProperties after) {
        this.answer = answer;
        this.after = after;
        inputs = answer.inputs();
        search = answer.search();
    }

    List<Finding> all() {
        switch (search.how()) {
            case AS_IT_IS ->
                findings.add(
                        Finding.fine("It balances within the tolerance as it is: nothing to add, nothing to move."));
            case MOVES_ALONE -> findings.add(Finding.fine(moves() + " is enough: nothing to add."));
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
        findings.add(Finding.fine(answer.told(search.plan()) + ". Together " + grams(added())
                + (moves().isEmpty() ? "" : ", after " + lowerFirst(moves())) + "."));
        proof("No lighter choice of these pieces does it, and none as light with fewer.");
    }

    private void proof(String proven) {
        findings.add(
                search.answer().proven()
                        ? Finding.fine(proven)
                        : Finding.lookAgain(
                                "The lightest that was found in the work allowed; it is not proven that none"
                                        + " between " + grams(search.answer().least() / BallastStock.STEPS) + " and "
                                        + grams(added())
                                        + " does it. Fewer kinds of pieces or a wider tolerance let it be proven."));
    }

    private void lengthwiseOnly() {
        findings.add(Finding.lookAgain("Lengthwise it reaches the target: " + answer.told(search.plan())
                + (moves().isEmpty() ? "" : ", after " + lowerFirst(moves())) + ". Sideways it stays "
                + mm(Math.abs(offY())) + " too far " + (offY() > 0 ? "right" : "left") + ". " + needed()));
    }

    private void nearest() {
        findings.add(
                Finding.stop("The target is not reached with these pieces and pockets. The nearest found is " + off()
                        + " with " + answer.told(search.plan())
                        + (moves().isEmpty() ? "" : ", after " + lowerFirst(moves())) + ". " + needed()));
    }

    private String off() {
        var off = new ArrayList<String>();
        inputs.targetX().ifPresent(target -> {
            double x = after.balance().x().value() - target.in(METRE);
            off.add(mm(Math.abs(x)) + (x > 0 ? " behind" : " ahead of") + " the target");
        });
        if (inputs.sideways()) {
            off.add(mm(Math.abs(offY())) + " too far " + (offY() > 0 ? "right" : "left"));
        }
        return String.join(" and ", off);
    }

    private double offY() {
        return after.balance().y().value() - inputs.targetY().in(METRE);
    }

    /** What would do instead. */
    private String needed() {
        if (new MomentReach(search.problem()).masses().isPresent()) {
            return "There is room and mass enough, but the pieces are too coarse: take finer ones, lead to cut, or a wider"
                    + " tolerance.";
        }
        return search.needed().isPresent()
                ? "With room and pieces enough, " + grams(search.needed().getAsDouble()) + " in these pockets would do."
                : elsewhere();
    }

    /** Where a pocket is missing, from where the aircraft balances without ballast and with parts moved their best. */
    private String elsewhere() {
        var rest = search.problem().rest();
        var missing = new ArrayList<String>();
        double step = BallastStock.STEPS * 1e6;
        double allowedX = rest.toleranceX() * rest.mass();
        if (rest.xLow() > allowedX && none(pocket -> -pocket.x())) {
            missing.add(place("ahead of the target", rest.xLow() / step, true, -1));
        } else if (-rest.xHigh() > allowedX && none(PieceProblem.Pocket::x)) {
            missing.add(place("behind the target", -rest.xHigh() / step, true, 1));
        }
        int side = rest.y() > 0 ? -1 : 1;
        if (Math.abs(rest.y()) > rest.toleranceY() * rest.mass() && none(pocket -> side * pocket.y())) {
            missing.add(place(side > 0 ? "to the right" : "to the left", Math.abs(rest.y()) / step, false, side));
        }
        return missing.isEmpty()
                ? "No mass in these pockets would do: what helps one way harms the other."
                : "No mass in these pockets would do. What is missing is a pocket " + String.join(" and one ", missing)
                        + ".";
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
                                    ? ": about " + grams(moment / arm) + " at " + (lengthwise ? "x" : "y") + " "
                                            + mm(end / 1000)
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
                                                "With nothing moved it would take " + grams(saved) + " more."));
                                    }
                                },
                                () -> findings.add(
                                        Finding.fine("With nothing moved these pieces would not reach the target."))));
    }

    private void leftOut() {
        inputs.leaveOut()
                .flatMap(name -> BallastChecks.counted(inputs.parts(), name))
                .ifPresent(part -> {
                    double old = part.mass().orElseThrow().in(KILOGRAM);
                    double saved = old - added();
                    findings.add(Finding.fine("'" + part.name() + "' with its " + grams(old)
                            + " is taken out first: all in all "
                            + (saved >= 0 ? grams(saved) + " lighter." : grams(-saved) + " heavier.")));
                });
    }

    private void share() {
        double share = added() / after.mass().value();
        if (share > MUCH) {
            findings.add(Finding.lookAgain(String.format(
                    Locale.ROOT,
                    "The ballast is %.0f %% of the all-up mass. Look first for something heavy that can sit elsewhere: pack,"
                            + " controller, servos.",
                    100 * share)));
        }
    }

    private void doubt() {
        double spread = after.balance().x().spread();
        if (inputs.targetX().isPresent() && spread > inputs.tolerance().in(METRE)) {
            findings.add(Finding.lookAgain("The balance point is only known to ± " + mm(spread)
                    + ", more than the tolerance: weigh and measure again before anything is glued in."));
        }
        double sideways = after.balance().y().spread();
        if (inputs.sideways() && sideways > inputs.toleranceY().in(METRE)) {
            findings.add(Finding.lookAgain("Sideways it is only known to ± " + mm(sideways)
                    + ", more than the tolerance: hang it up and look before anything is glued in."));
        }
    }

    private void uncounted() {
        var left = inputs.parts().stream()
                .filter(line -> !BallastChecks.counts(line))
                .map(line -> "'" + line.name() + "' (no " + (line.mass().isEmpty() ? "mass" : "station") + ")")
                .collect(Collectors.joining(", "));
        if (!left.isEmpty()) {
            findings.add(Finding.lookAgain("Not counted: " + left + "."));
        }
    }

    /** {@code Moving 'pack' 12.0 mm forward, to station 58.0 mm}; empty where nothing moves. */
    private String moves() {
        var moves = answer.moves(search.plan()).stream()
                .map(move -> {
                    double by = move.by().in(METRE);
                    return "'" + move.part() + "' " + mm(Math.abs(by)) + (by > 0 ? " aft" : " forward")
                            + ", to station " + mm(move.to().in(METRE));
                })
                .collect(Collectors.joining(" and "));
        return moves.isEmpty() ? "" : "Moving " + moves;
    }

    private double added() {
        return search.plan().mass() / BallastStock.STEPS;
    }

    private static String lowerFirst(String text) {
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    private static String grams(double kilograms) {
        return String.format(Locale.ROOT, kilograms < 0.1 ? "%.2f g" : "%.1f g", 1000 * kilograms);
    }

    private static String mm(double metres) {
        return String.format(Locale.ROOT, "%.1f mm", 1000 * metres);
    }
}
