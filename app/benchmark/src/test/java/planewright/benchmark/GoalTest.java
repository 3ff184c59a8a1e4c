package planewright.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class GoalTest {
    @Test
    void aGoalIsMetUnderItsCeilingAndWithinItsRatio() {
        var goal = Goal.under("opening", "ms", 500, 600);
        assertThat(goal.isMet()).isTrue();
        assertThat(goal.comparedWith("parsing", 2_000, 0.25).isMet()).isTrue();
        assertThat(goal.comparedWith("parsing", 1_900, 0.25).isMet()).isFalse();
        assertThat(Goal.under("opening", "ms", 601, 600)
                        .comparedWith("parsing", 9_000, 0.25)
                        .isMet())
                .isFalse();
    }

    @Test
    void theJsonTellsMeasurementYardstickAndRatio() {
        var json = Goal.under("opening", "ms", 499.96, 600)
                .comparedWith("parsing", 2_000, 0.25)
                .json();
        assertThat(json)
                .hasToString(
                        "{\"goal\":\"opening\",\"unit\":\"ms\",\"measured\":500,\"ceiling\":600,\"yardstick\":\"parsing\","
                                + "\"yardstickMeasured\":2000,\"ratio\":0.25,\"ratioAtMost\":0.25,\"met\":true}");
    }

    @Test
    void theMedianOfAnEvenCountIsBetweenTheMiddleTwo() {
        assertThat(Median.of(List.of(9.0, 1.0, 4.0))).isEqualTo(4);
        assertThat(Median.of(List.of(9.0, 1.0, 4.0, 5.0))).isEqualTo(4.5);
    }
}
