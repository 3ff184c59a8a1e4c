package @PACKAGE@;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.RADIAN;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.pf4j.Extension;
import planewright.api.calculator.*;
import planewright.api.figure.*;
import planewright.api.figure.Drawing.*;
import planewright.api.quantity.Measured;

@Extension
@About(
        id = "@CALCULATORS@.dihedral",
        version = "1",
        title = "Dihedral from tip heights",
        question = "Do both halves of the wing rise alike, and how steeply?",
        cautions = "A joint that carries the wing is trusted after it was loaded on the bench, not after it was measured.",
        sources = "sine in a right triangle: Euclid, Elements, book VI, definition 1 and proposition 4")
public final class Dihedral implements Calculator<Dihedral.Inputs, Dihedral.Results> {
    public record Inputs(
            @Input(label = "Left tip above the table", unit = "mm", atLeast = "0 mm",
                    help = "With the middle of the wing flat on the table.",
                    from = @From(value = From.Place.MEASUREMENT, name = "left tip height")) Measured<Length> left,
            @Input(label = "Right tip above the table", unit = "mm", atLeast = "0 mm",
                    help = "At the same place of the tip as on the left.",
                    from = @From(value = From.Place.MEASUREMENT, name = "right tip height")) Measured<Length> right,
            @Input(label = "From the root to a tip, along the wing", unit = "mm", above = "0 mm", atMost = "10 m",
                    help = "From where the wing bends to where the height is taken.",
                    from = @From(value = From.Place.MEASUREMENT, name = "half span")) Measured<Length> half) {}

    public record Results(
            @Result(label = "Left half", unit = "deg") Measured<Angle> left,
            @Result(label = "Right half", unit = "deg") Measured<Angle> right,
            @Result(label = "Remarks") List<Finding> findings,
            @Result(label = "From the front") Drawing front,
            @Result(label = "Angle for other heights") Chart chart,
            @Result(label = "For the log") List<Proposal> proposals) {}

    @Override
    public Results compute(Inputs inputs, Run run) throws UnsuitableInput {
        var problems = new ArrayList<InputProblem>();
        var language = run.language();
        check("left", "Left tip above the table", inputs.left(), inputs.half(), language, problems);
        check("right", "Right tip above the table", inputs.right(), inputs.half(), language, problems);
        if (!problems.isEmpty()) {
            throw new UnsuitableInput(problems);
        }
        var left = angle(inputs.left(), inputs.half());
        var right = angle(inputs.right(), inputs.half());
        double apart = left.in(DEGREE) - right.in(DEGREE);
        double doubt = Math.hypot(left.spreadIn(DEGREE), right.spreadIn(DEGREE));
        var finding = Math.abs(apart) <= Math.max(0.25, 2 * doubt)
                ? Finding.fine("Both halves rise alike.")
                : Finding.lookAgain("The " + (apart > 0 ? "left" : "right") + " half rises more steeply; turn the wing"
                        + " round on the table and measure again before you cut.");
        return new Results(left, right, List.of(finding), front(inputs, language), chart(inputs.half()), List.of(
                new Proposal.NewMeasurement("left dihedral", left), new Proposal.NewMeasurement("right dihedral", right)));
    }

    private static void check(
            String input, String name, Measured<Length> height, Measured<Length> half, Language language,
            List<InputProblem> problems) {
        if (height.in(METRE) >= half.in(METRE)) {
            problems.add(new InputProblem(input, name, language.quantity(height.in(MILLIMETRE), MILLIMETRE, 1),
                    "less than " + language.quantity(half.in(MILLIMETRE), MILLIMETRE, 1) + ", the length along the wing",
                    "Measure both again"));
        }
    }

    /** The sine is height by length; the ± of both add in squares (JCGM 100:2008, 5.1.2). */
    private static Measured<Angle> angle(Measured<Length> height, Measured<Length> half) {
        double h = height.in(METRE);
        double l = half.in(METRE);
        double doubt = Math.hypot(height.spreadIn(METRE), h / l * half.spreadIn(METRE)) / Math.sqrt(l * l - h * h);
        return Measured.of(Math.asin(h / l), doubt, RADIAN).to(DEGREE);
    }

    private static Drawing front(Inputs inputs, Language language) {
        double l = inputs.half().in(MILLIMETRE);
        double left = inputs.left().in(MILLIMETRE);
        double right = inputs.right().in(MILLIMETRE);
        var tips = List.of(new Point(-Math.sqrt(l * l - left * left), left), new Point(0, 0),
                new Point(Math.sqrt(l * l - right * right), right));
        return new Drawing("From the front", List.of(
                new Layer(Use.OUTLINE, List.of(
                        new Path(List.of(new Point(-l, 0), new Point(l, 0)), false), new Path(tips, false))),
                new Layer(Use.DIMENSION, List.of(
                        new Dimension(new Point(tips.get(0).x(), 0), tips.get(0), language.quantity(left, MILLIMETRE, 0)),
                        new Dimension(new Point(tips.get(2).x(), 0), tips.get(2), language.quantity(right, MILLIMETRE, 0))))));
    }

    private static Chart chart(Measured<Length> half) {
        var points = IntStream.rangeClosed(0, 20)
                .mapToObj(i -> new Point(
                        half.in(MILLIMETRE) * i / 100, Math.toDegrees(Math.asin(i / 100.0))))
                .toList();
        return new Chart.Lines("Angle for other heights", new Chart.Axis("tip above the table", "mm"),
                new Chart.Axis("dihedral", "deg"), List.of(new Chart.Series("dihedral", points)), List.of());
    }
}
