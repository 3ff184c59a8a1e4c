package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Language;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.contract.CalculatorContract;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Whatever the bounds of the inputs let through, every number is finite or the input is refused. */
class HostileInputsTest {
    private static final int TRIES = 3000;
    private static final double[] SPREADS = {0, Double.MIN_VALUE, 1e-200, 1e-9, 1, 1e3, 1e200, Double.MAX_VALUE};
    private static final double[] GRAMS = {0.001, 0.0010001, 1, 212, 1e5, 1e6};
    private static final double[] MILLIMETRES = {0, -1e5, 1e5, Double.MIN_VALUE, -1e-9, 1, 100, 100.0000001};

    private final Random random = new Random(4711);

    @Test
    void aLedgerAnswersWithFiniteNumbersOrRefuses() {
        int answered = 0;
        for (int i = 0; i < TRIES; i++) {
            var parts = new ArrayList<Ledger.PartLine>();
            for (int row = random.nextInt(5); row >= 0; row--) {
                parts.add(new Ledger.PartLine(
                        "part " + row,
                        maybe(mass()),
                        maybe(length()),
                        length(),
                        length(),
                        "",
                        maybe(size()),
                        maybe(size()),
                        maybe(size())));
            }
            var inputs = new Ledger.Inputs(
                    parts,
                    maybe(length()),
                    maybe(length()),
                    Measured.of(Double.MIN_VALUE + random.nextInt(3), Units.MILLIMETRE),
                    maybe(length()),
                    maybe(length()),
                    Optional.empty(),
                    "",
                    shape());
            try {
                answered += Math.min(
                        1,
                        CalculatorContract.numbers(LedgerAnswer.of(new Words(Language.ENGLISH), inputs)
                                .results()));
            } catch (UnsuitableInput refused) {
                assertThat(refused.problems()).isNotEmpty();
            }
        }
        assertThat(answered).isBetween(TRIES / 20, TRIES - 1);
    }

    @Test
    void aWeighingAnswersWithFiniteNumbersOrRefuses() {
        int answered = 0;
        for (int i = 0; i < TRIES; i++) {
            var supports = new ArrayList<Weighing.SupportLine>();
            for (int round = random.nextInt(3); round >= 0; round--) {
                for (int row = 1 + random.nextInt(3); row >= 0; row--) {
                    supports.add(new Weighing.SupportLine(
                            "support " + row,
                            mass(),
                            random.nextBoolean() ? Measured.of(0, Units.GRAM) : mass(),
                            length(),
                            length(),
                            "round " + round));
                }
            }
            try {
                answered += Math.min(
                        1,
                        CalculatorContract.numbers(WeighingAnswer.of(
                                        new Words(Language.ENGLISH),
                                        new Weighing.Inputs(supports, maybe(mass()), maybe(length()), shape()))
                                .results()));
            } catch (UnsuitableInput refused) {
                assertThat(refused.problems()).isNotEmpty();
            }
        }
        assertThat(answered).isBetween(TRIES / 20, TRIES - 1);
    }

    @Test
    void aShapeBeyondAllMeasureIsRefused() {
        var endless = new Planform(
                List.of(new Planform.Surface(
                        "wing", 0, 0, 0, true, List.of(new Planform.Panel(0.2, 0.2, 0.5, Math.PI / 2, 0, 0)))),
                List.of());
        assertThatThrownBy(() -> LedgerAnswer.of(
                        new Words(Language.ENGLISH),
                        new Ledger.Inputs(
                                List.of(Lines.part("pack", 1, 1)),
                                Optional.empty(),
                                Optional.empty(),
                                Measured.of(2, Units.MILLIMETRE),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                "",
                                Optional.of(endless))))
                .isInstanceOf(UnsuitableInput.class)
                .hasMessageContaining("Shape is farther than 100 m from the datum");
    }

    private Measured<Mass> mass() {
        return Measured.of(pick(GRAMS), spread(), Units.GRAM);
    }

    private Measured<Length> length() {
        return Measured.of(pick(MILLIMETRES), spread(), Units.MILLIMETRE);
    }

    private Measured<Length> size() {
        return Measured.of(Math.abs(pick(MILLIMETRES)), Units.MILLIMETRE);
    }

    /** Mostly harmless, or nearly every case would be refused. */
    private double spread() {
        return random.nextInt(20) > 0 ? SPREADS[random.nextInt(4)] : pick(SPREADS);
    }

    private double pick(double[] values) {
        return values[random.nextInt(values.length)];
    }

    private <T> Optional<T> maybe(T value) {
        return random.nextInt(4) > 0 ? Optional.of(value) : Optional.empty();
    }

    private Optional<Planform> shape() {
        double far = pick(new double[] {0.2, 0.2, 0.2, 1e-300, 99, 1e300});
        var sections = List.of(
                new Planform.Section(-far, 0, 0, 0),
                new Planform.Section(0, far / 4, far / 8, -far / 8),
                new Planform.Section(Math.nextUp(0.0), far / 4, far / 8, -far / 8));
        return maybe(new Planform(
                List.of(new Planform.Surface(
                        "wing", far, 0, 0, true, List.of(new Planform.Panel(far, far / 2, far, 0.3, 0, 0)))),
                List.of(new Planform.Body("fuselage", 0, sections))));
    }
}
