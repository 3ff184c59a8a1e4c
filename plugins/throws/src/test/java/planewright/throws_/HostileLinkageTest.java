package planewright.throws_;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicReference;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.Language;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.contract.CalculatorContract;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Whatever the bounds of the inputs let through, every number is finite, or the input is refused by name. */
class HostileLinkageTest {
    private static final int TRIES = 700;
    private static final double[] SPREADS = {0, Double.MIN_VALUE, 1e-13, 0.3, 5, 10, 1e3, 1e300, Double.MAX_VALUE};
    private static final double[] LENGTHS = {1, 1.0000001, 8, 12, 12.5, 50, 199.999, 200};
    private static final double[] SIGNED = {-200, -12, -1e-9, 0, Double.MIN_VALUE, 5, 12, 200};
    private static final double[] DISTANCES = {1, 11.9, 12.5, 13, 30, 85, 2000};
    private static final double[] LEANS = {-180, -90, -45, -1e-300, 0, 30, 89.999999, 90, 180};
    private static final double[] TRAVELS = {1, 25, 45, 90};
    private static final double[] PERCENTS = {1, 60, 100, 200};
    private static final double[] WANTED = {0.1, 20, 85};

    private final Random random = new Random(4711);

    @Test
    void answersWithFiniteNumbersOrRefuses() {
        int answered = 0;
        for (int i = 0; i < TRIES; i++) {
            try {
                answered += Math.min(
                        1,
                        CalculatorContract.numbers(LinkageAnswer.of(new Words(Language.ENGLISH), inputs())
                                .results()));
            } catch (UnsuitableInput refused) {
                assertThat(refused.problems()).isNotEmpty();
            }
        }
        assertThat(answered).isBetween(TRIES / 10, TRIES - 1);
    }

    private ServoLinkage.Inputs inputs() {
        return new ServoLinkage.Inputs(
                random.nextBoolean() ? "" : "aileron",
                one(LENGTHS, Units.MILLIMETRE),
                one(LEANS, Units.DEGREE),
                one(TRAVELS, Units.DEGREE),
                one(PERCENTS, Units.PERCENT),
                one(PERCENTS, Units.PERCENT),
                one(new double[] {0, 0.5, 20}, Units.DEGREE),
                random.nextBoolean() ? ServoLinkage.Side.ABOVE : ServoLinkage.Side.BELOW,
                one(LENGTHS, Units.MILLIMETRE),
                one(SIGNED, Units.MILLIMETRE),
                maybe(DISTANCES, Units.MILLIMETRE),
                one(DISTANCES, Units.MILLIMETRE),
                one(SIGNED, Units.MILLIMETRE),
                maybe(new double[] {1, 30, 85, 200, 2000, 3000}, Units.MILLIMETRE),
                maybe(WANTED, Units.DEGREE),
                maybe(WANTED, Units.DEGREE),
                holes(),
                holes());
    }

    private List<ServoLinkage.HoleLine> holes() {
        return random.ints(random.nextInt(4), 0, LENGTHS.length)
                .mapToObj(i -> new ServoLinkage.HoleLine(Measured.of(LENGTHS[i], Units.MILLIMETRE)))
                .toList();
    }

    private <Q extends Quantity<Q>> Optional<Measured<Q>> maybe(double[] values, Unit<Q> unit) {
        return random.nextInt(3) > 0 ? Optional.empty() : Optional.of(one(values, unit));
    }

    /** Mostly harmless, or nearly every case would be refused. */
    private <Q extends Quantity<Q>> Measured<Q> one(double[] values, Unit<Q> unit) {
        double value = values[random.nextInt(values.length)];
        int most = random.nextInt(12) > 0 ? 4 : SPREADS.length;
        return random.nextInt(3) > 0
                ? Measured.of(value, unit)
                : Measured.of(value, SPREADS[random.nextInt(most)], unit);
    }

    @Test
    void pushrodThatDoesNotReachIsRefusedWithTheLengthsThatDo() {
        assertThat(problem(Shops.linkage().pushrod(60))).satisfies(problem -> {
            assertThat(problem.input()).isEqualTo("pushrodLength");
            assertThat(problem.value()).isEqualTo("60 mm");
            assertThat(problem.accepted())
                    .matches("between [\\d.]+ mm and [\\d.]+ mm, which reach with the servo centred");
            assertThat(problem.wayOut()).matches("For a neutral surface it is [\\d.]+ mm");
        });
    }

    @Test
    void armThatStrikesTheSurfaceIsRefused() {
        var problem = problem(Shops.linkage().arm(30).hinge(25, 0));
        assertThat(problem.input()).isEqualTo("armLength");
        assertThat(problem.accepted()).startsWith("shorter than the 25.0 mm");
    }

    @Test
    void holeInTheArmThatStrikesTheSurfaceIsRefusedByItsRow() {
        var problem = problem(Shops.linkage().hinge(25, 0).wanted(20, 20).holes(List.of(8.0, 30.0), List.of(16.0)));
        assertThat(problem.input()).isEqualTo("armHoles[1].distance");
    }

    /** Horn hole ahead of the hinge, in line with pushrod and arm's hole: nothing says which way the surface goes. */
    @Test
    void pushrodInLineWithTheHornIsRefused() {
        var problem = problem(Shops.linkage().arm(16).horn(1).hinge(85, 15).offset(-80));
        assertThat(problem.input()).isEqualTo("hornOffset");
        assertThat(problem.value()).isEqualTo("in line");
    }

    @Test
    void holesOfArmAndHornOnEachOtherAreRefused() {
        assertThat(problem(Shops.linkage().arm(16).horn(16).hinge(60, 0).offset(-60))
                        .wayOut())
                .contains("lie on each other");
    }

    @Test
    void tooManyHolesAreRefused() {
        var problem = problem(Shops.linkage().holes(Collections.nCopies(21, 8.0), List.of()));
        assertThat(problem.input()).isEqualTo("armHoles");
        assertThat(problem.accepted()).isEqualTo("up to 20");
    }

    private static InputProblem problem(Shops shop) {
        var found = new AtomicReference<InputProblem>();
        assertThatThrownBy(shop::answer)
                .isInstanceOfSatisfying(
                        UnsuitableInput.class,
                        refused -> found.set(refused.problems().get(0)));
        return found.get();
    }
}
