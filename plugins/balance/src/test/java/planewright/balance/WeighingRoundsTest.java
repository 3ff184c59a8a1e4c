package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static planewright.balance.Supports.metric;
import static planewright.balance.Supports.weigh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Finding;
import planewright.api.figure.Chart;
import planewright.api.figure.Point;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** One aircraft weighed more than once. */
class WeighingRoundsTest {
    /** The weighted mean by hand: (10/1 + 12/4)/(1/1 + 1/4) = 10.4, u = 1/√1.25 = 0.894, χ² = 0.16 + 0.64 = 0.8. */
    @Test
    void combinesRoundsByWeightedLeastSquares() {
        var combined = Weighings.combine(List.of(
                new Weighings.Estimate(10, Map.of("first", 1.0)), new Weighings.Estimate(12, Map.of("second", 2.0))));
        assertThat(combined.value()).isCloseTo(10.4, within(1e-12));
        assertThat(combined.spread()).isCloseTo(1 / Math.sqrt(1.25), within(1e-12));
        assertThat(combined.birgeRatio().orElseThrow()).isCloseTo(Math.sqrt(0.8), within(1e-12));
        assertThat(combined.worstResidual()).isCloseTo(1.6, within(1e-12));
    }

    /** By hand: the mean of 16 readings of ± 1 has ± 1/4; a ± of 3 that all share stays 3: √(1/16 + 9). */
    @Test
    void whatAllRoundsShareDoesNotAverageOut() {
        var rounds = new ArrayList<Weighings.Estimate>();
        for (int i = 0; i < 16; i++) {
            rounds.add(new Weighings.Estimate(10, Map.of("reading " + i, 1.0, "station", 3.0)));
        }
        assertThat(Weighings.combine(rounds).spread()).isCloseTo(Math.sqrt(1 / 16.0 + 9), within(1e-12));
    }

    /**
     * By hand: what rounds share neither weighs them nor excuses their difference. 10 ± 1 and 12 ± 2 sharing ± 50 still give
     * 10.4; 10 ± 1 and 14 ± 1 sharing ± 10 have a Birge ratio of √(2² + 2²) = √8, so u = √(8·1/2 + 10²) = √104.
     */
    @Test
    void roundsDisagreeWhateverTheyShare() {
        assertThat(Weighings.combine(List.of(
                                new Weighings.Estimate(10, Map.of("first", 1.0, "station", 50.0)),
                                new Weighings.Estimate(12, Map.of("second", 2.0, "station", 50.0))))
                        .value())
                .isCloseTo(10.4, within(1e-12));
        var apart = Weighings.combine(List.of(
                new Weighings.Estimate(10, Map.of("first", 1.0, "station", 10.0)),
                new Weighings.Estimate(14, Map.of("second", 1.0, "station", 10.0))));
        assertThat(apart.birgeRatio().orElseThrow()).isCloseTo(Math.sqrt(8), within(1e-12));
        assertThat(apart.spread()).isCloseTo(Math.sqrt(104), within(1e-12));
    }

