package planewright.api.figure;

import static org.assertj.core.api.Assertions.assertThat;
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

    @Test
    void bandsAndAreasAreNotTurnedInsideOut() {
        assertThatThrownBy(() -> new Chart.Span(5, 2, 1, 3)).hasMessageContaining("2.0 over 1.0 to 3.0");
        assertThatThrownBy(() -> new Chart.Span(5, 1, 2, Double.POSITIVE_INFINITY))
                .hasMessageContaining("accepted: finite numbers in this order");
        assertThatThrownBy(() -> new Chart.Area("safe", Chart.Sense.ALLOWED, List.of(new Point(0, 0), new Point(1, 1))))
                .hasMessageContaining("area 'safe' has 2 corners");
    }

    @Test
    void outlineAroundPathsLiesInTheCornerOfItsSheet() {
        var outline = Outline.around(List.of(
                new Drawing.Path(List.of(new Point(-30, 20), new Point(70, 20), new Point(70, 70)), true),
                new Drawing.Path(List.of(new Point(0, 30), new Point(10, 40)), false)));
        assertThat(outline.width()).isEqualTo(100);
        assertThat(outline.height()).isEqualTo(50);
        assertThat(outline.paths().get(0).start()).isEqualTo(new Point(0, 0));
        assertThat(outline.paths().get(0).closed()).isTrue();
        assertThat(outline.paths().get(1).pieces()).containsExactly(new Outline.Line(new Point(40, 20)));
        assertThatThrownBy(() -> Outline.around(List.of())).hasMessageContaining("accepted: above 0 mm");
        assertThatThrownBy(() ->
                        Outline.around(List.of(new Drawing.Path(List.of(new Point(0, 0), new Point(9, 0)), false))))
                .hasMessageContaining("9.0 mm × 0.0 mm");
    }
}
