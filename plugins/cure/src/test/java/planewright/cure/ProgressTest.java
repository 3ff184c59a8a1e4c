package planewright.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Time earned while the shop warms and cools. */
class ProgressTest {
    private static final DoubleUnaryOperator RATE = kelvin -> Arrhenius.rate(55_000, kelvin, 293.15);

    @Test
    void hourAtTheReferenceIsAnHour() {
        assertThat(new Progress(ShopAir.constant(293.15), RATE).hoursToEarn(7).orElseThrow())
                .isCloseTo(7, within(1e-9));
        assertThat(new Progress(ShopAir.constant(293.15), RATE).hoursToEarn(0).orElseThrow())
                .isZero();
    }

    /** A sum over seconds, which knows nothing of pieces, steps or Simpson's rule. */
    @Test
    void coolingNightAgreesWithASumOverSeconds() {
        var air = ShopAir.history(
                List.of(new ShopAir.Reading(-1, 294), new ShopAir.Reading(2, 293), new ShopAir.Reading(9.3, 281)));
        double earned = 0;
        int seconds = 0;
        while (earned < 8 * 3600) {
            double hours = (seconds + 0.5) / 3600;
            double kelvin = hours < 2 ? 294 - (hours + 1) / 3 : hours < 9.3 ? 293 - 12 * (hours - 2) / 7.3 : 281;
            earned += RATE.applyAsDouble(kelvin);
            seconds++;
        }
        assertThat(new Progress(air, RATE).hoursToEarn(8).orElseThrow() * 3600).isCloseTo(seconds, within(1.5));
    }

    @Test
    void sameDayAgainAndAgainIsAsIfItHadBeenWrittenOut() {
        var day = List.of(new ShopAir.Reading(7, 283), new ShopAir.Reading(15.5, 294), new ShopAir.Reading(22, 288));
        double start = 20.25;
        var written = new ArrayList<ShopAir.Reading>();
        for (int i = -1; i < 12; i++) {
            for (var reading : day) {
                written.add(new ShopAir.Reading(reading.hours() + 24 * i - start, reading.kelvin()));
            }
        }
        var daily = new Progress(ShopAir.daily(day, start), RATE);
        var explicit = new Progress(ShopAir.history(written), RATE);
        for (double wanted : new double[] {0.5, 3, 24, 100, 150}) {
            assertThat(daily.hoursToEarn(wanted).orElseThrow())
                    .isCloseTo(explicit.hoursToEarn(wanted).orElseThrow(), within(1e-6));
        }
        assertThat(daily.air().at(0)).isCloseTo(294 - 6 * 4.75 / 6.5, within(1e-6));
        assertThat(daily.air().extremes(48)).containsExactly(new double[] {283, 294}, within(1e-6));
    }

    @Test
    void whatIsEarnedByTheEndIsWhatTookUntilThen() {
        var progress = new Progress(
                ShopAir.daily(List.of(new ShopAir.Reading(0, 280), new ShopAir.Reading(12, 300)), 18), RATE);
        double hours = progress.hoursToEarn(30).orElseThrow();
        var course = progress.earnedUntil(hours, 50);
        assertThat(course).hasSize(50).isSorted();
        assertThat(course.get(0)).isZero();
        assertThat(course.get(49)).isCloseTo(30, within(1e-4));
    }

    @Test
    void whatNeverGetsThereSaysSo() {
        assertThat(new Progress(ShopAir.constant(200), RATE).hoursToEarn(24)).isEmpty();
        assertThat(new Progress(ShopAir.constant(293.15), kelvin -> 0).hoursToEarn(1e-9))
                .isEmpty();
    }
}