    /**
     * Three rounds on the same two supports, whose stations and tare were measured once, against 100,000 draws of all
     * readings (JCGM 101:2008, 5.1). The spread of a standard deviation is 1/√(2n), 0.22 %; the bound of 2 % also covers
     * what first order leaves out. The rounds agree better than their ±, so no Birge ratio enlarges the answer.
     */
    @Test
    void theSpreadOfRoundsIsThatOfManyWeighings() throws Exception {
        var rows = new ArrayList<Weighing.SupportLine>();
        double[][] readings = {{150, 300}, {150.2, 299.8}, {149.9, 300.1}};
        for (int i = 0; i < readings.length; i++) {
            rows.add(row("front", readings[i][0], Measured.of(-40, 1.5, Units.MILLIMETRE), "round " + i));
            rows.add(row("back", readings[i][1], Measured.of(200, 1, Units.MILLIMETRE), "round " + i));
        }
        var results = weigh(rows);
        assertThat(results.agreement().orElseThrow().in(Units.NUMBER)).isLessThan(1);
        var dots = ((Chart.Scatter) results.roundChart().orElseThrow()).groups();
        assertThat(dots.get(0).dots()).extracting(Chart.Dot::name).containsExactly("round 0", "round 1", "round 2");
        assertThat(dots.get(1).dots().get(0).at())
                .isEqualTo(new Point(
                        results.balanceX().in(Units.MILLIMETRE), results.mass().in(Units.GRAM)));
        var random = new Random(20260301);
        var x = new double[100_000];
        var mass = new double[x.length];
        for (int draw = 0; draw < x.length; draw++) {
            double front = -40 + 1.5 * random.nextGaussian();
            double back = 200 + random.nextGaussian();
            double tareFront = 10 + 0.8 * random.nextGaussian();
            double tareBack = 10 + 0.8 * random.nextGaussian();
            for (var reading : readings) {
                double one = reading[0] + 0.5 * random.nextGaussian() - tareFront;
                double other = reading[1] + 0.5 * random.nextGaussian() - tareBack;
                mass[draw] += (one + other) / readings.length;
                x[draw] += (one * front + other * back) / (one + other) / readings.length;
            }
        }
        assertThat(results.balanceX().spreadIn(Units.MILLIMETRE)).isCloseTo(spread(x), within(0.02 * spread(x)));
        assertThat(results.mass().spreadIn(Units.GRAM)).isCloseTo(spread(mass), within(0.02 * spread(mass)));
    }

    private static Weighing.SupportLine row(String name, double grams, Measured<Length> x, String round) {
        return new Weighing.SupportLine(
                name,
                Measured.of(grams, 0.5, Units.GRAM),
                Measured.of(10, 0.8, Units.GRAM),
                x,
                Measured.of(0, Units.MILLIMETRE),
                round);
    }

    private static double spread(double[] draws) {
        double mean = Arrays.stream(draws).average().orElseThrow();
        return Math.sqrt(Arrays.stream(draws)
                .map(draw -> (draw - mean) * (draw - mean))
                .average()
                .orElseThrow());
    }

    @Test
    void doesNotCallRoundsGoodThatNothingCanJudge() throws Exception {
        var results = weigh(List.of(
                metric("front", Measured.of(100, Units.GRAM), 0, "first"),
                metric("back", Measured.of(300, Units.GRAM), 200, "first"),
                metric("front", Measured.of(200, Units.GRAM), 0, "second"),
                metric("back", Measured.of(200, Units.GRAM), 200, "second")));
        assertThat(results.agreement()).isEmpty();
        assertThat(results.mass().plusMinus()).isEmpty();
        assertThat(results.balanceX().spreadIn(Units.MILLIMETRE)).isCloseTo(25, within(1e-9));
        assertThat(results.findings()).extracting(Finding::grade).containsOnly(Finding.Grade.LOOK_AGAIN);
        assertThat(results.findings().get(0).text()).contains("25.0 mm off", "nothing says whether that is much");
    }

    @Test
    void saysWhenRoundsDisagree() throws Exception {
        var results = weigh(List.of(
                metric("front", Measured.of(100, 1, Units.GRAM), 0, "first"),
                metric("back", Measured.of(300, 1, Units.GRAM), 200, "first"),
                metric("front", Measured.of(130, 1, Units.GRAM), 0, "second"),
                metric("back", Measured.of(270, 1, Units.GRAM), 200, "second")));
        assertThat(results.rounds()).hasSize(2);
        assertThat(results.agreement().orElseThrow().in(Units.NUMBER)).isGreaterThan(2);
        assertThat(results.findings())
                .extracting(Finding::text)
                .anyMatch(text -> text.contains("something moved, or a ± is too small"));
    }
}
