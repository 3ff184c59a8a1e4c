package planewright.shared.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Propagation against published budgets; sources, flags and tolerances stand in {@code published.json}. */
class PropagationTest {
    /**
     * JCGM 100:2008, annex H.1, the end gauge: l = lₛ + d − lₛ(δα·θ + αₛ·δθ), u(l) = 32 nm. Half widths of rectangular
     * distributions count as a/√3 (4.3.7 there).
     */
    @Test
    void givesTheEndGaugeItsUncertainty() throws Exception {
        var gauge = published("G-03");
        double alpha = value(gauge, "alpha_s");
        double theta = value(gauge, "theta");
        var result = Propagation.through(
                x -> x[0] + x[1] - x[0] * (x[2] * theta + alpha * x[3]),
                new double[] {value(gauge, "l_s", 0), value(gauge, "d", 0), 0, 0},
                new double[] {
                    value(gauge, "l_s", 1),
                    value(gauge, "d", 1),
                    value(gauge, "delta_alpha_half_width") / Math.sqrt(3),
                    value(gauge, "delta_theta_half_width") / Math.sqrt(3)
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
    void combinesAProductOfFourReadings() throws Exception {
        var shaft = published("G-04");
        var result = Propagation.through(
                x -> 2 * Math.PI * x[0] * x[1] * x[2] / x[3],
                new double[] {
                    value(shaft, "revolutions", 0),
                    value(shaft, "force", 0),
                    value(shaft, "arm", 0),
                    value(shaft, "time", 0)
                },
                new double[] {
                    value(shaft, "revolutions", 1),
                    value(shaft, "force", 1),
                    value(shaft, "arm", 1),
                    value(shaft, "time", 1)
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

    private static JsonNode published(String id) throws IOException {
        try (var in = PropagationTest.class.getResourceAsStream("published.json")) {
            for (var published : new ObjectMapper().readTree(in).path("cases")) {
                if (published.path("id").asText().equals(id)) {
                    return published;
                }
            }
        }
        throw new IllegalArgumentException("no published case " + id);
    }

    private static double value(JsonNode published, String name) {
        return published.at("/inputs/" + name + "/value").asDouble();
    }

    private static double value(JsonNode published, String name, int position) {
        return published.at("/inputs/" + name + "/value/" + position).asDouble();
    }
}
