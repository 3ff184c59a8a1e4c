package planewright.shared.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import planewright.shared.mass.Centre.Weight;
import planewright.shared.uncertainty.Propagation;

class CentreTest {
    /** Nicholls's Seamanship and Nautical Knowledge, "System of weights", fig. 17: 4, 6 and 10 lb at 2, 5 and 7 ft balance at 5.4 ft. */
    @Test
    void threeWeightsOnARodBalanceWhereTheyDoInNicholls() {
        var rod = List.of(new Weight(4, 0, 2, 0), new Weight(6, 0, 5, 0), new Weight(10, 0, 7, 0));
        assertThat(Centre.of(rod)).isEqualTo(new Centre(5.4, 0));
    }

    /** The formula in closed form against derivatives taken numerically. */
    @Test
    void itsUncertaintyIsThatOfNumericalPropagation() {
        double[] values = {4, 2, 6, 5, 10, 7};
        double[] spreads = {0.01, 0.02, 0, 0.03, 0.04, 0};
        var numerical = Propagation.through(
                v -> (v[0] * v[1] + v[2] * v[3] + v[4] * v[5]) / (v[0] + v[2] + v[4]), values, spreads);
        var rod = List.of(new Weight(4, 0.01, 2, 0.02), new Weight(6, 0, 5, 0.03), new Weight(10, 0.04, 7, 0));
        assertThat(Centre.of(rod).spread()).isCloseTo(numerical.spread(), within(1e-6 * numerical.spread()));
    }
}
