package planewright.ducts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Optional;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.contract.CalculatorContract;
import planewright.api.contract.StillRun;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Whatever the bounds of the inputs let through, the answer is an inlet, or the input is refused by name. */
class HostileInputsTest {
    private static final int TRIES = 4000;
    private static final double[] WIDTHS = {5, 5.0000001, 12, 40, 137.3, 500};
    private static final double[] AREAS = {10, 33, 400, 2500, 50_000};
    private static final double[] RATIOS = {1, 2.5, 4, 5, 12};
    private static final double[] RAMPS = {2, 5, 7, 13, 20};
    private static final double[] SKINS = {0.1, 2, 30};
    private static final double[] RADII = {5, 24, 60, 1000, 100_000};
    private static final double[] FOAMS = {Double.MIN_VALUE, 1e-9, 4, 12, 20, 500};
    private static final double[] SHARES = {0, Double.MIN_VALUE, 1e-12, 0.01, 0.2, 0.3, 1e9, 1e300};

    private final Random random = new Random(4711);

    @Test
    void answersWithAnInletOrRefuses() {
        int answered = 0;
        for (int i = 0; i < TRIES; i++) {
            var inputs = new SubmergedInlet.Inputs(
                    maybe(WIDTHS, Units.MILLIMETRE, 2),
                    maybe(AREAS, Units.SQUARE_MILLIMETRE, 3),
                    one(RATIOS, Units.NUMBER),
                    one(RAMPS, Units.DEGREE),
                    random.nextBoolean() ? SubmergedInlet.Edge.PLAIN : SubmergedInlet.Edge.SHAPED,
                    one(SKINS, Units.MILLIMETRE),
                    maybe(RADII, Units.MILLIMETRE, 2),
                    maybe(RADII, Units.MILLIMETRE, 4),
                    maybe(FOAMS, Units.MILLIMETRE, 2),
                    one(FOAMS, Units.MILLIMETRE));
            try {
                inlet(new SubmergedInlet().compute(inputs, StillRun.onAnEmptyJournal()));
                answered++;
            } catch (UnsuitableInput refused) {
                assertThat(refused.problems())
                        .isNotEmpty()
                        .extracting(InputProblem::input)
                        .doesNotContain("");
            }
        }
        assertThat(answered).isBetween(TRIES / 10, TRIES - 1);
    }

    private static void inlet(SubmergedInlet.Results results) {
        assertThat(CalculatorContract.numbers(results)).isGreaterThan(500);
        assertThat(results.length().in(Units.MILLIMETRE)).isPositive();
        assertThat(results.width().in(Units.MILLIMETRE) * results.depth().in(Units.MILLIMETRE))
                .isCloseTo(results.area().in(Units.SQUARE_MILLIMETRE), withinPercentage(1e-9));
        double widest = 0;
        double deepest = 0;
        for (var station : results.stations()) {
            double half = station.halfWidth().in(Units.MILLIMETRE);
            double depth = station.depth().in(Units.MILLIMETRE);
            assertThat(half).isGreaterThan(widest);
            assertThat(station.halfWidthOnSkin().in(Units.MILLIMETRE)).isGreaterThanOrEqualTo(half);
            assertThat(depth).isGreaterThanOrEqualTo(deepest);
            assertThat(station.depthAtWall().in(Units.MILLIMETRE)).isBetween(0.0, depth);
            widest = half;
            deepest = depth;
        }
        assertThat(deepest).isLessThan(results.floor().in(Units.MILLIMETRE) + 0.005);
        for (var line : results.lip()) {
            assertThat(line.inside().in(Units.MILLIMETRE))
                    .isGreaterThanOrEqualTo(line.outside().in(Units.MILLIMETRE));
        }
    }

    private <Q extends Quantity<Q>> Optional<Measured<Q>> maybe(double[] values, Unit<Q> unit, int oneIn) {
        return random.nextInt(oneIn) > 0 ? Optional.empty() : Optional.of(one(values, unit));
    }

    private <Q extends Quantity<Q>> Measured<Q> one(double[] values, Unit<Q> unit) {
        double value = values[random.nextInt(values.length)];
        double share = SHARES[random.nextInt(SHARES.length)];
        return random.nextInt(6) > 0 || !Double.isFinite(value * share)
                ? Measured.of(value, unit)
                : Measured.of(value, value * share, unit);
    }
}
