package planewright.throws_;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Language;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.contract.CalculatorContract;
import planewright.api.figure.Chart;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.throws_.SurfaceTravel.Way;

/** Degrees and millimetres of throws. */
class SurfaceTravelTest {
    /** The side of a regular hexagon is its radius (Euclid, Elements IV.15): 60 mm at a chord of 60 mm are 60°. */
    @Test
    void chordThatIsTheRadiusIsSixtyDegrees() throws Exception {
        var travels =
                answer(Way.STRAIGHT_LINE, 0, millimetres("rudder throw", 60)).travels();
        assertThat(travels.get(0).angle().orElseThrow().in(Units.DEGREE)).isCloseTo(60, within(1e-9));
        assertThat(travels.get(0).square().orElseThrow().in(Units.MILLIMETRE))
                .isCloseTo(60 * Math.sqrt(0.75), within(1e-9));
        assertThat(travels.get(0).arc().orElseThrow().in(Units.MILLIMETRE)).isCloseTo(20 * Math.PI, within(1e-9));
        assertThat(travels.get(1).rate()).isEqualTo("low");
        assertThat(travels.get(1).angle().orElseThrow().in(Units.DEGREE)).isCloseTo(30, within(1e-9));
    }

    /** Half the radius square to neutral is a sine of one half: 30°. */
    @Test
    void wayOfMeasuringDecidesWhatMillimetresMean() throws Exception {
        var row = millimetres("rudder throw", 30);
        assertThat(degrees(answer(Way.SQUARE_TO_NEUTRAL, 0, row))).isCloseTo(30, within(1e-9));
        assertThat(degrees(answer(Way.ALONG_THE_ARC, 0, row))).isCloseTo(Math.toDegrees(0.5), within(1e-9));
        assertThat(degrees(answer(Way.STRAIGHT_LINE, 0, row)))
                .isCloseTo(2 * Math.toDegrees(Math.asin(0.25)), within(1e-9));
    }

    private static double degrees(SurfaceTravel.Results answer) {
        return answer.travels().get(0).angle().orElseThrow().in(Units.DEGREE);
    }

    /** Expo keeps neutral and ends, never turns back within its bounds, and by hand: 0.7 · 0.5 + 0.3 · 0.125 = 0.3875. */
    @Test
    void expoKeepsItsEndsAndNeverTurnsBack() throws Exception {
        assertThat(answer(Way.STRAIGHT_LINE, 30, millimetres("rudder throw", 9))
                        .halfStick()
                        .in(Units.PERCENT))
                .isCloseTo(38.75, within(1e-9));
        assertThat(answer(Way.STRAIGHT_LINE, 30, millimetres("rudder throw", 9))
                        .feel()
                        .in(Units.PERCENT))
                .isCloseTo(70, within(1e-9));
        for (double share = -0.5; share <= 1; share += 0.01) {
            var expo = new Expo(share);
            assertThat(expo.at(0)).isZero();
            assertThat(expo.at(1)).isCloseTo(1, within(1e-12));
            for (double stick = 0; stick < 1; stick += 0.01) {
                assertThat(expo.at(stick + 0.01)).isGreaterThanOrEqualTo(expo.at(stick) - 1e-12);
                assertThat(expo.at(-stick)).isEqualTo(-expo.at(stick));
            }
        }
    }

    @Test
    void proposesTheOtherUnitAndTheLowRateOfEachThrow() throws Exception {
        var proposals =
                answer(Way.STRAIGHT_LINE, 0, millimetres("rudder throw", 60)).proposals();
        assertThat(proposals).extracting(Proposal::name).containsExactly("rudder throw", "rudder throw, low rate");
        assertThat(value(proposals.get(0)).value().getUnit()).isEqualTo(Units.DEGREE);
        assertThat(value(proposals.get(1)).value().getUnit()).isEqualTo(Units.MILLIMETRE);
        assertThat(value(proposals.get(1)).value().getValue().doubleValue())
                .isCloseTo(120 * Math.sin(Math.toRadians(15)), within(1e-9));
    }

    private static Measured<?> value(Proposal proposal) {
        return ((Proposal.NewSetUpValue) proposal).value();
    }

