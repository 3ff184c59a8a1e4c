package planewright.throws_;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.PERCENT;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;

/** Refuses throws that cannot be, beyond the bounds that stand with the inputs themselves. */
final class TravelChecks {
    private static final int MOST_THROWS = 60;

    private final Words words;
    private final SurfaceTravel.Inputs inputs;
    private final Ruler ruler;
    private final List<InputProblem> problems = new ArrayList<>();

    private TravelChecks(Words words, SurfaceTravel.Inputs inputs, Ruler ruler) {
        this.words = words;
        this.inputs = inputs;
        this.ruler = ruler;
    }

    static void require(Words words, SurfaceTravel.Inputs inputs, Ruler ruler) throws UnsuitableInput {
        var checks = new TravelChecks(words, inputs, ruler);
        checks.rows();
        checks.spreads();
        if (!checks.problems.isEmpty()) {
            throw new UnsuitableInput(checks.problems);
        }
    }

    private void rows() {
        int rows = inputs.surfaces().size();
        if (rows == 0 || rows > MOST_THROWS) {
            add(
                    "surfaces",
                    words.say("Throws"),
                    rows == 0 ? words.say("none") : words.say("{0} rows", rows),
                    words.say("from 1 to {0} rows", MOST_THROWS),
                    words.say("Write each throw with its degrees or its distance"));
        }
        var taken = new HashSet<String>();
        for (int i = 0; i < rows; i++) {
            row("surfaces[" + i + "].", i + 1, inputs.surfaces().get(i), taken);
        }
    }

    private void row(String path, int number, SurfaceTravel.ThrowLine line, HashSet<String> taken) {
        if (line.name().isBlank()) {
            add(
                    path + "name",
                    words.say("Throw of row {0}", number),
                    words.say("empty"),
                    words.say("a name"),
                    words.say("Say which surface it is and which way"));
        } else if (!taken.add(line.name().strip().toLowerCase(Locale.ROOT))) {
            add(
                    path + "name",
                    "'" + line.name().strip() + "'",
                    words.say("there twice"),
                    words.say("each throw once"),
                    "");
        }
        if (line.angle().isPresent() == line.distance().isPresent()) {
            add(
                    path + (line.angle().isPresent() ? "distance" : "angle"),
                    words.say("Throw of '{0}'", line.name().strip()),
                    line.angle().isPresent() ? words.say("given in both units") : words.say("missing"),
                    words.say("degrees or a distance, one of them"),
                    "");
            return;
        }
        line.distance()
                .ifPresent(distance -> line.chord()
                        .or(inputs::chord)
                        .ifPresent(chord -> distance(path, line.name().strip(), distance, chord)));
    }

    private void distance(String path, String name, Measured<Length> distance, Measured<Length> chord) {
        double most = ruler.greatest() * chord.in(METRE);
        if (distance.in(METRE) > most) {
            add(
                    path + "distance",
                    words.say("Distance of '{0}'", name),
                    words.show(distance),
                    words.say("up to {0}, which is 90° at a chord of {1}", words.mm(most), words.show(chord)),
                    words.say("Measure throw and chord again, at the same point"));
        }
    }

    private void spreads() {
        for (int i = 0; i < inputs.surfaces().size(); i++) {
            var path = "surfaces[" + i + "].";
            var line = inputs.surfaces().get(i);
            var name = line.name().strip();
            line.angle()
                    .ifPresent(angle -> spread(path + "angle", words.say("degrees of '{0}'", name), angle, 20, DEGREE));
            line.distance()
                    .ifPresent(length ->
                            spread(path + "distance", words.say("distance of '{0}'", name), length, 50, MILLIMETRE));
            chord(path + "chord", words.say("chord of '{0}'", name), line.chord());
        }
        chord("chord", words.say("measuring point"), inputs.chord());
        spread("highRate", words.say("high rate"), inputs.highRate(), 50, PERCENT);
        spread("lowRate", words.say("low rate"), inputs.lowRate(), 50, PERCENT);
        spread("expo", words.say("expo"), inputs.expo(), 50, PERCENT);
    }

    private void chord(String input, String name, Optional<Measured<Length>> chord) {
        chord.ifPresent(length -> spread(input, name, length, 50, MILLIMETRE));
    }

    private <Q extends Quantity<Q>> void spread(
            String input, String name, Measured<Q> value, double limit, Unit<Q> unit) {
        if (value.spreadIn(unit) > limit) {
            add(
                    input,
                    words.say("± of {0}", name),
                    words.show(Measured.of(value.spreadIn(unit), unit)),
                    words.say("up to {0}", words.show(Measured.of(limit, unit))),
                    words.say("Measure it again"));
        }
    }

    private void add(String input, String name, String value, String accepted, String wayOut) {
        problems.add(new InputProblem(input, name, value, accepted, wayOut));
    }
}
