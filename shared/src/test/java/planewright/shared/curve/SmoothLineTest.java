package planewright.shared.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The property that F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238, prove of such a line. */
class SmoothLineTest {
    @Test
    void passesThroughItsPointsAndStaysBetweenThem() {
        var random = new Random(4711);
        for (int run = 0; run < 200; run++) {
            int points = 2 + random.nextInt(9);
            var along = new double[points];
            var values = new double[points];
            for (int i = 0; i < points; i++) {
                along[i] = (i == 0 ? 0 : along[i - 1]) + 0.01 + random.nextDouble();
                values[i] = random.nextInt(4) == 0 && i > 0 ? values[i - 1] : random.nextGaussian();
            }
            var line = SmoothLine.through(along, values);
            for (int i = 0; i + 1 < points; i++) {
                assertThat(line.at(along[i])).isEqualTo(values[i]);
                double least = Math.min(values[i], values[i + 1]);
                double most = Math.max(values[i], values[i + 1]);
                double before = values[i];
                for (int step = 1; step <= 20; step++) {
                    double value = line.at(along[i] + (along[i + 1] - along[i]) * step / 20);
                    assertThat(value).isBetween(least - 1e-12, most + 1e-12);
                    assertThat((value - before) * (values[i + 1] - values[i])).isGreaterThanOrEqualTo(-1e-12);
                    before = value;
                }
            }
        }
    }

    @Test
    void straightPointsGiveAStraightLineThatEndsWhereTheyEnd() {
        var line = SmoothLine.through(new double[] {1, 2, 4}, new double[] {10, 20, 40});
        assertThat(line.at(3.3)).isCloseTo(33, within(1e-12));
        assertThat(line.at(-5)).isEqualTo(10);
        assertThat(line.at(9)).isEqualTo(40);
    }

    @Test
    void refusesPointsThatAreNoLine() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SmoothLine.through(new double[] {1}, new double[] {1}))
                .withMessageContaining("2 or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SmoothLine.through(new double[] {1, 1}, new double[] {1, 2}))
                .withMessageContaining("ascending");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SmoothLine.through(new double[] {1, 2, 3}, new double[] {1, 2}));
    }
}