    @Test
    void throwWithoutChordIsToldAndTheOthersAreAnswered() throws Exception {
        var answer = TravelAnswer.of(
                        new Words(Language.ENGLISH),
                        new SurfaceTravel.Inputs(
                                List.of(
                                        row("aileron throw up", Optional.of(20.0), Optional.empty(), Optional.empty()),
                                        row("aileron throw down", Optional.empty(), Optional.of(9.0), Optional.empty()),
                                        row("rudder throw", Optional.empty(), Optional.of(9.0), Optional.of(40.0))),
                                Optional.empty(),
                                Way.STRAIGHT_LINE,
                                percent(100),
                                percent(60),
                                percent(0)))
                .results();
        assertThat(texts(answer))
                .anyMatch(text -> text.startsWith("'aileron throw up' has no distance without its chord"))
                .anyMatch(text -> text.startsWith("'aileron throw down' has no degrees without its chord"))
                .noneMatch(text -> text.startsWith("'rudder throw' has no"));
        assertThat(answer.travels().get(0).straight()).isEmpty();
        assertThat(answer.travels().get(2).angle()).isEmpty();
        assertThat(answer.travels().get(4).angle()).isPresent();
        assertThat(answer.rulerChart()).isPresent();
    }

    @Test
    void differentialOfUpAndDownIsTold() throws Exception {
        var answer = TravelAnswer.of(
                        new Words(Language.ENGLISH),
                        new SurfaceTravel.Inputs(
                                List.of(
                                        row("aileron throw up", Optional.of(20.0), Optional.empty(), Optional.empty()),
                                        row(
                                                "Aileron throw down",
                                                Optional.of(12.0),
                                                Optional.empty(),
                                                Optional.empty())),
                                Optional.empty(),
                                Way.STRAIGHT_LINE,
                                percent(100),
                                percent(60),
                                percent(0)))
                .results();
        assertThat(texts(answer)).contains("'aileron throw up' and down: a differential of 40 %.");
        assertThat(answer.rulerChart()).isEmpty();
    }

    @Test
    void chartAgreesWithTheTableOfSticks() throws Exception {
        var answer = answer(Way.STRAIGHT_LINE, 40, millimetres("rudder throw", 9));
        var high = ((Chart.Lines) answer.stickChart()).series().get(0).points();
        for (var line : answer.sticks()) {
            var point = high.stream()
                    .filter(each -> Math.abs(each.x() - line.stick().in(Units.PERCENT)) < 1e-9)
                    .findFirst()
                    .orElseThrow();
            assertThat(line.high().in(Units.PERCENT)).isCloseTo(point.y(), within(1e-9));
            assertThat(line.low().in(Units.PERCENT)).isCloseTo(0.5 * point.y(), within(1e-9));
        }
    }

    @Test
    void whatCannotBeIsRefusedByName() {
        assertRefused(millimetres("rudder throw", 90), "surfaces[0].distance", "Distance of 'rudder throw' is 90 mm");
        assertRefused(
                row("rudder throw", Optional.of(20.0), Optional.of(9.0), Optional.empty()),
                "surfaces[0].distance",
                "given in both units");
        assertRefused(
                row("rudder throw", Optional.empty(), Optional.empty(), Optional.empty()),
                "surfaces[0].angle",
                "Throw of 'rudder throw' is missing");
        assertRefused(millimetres(" ", 9), "surfaces[0].name", "Throw of row 1 is empty");
        assertThatThrownBy(() -> answer(Way.STRAIGHT_LINE, 0))
                .isInstanceOf(UnsuitableInput.class)
                .hasMessageContaining("Throws is none; accepted: from 1 to 60 rows");
        assertThatThrownBy(() -> answer(Way.STRAIGHT_LINE, 0, millimetres("a", 9), millimetres("A ", 9)))
                .isInstanceOf(UnsuitableInput.class)
                .hasMessageContaining("'A' is there twice");
    }

    private static void assertRefused(SurfaceTravel.ThrowLine row, String input, String words) {
        assertThatThrownBy(() -> answer(Way.STRAIGHT_LINE, 0, row))
                .isInstanceOfSatisfying(UnsuitableInput.class, refused -> {
                    assertThat(refused.problems().get(0).input()).isEqualTo(input);
                    assertThat(refused.problems().get(0).message()).contains(words);
                });
    }

