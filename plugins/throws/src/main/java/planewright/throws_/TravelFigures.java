package planewright.throws_;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.NUMBER;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import planewright.api.figure.Chart;
import planewright.api.figure.Point;
import planewright.shared.quantity.QuantityText;

/** Charts of throws. */
final class TravelFigures {
    private static final int STEPS = 40;

    /** The chart of rulers reaches at least so far, in degrees. */
    private static final double LEAST_SHOWN = 30;

    private final TravelAnswer answer;

    TravelFigures(TravelAnswer answer) {
        this.answer = answer;
    }

    Chart stick() {
        double high = answer.inputs().highRate().in(NUMBER);
        double low = answer.inputs().lowRate().in(NUMBER);
        return new Chart.Lines(
                "Throw against stick",
                new Chart.Axis("Stick", "%"),
                new Chart.Axis("Throw", "%"),
                List.of(
                        line(
                                "high rate",
                                100,
                                stick -> 100 * high * answer.expo().at(stick / 100)),
                        line("low rate", 100, stick -> 100 * low * answer.expo().at(stick / 100)),
                        line("high rate without expo", 100, stick -> high * stick)),
                List.of());
    }

    /** For the measuring point of the first throw that has one. */
    Optional<Chart> rulers() {
        double farthest = Math.min(
                90,
                answer.travels().stream()
                        .flatMap(travel -> travel.angle(answer.inputs().highRate()).stream())
                        .mapToDouble(angle -> 1.1 * angle.in(DEGREE))
                        .reduce(LEAST_SHOWN, Math::max));
        return answer.travels().stream()
                .flatMap(travel -> travel.chord().stream())
                .findFirst()
                .map(chord -> new Chart.Lines(
                        "Millimetres against degrees at " + QuantityText.show(chord, MILLIMETRE),
                        new Chart.Axis("Surface", "deg"),
                        new Chart.Axis("At the measuring point", "mm"),
                        List.of(
                                ruler("straight line", Ruler.STRAIGHT, chord.in(MILLIMETRE), farthest),
                                ruler("square to neutral", Ruler.SQUARE, chord.in(MILLIMETRE), farthest),
                                ruler("along the arc", Ruler.ARC, chord.in(MILLIMETRE), farthest)),
                        List.of()));
    }

    private static Chart.Series ruler(String name, Ruler ruler, double chord, double farthest) {
        return line(name, farthest, degrees -> chord * ruler.factor(Math.toRadians(degrees)));
    }

    private static Chart.Series line(String name, double to, DoubleUnaryOperator value) {
        return new Chart.Series(
                name,
                IntStream.rangeClosed(0, STEPS)
                        .mapToDouble(i -> to * i / STEPS)
                        .mapToObj(x -> new Point(x, value.applyAsDouble(x)))
                        .toList());
    }
}
