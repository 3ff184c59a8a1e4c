package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.contract.CalculatorContract;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Whatever the bounds of the inputs let through, every number is finite or the input is refused, and the search ends. */
class HostileBallastTest {
    private static final int TRIES = 200;
    private static final double[] SPREADS = {0, Double.MIN_VALUE, 1e-200, 1e-9, 1, 1e200, Double.MAX_VALUE};
    private static final double[] GRAMS = {0.001, 0.0010001, 1, 212, 1e5, 2e5};
    private static final double[] PIECES = {0.01, 0.0100001, 1, 2.268, 2.2680001, 100, 20000};
    private static final double[] MILLIMETRES = {0, -1e5, 1e5, Double.MIN_VALUE, -1e-9, 1, 100, 100.0000001};
    private static final int[] COUNTS = {0, 1, 7, 1000};

    private final Random random = new Random(4711);

    @Test
    void answersWithFiniteNumbersOrRefuses() {
        int answered = 0;
        int added = 0;
        for (int i = 0; i < TRIES; i++) {
            try {
                var results = lines().answer();
                assertThat(CalculatorContract.numbers(results)).isGreaterThan(7);
                assertThat(results.findings()).isNotEmpty();
                answered++;
                added += results.placed().isEmpty() ? 0 : 1;
            } catch (UnsuitableInput refused) {
                assertThat(refused.problems()).isNotEmpty();
            }
        }
        assertThat(answered).isBetween(TRIES / 20, TRIES - 1);
        assertThat(added).isGreaterThan(TRIES / 50);
    }

    private BallastLines lines() {
        var lines = new BallastLines();
        for (int row = random.nextInt(4); row >= 0; row--) {
            lines.part(
                    "part " + row,
                    Measured.of(pick(GRAMS), spread(), Units.GRAM),
                    Measured.of(pick(MILLIMETRES), spread(), Units.MILLIMETRE),
                    pick(MILLIMETRES));
        }
        if (random.nextInt(3) > 0) {
            lines.movable("part 0", -1e5, 1e5);
        }
        for (int row = random.nextInt(5); row > 0; row--) {
            lines.pocket(
                    "pocket " + row,
                    pick(MILLIMETRES),
                    pick(MILLIMETRES),
                    random.nextBoolean() ? Optional.of(COUNTS[random.nextInt(COUNTS.length)]) : Optional.empty(),
                    random.nextBoolean() ? Optional.of(pick(GRAMS)) : Optional.empty());
        }
        for (int row = random.nextInt(4); row > 0; row--) {
            lines.stock("piece " + row, pick(PIECES), COUNTS[random.nextInt(COUNTS.length)]);
        }
        if (random.nextBoolean()) {
            lines.coins(Ballast.Coins.EURO_COINS);
        }
        if (random.nextBoolean()) {
            lines.lead(20000);
        }
        if (random.nextBoolean()) {
            lines.target(pick(MILLIMETRES), 0.01 + random.nextInt(3));
        }
        return random.nextBoolean() ? lines.sideways(0.01 + random.nextInt(3)) : lines;
    }

    /** Mostly harmless, or nearly every case would be refused. */
    private double spread() {
        return random.nextInt(20) > 0 ? SPREADS[random.nextInt(3)] : pick(SPREADS);
    }

    private double pick(double[] values) {
        return values[random.nextInt(values.length)];
    }
}
