package planewright.shared.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.shared.Published;

/** Fits against published ones; sources, flags and tolerances stand in {@code published.json}. */
class TrendTest {
    /** NIST Statistical Reference Datasets, Norris: certified to eleven figures. */
    @Test
    void fitsTheCertifiedLine() {
        var norris = published("G-05");
        var line = line(norris, "x", "y");
        check(norris, "slope", line.slope());
        check(norris, "intercept", line.intercept());
        check(norris, "sd_slope", line.slopeSpread());
        check(norris, "sd_intercept", line.spreadAt(0));
        check(norris, "residual_sd", line.scatter());
    }

    /** JCGM 100:2008, annex H.3: a thermometer's correction at 30 °C from readings between 21 °C and 27 °C. */
    @Test
    void tellsHowSureTheLineItselfIsFarFromItsPoints() {
        var thermometer = published("G-02");
        double zero = thermometer.input("t0");
        double[] t = thermometer.inputs("t");
        var line = StraightLine.through(
                IntStream.range(0, t.length).mapToDouble(i -> t[i] - zero).toArray(), thermometer.inputs("b"));
        check(thermometer, "intercept", line.intercept());
        check(thermometer, "u_intercept", line.spreadAt(0));
        check(thermometer, "slope", line.slope());
        check(thermometer, "u_slope", line.slopeSpread());
        check(thermometer, "s", line.scatter());
        check(thermometer, "b_30", line.at(thermometer.input("predict_at") - zero));
        check(thermometer, "u_b_30", line.spreadAt(thermometer.input("predict_at") - zero));
    }

    @Test
    void fitsASmallTextbookLine() {
        var small = published("G-07");
        var line = line(small, "x", "y");
        check(small, "slope", line.slope());
        check(small, "intercept", line.intercept());
        check(small, "s_y_x", line.scatter());
    }

    @ParameterizedTest
    @ValueSource(strings = {"oxygen", "propellant"})
    void tellsWhereTheNextReadingLies(String id) {
        var textbook = published(id);
        var trend = Trend.of(Law.STRAIGHT, textbook.inputs("x"), textbook.inputs("y"));
        check(textbook, "slope", trend.slope());
        check(textbook, "intercept", trend.factor());
        var next = trend.predicted(textbook.input("at"), textbook.input("share"));
        check(textbook, "low", next.low());
        check(textbook, "high", next.high());
        assertThat(next.middle()).isEqualTo(trend.at(textbook.input("at")));
    }

    @Test
    void fitsAPowerThroughLogarithms() {
        var textbook = published("power");
        var trend = Trend.of(Law.POWER, textbook.inputs("x"), textbook.inputs("y"));
        check(textbook, "exponent", trend.slope());
        check(textbook, "factor", trend.factor());
    }

    @Test
    void knowsTheCriticalValuesOfStudent() {
        var table = published("t");
        for (int i = 0; i < table.count("degrees"); i++) {
            int degrees = (int) table.input("degrees", i);
            assertThat(StudentT.within(table.input("share"), degrees))
                    .as(degrees + " degrees of freedom")
                    .isCloseTo(table.expected("t", i), within(table.tolerance("t")));
        }
    }

    /**
     * The meaning of the interval, without its formula: of 20000 new points 95 % fall into it, whatever few points it was made
     * from. The standard error of such a share is 0.15 %; four of them are allowed.
     */
    @ParameterizedTest
    @EnumSource(Law.class)
    void nineteenOfTwentyNewPointsFallIntoTheInterval(Law law) {
        var random = new Random(4711);
        int all = 20_000;
        int inside = 0;
        for (int i = 0; i < all; i++) {
            var x = IntStream.range(0, 6)
                    .mapToDouble(each -> 1 + 2 * random.nextDouble())
                    .toArray();
            var y = new double[x.length];
            for (int each = 0; each < x.length; each++) {
                y[each] = drawn(law, x[each], random);
            }
            double next = 1 + 3 * random.nextDouble();
            var interval = Trend.of(law, x, y).predicted(next, 0.95);
            double fell = drawn(law, next, random);
            inside += interval.low() <= fell && fell <= interval.high() ? 1 : 0;
        }
        assertThat((double) inside / all).isCloseTo(0.95, within(4 * Math.sqrt(0.95 * 0.05 / all)));
    }

    /** A straight line with scatter of one size, and a power with scatter of one share. */
    private static double drawn(Law law, double x, Random random) {
        return law == Law.STRAIGHT
                ? 3 + 2 * x + random.nextGaussian()
                : 3 * Math.pow(x, 2) * Math.exp(0.2 * random.nextGaussian());
    }

    @Test
    void refusesWhatTellsNoLine() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StraightLine.through(new double[] {1, 2}, new double[] {1, 2}))
                .withMessage("2 x and 2 y of a line; accepted: as many of both, 3 or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StraightLine.through(new double[] {5, 5, 5}, new double[] {1, 2, 3}))
                .withMessageContaining("all points of a line are at x = 5.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Trend.of(Law.POWER, new double[] {1, 2, 0}, new double[] {1, 2, 3}))
                .withMessageContaining("not finite");
    }

    /** The same example, 11-2 there: t = 11.35 for a slope of 0 is far above 2.88, the value for 99 % and 18 degrees (from memory). */
    @Test
    void tellsASlopeFromScatter() {
        assertThat(line(published("oxygen"), "x", "y").isSloping(0.99)).isTrue();
        assertThat(StraightLine.through(new double[] {1, 2, 3, 4}, new double[] {1, -1, -1, 1.1})
                        .isSloping(0.95))
                .isFalse();
    }

    @Test
    void pointsOnALineLeaveNoDoubt() {
        var next = Trend.of(Law.STRAIGHT, new double[] {1, 2, 3}, new double[] {2, 4, 6})
                .predicted(10, 0.95);
        assertThat(next.low()).isCloseTo(20, within(1e-9));
        assertThat(next.high()).isCloseTo(20, within(1e-9));
    }

    private static Published published(String id) {
        return Published.of(TrendTest.class, id);
    }

    private static StraightLine line(Published published, String x, String y) {
        return StraightLine.through(published.inputs(x), published.inputs(y));
    }

    private static void check(Published published, String name, double value) {
        assertThat(value)
                .as(published.node().path("id").asText() + " " + name)
                .isCloseTo(published.expected(name), within(published.tolerance(name)));
    }
}
