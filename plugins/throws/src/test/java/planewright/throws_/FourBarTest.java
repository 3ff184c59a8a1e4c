package planewright.throws_;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import planewright.throws_.FourBar.Branch;

/** The closed loop against a textbook, against Freudenstein's equation, and against itself. */
class FourBarTest {
    private static final int TRIES = 4000;

    private final Random random = new Random(4711);

    /**
     * R. L. Norton, Design of Machinery, problems 4-6 and 4-7, row a (from memory): ground 6, crank 2, coupler 7, rocker 9,
     * crank at 30°. Held to the printed digits, and to 1e-8 of a degree against the digits computed apart from this program.
     */
    @Test
    void closesAsNortonProblem4Row6aOnBothBranches() {
        var norton = Published.of("C-08");
        var bars = new FourBar(
                norton.input("ground_d"), norton.input("crank_a"), norton.input("coupler_b"), norton.input("rocker_c"));
        double crank = Math.toRadians(norton.input("theta2"));
        for (var branch : Branch.values()) {
            var word = branch == Branch.OPEN ? "open" : "crossed";
            assertAngle(norton, "theta4_" + word, bars.rockerAngle(crank, branch));
            assertAngle(norton, "theta3_" + word, bars.couplerAngle(crank, branch));
        }
    }

    private static void assertAngle(Published norton, String name, double radians) {
        double degrees = Math.toDegrees(Math.IEEEremainder(radians, 2 * Math.PI));
        assertThat(degrees).as(name).isCloseTo(norton.expected(name), within(norton.tolerance(name)));
        assertThat(degrees).as(name).isCloseTo(norton.recomputed(name), within(1e-8));
    }

    /** F. Freudenstein, Transactions of the ASME 77 (1955) 853-861 (from memory). */
    @Test
    void everyClosureMeetsFreudensteinsEquation() {
        int closed = 0;
        for (int i = 0; i < TRIES; i++) {
            var bars = bars();
            double k1 = bars.ground() / bars.crank();
            double k2 = bars.ground() / bars.rocker();
            double k3 = (square(bars.crank()) - square(bars.coupler()) + square(bars.rocker()) + square(bars.ground()))
                    / (2 * bars.crank() * bars.rocker());
            double crank = 10 * (random.nextDouble() - 0.5);
            for (var branch : Branch.values()) {
                if (bars.closes(crank)) {
                    double rocker = bars.rockerAngle(crank, branch);
                    double scale = 1 + k1 + k2 + Math.abs(k3);
                    assertThat((k1 * Math.cos(rocker) - k2 * Math.cos(crank) + k3 - Math.cos(crank - rocker)) / scale)
                            .isCloseTo(0, within(1e-12));
                    assertThat(bars.branch(crank, rocker)).isEqualTo(branch);
                    closed++;
                }
            }
        }
        assertThat(closed).isGreaterThan(TRIES / 2);
    }

    /** Norton's formula for the speeds against the difference of two closures. */
    @Test
    void ratioIsTheSlopeOfTheRockerOverTheCrank() {
        int compared = 0;
        for (int i = 0; i < TRIES; i++) {
            var bars = bars();
            double crank = 10 * (random.nextDouble() - 0.5);
            if (!bars.closes(crank) || bars.couplerToRocker(crank, Branch.OPEN) < 0.1) {
                continue;
            }
            double step = 1e-6;
            for (var branch : Branch.values()) {
                double slope =
                        (bars.rockerAngle(crank + step, branch) - bars.rockerAngle(crank - step, branch)) / 2 / step;
                assertThat(bars.ratio(crank, branch)).isCloseTo(slope, within(1e-5 * (1 + Math.abs(slope))));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(TRIES / 2);
    }

    /** Turned by small steps until the links come apart, the crank gets as far as the range says. */
    @Test
    void rangeEndsWhereTheLinksComeApart() {
        int ended = 0;
        for (int i = 0; i < TRIES / 10; i++) {
            var bars = bars();
            double crank = 20 * (random.nextDouble() - 0.5);
            if (!bars.closes(crank)) {
                continue;
            }
            var range = bars.range(crank);
            double step = 1e-3;
            double up = crank;
            while (bars.closes(up + step) && up < crank + 2 * Math.PI) {
                up += step;
            }
            double down = crank;
            while (bars.closes(down - step) && down > crank - 2 * Math.PI) {
                down -= step;
            }
            if (Double.isInfinite(range.to())) {
                assertThat(up).isGreaterThan(crank + 6);
                assertThat(range.from()).isInfinite();
            } else {
                assertThat(range.to()).isBetween(up - 1e-9, up + step);
                assertThat(range.from()).isBetween(down - step, down + 1e-9);
                ended++;
            }
        }
        assertThat(ended).isGreaterThan(50);
    }

    @Test
    void atATurningPointCrankAndCouplerAreInLineAndTheRockerStandsStill() {
        int turned = 0;
        for (int i = 0; i < TRIES; i++) {
            var bars = bars();
            for (var branch : Branch.values()) {
                for (double crank : bars.turningPoints(branch)) {
                    if (bars.couplerToRocker(crank, branch) > 0.05) {
                        assertThat(bars.couplerToCrank(crank, branch)).isCloseTo(0, within(1e-6));
                        assertThat(bars.ratio(crank, branch)).isCloseTo(0, within(1e-4));
                        turned++;
                    }
                }
            }
        }
        assertThat(turned).isGreaterThan(TRIES / 2);
    }

    /** The rocker of a parallelogram turns with its crank. */
    @Test
    void parallelogramKeepsItsSidesParallel() {
        var bars = new FourBar(80, 12, 80, 12);
        for (int degrees = 10; degrees <= 170; degrees += 10) {
            double crank = Math.toRadians(degrees);
            assertThat(bars.rockerAngle(crank, Branch.OPEN)).isCloseTo(crank, within(1e-12));
            assertThat(bars.ratio(crank, Branch.OPEN)).isCloseTo(1, within(1e-12));
        }
    }

    private FourBar bars() {
        double crank = 1 + random.nextInt(20);
        return new FourBar(
                crank * (1.05 + 4 * random.nextDouble()),
                crank,
                1 + 60 * random.nextDouble(),
                1 + 30 * random.nextDouble());
    }

    private static double square(double x) {
        return x * x;
    }
}
