package planewright.api.calculator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;

class ProposalTest {
    private static final LocalDateTime EVENING = LocalDateTime.of(2025, 3, 14, 20, 15);

    @Test
    void jointIsProposedWithItsTimesInOrder() {
        var joint = joint("fin", EVENING.plusHours(1), EVENING.plusHours(1));
        assertThat(joint.name()).isEqualTo("fin");
        assertThatThrownBy(() -> joint("fin", EVENING.minusMinutes(1), EVENING.plusHours(1)))
                .hasMessageContaining("joint 'fin'")
                .hasMessageContaining("accepted: times in this order");
        assertThatThrownBy(() -> joint("fin", EVENING.plusHours(2), EVENING.plusHours(1)))
                .hasMessageContaining("accepted: times in this order");
        assertThatThrownBy(() -> joint(" ", EVENING, EVENING)).hasMessageContaining("name of a joint is empty");
    }

    private static Proposal.NewJoint joint(String name, LocalDateTime handsOff, LocalDateTime cured) {
        return new Proposal.NewJoint(name, "white glue", EVENING, handsOff, cured);
    }
}
