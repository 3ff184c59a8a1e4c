package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.METRE_PER_SECOND;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.SQUARE_METRE;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.contract.CalculatorContract;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;

/** Whatever the bounds of the inputs let through, every number is finite or the input is refused. */
class HostileLeanTest {
    private static final int TRIES = 4000;
    private static final double[] SPREADS = {0, Double.MIN_VALUE, 1e-200, 1e-9, 0.3, 1e200, Double.MAX_VALUE};
    private static final double[] GRAMS = {0.001, 0.0010001, 1, 212, 2e4};
    private static final double[] STATIONS = {0, -1e5, 1e5, Double.MIN_VALUE, -1e-9, 1, 100, -100.0000001};
    private static final double[] SIZES = {1, 1.0000001, 700, 1e5};

    private final Random random = new Random(4711);

    @Test
    void answersWithFiniteNumbersOrRefuses() {
        int answered = 0;
        for (int i = 0; i < TRIES; i++) {
            try {
                var results = lines().answer();
                assertThat(CalculatorContract.numbers(results)).isGreaterThan(3);
                assertThat(results.findings()).isNotEmpty();
                answered++;
            } catch (UnsuitableInput refused) {
                assertThat(refused.problems()).isNotEmpty();
            }
        }
        assertThat(answered).isBetween(TRIES / 50, TRIES - 1);
    }

    private LeanLines lines() {
        var lines = new LeanLines();
        for (int row = random.nextInt(4); row > 0; row--) {
            lines.part(
                    "left part " + row,
                    Measured.of(pick(GRAMS), spread(), GRAM),
                    Measured.of(pick(STATIONS), spread(), MILLIMETRE));
        }
        lines.levelledBy = maybe(Measured.of(pick(GRAMS), spread(), GRAM));
        lines.levelledAt = maybe(Measured.of(pick(STATIONS), spread(), MILLIMETRE));
        lines.lean = maybe(Measured.of(random.nextInt(91) - 45, spread(), DEGREE));
        lines.hangingHeight = maybe(Measured.of(random.nextInt(10) + 1, spread(), MILLIMETRE));
        lines.mass = maybe(Measured.of(pick(GRAMS), spread(), GRAM));
        lines.tip = maybe(Measured.of(pick(SIZES), spread(), MILLIMETRE));
        lines.flight = Lean.InFlight.values()[random.nextInt(4)];
        lines.when = Lean.When.values()[random.nextInt(4)];
        if (random.nextBoolean()) {
            lines.twist(random.nextInt(41) - 20, random.nextInt(41) - 20).speed(1 + random.nextInt(150));
        }
        if (random.nextBoolean()) {
            lines.spans(pick(SIZES), pick(SIZES)).suspect("foam", pick(SIZES), pick(SIZES), 0.1, 25000);
            lines.leftArea = Optional.of(Measured.of(1e-6 * pick(SIZES), SQUARE_METRE));
            lines.rightArea = Optional.of(Measured.of(1e-6 * pick(SIZES), SQUARE_METRE));
        }
        lines.speed = lines.speed.or(() -> maybe(Measured.of(20, spread(), METRE_PER_SECOND)));
        double far = pick(new double[] {0.2, 0.2, 1e-300, 99, 1e300});
        lines.planform = maybe(new Planform(
                List.of(new Planform.Surface(
                        "wing", far, 0, 0, true, List.of(new Planform.Panel(far, far / 2, far, 0.3, 0, 0)))),
                List.of()));
        return lines;
    }

    /** Mostly harmless, or nearly every case would be refused. */
    private double spread() {
        return random.nextInt(30) > 0 ? SPREADS[random.nextInt(3)] : pick(SPREADS);
    }

    private double pick(double[] values) {
        return values[random.nextInt(values.length)];
    }

    private <T> Optional<T> maybe(T value) {
        return random.nextBoolean() ? Optional.of(value) : Optional.empty();
    }
}
