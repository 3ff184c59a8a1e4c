package planewright.api.figure;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.apiguardian.api.API;

/** A chart as data; see the kinds below. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public sealed interface Chart permits Chart.Bars, Chart.Lines, Chart.OverTime {
    /** What it shows, in a builder's words. */
    String title();

    /** The axis that carries the values. */
    Axis values();

    /**
     * An axis.
     *
     * @param label what runs along it
     * @param unit its unit as a UCUM code; {@code 1} for a bare number
     */
    record Axis(String label, String unit) {}

    /**
     * One bar a named thing.
     *
     * @param title what it shows
     * @param categories what the bars are
     * @param values the axis along which they are long
     * @param bars in this order
     */
    record Bars(String title, String categories, Axis values, List<Bar> bars) implements Chart {
        public Bars {
            bars = List.copyOf(bars);
        }
    }

    /**
     * A bar.
     *
     * @param name its category
     * @param value its length in the unit of the axis; finite
     * @param plusMinus one standard uncertainty in the same unit, 0 where none is known
     */
    record Bar(String name, double value, double plusMinus) {
        public Bar {
            if (!Double.isFinite(value) || !Double.isFinite(plusMinus) || plusMinus < 0) {
                throw new IllegalArgumentException("bar '" + name + "' is " + value + " ± " + plusMinus
                        + "; accepted: a finite value and a ± of 0 or more");
            }
        }
    }

    /**
     * Lines over a common axis.
     *
     * @param title what it shows
     * @param across the horizontal axis
     * @param values the vertical axis
     * @param series the lines
     * @param levels lines straight across, at a value
     */
    record Lines(String title, Axis across, Axis values, List<Series> series, List<Level> levels) implements Chart {
        public Lines {
            series = List.copyOf(series);
            levels = List.copyOf(levels);
        }
    }

    /**
     * Lines over clock time.
     *
     * @param title what it shows
     * @param from the instant from which the points count
     * @param values the vertical axis
     * @param series the lines; a point's x is in hours after {@code from}
     * @param levels lines straight across, at a value
     * @param moments lines straight up, at a time
     */
    record OverTime(
            String title,
            LocalDateTime from,
            Axis values,
            List<Series> series,
            List<Level> levels,
            List<Moment> moments)
            implements Chart {
        public OverTime {
            series = List.copyOf(series);
            levels = List.copyOf(levels);
            moments = List.copyOf(moments);
        }
    }

    /**
     * An instant worth a line.
     *
     * @param name what happens
     * @param at when
     */
    record Moment(String name, LocalDateTime at) {}

    /**
     * A line through points.
     *
     * @param name what it shows
     * @param points from left to right
     */
    record Series(String name, List<Point> points) {
        public Series {
            points = List.copyOf(points);
        }
    }

    /**
     * A limit or target, or a band between two.
     *
     * @param name what it means
     * @param from its value on the vertical axis
     * @param to the other edge of a band; empty for a line
     */
    record Level(String name, double from, Optional<Double> to) {}
}
