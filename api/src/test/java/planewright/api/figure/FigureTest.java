package planewright.api.figure;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class FigureTest {
    @Test
    void nothingThatCannotBeDrawnGetsIntoAFigure() {
        assertThatThrownBy(() -> new Point(Double.NaN, 0)).hasMessageContaining("accepted: finite numbers");
        assertThatThrownBy(() -> new Drawing.Path(List.of(new Point(0, 0)), false))
                .hasMessageContaining("accepted: 2 or more");
        assertThatThrownBy(() -> new Drawing.Disc(new Point(0, 0), 0, "")).hasMessageContaining("accepted: above 0 mm");
        assertThatThrownBy(() -> new Chart.Bar("radio", 12, -1)).hasMessageContaining("bar 'radio'");
    }
}
