package planewright.balance;

import java.util.Optional;
import planewright.balance.PieceProblem.Kind;

/** Finds out whether a handful can lie in the pockets so that it balances, and which way brings it nearest to the target. */
final class Placing {
    /** Steps spent on getting nearer once a way is found. */
    private static final long POLISH = 4_000_000;

    private final PieceProblem problem;
    private final MomentReach reach;
    private final Effort effort;

    private Handfuls.Handful handful;
    private int[][] counts;
    private int[] piecesLeft;
    private long[] massLeft;
    private long x;
    private long y;
    private long left;
    private double limit;
    private long polishUntil;
    private Optional<Plan> best;

    /**
     * Pieces in pockets.
     *
     * @param counts how many of each kind in each pocket
     * @param mass of all
     * @param pieces how many, without what is cut off a lump
     * @param deviation how many times the tolerance it is off
     */
    record Plan(int[][] counts, long mass, int pieces, double deviation) {}

    Placing(PieceProblem problem, MomentReach reach, Effort effort) {
        this.problem = problem;
        this.reach = reach;
        this.effort = effort;
    }

    /**
     * The nearest way to place a handful.
     *
     * @param limit only what is off by less than so many times the tolerance; above 1 for any that balances
     */
    Optional<Plan> best(Handfuls.Handful pieces, double limit) {
        this.handful = pieces;
        this.limit = limit;
        counts = new int[problem.kinds().size()][problem.pockets().size()];
        piecesLeft =
                problem.pockets().stream().mapToInt(PieceProblem.Pocket::pieces).toArray();
        massLeft =
                problem.pockets().stream().mapToLong(PieceProblem.Pocket::mass).toArray();
        x = 0;
        y = 0;
        left = pieces.mass();
        polishUntil = Long.MAX_VALUE;
        best = Optional.empty();
        if (hopeful(0)) {
            kind(0);
        }
        return best;
    }

    private void kind(int k) {
        if (k == counts.length) {
            finish();
        } else if (handful.counts()[k] == 0) {
            kind(k + 1);
        } else {
            pocket(k, 0, handful.counts()[k]);
        }
    }

    private void pocket(int k, int p, int rest) {
        if (p == problem.pockets().size()) {
            if (rest == 0) {
                kind(k + 1);
            }
            return;
        }
        var kind = problem.kinds().get(k);
        int most = Math.min(rest, (int) Math.min(Integer.MAX_VALUE, massLeft[p] / kind.mass()));
        most = kind.loose() ? most : Math.min(most, piecesLeft[p]);
        boolean last = p == problem.pockets().size() - 1;
        for (int n = most; n >= (last ? rest : 0); n--) {
            put(k, p, n);
            if (hopeful(k)) {
                pocket(k, p + 1, rest - n);
            }
            put(k, p, -n);
            if (effort.spent() || effort.used() > polishUntil || limit == 0) {
                return;
            }
        }
    }

    private void put(int k, int p, int n) {
        Kind kind = problem.kinds().get(k);
        var pocket = problem.pockets().get(p);
        long mass = n * kind.mass();
        counts[k][p] += n;
        piecesLeft[p] -= kind.loose() ? 0 : n;
        massLeft[p] -= mass;
        x += mass * pocket.x();
        y += mass * pocket.y();
        left -= mass;
    }

    /** Whether what is left could still balance nearer than the best so far, were it spread at will. */
    private boolean hopeful(int k) {
        effort.spend(reach.work());
        return reach.canBalance(handful.mass(), x, y, left, room(k), Math.min(1, limit));
    }

    private long[] room(int from) {
        long heaviest = 0;
        boolean loose = false;
        for (int k = from; k < counts.length; k++) {
            if (handful.counts()[k] > 0) {
                heaviest = Math.max(heaviest, problem.kinds().get(k).mass());
                loose |= problem.kinds().get(k).loose();
            }
        }
        var room = massLeft.clone();
        for (int p = 0; p < room.length && !loose; p++) {
            room[p] = Math.min(room[p], piecesLeft[p] * heaviest);
        }
        return room;
    }

    private void finish() {
        double deviation = problem.deviation(handful.mass(), x, y);
        if (problem.balances(handful.mass(), x, y) && deviation < limit) {
            if (best.isEmpty()) {
                polishUntil = effort.used() + POLISH;
            }
            var copy = new int[counts.length][];
            for (int k = 0; k < counts.length; k++) {
                copy[k] = counts[k].clone();
            }
            best = Optional.of(new Plan(copy, handful.mass(), handful.pieces(), deviation));
            limit = deviation;
        }
    }
}
