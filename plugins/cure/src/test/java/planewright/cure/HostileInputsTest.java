package planewright.cure;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.contract.CalculatorContract;
import planewright.api.figure.Chart;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.material.Materials;

/** Whatever the bounds of the inputs let through, every number is finite and in order, or the input is refused. */
class HostileInputsTest {
    private static final int TRIES = 1500;
    private static final double[] SPREADS = {0, Double.MIN_VALUE, 1e-9, 0.5, 5, 1e3, 1e300, Double.MAX_VALUE};
    private static final double[] CELSIUS = {-20, 0, 4.999, 20, 37, 60};
    private static final double[] PERCENT = {0, 1e-300, 5, 50, 94.999, 95};
    private static final double[] MILLIMETRES = {Double.MIN_VALUE, 1e-9, 0.1, 3, 50};
    private static final double[] HOURS = {Double.MIN_VALUE, 1e-6, 12, 2160};

    private final Random random = new Random(4711);

    @Test
    void answersWithFiniteNumbersInOrderOrRefuses() {
        var names = new ArrayList<>(Materials.table().names(Materials.CURE));
        names.addAll(List.of("", "hinge glue", "epoxy"));
        int answered = 0;
        for (int i = 0; i < TRIES; i++) {
            var inputs = new CureTime.Inputs(
                    random.nextBoolean() ? "" : "fin",
                    names.get(random.nextInt(names.size())),
                    time(),
                    maybe(MILLIMETRES, Units.MILLIMETRE),
                    random.nextBoolean(),
                    random.nextBoolean(),
                    one(CELSIUS, Units.CELSIUS),
                    one(PERCENT, Units.PERCENT),
                    readings(),
                    random.nextBoolean(),
                    maybe(HOURS, Units.HOUR),
                    maybe(HOURS, Units.HOUR),
                    one(CELSIUS, Units.CELSIUS),
                    random.nextBoolean() ? CureTime.Pace.LIKELY : CureTime.Pace.SLOW_END,
                    Optional.empty());
            try {
                var results = new CureTime().compute(inputs, Asked.run(List.of(), List.of(), time()));
                answered += Math.min(1, CalculatorContract.numbers(results));
                assertThat(results.handsOffUntil()).isAfterOrEqualTo(inputs.start());
                assertThat(results.fullyCured()).isAfterOrEqualTo(results.handsOffUntil());
                assertThat(((Chart.BandsOverTime) results.cure()).bands())
                        .allSatisfy(band ->
                                assertThat(band.spans()).allMatch(span -> span.low() >= 0 && span.high() <= 100));
            } catch (UnsuitableInput refused) {
                assertThat(refused.problems()).isNotEmpty();
            }
        }
        assertThat(answered).isBetween(TRIES / 20, TRIES - 1);
    }

    private List<CureTime.ReadingLine> readings() {
        var readings = new ArrayList<CureTime.ReadingLine>();
        for (int rows = random.nextInt(4); rows > 0; rows--) {
            readings.add(new CureTime.ReadingLine(time(), one(CELSIUS, Units.CELSIUS)));
        }
        return readings;
    }

    private LocalDateTime time() {
        return switch (random.nextInt(4)) {
            case 0 -> LocalDateTime.of(1900, 1, 1, 0, 0);
            case 1 -> LocalDateTime.of(2199, 12, 31, 23, 59, 59, 999_999_999);
            case 2 -> Asked.EVENING;
            default -> Asked.EVENING.plusSeconds(random.nextInt(200_000)).plusNanos(random.nextInt(3));
        };
    }

    private <Q extends Quantity<Q>> Optional<Measured<Q>> maybe(double[] values, Unit<Q> unit) {
        return random.nextInt(3) > 0 ? Optional.empty() : Optional.of(one(values, unit));
    }

    private <Q extends Quantity<Q>> Measured<Q> one(double[] values, Unit<Q> unit) {
        double value = values[random.nextInt(values.length)];
        return random.nextInt(4) > 0
                ? Measured.of(value, unit)
                : Measured.of(value, SPREADS[random.nextInt(SPREADS.length)], unit);
    }
}
