package planewright.app.figure;

import java.util.List;
import java.util.Optional;
import planewright.api.figure.Chart;

/**
 * Dots that were measured twice over, and a line with its band through those that count.
 *
 * @param title what it shows
 * @param dots in any order
 * @param band the line; empty where there is none
 * @param asked a place that somebody asks about; empty where nobody does
 * @param fromZero whether values below 0 mean nothing, so that the axis has none
 */
public record Fitted(
        String title,
        Chart.Axis across,
        Chart.Axis values,
        List<Dot> dots,
        Optional<Chart.Band> band,
        Optional<Chart.Span> asked,
        boolean fromZero) {
    public Fitted {
        dots = List.copyOf(dots);
    }

    /**
     * A dot in the units of the axes; each ± is one standard uncertainty, 0 where none is known.
     *
     * @param counts whether the line goes by it
     */
    public record Dot(String name, double x, double xPlusMinus, double y, double yPlusMinus, boolean counts) {}
}
