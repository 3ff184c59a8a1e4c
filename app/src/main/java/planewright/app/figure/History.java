package planewright.app.figure;

import java.time.LocalDateTime;
import java.util.List;
import planewright.api.figure.Chart;

/**
 * One thing measured again and again.
 *
 * @param title what it is
 * @param values the axis of its values
 * @param readings in order of time
 */
public record History(String title, Chart.Axis values, List<Reading> readings) {
    public History {
        readings = List.copyOf(readings);
    }

    /**
     * A value at a time, in the unit of the axis.
     *
     * @param plusMinus one standard uncertainty, 0 where none is known
     */
    public record Reading(LocalDateTime at, double value, double plusMinus) {}
}
