package planewright.api.calculator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class UnsuitableInputTest {
    private static final InputProblem SERVO =
            new InputProblem("parts[2].mass", "mass of 'rear servo'", "0 g", "above 0 g", "Weigh it, or leave it out");

    @Test
    void saysTheThingTheValueWhatIsAcceptedAndTheWayOut() {
        assertThat(SERVO.message())
                .isEqualTo("mass of 'rear servo' is 0 g; accepted: above 0 g. Weigh it, or leave it out");
    }

    @Test
    void carriesEveryProblem() {
        var other = new InputProblem("target", "target", "9 km", "up to 20 m", "");
        assertThat(new UnsuitableInput(List.of(SERVO, other)))
                .hasMessage(SERVO.message() + "; target is 9 km; accepted: up to 20 m")
                .extracting(UnsuitableInput::problems)
                .isEqualTo(List.of(SERVO, other));
    }

    @Test
    void isNotThrownWithoutAProblem() {
        assertThatThrownBy(() -> new UnsuitableInput(List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
