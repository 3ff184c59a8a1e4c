package planewright.api.figure;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.apiguardian.api.API;

/** A chart as data; see the kinds below. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public sealed interface Chart
        permits Chart.Bars, Chart.Lines, Chart.OverTime, Chart.Bands, Chart.BandsOverTime, Chart.Scatter, Chart.Region {
    /** {@return what it shows, in a builder's words} */
    String title();

    /** {@return the axis that carries the values} */
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

    /**
     * Lines over a common axis, each with the band in which it may as well lie.
     *
     * @param title what it shows
     * @param across the horizontal axis
     * @param values the vertical axis
     * @param bands the lines with their bands
     * @param levels lines straight across, at a value
     */
    record Bands(String title, Axis across, Axis values, List<Band> bands, List<Level> levels) implements Chart {
        public Bands {
            bands = List.copyOf(bands);
            levels = List.copyOf(levels);
        }
    }

    /**
     * Lines over clock time, each with the band in which it may as well lie.
     *
     * @param title what it shows
     * @param from the instant from which the spans count
     * @param values the vertical axis
     * @param bands the lines with their bands; a span's x is in hours after {@code from}
     * @param levels lines straight across, at a value
     * @param moments lines straight up, at a time
     */
    record BandsOverTime(
            String title, LocalDateTime from, Axis values, List<Band> bands, List<Level> levels, List<Moment> moments)
            implements Chart {
        public BandsOverTime {
            bands = List.copyOf(bands);
            levels = List.copyOf(levels);
            moments = List.copyOf(moments);
        }
    }

    /**
     * A line and the band about it.
     *
     * @param name what it shows
     * @param spans from left to right
     */
    record Band(String name, List<Span> spans) {
        public Band {
            spans = List.copyOf(spans);
        }
    }

    /**
     * A band at a place. All in the units of the axes, and finite.
     *
     * @param x the place
     * @param low the lower edge, at most {@code middle}
     * @param middle the line
     * @param high the upper edge, at least {@code middle}
     */
    record Span(double x, double low, double middle, double high) {
        public Span {
            if (!Double.isFinite(x)
                    || !Double.isFinite(low)
                    || !Double.isFinite(high)
                    || !(low <= middle && middle <= high)) {
                throw new IllegalArgumentException("a band at " + x + " runs from " + low + " over " + middle + " to "
                        + high + "; accepted: finite numbers in this order");
            }
        }
    }

    /**
     * Dots, one a thing that was measured twice over: what stands on one axis against what stands on the other.
     *
     * @param title what it shows
     * @param across the horizontal axis
     * @param values the vertical axis
     * @param groups the dots, those of a kind together
     * @param fitted a line through them; its name says which
     */
    record Scatter(String title, Axis across, Axis values, List<Group> groups, Optional<Series> fitted)
            implements Chart {
        public Scatter {
            groups = List.copyOf(groups);
        }
    }

    /**
     * Dots of a kind.
     *
     * @param name what they have in common
     * @param dots in any order
     */
    record Group(String name, List<Dot> dots) {
        public Group {
            dots = List.copyOf(dots);
        }
    }

    /**
     * A dot.
     *
     * @param name written beside it where there is room; may be empty
     * @param at its place in the units of the axes
     */
    record Dot(String name, Point at) {}

    /**
     * Areas that mean something, such as what is allowed, and where one is.
     *
     * @param title what it shows
     * @param across the horizontal axis
     * @param values the vertical axis
     * @param areas filled, later over earlier
     * @param lines drawn over the areas
     * @param dots where one is, or could be; drawn over all
     */
    record Region(String title, Axis across, Axis values, List<Area> areas, List<Series> lines, List<Dot> dots)
            implements Chart {
        public Region {
            areas = List.copyOf(areas);
            lines = List.copyOf(lines);
            dots = List.copyOf(dots);
        }
    }

    /**
     * An area; its name is written in it.
     *
     * @param name what it means
     * @param sense how good it is to be there
     * @param corners at least three, in order around it, in the units of the axes
     */
    record Area(String name, Sense sense, List<Point> corners) {
        public Area {
            corners = List.copyOf(corners);
            if (corners.size() < 3) {
                throw new IllegalArgumentException(
                        "area '" + name + "' has " + corners.size() + " corners; accepted: 3 or more");
            }
        }
    }

    /** How good it is to be in an area. */
    enum Sense {
        /** One may be there. */
        ALLOWED,
        /** Look again before one goes there. */
        DOUBTFUL,
        /** One may not be there. */
        REFUSED
    }
}
