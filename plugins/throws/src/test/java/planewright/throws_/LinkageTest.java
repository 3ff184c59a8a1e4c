package planewright.throws_;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The placed linkage against a numerical root of the loop equation, over thousands of geometries. */
class LinkageTest {
    private static final int TRIES = 2000;
    private static final double STEP = Math.toRadians(0.25);

    private final Random random = new Random(815);

    /**
     * The surface is followed from neutral by small steps of the servo, at each of them by Newton's method on the pushrod's
     * length alone, which knows neither branches nor the law of cosines.
     */
    @Test
    void deflectionIsTheRootOfTheLoopEquationFollowedFromTheCentre() {
        int followed = 0;
        for (int i = 0; i < TRIES / 5; i++) {
            var linkage = Shops.any(random);
            if (linkage.isEmpty() || linkage.get().pushrodToHorn(0) < 0.2) {
                continue;
            }
            for (int side : new int[] {-1, 1}) {
                followed += follow(linkage.get(), side);
            }
        }
        assertThat(followed).isGreaterThan(10_000);
    }

    private static int follow(Linkage linkage, int side) {
        double deflection = linkage.deflection(0);
        assertThat(residual(linkage, 0, deflection)).isCloseTo(0, within(1e-9));
        int steps = 0;
        for (double turn = 0; Math.abs(turn) < Math.toRadians(120); turn += side * STEP) {
            if (turn < linkage.limits()[0] || turn > linkage.limits()[1] || linkage.pushrodToHorn(turn) < 0.12) {
                return steps;
            }
            deflection = newton(linkage, turn, deflection);
            assertThat(linkage.deflection(turn)).isCloseTo(deflection, within(1e-8));
            steps++;
        }
        return steps;
    }

    private static double newton(Linkage linkage, double turn, double start) {
        double deflection = start;
        for (int i = 0; i < 20; i++) {
            double h = 1e-6;
            double slope = (residual(linkage, turn, deflection + h) - residual(linkage, turn, deflection - h)) / 2 / h;
            deflection -= residual(linkage, turn, deflection) / slope;
        }
        return deflection;
    }

    /** How much longer than the pushrod the way between the holes is, with plain sines of what was measured. */
    private static double residual(Linkage linkage, double turn, double deflection) {
        var is = linkage.geometry();
        double armX = is.arm() * Math.sin(is.lean() + turn);
        double armY = is.arm() * Math.cos(is.lean() + turn);
        double hornX =
                is.hingeDistance() + is.hornOffset() * Math.cos(deflection) + is.hornLength() * Math.sin(deflection);
        double hornY = is.hingeRise() - is.hornOffset() * Math.sin(deflection) + is.hornLength() * Math.cos(deflection);
        return Math.hypot(hornX - armX, hornY - armY) - linkage.pushrod();
    }

    /** Turned over, arm and horn to the other side, a linkage answers an opposite turn with the opposite deflection. */
    @Test
    void mirroredLinkageGivesMirroredResult() {
        int compared = 0;
        for (int i = 0; i < TRIES; i++) {
            var linkage = Shops.any(random);
            if (linkage.isEmpty()) {
                continue;
            }
            var is = linkage.get().geometry();
            var mirrored = Linkage.of(new Geometry(
                            is.arm(),
                            Math.PI - is.lean(),
                            -is.hornLength(),
                            is.hornOffset(),
                            is.hingeDistance(),
                            -is.hingeRise(),
                            is.pushrod()))
                    .orElseThrow();
            assertThat(mirrored.pushrod()).isCloseTo(linkage.get().pushrod(), within(1e-9));
            assertThat(mirrored.limits()[0]).isCloseTo(-linkage.get().limits()[1], within(1e-9));
            for (double turn = -2; turn <= 2; turn += 0.1) {
                if (linkage.get().pushrodToHorn(turn) > 1e-3) {
                    assertThat(mirrored.deflection(-turn))
                            .isCloseTo(-linkage.get().deflection(turn), within(1e-9));
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(10_000);
    }

    @Test
    void neverNotANumberAndThePushrodKeepsItsLengthWhereverItReaches() {
        int built = 0;
        for (int i = 0; i < TRIES; i++) {
            var any = Shops.any(random);
            if (any.isEmpty()) {
                continue;
            }
            var linkage = any.get();
            for (double turn = -3; turn <= 3; turn += 0.15) {
                assertThat(linkage.deflection(turn)).isFinite();
                if (linkage.limits()[0] <= turn && turn <= linkage.limits()[1]) {
                    var arm = linkage.armHole(turn);
                    var horn = linkage.hornHole(turn);
                    assertThat(Math.hypot(horn.x() - arm.x(), horn.y() - arm.y()))
                            .isCloseTo(linkage.pushrod(), within(1e-6));
                }
            }
            built++;
        }
        assertThat(built).isBetween(TRIES / 2, TRIES);
    }

    @Test
    void turnForFindsTheTurnBackThatMadeADeflection() {
        int found = 0;
        for (int i = 0; i < TRIES; i++) {
            var linkage = Shops.any(random);
            if (linkage.isEmpty()) {
                continue;
            }
            double last = linkage.get().overCentre().stream()
                    .filter(turn -> turn > 0)
                    .findFirst()
                    .orElse(1.0);
            last = Math.min(last, Math.min(1, linkage.get().limits()[1]));
            double turn = last * random.nextDouble();
            assertThat(linkage.get()
                            .deflection(linkage.get().turnFor(linkage.get().deflection(turn), last)))
                    .isCloseTo(linkage.get().deflection(turn), within(1e-9));
            found++;
        }
        assertThat(found).isGreaterThan(TRIES / 2);
    }

    /** Arm and horn alike and upright, hinge and shaft level: a parallelogram, whose surface turns as the arm. */
    @Test
    void evenArmAndHornTurnAlike() {
        var linkage = Linkage.of(new Geometry(0.012, 0, 0.012, 0, 0.08, 0, OptionalDouble.empty()))
                .orElseThrow();
        assertThat(linkage.deflection(0)).isZero();
        for (double turn = -1.2; turn <= 1.2; turn += 0.1) {
            assertThat(linkage.deflection(turn)).isCloseTo(turn, within(1e-12));
        }
    }
}
