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

/** Charts of throws. */
final class TravelFigures {
    private static final int STEPS = 40;

    /** The chart of rulers reaches at least so far, in degrees. */
    private static final double LEAST_SHOWN = 30;

    private final Words words;
    private final TravelAnswer answer;

    TravelFigures(TravelAnswer answer) {
        this.words = answer.words();
        this.answer = answer;
    }

    Chart stick() {
        double high = answer.inputs().highRate().in(NUMBER);
        double low = answer.inputs().lowRate().in(NUMBER);
        return new Chart.Lines(
                words.say("Throw against stick"),
                new Chart.Axis(words.say("Stick"), "%"),
                new Chart.Axis(words.say("Throw"), "%"),
                List.of(
                        line(
                                words.say("high rate"),
                                100,
                                stick -> 100 * high * answer.expo().at(stick / 100)),
                        line(
                                words.say("low rate"),
                                100,
                                stick -> 100 * low * answer.expo().at(stick / 100)),
                        line(words.say("high rate without expo"), 100, stick -> high * stick)),
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
                        words.say("Distance against degrees at {0}", words.show(chord.to(MILLIMETRE))),
                        new Chart.Axis(words.say("Surface"), "deg"),
                        new Chart.Axis(words.say("At the measuring point"), "mm"),
                        List.of(
                                ruler(words.say("straight line"), Ruler.STRAIGHT, chord.in(MILLIMETRE), farthest),
                                ruler(words.say("square to neutral"), Ruler.SQUARE, chord.in(MILLIMETRE), farthest),
                                ruler(words.say("along the arc"), Ruler.ARC, chord.in(MILLIMETRE), farthest)),
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
