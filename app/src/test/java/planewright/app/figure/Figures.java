package planewright.app.figure;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;

/** Charts and drawings, from nothing to far too much. */
public final class Figures {
    private static final Chart.Axis GRAMS = new Chart.Axis("Mass", "g");
    private static final Chart.Axis STATION = new Chart.Axis("Station", "mm");

    private static final LocalDateTime EVENING = LocalDateTime.of(2025, 3, 14, 20, 15);

    private Figures() {}

    /** A drawing whose cut is a rectangle of that size, in millimetres, away from the origin. */
    public static Drawing rectangle(double width, double height) {
        var corners = List.of(
                new Point(-30, 20),
                new Point(-30 + width, 20),
                new Point(-30 + width, 20 + height),
                new Point(-30, 20 + height));
        return new Drawing(
                "Former", List.of(new Drawing.Layer(Drawing.Use.CUT, List.of(new Drawing.Path(corners, true)))));
    }

    /** A wing with parts close together, each with its name. */
    public static Drawing crowded(int parts) {
        var shapes = new ArrayList<Drawing.Shape>();
        for (int i = 0; i < parts; i++) {
            shapes.add(new Drawing.Disc(new Point(i % 5 * 12, i / 5 * 7), 4, "part " + (char) ('A' + i)));
        }
        shapes.add(new Drawing.Mark(new Point(24, 14), Drawing.Sign.BALANCE_POINT, "balances here"));
        shapes.add(new Drawing.Mark(new Point(25, 15), Drawing.Sign.TARGET, "target"));
        shapes.add(new Drawing.Dimension(new Point(0, -20), new Point(48, -20), "48 mm"));
        shapes.add(new Drawing.Note(new Point(0, 60), "seen from above"));
        return new Drawing(
                "Plan",
                List.of(
                        new Drawing.Layer(
                                Drawing.Use.OUTLINE,
                                List.of(new Drawing.Path(
                                        List.of(new Point(-200, 0), new Point(0, 90), new Point(200, 0)), true))),
                        new Drawing.Layer(Drawing.Use.PART, shapes)));
    }

    /** Every kind of drawing one could meet. */
    public static Stream<Drawing> drawings() {
        var here = new Point(5, 5);
        return Stream.of(
                new Drawing("Nothing", List.of()),
                new Drawing("An empty layer", List.of(new Drawing.Layer(Drawing.Use.CUT, List.of()))),
                one(new Drawing.Mark(here, Drawing.Sign.DATUM, "alone")),
                one(new Drawing.Mark(here, Drawing.Sign.SUPPORT, "")),
                one(new Drawing.Path(List.of(here, here), false)),
                one(new Drawing.Dimension(here, here, "0 mm")),
                one(new Drawing.Path(List.of(new Point(0, 0), new Point(5000, 0)), false)),
                one(new Drawing.Path(List.of(new Point(-1e9, -1e9), new Point(1e9, 1e9)), true)),
                one(new Drawing.Disc(new Point(0, 0), 1e-9, "tiny")),
                one(new Drawing.Note(here, "words ".repeat(200))),
                rectangle(100, 50),
                crowded(20));
    }

    /** Every kind of chart one could meet. */
    public static Stream<Chart> charts() {
        return Stream.of(
                new Chart.Bars("Nothing", "Part", GRAMS, List.of()),
                bars(1, 212),
                bars(12, 212),
                bars(300, 1e12),
                new Chart.Bars("Same names", "Part", GRAMS, List.of(bar("a", 1), bar("a", 2))),
                new Chart.Bars("Zeros", "Part", GRAMS, List.of(bar("a", 0), bar("b", 0))),
                new Chart.Bars("Both ways", "Part", GRAMS, List.of(bar("a", -5), bar("b", 1e-300))),
                new Chart.Bars("Long", "Part", GRAMS, List.of(bar("name ".repeat(60), 5))),
                new Chart.Lines("Nothing", STATION, GRAMS, List.of(), List.of()),
                new Chart.Lines("Empty line", STATION, GRAMS, List.of(new Chart.Series("s", List.of())), List.of()),
                lines(1),
                lines(2),
                lines(20_000),
                new Chart.OverTime("Nothing", EVENING, GRAMS, List.of(), List.of(), List.of()),
                overTime(60),
                overTime(9_000),
                new Chart.Bands("Nothing", STATION, GRAMS, List.of(), List.of()),
                bands(1, 1),
                bands(60, 0),
                bands(9_000, 5),
                new Chart.BandsOverTime("Nothing", EVENING, GRAMS, List.of(), List.of(), List.of()),
                bandsOverTime(60, 5),
                bandsOverTime(9_000, 0),
                new Chart.Scatter("Nothing", STATION, GRAMS, List.of(), Optional.empty()),
                scatter(1),
                scatter(200),
                new Chart.Region("Nothing", STATION, GRAMS, List.of(), List.of(), List.of()),
                region(square(0, 0, 100)),
                region(square(0, 0, 100), square(1e9, -1e9, 1e12)),
                region(new Chart.Area(
                        "flat and called ".repeat(40),
                        Chart.Sense.REFUSED,
                        List.of(new Point(5, 5), new Point(5, 5), new Point(9, 9)))),
                new Chart.Region(
                        "Alone", STATION, GRAMS, List.of(), List.of(), List.of(new Chart.Dot("here", new Point(0, 0)))),
                new Chart.Lines(
                        "Same names",
                        STATION,
                        new Chart.Axis("Other", "no unit of ours"),
                        List.of(series("s", 3), series("s", 4)),
                        List.of(new Chart.Level("far", 1e15, Optional.empty()))));
    }

