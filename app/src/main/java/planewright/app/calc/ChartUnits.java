package planewright.app.calc;

import java.util.List;
import java.util.Optional;
import javax.measure.Unit;
import planewright.api.figure.Chart;
import planewright.api.figure.Chart.Area;
import planewright.api.figure.Chart.Axis;
import planewright.api.figure.Chart.Band;
import planewright.api.figure.Chart.Bar;
import planewright.api.figure.Chart.Bars;
import planewright.api.figure.Chart.Dot;
import planewright.api.figure.Chart.Group;
import planewright.api.figure.Chart.Level;
import planewright.api.figure.Chart.Series;
import planewright.api.figure.Chart.Span;
import planewright.api.figure.Point;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.UnitChoice;

/** Charts with their axes in the units that somebody prefers; an axis of a unit that is not in the table stays as it is. */
public final class ChartUnits {
    private final Turned across;
    private final Turned values;

    private ChartUnits(Turned across, Turned values) {
        this.across = across;
        this.values = values;
    }

    /** The same chart in other units. */
    public static Chart in(Chart chart, UnitChoice units) {
        if (chart instanceof Bars bars) {
            return new ChartUnits(Turned.NOT, Turned.of(bars.values(), units)).bars(bars);
        }
        if (chart instanceof Chart.Lines lines) {
            return of(lines.across(), lines.values(), units).lines(lines);
        }
        if (chart instanceof Chart.OverTime over) {
            return new ChartUnits(Turned.NOT, Turned.of(over.values(), units)).overTime(over);
        }
        if (chart instanceof Chart.Bands bands) {
            return of(bands.across(), bands.values(), units).bands(bands);
        }
        if (chart instanceof Chart.BandsOverTime over) {
            return new ChartUnits(Turned.NOT, Turned.of(over.values(), units)).bandsOverTime(over);
        }
        if (chart instanceof Chart.Scatter scatter) {
            return of(scatter.across(), scatter.values(), units).scatter(scatter);
        }
        var region = (Chart.Region) chart;
        return of(region.across(), region.values(), units).region(region);
    }

    private static ChartUnits of(Axis across, Axis values, UnitChoice units) {
        return new ChartUnits(Turned.of(across, units), Turned.of(values, units));
    }

    private Chart bars(Bars chart) {
        return new Bars(
                chart.title(),
                chart.categories(),
                values.axis(chart.values()),
                chart.bars().stream()
                        .map(bar -> new Bar(bar.name(), values.at(bar.value()), values.wide(bar.plusMinus())))
                        .toList());
    }

    private Chart lines(Chart.Lines chart) {
        return new Chart.Lines(
                chart.title(),
                across.axis(chart.across()),
                values.axis(chart.values()),
                series(chart.series()),
                levels(chart.levels()));
    }

    private Chart overTime(Chart.OverTime chart) {
        return new Chart.OverTime(
                chart.title(),
                chart.from(),
                values.axis(chart.values()),
                series(chart.series()),
                levels(chart.levels()),
                chart.moments());
    }

    private Chart bands(Chart.Bands chart) {
        return new Chart.Bands(
                chart.title(),
                across.axis(chart.across()),
                values.axis(chart.values()),
                spans(chart.bands()),
                levels(chart.levels()));
    }

    private Chart bandsOverTime(Chart.BandsOverTime chart) {
        return new Chart.BandsOverTime(
                chart.title(),
                chart.from(),
                values.axis(chart.values()),
                spans(chart.bands()),
                levels(chart.levels()),
                chart.moments());
    }

    private Chart scatter(Chart.Scatter chart) {
        return new Chart.Scatter(
                chart.title(),
                across.axis(chart.across()),
                values.axis(chart.values()),
                chart.groups().stream()
                        .map(group -> new Group(group.name(), dots(group.dots())))
                        .toList(),
                chart.fitted().map(this::line));
    }

    private Chart region(Chart.Region chart) {
        return new Chart.Region(
                chart.title(),
                across.axis(chart.across()),
                values.axis(chart.values()),
                chart.areas().stream()
                        .map(area -> new Area(area.name(), area.sense(), points(area.corners())))
                        .toList(),
                series(chart.lines()),
                dots(chart.dots()));
    }

    private List<Series> series(List<Series> all) {
        return all.stream().map(this::line).toList();
    }

    private Series line(Series series) {
        return new Series(series.name(), points(series.points()));
    }

    private List<Level> levels(List<Level> levels) {
        return levels.stream()
                .map(level -> new Level(
                        level.name(), values.at(level.from()), level.to().map(values::at)))
                .toList();
    }

    private List<Band> spans(List<Band> bands) {
        return bands.stream()
                .map(band -> new Band(
                        band.name(),
                        band.spans().stream()
                                .map(span -> new Span(
                                        across.at(span.x()),
                                        values.at(span.low()),
                                        values.at(span.middle()),
                                        values.at(span.high())))
                                .toList()))
                .toList();
    }

    private List<Dot> dots(List<Dot> dots) {
        return dots.stream().map(dot -> new Dot(dot.name(), point(dot.at()))).toList();
    }

    private List<Point> points(List<Point> points) {
        return points.stream().map(this::point).toList();
    }

    private Point point(Point point) {
        return new Point(across.at(point.x()), values.at(point.y()));
    }

    /** An axis from one unit to another; both empty where it stays as it is. */
    private record Turned(Optional<Unit<?>> from, Optional<Unit<?>> to) {
        static final Turned NOT = new Turned(Optional.empty(), Optional.empty());

        static Turned of(Axis axis, UnitChoice units) {
            var from = Units.ofCode(axis.unit());
            var to = from.map(units::shown);
            return from.equals(to) ? NOT : new Turned(from, to);
        }

        Axis axis(Axis axis) {
            return to.map(unit -> new Axis(axis.label(), Units.codeOf(unit))).orElse(axis);
        }

        double at(double value) {
            return to.map(unit -> number(QuantityText.in(Measured.of(value, from.orElseThrow()), unit)))
                    .orElse(value);
        }

        /** A width, which has no place of its own: of temperatures the degrees count, not where their 0 is. */
        double wide(double width) {
            return to.map(unit -> QuantityText.in(Measured.of(0, width, from.orElseThrow()), unit)
                            .plusMinus()
                            .map(spread -> spread.getValue().doubleValue())
                            .orElse(0.0))
                    .orElse(width);
        }

        private static double number(Measured<?> value) {
            return value.value().getValue().doubleValue();
        }
    }
}
