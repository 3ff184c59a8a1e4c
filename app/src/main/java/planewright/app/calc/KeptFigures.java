package planewright.app.calc;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.StreamSupport;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;

/** Reads charts and drawings back from kept results. A figure that cannot be read is left out; the numbers are the record. */
public final class KeptFigures {
    private KeptFigures() {}

    /** The charts of a kept result, in its order. */
    public static List<Chart> charts(JsonNode results) {
        return read(results, node -> switch (node.path("kind").asText()) {
            case "bars" -> Optional.of(bars(node));
            case "lines" -> Optional.of(lines(node));
            case "over time" -> Optional.of(overTime(node));
            case "bands" -> Optional.of(bands(node));
            case "bands over time" -> Optional.of(bandsOverTime(node));
            case "scatter" -> Optional.of(scatter(node));
            case "region" -> Optional.of(region(node));
            default -> Optional.empty();
        });
    }

    /** The drawings of a kept result, in its order. */
    public static List<Drawing> drawings(JsonNode results) {
        return read(
                results,
                node -> node.path("kind").asText().equals("drawing") ? Optional.of(drawing(node)) : Optional.empty());
    }

    private static <T> List<T> read(JsonNode results, Function<JsonNode, Optional<? extends T>> reader) {
        var figures = new ArrayList<T>();
        for (var node : results) {
            try {
                reader.apply(node).ifPresent(figures::add);
            } catch (IllegalArgumentException | DateTimeException unreadable) {
                continue;
            }
        }
        return figures;
    }

    private static Chart bars(JsonNode node) {
        return new Chart.Bars(
                node.path("title").asText(),
                node.path("categories").asText(),
                axis(node.path("values")),
                each(
                        node.path("bars"),
                        bar -> new Chart.Bar(
                                bar.path("name").asText(),
                                bar.path("value").asDouble(),
                                bar.path("plusMinus").asDouble())));
    }

    private static Chart lines(JsonNode node) {
        return new Chart.Lines(
                node.path("title").asText(),
                axis(node.path("across")),
                axis(node.path("values")),
                each(node.path("series"), KeptFigures::series),
                each(node.path("levels"), KeptFigures::level));
    }

    private static Chart overTime(JsonNode node) {
        return new Chart.OverTime(
                node.path("title").asText(),
                LocalDateTime.parse(node.path("from").asText()),
                axis(node.path("values")),
                each(node.path("series"), KeptFigures::series),
                each(node.path("levels"), KeptFigures::level),
                each(node.path("moments"), KeptFigures::moment));
    }

    private static Chart.Moment moment(JsonNode node) {
        return new Chart.Moment(
                node.path("name").asText(), LocalDateTime.parse(node.path("at").asText()));
    }

    private static Chart bandsOverTime(JsonNode node) {
        return new Chart.BandsOverTime(
                node.path("title").asText(),
                LocalDateTime.parse(node.path("from").asText()),
                axis(node.path("values")),
                each(node.path("bands"), KeptFigures::band),
                each(node.path("levels"), KeptFigures::level),
                each(node.path("moments"), KeptFigures::moment));
    }

    private static Chart bands(JsonNode node) {
        return new Chart.Bands(
                node.path("title").asText(),
                axis(node.path("across")),
                axis(node.path("values")),
                each(node.path("bands"), KeptFigures::band),
                each(node.path("levels"), KeptFigures::level));
    }

    private static Chart.Band band(JsonNode node) {
        return new Chart.Band(node.path("name").asText(), each(node.path("spans"), KeptFigures::span));
    }

    private static Chart.Span span(JsonNode numbers) {
        return new Chart.Span(
                numbers.path(0).asDouble(),
                numbers.path(1).asDouble(),
                numbers.path(2).asDouble(),
                numbers.path(3).asDouble());
    }

    private static Chart scatter(JsonNode node) {
        return new Chart.Scatter(
                node.path("title").asText(),
                axis(node.path("across")),
                axis(node.path("values")),
                each(
                        node.path("groups"),
                        group -> new Chart.Group(
                                group.path("name").asText(), each(group.path("dots"), KeptFigures::dot))),
                node.has("fitted") ? Optional.of(series(node.path("fitted"))) : Optional.empty());
    }

    private static Chart region(JsonNode node) {
        return new Chart.Region(
                node.path("title").asText(),
                axis(node.path("across")),
                axis(node.path("values")),
                each(
                        node.path("areas"),
                        area -> new Chart.Area(
                                area.path("name").asText(),
                                constant(Chart.Sense.class, area.path("sense")),
                                each(area.path("corners"), KeptFigures::point))),
                each(node.path("lines"), KeptFigures::series),
                each(node.path("dots"), KeptFigures::dot));
    }

    private static Chart.Dot dot(JsonNode node) {
        return new Chart.Dot(node.path("name").asText(), point(node.path("at")));
    }

    private static Chart.Series series(JsonNode node) {
        return new Chart.Series(node.path("name").asText(), each(node.path("points"), KeptFigures::point));
    }

    private static Chart.Level level(JsonNode node) {
        return new Chart.Level(
                node.path("name").asText(),
                node.path("from").asDouble(),
                node.has("to") ? Optional.of(node.path("to").asDouble()) : Optional.empty());
    }

    private static Drawing drawing(JsonNode node) {
        return new Drawing(
                node.path("title").asText(),
                each(
                        node.path("layers"),
                        layer -> new Drawing.Layer(
                                constant(Drawing.Use.class, layer.path("use")),
                                each(layer.path("shapes"), KeptFigures::shape))));
    }

    private static Drawing.Shape shape(JsonNode node) {
        return switch (node.path("kind").asText()) {
            case "path" ->
                new Drawing.Path(
                        each(node.path("points"), KeptFigures::point),
                        node.path("closed").asBoolean());
            case "disc" ->
                new Drawing.Disc(
                        point(node.path("centre")),
                        node.path("radius").asDouble(),
                        node.path("label").asText());
            case "mark" ->
                new Drawing.Mark(
                        point(node.path("at")),
                        constant(Drawing.Sign.class, node.path("sign")),
                        node.path("label").asText());
            case "dimension" ->
                new Drawing.Dimension(
                        point(node.path("from")),
                        point(node.path("to")),
                        node.path("text").asText());
            case "note" ->
                new Drawing.Note(point(node.path("at")), node.path("text").asText());
            default -> throw new IllegalArgumentException("unknown shape " + node);
        };
    }

    private static Chart.Axis axis(JsonNode node) {
        return new Chart.Axis(node.path("label").asText(), node.path("unit").asText("1"));
    }

    private static Point point(JsonNode pair) {
        return new Point(pair.path(0).asDouble(), pair.path(1).asDouble());
    }

    private static <E extends Enum<E>> E constant(Class<E> type, JsonNode word) {
        return Enum.valueOf(type, word.asText().toUpperCase(Locale.ROOT).replace(' ', '_'));
    }

    private static <T> List<T> each(JsonNode array, Function<JsonNode, T> reader) {
        return StreamSupport.stream(array.spliterator(), false).map(reader).toList();
    }
}
