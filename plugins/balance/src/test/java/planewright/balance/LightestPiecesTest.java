package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Run;
import planewright.api.journal.JournalReader;
import planewright.balance.PieceProblem.Kind;
import planewright.balance.PieceProblem.Pocket;
import planewright.balance.PieceProblem.Rest;

/** The search against every possible way, one by one. */
class LightestPiecesTest {
    private static final int CASES = 1500;

    /** All ways to put pieces into pockets, without any bound or order that the search uses. */
    private static final class EveryWay {
        private final PieceProblem problem;
        private final int[][] counts;
        private long bestMass = Long.MAX_VALUE;
        private int bestPieces;
        private double bestDeviation;

        EveryWay(PieceProblem problem) {
            this.problem = problem;
            counts = new int[problem.kinds().size()][problem.pockets().size()];
            from(0);
        }

        private void from(int cell) {
            if (cell == problem.kinds().size() * problem.pockets().size()) {
                judge();
                return;
            }
            int k = cell / problem.pockets().size();
            int p = cell % problem.pockets().size();
            int used = IntStream.of(counts[k]).sum();
            for (int n = 0; n <= problem.kinds().get(k).count() - used; n++) {
                counts[k][p] = n;
                from(cell + 1);
            }
            counts[k][p] = 0;
        }

        private void judge() {
            long mass = 0;
            long x = 0;
            long y = 0;
            int pieces = 0;
            for (int p = 0; p < problem.pockets().size(); p++) {
                var pocket = problem.pockets().get(p);
                long here = 0;
                int piecesHere = 0;
                for (int k = 0; k < counts.length; k++) {
                    here += counts[k][p] * problem.kinds().get(k).mass();
                    piecesHere += problem.kinds().get(k).loose() ? 0 : counts[k][p];
                }
                if (here > pocket.mass() || piecesHere > pocket.pieces()) {
                    return;
                }
                mass += here;
                pieces += piecesHere;
                x += here * pocket.x();
                y += here * pocket.y();
            }
            var rest = problem.rest();
            long all = rest.mass() + mass;
            long offX = Math.max(0, Math.max(rest.xLow() + x, -rest.xHigh() - x));
            long offY = Math.abs(rest.y() + y);
            if (offX > rest.toleranceX() * all || offY > rest.toleranceY() * all) {
                return;
            }
            double deviation =
                    Math.max((double) offX / (rest.toleranceX() * all), (double) offY / (rest.toleranceY() * all));
            boolean better = mass < bestMass
                    || mass == bestMass && pieces < bestPieces
                    || mass == bestMass && pieces == bestPieces && deviation < bestDeviation;
            if (better) {
                bestMass = mass;
                bestPieces = pieces;
                bestDeviation = deviation;
            }
        }
    }

    @Test
    void findsWhatTryingEveryWayFinds() {
        var random = new Random(20260314);
        int solved = 0;
        int nothingToAdd = 0;
        int impossible = 0;
        for (int i = 0; i < CASES; i++) {
            var problem = problem(random);
            var every = new EveryWay(problem);
            var answer = LightestPieces.of(problem, unwatched(), "");
            assertThat(answer.proven()).isTrue();
            if (every.bestMass == Long.MAX_VALUE) {
                assertThat(answer.best()).as("case %d: %s", i, problem).isEmpty();
                impossible++;
                continue;
            }
            var best = answer.best().orElseThrow(() -> new AssertionError("nothing found for " + problem));
            assertThat(best.mass()).as("mass of case %d: %s", i, problem).isEqualTo(every.bestMass);
            assertThat(best.pieces()).as("pieces of case %d: %s", i, problem).isEqualTo(every.bestPieces);
            assertThat(best.deviation())
                    .as("deviation of case %d: %s", i, problem)
                    .isCloseTo(every.bestDeviation, within(1e-12));
            assertHolds(problem, best);
            assertOthersFollow(problem, answer);
            solved++;
            nothingToAdd += best.mass() == 0 ? 1 : 0;
        }
        assertThat(solved - nothingToAdd).isGreaterThan(CASES / 5);
        assertThat(nothingToAdd).isGreaterThan(10);
        assertThat(impossible).isGreaterThan(CASES / 10);
    }

    /** The least mass by bounds alone is never above the lightest of whole pieces. */
    @Test
    void boundsNeverCutOffASolution() {
        var random = new Random(5);
        int looked = 0;
        for (int i = 0; i < CASES; i++) {
            var problem = problem(random);
            var every = new EveryWay(problem);
            if (every.bestMass < Long.MAX_VALUE) {
                var masses = new MomentReach(problem).masses().orElseThrow();
                assertThat(masses.least()).isLessThanOrEqualTo(every.bestMass + 1e-6 * every.bestMass);
                assertThat(masses.greatest()).isGreaterThanOrEqualTo(every.bestMass * (1 - 1e-6));
                looked++;
            }
        }
        assertThat(looked).isGreaterThan(CASES / 5);
    }

    /** One arm, no limits: the bound is the lever's m = (S − t·M) / (a + t), worked by hand: (5000 − 1000) / (99 + 1) = 40. */
    @Test
    void theBoundOfOnePocketIsTheLever() {
        var problem = new PieceProblem(
                new Rest(1000, 5000, 5000, 0, 1, 1),
                List.of(new Kind(1, 1000, true)),
                List.of(new Pocket(-99, 0, 0, 1000)));
        assertThat(new MomentReach(problem).masses().orElseThrow().least()).isCloseTo(40, within(1e-6));
        assertThat(LightestPieces.of(problem, unwatched(), "")
                        .best()
                        .orElseThrow()
                        .mass())
                .isEqualTo(40);
    }

