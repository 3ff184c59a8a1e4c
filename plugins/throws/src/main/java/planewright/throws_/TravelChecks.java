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
import planewright.shared.quantity.QuantityText;

/** Refuses throws that cannot be, beyond the bounds that stand with the inputs themselves. */
final class TravelChecks {
    private static final int MOST_THROWS = 60;

    private final SurfaceTravel.Inputs inputs;
    private final Ruler ruler;
    private final List<InputProblem> problems = new ArrayList<>();

    private TravelChecks(SurfaceTravel.Inputs inputs, Ruler ruler) {
        this.inputs = inputs;
        this.ruler = ruler;
    }

    static void require(SurfaceTravel.Inputs inputs, Ruler ruler) throws UnsuitableInput {
        var checks = new TravelChecks(inputs, ruler);
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
                    "Throws",
                    rows == 0 ? "none" : rows + " rows",
                    "from 1 to " + MOST_THROWS + " rows",
                    "Write each throw with its degrees or its millimetres");
        }
        var taken = new HashSet<String>();
        for (int i = 0; i < rows; i++) {
            row("surfaces[" + i + "].", i + 1, inputs.surfaces().get(i), taken);
        }
    }

    private void row(String path, int number, SurfaceTravel.ThrowLine line, HashSet<String> taken) {
        if (line.name().isBlank()) {
            add(path + "name", "Throw of row " + number, "empty", "a name", "Say which surface it is and which way");
        } else if (!taken.add(line.name().strip().toLowerCase(Locale.ROOT))) {
            add(path + "name", "'" + line.name().strip() + "'", "there twice", "each throw once", "");
        }
        if (line.angle().isPresent() == line.distance().isPresent()) {
            add(
                    path + (line.angle().isPresent() ? "distance" : "angle"),
                    "Throw of '" + line.name().strip() + "'",
                    line.angle().isPresent() ? "given in both units" : "missing",
                    "degrees or millimetres, one of them",
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
                    "Millimetres of '" + name + "'",
                    QuantityText.show(distance),
                    "up to " + Words.mm(most) + ", which is 90° at a chord of " + QuantityText.show(chord),
                    "Measure throw and chord again, at the same point");
        }
    }

    private void spreads() {
        for (int i = 0; i < inputs.surfaces().size(); i++) {
            var path = "surfaces[" + i + "].";
            var line = inputs.surfaces().get(i);
            var of = " of '" + line.name().strip() + "'";
            line.angle().ifPresent(angle -> spread(path + "angle", "degrees" + of, angle, 20, DEGREE));
            line.distance().ifPresent(length -> spread(path + "distance", "millimetres" + of, length, 50, MILLIMETRE));
            chord(path + "chord", "chord" + of, line.chord());
        }
        chord("chord", "measuring point", inputs.chord());
        spread("highRate", "high rate", inputs.highRate(), 50, PERCENT);
        spread("lowRate", "low rate", inputs.lowRate(), 50, PERCENT);
        spread("expo", "expo", inputs.expo(), 50, PERCENT);
    }

    private void chord(String input, String name, Optional<Measured<Length>> chord) {
        chord.ifPresent(length -> spread(input, name, length, 50, MILLIMETRE));
    }

    private <Q extends Quantity<Q>> void spread(
            String input, String name, Measured<Q> value, double limit, Unit<Q> unit) {
        if (value.spreadIn(unit) > limit) {
            add(
                    input,
                    "± of " + name,
                    QuantityText.show(Measured.of(value.spreadIn(unit), unit)),
                    "up to " + QuantityText.show(Measured.of(limit, unit)),
                    "Measure it again");
        }
    }

    private void add(String input, String name, String value, String accepted, String wayOut) {
        problems.add(new InputProblem(input, name, value, accepted, wayOut));
    }
}