    @Test
    void answersWithFiniteNumbersOrRefuses() {
        var random = new Random(4711);
        int tries = 400;
        int answered = 0;
        for (int i = 0; i < tries; i++) {
            var rows = new ArrayList<SurfaceTravel.ThrowLine>();
            for (int row = random.nextInt(3); row >= 0; row--) {
                boolean degrees = random.nextBoolean();
                rows.add(new SurfaceTravel.ThrowLine(
                        "throw " + row,
                        degrees ? Optional.of(dice(random, Units.DEGREE, 0, 1e-300, 20, 90)) : Optional.empty(),
                        degrees
                                ? Optional.empty()
                                : Optional.of(dice(random, Units.MILLIMETRE, 0, 1e-300, 9, 60, 1000)),
                        random.nextBoolean()
                                ? Optional.empty()
                                : Optional.of(dice(random, Units.MILLIMETRE, 1, 60, 2000))));
            }
            var inputs = new SurfaceTravel.Inputs(
                    rows,
                    random.nextBoolean() ? Optional.empty() : Optional.of(dice(random, Units.MILLIMETRE, 1, 60, 2000)),
                    Way.values()[random.nextInt(3)],
                    dice(random, Units.PERCENT, Double.MIN_VALUE, 100, 150),
                    dice(random, Units.PERCENT, Double.MIN_VALUE, 60, 150),
                    dice(random, Units.PERCENT, -50, 0, 30, 100));
            try {
                answered += Math.min(
                        1,
                        CalculatorContract.numbers(TravelAnswer.of(new Words(Language.ENGLISH), inputs)
                                .results()));
            } catch (UnsuitableInput refused) {
                assertThat(refused.problems()).isNotEmpty();
            }
        }
        assertThat(answered).isBetween(tries / 10, tries - 1);
    }

    private static <Q extends Quantity<Q>> Measured<Q> dice(Random random, Unit<Q> unit, double... values) {
        double[] spreads = {0, Double.MIN_VALUE, 0.5, 5, 20, 1e300};
        double value = values[random.nextInt(values.length)];
        return random.nextInt(3) > 0
                ? Measured.of(value, unit)
                : Measured.of(value, spreads[random.nextInt(random.nextInt(8) > 0 ? 4 : 6)], unit);
    }

    private static SurfaceTravel.Results answer(Way way, double expo, SurfaceTravel.ThrowLine... rows)
            throws UnsuitableInput {
        var at60 = Optional.of(Measured.of(60, Units.MILLIMETRE));
        return TravelAnswer.of(
                        new Words(Language.ENGLISH),
                        new SurfaceTravel.Inputs(List.of(rows), at60, way, percent(100), percent(50), percent(expo)))
                .results();
    }

    /** Both kinds of rows. */
    static SurfaceTravel.Inputs usual() {
        return new SurfaceTravel.Inputs(
                List.of(
                        row("aileron throw up", Optional.of(20.0), Optional.empty(), Optional.empty()),
                        row("rudder throw", Optional.empty(), Optional.of(9.0), Optional.of(40.0))),
                Optional.of(Measured.of(60, Units.MILLIMETRE)),
                Way.STRAIGHT_LINE,
                percent(100),
                percent(60),
                percent(30));
    }

    private static SurfaceTravel.ThrowLine millimetres(String name, double distance) {
        return row(name, Optional.empty(), Optional.of(distance), Optional.empty());
    }

    private static SurfaceTravel.ThrowLine row(
            String name, Optional<Double> degrees, Optional<Double> millimetres, Optional<Double> chord) {
        Optional<Measured<Angle>> angle = degrees.map(value -> Measured.of(value, Units.DEGREE));
        Optional<Measured<Length>> distance = millimetres.map(value -> Measured.of(value, Units.MILLIMETRE));
        return new SurfaceTravel.ThrowLine(
                name, angle, distance, chord.map(value -> Measured.of(value, Units.MILLIMETRE)));
    }

    private static Measured<Dimensionless> percent(double value) {
        return Measured.of(value, Units.PERCENT);
    }

    private static List<String> texts(SurfaceTravel.Results answer) {
        return answer.findings().stream().map(Finding::text).toList();
    }
}