    private static Drawing one(Drawing.Shape shape) {
        return new Drawing("One", List.of(new Drawing.Layer(Drawing.Use.PART, List.of(shape))));
    }

    private static Chart bars(int number, double largest) {
        return new Chart.Bars(
                "Masses",
                "Part",
                GRAMS,
                IntStream.range(0, number)
                        .mapToObj(i -> new Chart.Bar("part " + i, largest * (i + 1) / number, largest / 20))
                        .toList());
    }

    private static Chart.Bar bar(String name, double value) {
        return new Chart.Bar(name, value, 0);
    }

    private static Chart lines(int points) {
        return new Chart.Lines(
                "Lines",
                STATION,
                GRAMS,
                List.of(series("one", points), series("two", points)),
                List.of(
                        new Chart.Level("limit", 0.5, Optional.empty()),
                        new Chart.Level("band", -0.2, Optional.of(0.2))));
    }

    /** A band whose half width is the spread. */
    static Chart bands(int places, double spread) {
        return new Chart.Bands(
                "Bands",
                STATION,
                GRAMS,
                List.of(band(places, spread)),
                List.of(new Chart.Level("limit", 5, Optional.empty())));
    }

    static Chart bandsOverTime(int hours, double spread) {
        return new Chart.BandsOverTime(
                "Bands through the night",
                EVENING,
                GRAMS,
                List.of(band(hours, spread)),
                List.of(new Chart.Level("limit", 5, Optional.empty())),
                List.of(new Chart.Moment("hands off until", EVENING.plusHours(8))));
    }

    private static Chart.Band band(int places, double spread) {
        return new Chart.Band(
                "likely",
                IntStream.range(0, places)
                        .mapToObj(i -> new Chart.Span(i, i - spread, i, i + spread))
                        .toList());
    }

    static Chart scatter(int dots) {
        return new Chart.Scatter(
                "Dots",
                STATION,
                GRAMS,
                List.of(new Chart.Group(
                        "builds",
                        IntStream.range(0, dots)
                                .mapToObj(i -> new Chart.Dot("build " + i, new Point(i % 17, i % 13)))
                                .toList())),
                Optional.of(new Chart.Series("fitted", List.of(new Point(0, 0), new Point(16, 12)))));
    }

    static Chart.Region region(Chart.Area... areas) {
        return new Chart.Region(
                "Areas",
                STATION,
                GRAMS,
                List.of(areas),
                List.of(new Chart.Series("edge", List.of(new Point(0, 0), new Point(100, 100)))),
                List.of(new Chart.Dot("now", new Point(20, 70))));
    }

    static Chart.Area square(double x, double y, double edge) {
        return new Chart.Area(
                "may be",
                Chart.Sense.ALLOWED,
                List.of(
                        new Point(x, y),
                        new Point(x + edge, y),
                        new Point(x + edge, y + edge),
                        new Point(x, y + edge)));
    }

    private static Chart overTime(int points) {
        return new Chart.OverTime(
                "Through the night",
                EVENING,
                GRAMS,
                List.of(series("one", points), series("two", points)),
                List.of(new Chart.Level("limit", 0.5, Optional.empty())),
                List.of(
                        new Chart.Moment("hands off until", EVENING.plusHours(8)),
                        new Chart.Moment("another year", EVENING.plusYears(3))));
    }

    private static Chart.Series series(String name, int points) {
        return new Chart.Series(
                name,
                IntStream.range(0, points)
                        .mapToObj(i -> new Point(i, Math.sin(i / 7.0)))
                        .toList());
    }
}
