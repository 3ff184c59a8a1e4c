package planewright.cure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
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
        return new Chart.BandsOverTime(
                words.say("Cure over the clock"),
                answer.inputs().start(),
                new Chart.Axis(words.say("Done"), "%"),
                List.of(
                        band(words.say("fully cured, from the slow end to the quick"), loading),
                        band(words.say("may be touched, from the slow end to the quick"), touching)),
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
        answer.session(answer.handsOffUntil())
                .ifPresent(session -> moments.add(new Chart.Moment(words.say("at the bench"), session.from())));
        if (answer.now().isAfter(answer.inputs().start()) && answer.now().isBefore(answer.clock(end))) {
            moments.add(new Chart.Moment(words.say("now"), answer.now()));
        }
        return moments;
    }

    /** Of a quick, a likely and a slow course. */
    private Chart.Band band(String name, double[]... courses) {
        int last = courses[1].length - 1;
        return new Chart.Band(
                name,
                IntStream.rangeClosed(0, last)
                        .mapToObj(i -> {
                            double likely = courses[1][i];
                            return new Chart.Span(
                                    end * i / last,
                                    100 * Math.min(likely, courses[2][i]),
                                    100 * likely,
                                    100 * Math.max(likely, courses[0][i]));
                        })
                        .toList());
    }
}
