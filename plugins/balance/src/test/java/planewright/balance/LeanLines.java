package planewright.balance;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.KILOGRAM_PER_CUBIC_METRE;
import static planewright.api.quantity.Units.METRE_PER_SECOND;
import static planewright.api.quantity.Units.MILLILITRE;
import static planewright.api.quantity.Units.MILLIMETRE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;

/** A short way to ask about a lean, in grams, millimetres and degrees. */
final class LeanLines {
    Optional<Measured<Mass>> levelledBy = Optional.empty();
    Optional<Measured<Length>> levelledAt = Optional.empty();
    Optional<Measured<Mass>> tipReading = Optional.empty();
    Optional<Measured<Length>> tipReadingAt = Optional.empty();
    Optional<Measured<Angle>> lean = Optional.empty();
    Optional<Measured<Length>> hangingHeight = Optional.empty();
    Optional<Measured<Mass>> mass = Optional.empty();
    Optional<Measured<Length>> tip = Optional.empty();
    Lean.InFlight flight = Lean.InFlight.NOT_FLOWN;
    Lean.When when = Lean.When.NOT_KNOWN;
    Optional<Measured<Speed>> speed = Optional.empty();
    Optional<Measured<Length>> leftSpan = Optional.empty();
    Optional<Measured<Length>> rightSpan = Optional.empty();
    Optional<Measured<Area>> leftArea = Optional.empty();
    Optional<Measured<Area>> rightArea = Optional.empty();
    Optional<Measured<Angle>> leftTwist = Optional.empty();
    Optional<Measured<Angle>> rightTwist = Optional.empty();
    Optional<Planform> planform = Optional.empty();
    private final List<Lean.PartLine> parts = new ArrayList<>();
    private final List<Lean.SuspectLine> suspects = new ArrayList<>();

    LeanLines levelled(double grams, double y) {
        levelledBy = Optional.of(Measured.of(grams, GRAM));
        levelledAt = Optional.of(Measured.of(y, MILLIMETRE));
        return this;
    }

    LeanLines scale(double grams, double y) {
        tipReading = Optional.of(Measured.of(grams, GRAM));
        tipReadingAt = Optional.of(Measured.of(y, MILLIMETRE));
        return this;
    }

    LeanLines hung(double degrees, double height) {
        lean = Optional.of(Measured.of(degrees, DEGREE));
        hangingHeight = Optional.of(Measured.of(height, MILLIMETRE));
        return this;
    }

    LeanLines mass(double grams) {
        mass = Optional.of(Measured.of(grams, GRAM));
        return this;
    }

    LeanLines part(String name, double grams, double y) {
        return part(name, Measured.of(grams, GRAM), Measured.of(y, MILLIMETRE));
    }

    LeanLines part(String name, Measured<Mass> weighed, Measured<Length> y) {
        parts.add(new Lean.PartLine(name, Optional.of(weighed), y));
        return this;
    }

    LeanLines suspect(String name, double arm, double millilitres, double from, double to) {
        suspects.add(new Lean.SuspectLine(
                name,
                Measured.of(arm, MILLIMETRE),
                Optional.of(Measured.of(millilitres, MILLILITRE)),
                Optional.of(Measured.of(from, KILOGRAM_PER_CUBIC_METRE)),
                Optional.of(Measured.of(to, KILOGRAM_PER_CUBIC_METRE))));
        return this;
    }

    LeanLines spans(double left, double right) {
        leftSpan = Optional.of(Measured.of(left, MILLIMETRE));
        rightSpan = Optional.of(Measured.of(right, MILLIMETRE));
        return this;
    }

    LeanLines twist(double left, double right) {
        leftTwist = Optional.of(Measured.of(left, DEGREE));
        rightTwist = Optional.of(Measured.of(right, DEGREE));
        return this;
    }

    LeanLines speed(double metresPerSecond) {
        speed = Optional.of(Measured.of(metresPerSecond, METRE_PER_SECOND));
        return this;
    }

    LeanLines flies(Lean.InFlight how, Lean.When whenever) {
        flight = how;
        when = whenever;
        return this;
    }

    /** A wing with straight chords of 200 mm and half spans of 500 mm: aspect ratio 5. */
    LeanLines plank() {
        return shape(new Planform(List.of(plankWing()), List.of()));
    }

    static Planform.Surface plankWing() {
        return new Planform.Surface("wing", 0, 0, 0, true, List.of(new Planform.Panel(0.2, 0.2, 0.5, 0, 0, 0)));
    }

    LeanLines shape(Planform shape) {
        planform = Optional.of(shape);
        return this;
    }

    Lean.Inputs inputs() {
        return new Lean.Inputs(
                levelledBy,
                levelledAt,
                tipReading,
                tipReadingAt,
                lean,
                hangingHeight,
                mass,
                List.copyOf(parts),
                "tip ballast",
                List.copyOf(suspects),
                tip,
                flight,
                when,
                speed,
                leftSpan,
                rightSpan,
                leftArea,
                rightArea,
                leftTwist,
                rightTwist,
                planform);
    }

    Lean.Results answer() throws UnsuitableInput {
        return new Lean().compute(inputs(), LightestPiecesTest.unwatched());
    }
}
