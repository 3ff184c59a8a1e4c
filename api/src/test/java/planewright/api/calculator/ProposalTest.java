package planewright.api.calculator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import planewright.api.figure.Outline;
import planewright.api.figure.Point;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

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

    @Test
    void tasksOutlinesAndWordsSaySomething() {
        assertThatThrownBy(() -> new Proposal.NewTask(" ", Optional.empty())).hasMessageContaining("name of a task");
        assertThatThrownBy(() -> new Proposal.NewTask("sand", Optional.of(Measured.of(0, Units.MINUTE))))
                .hasMessageContaining("hands were busy on 'sand' for 0.0 min; accepted: above 0 min");
        assertThatThrownBy(() -> new Proposal.NewText("hint", List.of()))
                .hasMessageContaining("words on 'hint' hold an empty paragraph, or none");
        assertThatThrownBy(() -> new Proposal.NewText("hint", List.of("one", " ")))
                .hasMessageContaining("accepted: 1 or more with words");
        var line = new Outline.Path(new Point(0, 0), List.of(new Outline.Line(new Point(5, 5))), false);
        assertThatThrownBy(() -> new Proposal.NewOutline("", new Outline(9, 9, List.of(line)), List.of()))
                .hasMessageContaining("name of an outline is empty");
        assertThatThrownBy(() -> new Proposal.NewPlanform(" ", new Planform(List.of(), List.of())))
                .hasMessageContaining("name of a shape is empty");
    }

    private static Proposal.NewJoint joint(String name, LocalDateTime handsOff, LocalDateTime cured) {
        return new Proposal.NewJoint(name, "white glue", EVENING, handsOff, cured);
    }
}
