package planewright.balance;

import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.METRE;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.quantity.Length;
import planewright.api.calculator.Run;
import planewright.api.quantity.Measured;
import planewright.balance.LightestPieces.Answer;
import planewright.balance.MomentReach.Masses;
import planewright.balance.Placing.Plan;

/**
 * Looks for ballast that meets the target, and where none does, for what comes near it.
 *
 * @param how what was found
 * @param problem what was asked, as whole numbers
 * @param answer the pieces, and how sure that they are the lightest
 * @param still what it would have taken with nothing moved, where parts may move and that was asked
 * @param needed the least ballast in kg that would do with room and pieces without end, where none was found
 */
record BallastSearch(How how, PieceProblem problem, Answer answer, Optional<Answer> still, OptionalDouble needed) {
    /** Micrometres in a metre. */
    private static final double MICROMETRES = 1e6;

    private static final long WORK = 300_000_000;
    private static final long LESS_WORK = 30_000_000;
    private static final int HALVINGS = 40;
    private static final double[] WIDER = {1.0001, 1.02, 1.1, 1.3, 2};

    /** What was found. */
    enum How {
        AS_IT_IS,
        MOVES_ALONE,
        BALLAST,
        LENGTHWISE_ONLY,
        NEAREST
    }

    static BallastSearch of(
            Ballast.Inputs inputs, List<Ballast.PartLine> parts, List<BallastStock.Kind> kinds, Run run) {
        var words = new Words(run.language());
        var problem = problem(inputs, parts, kinds);
        long now = moment(inputs, parts);
        if (problem.still(now).balances(0, 0, 0)) {
            return found(How.AS_IT_IS, problem, nothing(problem), Optional.empty());
        }
        var answer = LightestPieces.of(problem, run, words.say("looking for the lightest ballast"), WORK);
        if (answer.best().isPresent()) {
            boolean moves = answer.best().get().mass() == 0;
            Optional<Answer> still = inputs.movable().isEmpty()
                    ? Optional.empty()
                    : Optional.of(LightestPieces.of(
                            problem.still(now), run, words.say("the same with nothing moved"), LESS_WORK));
            return found(moves ? How.MOVES_ALONE : How.BALLAST, problem, answer, still);
        }
        var needed = new MomentReach(problem.boundless()).masses().map(Masses::least);
        if (inputs.sideways() && inputs.targetX().isPresent()) {
            var lengthwise = LightestPieces.of(problem.lengthwise(), run, words.say("lengthwise only"), LESS_WORK);
            if (lengthwise.best().isPresent()) {
                return lacking(How.LENGTHWISE_ONLY, problem, lengthwise, needed);
            }
        }
        return lacking(How.NEAREST, problem, nearest(problem, run), needed);
    }

    private static BallastSearch found(How how, PieceProblem problem, Answer answer, Optional<Answer> still) {
        return new BallastSearch(how, problem, answer, still, OptionalDouble.empty());
    }

    private static BallastSearch lacking(How how, PieceProblem problem, Answer answer, Optional<Double> needed) {
        return new BallastSearch(
                how,
                problem,
                answer,
                Optional.empty(),
                needed.map(mass -> OptionalDouble.of(mass / BallastStock.STEPS)).orElse(OptionalDouble.empty()));
    }

    Plan plan() {
        return answer.best().orElseThrow();
    }

    /** The least widening of the tolerances that whole pieces meet, found step by step from what the bounds allow. */
    private static Answer nearest(PieceProblem problem, Run run) {
        var doing = run.language().say("how near it gets");
        double asItIs = problem.deviation(0, 0, 0);
        double low = 1;
        double high = asItIs;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = Math.sqrt(low * high);
            boolean meets = new MomentReach(problem.within(middle)).masses().isPresent();
            low = meets ? low : middle;
            high = meets ? middle : high;
        }
        for (double wider : WIDER) {
            if (high * wider < asItIs) {
                var answer = LightestPieces.of(problem.within(high * wider), run, doing, LESS_WORK);
                if (answer.best().isPresent()) {
                    return answer;
                }
            }
        }
        return nothing(problem);
    }

    private static Answer nothing(PieceProblem problem) {
        var counts = new int[problem.kinds().size()][problem.pockets().size()];
        return new Answer(Optional.of(new Plan(counts, 0, 0, problem.deviation(0, 0, 0))), List.of(), true, 0);
    }

    /** Along an axis that does not matter every arm is 0. */
    private static PieceProblem problem(
            Ballast.Inputs inputs, List<Ballast.PartLine> parts, List<BallastStock.Kind> kinds) {
        long mass = 0;
        long y = 0;
        long low = 0;
        long high = 0;
        for (var part : parts) {
            long own = whole(part);
            var range = range(inputs, part);
            mass += own;
            y += own * armY(inputs, part.y());
            low += own
                    * armX(
                            inputs,
                            range.map(Ballast.MovableLine::from).orElse(part.x().orElseThrow()));
            high += own
                    * armX(
                            inputs,
                            range.map(Ballast.MovableLine::to).orElse(part.x().orElseThrow()));
        }
        return new PieceProblem(
                new PieceProblem.Rest(
                        mass, low, high, y, micrometres(inputs.tolerance()), micrometres(inputs.toleranceY())),
                kinds.stream().map(BallastStock.Kind::whole).toList(),
                inputs.pockets().stream().map(line -> pocket(inputs, line)).toList());
    }

    private static PieceProblem.Pocket pocket(Ballast.Inputs inputs, Ballast.PocketLine line) {
        return new PieceProblem.Pocket(
                armX(inputs, line.x()),
                armY(inputs, line.y()),
                line.pieces().orElse(Integer.MAX_VALUE),
                line.mass()
                        .map(most -> (long) Math.floor(most.in(KILOGRAM) * BallastStock.STEPS + 1e-6))
                        .orElse(PieceProblem.GREATEST_MASS));
    }

    /** The range of a part that may move. */
    static Optional<Ballast.MovableLine> range(Ballast.Inputs inputs, Ballast.PartLine part) {
        return inputs.movable().stream()
                .filter(line -> line.part().strip().equalsIgnoreCase(part.name().strip()))
                .findFirst();
    }

    /** Moment along x of the parts where they are, about the target. */
    private static long moment(Ballast.Inputs inputs, List<Ballast.PartLine> parts) {
        return parts.stream()
                .mapToLong(part -> whole(part) * armX(inputs, part.x().orElseThrow()))
                .sum();
    }

    private static long whole(Ballast.PartLine part) {
        return Math.round(part.mass().orElseThrow().in(KILOGRAM) * BallastStock.STEPS);
    }

    private static long armX(Ballast.Inputs inputs, Measured<Length> station) {
        return inputs.targetX()
                .map(target -> micrometres(station) - micrometres(target))
                .orElse(0L);
    }

    private static long armY(Ballast.Inputs inputs, Measured<Length> station) {
        return inputs.sideways() ? micrometres(station) - micrometres(inputs.targetY()) : 0;
    }

    private static long micrometres(Measured<Length> length) {
        return Math.round(length.in(METRE) * MICROMETRES);
    }
}