    /** Each piece takes arm + tolerance off; after 100 of them a single unit of moment in 3·10¹⁰ is left over. */
    @Test
    void theToleranceIsKeptWithoutRounding() {
        long mass = 1_999_999_999L;
        long arm = 100_000_000L;
        long moment = 10 * mass + 100 * (arm + 10) + 1;
        var problem = new PieceProblem(
                new Rest(mass, moment, moment, 0, 10, 10),
                List.of(new Kind(1, 1000, false)),
                List.of(new Pocket(-arm, 0, 1000, mass)));
        var best = LightestPieces.of(problem, unwatched(), "").best().orElseThrow();
        assertThat(best.mass()).isEqualTo(101);
        assertThat(problem.balances(100, -100 * arm, 0)).isFalse();
    }

    @Test
    void tooMuchWorkEndsWithAnHonestAnswer() {
        var kinds = IntStream.range(0, 12)
                .mapToObj(k -> new Kind(100_003 + 7L * k, 400, false))
                .toList();
        var pockets = IntStream.range(0, 12)
                .mapToObj(p -> new Pocket(-100_000 - 13L * p * p, 1000L * (p - 6), 400, 4_000_000_000L))
                .toList();
        var problem = new PieceProblem(
                new Rest(10_000_000, 3_000_000_000_000L, 3_000_000_000_000L, 77_777_777, 1, 1), kinds, pockets);
        var answer = LightestPieces.of(problem, unwatched(), "", 3_000_000);
        answer.best().ifPresent(plan -> {
            assertHolds(problem, plan);
            assertThat((double) plan.mass()).isGreaterThanOrEqualTo(answer.least());
        });
        assertThat(answer.proven()).isFalse();
        assertThat(answer.least()).isGreaterThan(0);
    }

    @Test
    void stopsWhenTheBuilderStopsIt() {
        var calls = new ArrayList<Double>();
        Run stopping = new Unwatched() {
            @Override
            public void progress(double done, String doing) {
                calls.add(done);
                throw new Run.Cancelled();
            }
        };
        var problem = problem(new Random(1));
        assertThatThrownBy(() -> LightestPieces.of(problem, stopping, "")).isInstanceOf(Run.Cancelled.class);
        assertThat(calls).hasSize(1);
    }

    private static void assertHolds(PieceProblem problem, Placing.Plan plan) {
        long mass = 0;
        long x = 0;
        long y = 0;
        for (int p = 0; p < problem.pockets().size(); p++) {
            long here = 0;
            for (int k = 0; k < problem.kinds().size(); k++) {
                here += plan.counts()[k][p] * problem.kinds().get(k).mass();
            }
            assertThat(here).isLessThanOrEqualTo(problem.pockets().get(p).mass());
            mass += here;
            x += here * problem.pockets().get(p).x();
            y += here * problem.pockets().get(p).y();
        }
        assertThat(mass).isEqualTo(plan.mass());
        assertThat(problem.balances(mass, x, y)).isTrue();
        for (int k = 0; k < problem.kinds().size(); k++) {
            assertThat(IntStream.of(plan.counts()[k]).sum())
                    .isLessThanOrEqualTo(problem.kinds().get(k).count());
        }
    }

    private static void assertOthersFollow(PieceProblem problem, LightestPieces.Answer answer) {
        var before = answer.best().orElseThrow();
        for (var other : answer.others()) {
            assertHolds(problem, other);
            assertThat(other.mass()).isGreaterThanOrEqualTo(before.mass());
            before = other;
        }
    }

    private static PieceProblem problem(Random random) {
        var kinds = new ArrayList<Kind>();
        for (int k = random.nextInt(3); k >= 0; k--) {
            kinds.add(new Kind(1 + random.nextInt(60), 1 + random.nextInt(4), random.nextInt(8) == 0));
        }
        var pockets = new ArrayList<Pocket>();
        for (int p = 1 + random.nextInt(2); p >= 0; p--) {
            pockets.add(new Pocket(
                    random.nextInt(401) - 200,
                    random.nextInt(301) - 150,
                    random.nextInt(4) == 0 ? random.nextInt(3) : 100,
                    random.nextInt(4) == 0 ? random.nextInt(100) : 100_000));
        }
        long x = random.nextInt(12_001) - 6_000;
        long y = random.nextInt(5_001) - 2_500;
        return new PieceProblem(
                new Rest(
                        500 + random.nextInt(1000),
                        x,
                        x + (random.nextBoolean() ? random.nextInt(1500) : 0),
                        random.nextInt(3) == 0 ? 0 : y,
                        1 + random.nextInt(4),
                        1 + random.nextInt(4)),
                kinds,
                pockets);
    }

    static Run unwatched() {
        return new Unwatched();
    }

    /** A run that nobody watches, over an empty journal. */
    private static class Unwatched implements Run {
        @Override
        public void progress(double done, String doing) {
            assertThat(done).isBetween(0.0, 1.0);
        }

        @Override
        public JournalReader journal() {
            throw new UnsupportedOperationException("ballast asks the journal nothing");
        }

        @Override
        public LocalDateTime now() {
            return LocalDateTime.of(2026, 3, 14, 20, 15);
        }
    }
}
