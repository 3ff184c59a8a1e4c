package planewright.app.calc;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;
import planewright.app.store.JsonFiles;

/** Charts and drawings as JSON; points are pairs of numbers. */
final class FigureJson {
    /** Kinds of charts by the words that files carry. */
    static final Map<String, Class<? extends Chart>> KINDS = Map.of(
            "bars", Chart.Bars.class,
            "lines", Chart.Lines.class,
            "over time", Chart.OverTime.class,
            "bands", Chart.Bands.class,
            "bands over time", Chart.BandsOverTime.class,
            "scatter", Chart.Scatter.class,
            "region", Chart.Region.class);

    private FigureJson() {}

    static ObjectNode chart(Chart chart) {
        var node = JsonFiles.object().put("kind", kind(chart)).put("title", chart.title());
        if (chart instanceof Chart.Bars bars) {
            node.put("categories", bars.categories());
            node.set("values", axis(bars.values()));
            var array = node.putArray("bars");
            bars.bars()
                    .forEach(bar -> array.addObject()
                            .put("name", bar.name())
                            .put("value", bar.value())
                            .put("plusMinus", bar.plusMinus()));
        } else if (chart instanceof Chart.Lines lines) {
            node.set("across", axis(lines.across()));
            lines(node, lines.values(), lines.series(), lines.levels());
        } else if (chart instanceof Chart.OverTime times) {
            node.put("from", times.from().toString());
            lines(node, times.values(), times.series(), times.levels());
            moments(node, times.moments());
        } else if (chart instanceof Chart.BandsOverTime bands) {
            node.put("from", bands.from().toString());
            node.set("values", axis(bands.values()));
            bands(node.putArray("bands"), bands.bands());
            levels(node, bands.levels());
            moments(node, bands.moments());
        } else if (chart instanceof Chart.Bands bands) {
            node.set("across", axis(bands.across()));
            node.set("values", axis(bands.values()));
            bands(node.putArray("bands"), bands.bands());
            levels(node, bands.levels());
        } else if (chart instanceof Chart.Scatter scatter) {
            node.set("across", axis(scatter.across()));
            node.set("values", axis(scatter.values()));
            var groups = node.putArray("groups");
            scatter.groups()
                    .forEach(group ->
                            dots(groups.addObject().put("name", group.name()).putArray("dots"), group.dots()));
            scatter.fitted().ifPresent(line -> series(node.putObject("fitted"), line));
        } else if (chart instanceof Chart.Region region) {
            node.set("across", axis(region.across()));
            node.set("values", axis(region.values()));
            var areas = node.putArray("areas");
            region.areas()
                    .forEach(area -> points(
                            areas.addObject()
                                    .put("name", area.name())
                                    .put("sense", word(area.sense()))
                                    .putArray("corners"),
                            area.corners()));
            var lines = node.putArray("lines");
            region.lines().forEach(line -> series(lines.addObject(), line));
            dots(node.putArray("dots"), region.dots());
        }
        return node;
    }

    private static String kind(Chart chart) {
        return KINDS.entrySet().stream()
                .filter(kind -> kind.getValue().isInstance(chart))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    private static void moments(ObjectNode node, List<Chart.Moment> moments) {
        var array = node.putArray("moments");
        moments.forEach(moment -> array.addObject()
                .put("name", moment.name())
                .put("at", moment.at().toString()));
    }

    private static void bands(ArrayNode array, List<Chart.Band> bands) {
        for (var band : bands) {
            var spans = array.addObject().put("name", band.name()).putArray("spans");
            band.spans()
                    .forEach(span -> spans.addArray()
                            .add(span.x())
                            .add(span.low())
                            .add(span.middle())
                            .add(span.high()));
        }
    }

    private static void dots(ArrayNode array, List<Chart.Dot> dots) {
        dots.forEach(dot -> point(array.addObject().put("name", dot.name()).putArray("at"), dot.at()));
    }

    private static void series(ObjectNode node, Chart.Series line) {
        points(node.put("name", line.name()).putArray("points"), line.points());
    }

    private static void lines(ObjectNode node, Chart.Axis values, List<Chart.Series> lines, List<Chart.Level> across) {
        node.set("values", axis(values));
        var series = node.putArray("series");
        lines.forEach(each -> series(series.addObject(), each));
        levels(node, across);
    }

    private static void levels(ObjectNode node, List<Chart.Level> across) {
        var levels = node.putArray("levels");
        across.forEach(level -> {
            var object = levels.addObject().put("name", level.name()).put("from", level.from());
            level.to().ifPresent(to -> object.put("to", to));
        });
    }

    static ObjectNode drawing(Drawing drawing) {
        var node = JsonFiles.object()
                .put("kind", "drawing")
                .put("title", drawing.title())
                .put("unit", "mm");
        var layers = node.putArray("layers");
        for (var layer : drawing.layers()) {
            var shapes = layers.addObject().put("use", word(layer.use())).putArray("shapes");
            layer.shapes().forEach(shape -> shapes.add(shape(shape)));
        }
        return node;
    }

    private static ObjectNode shape(Drawing.Shape shape) {
        var node = JsonFiles.object();
        if (shape instanceof Drawing.Path path) {
            points(node.put("kind", "path").put("closed", path.closed()).putArray("points"), path.points());
        } else if (shape instanceof Drawing.Disc disc) {
            node.put("kind", "disc").put("radius", disc.radius()).put("label", disc.label());
            point(node.putArray("centre"), disc.centre());
        } else if (shape instanceof Drawing.Mark mark) {
            node.put("kind", "mark").put("sign", word(mark.sign())).put("label", mark.label());
            point(node.putArray("at"), mark.at());
        } else if (shape instanceof Drawing.Dimension dimension) {
            node.put("kind", "dimension").put("text", dimension.text());
            point(node.putArray("from"), dimension.from());
            point(node.putArray("to"), dimension.to());
        } else if (shape instanceof Drawing.Note note) {
            node.put("kind", "note").put("text", note.text());
            point(node.putArray("at"), note.at());
        }
        return node;
    }

    private static void points(ArrayNode array, Iterable<Point> points) {
        points.forEach(point -> point(array.addArray(), point));
    }

    private static void point(ArrayNode pair, Point point) {
        pair.add(point.x()).add(point.y());
    }

    private static ObjectNode axis(Chart.Axis axis) {
        return JsonFiles.object().put("label", axis.label()).put("unit", axis.unit());
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
