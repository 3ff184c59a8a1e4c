package planewright.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import planewright.api.calculator.Run;
import planewright.balance.Handfuls.Handful;
import planewright.balance.MomentReach.Masses;
import planewright.balance.Placing.Plan;

/**
 * The lightest ballast, then the one of fewest pieces, then the one nearest to the target.
 *
 * <p>No handful lighter than {@link MomentReach#masses} can balance. From there on handfuls are tried in order of mass and
 * pieces ({@link Handfuls}), and for each a search with bounds tells whether it can lie in the pockets so that it balances
 * ({@link Placing}). The first that can is therefore the lightest of all. Where that takes more than the work allowed, fewer
 * kinds of pieces are tried, and the answer says how light it could be at best.
 */
final class LightestPieces {
    private static final int MOST_OTHERS = 3;

    /** Steps of work in one search. */
    private static final long WORK = 300_000_000;

    /** Steps of work for the next best. */
    private static final long WORK_FOR_OTHERS = 60_000_000;

    /** Steps that listing and looking at one handful is worth. */
    private static final long HANDFUL = 100;

    private final PieceProblem problem;
    private final MomentReach reach;
    private final Effort effort;
    private final Placing placing;
    private final List<Plan> plans = new ArrayList<>();
    private long otherwiseUntil = Long.MAX_VALUE;
    private long triedUpTo;
    private boolean complete = true;

    /**
     * What was found.
     *
     * @param best empty where none was found
     * @param others the next best, heavier or of more pieces
     * @param proven whether best is the lightest there is, or, where there is none, that there is none
     * @param least no ballast lighter than this balances
     */
    record Answer(Optional<Plan> best, List<Plan> others, boolean proven, double least) {}

    private LightestPieces(PieceProblem problem, Effort effort) {
        this.problem = problem;
        this.effort = effort;
        reach = new MomentReach(problem);
        placing = new Placing(problem, reach, effort);
    }

    /** Searches; the builder can stop it through the run. */
    static Answer of(PieceProblem problem, Run run, String doing) {
        return of(problem, run, doing, WORK);
    }

    static Answer of(PieceProblem problem, Run run, String doing, long work) {
        var order = IntStream.range(0, problem.kinds().size())
                .boxed()
                .sorted(Comparator.comparingLong(
                        kind -> -problem.kinds().get(kind).mass()))
                .toList();
        var sorted = problem.with(order.stream().map(problem.kinds()::get).toList());
        var answer = new LightestPieces(sorted, new Effort(run, doing, work)).search();
        for (int kinds = order.size() - 1; answer.best().isEmpty() && !answer.proven() && kinds > 0; kinds--) {
            var fewer = sorted.with(sorted.kinds().subList(0, kinds));
            var found = new LightestPieces(fewer, new Effort(run, doing, work / order.size())).search();
            answer = new Answer(found.best(), found.others(), false, answer.least());
        }
        return new Answer(
                answer.best().map(plan -> asGiven(plan, order)),
                answer.others().stream().map(plan -> asGiven(plan, order)).toList(),
                answer.proven(),
                answer.least());
    }

    private Answer search() {
        var masses = reach.masses();
        if (masses.isEmpty()) {
            return new Answer(Optional.empty(), List.of(), true, 0);
        }
        through(masses.get());
        boolean proven = plans.isEmpty() ? complete : true;
        return new Answer(
                plans.stream().findFirst(),
                plans.stream().skip(1).toList(),
                proven,
                plans.isEmpty()
                        ? Math.max(masses.get().least(), triedUpTo)
                        : plans.get(0).mass());
    }

    /** In bands of mass, each twice as wide as the one before. */
    private void through(Masses masses) {
        long end = (long) Math.ceil(masses.greatest()) + 1;
        long from = (long) Math.floor(masses.least());
        long width = 1
                + 2
                        * problem.kinds().stream()
                                .mapToLong(PieceProblem.Kind::mass)
                                .max()
                                .orElse(0);
        while (from < end && !done()) {
            long to = Math.min(end, from + width);
            var handfuls = Handfuls.between(problem.kinds(), from, to);
            effort.spend(HANDFUL * handfuls.map(Handfuls::listed).orElse(Handfuls.MOST));
            if (handfuls.isEmpty()) {
                complete = false;
                return;
            }
            for (var next = handfuls.get().next();
                    next.isPresent() && !done();
                    next = handfuls.get().next()) {
                consider(next.get());
            }
            from = to;
            width *= 2;
        }
    }

    private boolean done() {
        complete &= !effort.spent();
        return effort.spent() || plans.size() > MOST_OTHERS || effort.used() > otherwiseUntil;
    }

    private void consider(Handful handful) {
        effort.spend(HANDFUL);
        if (plans.isEmpty()) {
            triedUpTo = handful.mass();
        }
        boolean equal = plans.size() == 1
                && plans.get(0).mass() == handful.mass()
                && plans.get(0).pieces() == handful.pieces();
        double limit = equal ? plans.get(0).deviation() : Double.POSITIVE_INFINITY;
        placing.best(handful, limit).ifPresent(plan -> {
            if (equal) {
                plans.set(0, plan);
            } else {
                plans.add(plan);
            }
            if (plans.size() == 1) {
                otherwiseUntil = effort.used() + WORK_FOR_OTHERS;
            }
        });
    }

    private static Plan asGiven(Plan plan, List<Integer> order) {
        var counts = new int[order.size()][plan.counts().length == 0 ? 0 : plan.counts()[0].length];
        for (int k = 0; k < plan.counts().length; k++) {
            counts[order.get(k)] = plan.counts()[k];
        }
        return new Plan(counts, plan.mass(), plan.pieces(), plan.deviation());
    }
}
