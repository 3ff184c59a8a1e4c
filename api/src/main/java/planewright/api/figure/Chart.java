package planewright.api.figure;

import java.util.List;
import java.util.Optional;

/** A chart as data; see the kinds below. */
public sealed interface Chart permits Chart.Bars, Chart.Lines {
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
