package planewright.shared.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.Published;

/** Propagation against published budgets; sources, flags and tolerances stand in {@code published.json}. */
class PropagationTest {
    /**
     * JCGM 100:2008, annex H.1, the end gauge: l = lₛ + d − lₛ(δα·θ + αₛ·δθ), u(l) = 32 nm. Half widths of rectangular
     * distributions count as a/√3 (4.3.7 there).
     */
    @Test
    void givesTheEndGaugeItsUncertainty() {
        var gauge = Published.of(PropagationTest.class, "G-03");
        double alpha = gauge.input("alpha_s");
        double theta = gauge.input("theta");
        var result = Propagation.through(
                x -> x[0] + x[1] - x[0] * (x[2] * theta + alpha * x[3]),
                new double[] {gauge.input("l_s", 0), gauge.input("d", 0), 0, 0},
                new double[] {
                    gauge.input("l_s", 1),
                    gauge.input("d", 1),
                    gauge.input("delta_alpha_half_width") / Math.sqrt(3),
                    gauge.input("delta_theta_half_width") / Math.sqrt(3)
                });
        assertThat(result.value()).isCloseTo(50000838, within(1e-6));
        assertThat(result.spread()).isCloseTo(32, within(0.5));
        double[] components = {25, 9.7, 2.9, 16.6};
        for (int i = 0; i < components.length; i++) {
            assertThat(Math.abs(result.components()[i])).isCloseTo(components[i], within(0.05));
        }
    }

    /** Doebelin and Manik, Measurement Systems, example 3.2: power of a shaft, P = 2πRFL/t, 22.08 W as root sum of squares. */
    @Test
    void combinesAProductOfFourReadings() {
        var shaft = Published.of(PropagationTest.class, "G-04");
        var result = Propagation.through(
                x -> 2 * Math.PI * x[0] * x[1] * x[2] / x[3],
                new double[] {
                    shaft.input("revolutions", 0),
                    shaft.input("force", 0),
                    shaft.input("arm", 0),
                    shaft.input("time", 0)
                },
                new double[] {
                    shaft.input("revolutions", 1),
                    shaft.input("force", 1),
                    shaft.input("arm", 1),
                    shaft.input("time", 1)
                });
        assertThat(result.value()).isCloseTo(2248.7, within(0.1));
        assertThat(result.spread()).isCloseTo(22.08, within(0.005));
    }

    @Test
    void tellsASpreadOnlyWhereAnInputHasOne() {
        double[] inputs = {212, 140};
        var sure = Propagation.through(x -> x[0] + x[1], inputs, new double[] {0, 0});
        assertThat(sure.in(Units.GRAM)).isEqualTo(Measured.of(352, Units.GRAM));
        var unsure = Propagation.through(x -> x[0] + x[1], inputs, new double[] {3, 4});
        assertThat(unsure.in(Units.GRAM).spreadIn(Units.GRAM)).isCloseTo(5, within(1e-9));
    }

    @Test
    void refusesSpreadsThatAreNotAsManyAsInputs() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Propagation.through(x -> x[0], new double[] {1, 2}, new double[] {1}))
                .withMessage("2 inputs and 1 spreads");
    }
}
