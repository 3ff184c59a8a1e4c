package planewright.cure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import planewright.api.figure.Chart;
import planewright.api.figure.Point;

/** The charts of an answer. */
final class CureFigures {
    private static final int INSTANTS = 121;
    private static final int MOST_READINGS = 400;
    private static final double BEYOND = 1.05;
    private static final double LEAST_SHOWN = 0.1;

    private final Words words;
    private final CureAnswer answer;
    private final double end;

    CureFigures(CureAnswer answer) {
        this.words = answer.words();
        this.answer = answer;
        this.end = Math.min(
                Progress.LONGEST, Math.max(LEAST_SHOWN, BEYOND * answer.cured().slow()));
    }

    /** How much of the time until fully cured has been earned, over the clock, and of the time until it may be touched. */
    Chart cure() {
        var loading = answer.loading().courses(end, INSTANTS);
        var touching = answer.touching().courses(end, INSTANTS);
        return new Chart.OverTime(
                words.say("Cure over the clock"),
                answer.inputs().start(),
                new Chart.Axis(words.say("Done"), "%"),
                List.of(
                        line(words.say("fully cured, likely"), loading[1]),
                        line(words.say("at the quick end"), loading[0]),
                        line(words.say("at the slow end"), loading[2]),
                        line(words.say("may be touched, likely"), touching[1])),
                List.of(),
                moments());
    }

    Chart shop() {
        var points = answer.bench().air().course(end, MOST_READINGS).stream()
                .map(at -> new Point(at[0], at[1] - Curing.ZERO_CELSIUS))
                .toList();
        return new Chart.OverTime(
                words.say("Temperature of the shop"),
                answer.inputs().start(),
                new Chart.Axis(words.say("Temperature"), "Cel"),
                List.of(new Chart.Series(words.say("shop"), points)),
                usable(),
                moments());
    }

    private List<Chart.Level> usable() {
        return answer.curing().fact("usable temperature").stream()
                .filter(fact -> fact.low().isPresent())
                .map(fact ->
                        new Chart.Level(words.say("usable from"), fact.low().getAsDouble(), Optional.empty()))
                .toList();
    }

    private List<Chart.Moment> moments() {
        var moments = new ArrayList<Chart.Moment>();
        moments.add(new Chart.Moment(words.say("hands off until"), answer.handsOffUntil()));
        moments.add(new Chart.Moment(words.say("fully cured"), answer.fullyCured()));
        if (answer.now().isAfter(answer.inputs().start()) && answer.now().isBefore(answer.clock(end))) {
            moments.add(new Chart.Moment(words.say("now"), answer.now()));
        }
        return moments;
    }

    private Chart.Series line(String name, double... shares) {
        var points = new ArrayList<Point>();
        for (int i = 0; i < shares.length; i++) {
            points.add(new Point(end * i / (shares.length - 1), 100 * shares[i]));
        }
        return new Chart.Series(name, points);
    }
}
