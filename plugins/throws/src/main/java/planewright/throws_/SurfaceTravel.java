package planewright.throws_;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.pf4j.Extension;
import planewright.api.calculator.About;
import planewright.api.calculator.Calculator;
import planewright.api.calculator.Finding;
import planewright.api.calculator.From;
import planewright.api.calculator.From.Place;
import planewright.api.calculator.Input;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.Result;
import planewright.api.calculator.Run;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.figure.Chart;
import planewright.api.quantity.Measured;

/** Throws in degrees and in millimetres, at high and low rate, and what expo makes of the stick. */
@Extension
@About(
        id = "throws.travel",
        version = "1",
        title = "Throws",
        question = "How many degrees are a distance, and how far is an angle?",
        sources = {
            "Ptolemy, Almagest I.11: the table of chords, by which the straight line between two places on a circle is known;"
                    + " else plain trigonometry",
            "Rates as parts of the full throw, and expo as (1 - e) x + e x³: common practice, no source; transmitters differ",
            "JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2"
        },
        cautions = {
            "Propeller off, or the motor's lead disconnected, while throws are measured on the bench.",
            "Try new throws at low rate first, high up and away from people; look before every flight whether each surface"
                    + " goes the right way."
        })
public final class SurfaceTravel implements Calculator<SurfaceTravel.Inputs, SurfaceTravel.Results> {
    /** How millimetres are measured. */
    public enum Way {
        /** Straight from where the measuring point is at neutral to where it is deflected. */
        STRAIGHT_LINE,
        /** Square to the neutral surface. */
        SQUARE_TO_NEUTRAL,
        /** Along the arc that the point runs through. */
        ALONG_THE_ARC
    }

    /** A throw, in degrees or in millimetres. */
    public record ThrowLine(
            @Input(label = "Throw", help = "Such as aileron throw up.", from = @From(Place.ROW_NAME))
            String name,

            @Input(
                    label = "Degrees",
                    help = "From neutral to the end; or else the distance.",
                    unit = "deg",
                    atLeast = "0°",
                    atMost = "90°",
                    usuallyTo = "45°",
                    from = @From(Place.SET_UP))
            Optional<Measured<Angle>> angle,

            @Input(
                    label = "At the ruler",
                    help = "From neutral to the end, at the measuring point; or else degrees.",
                    unit = "mm",
                    atLeast = "0 mm",
                    atMost = "1 m",
                    from = @From(Place.SET_UP))
            Optional<Measured<Length>> distance,

            @Input(
                    label = "Chord",
                    help = "From the hinge line to the measuring point; empty for the one below.",
                    unit = "mm",
                    atLeast = "1 mm",
                    atMost = "2 m",
                    usuallyFrom = "15 mm",
                    usuallyTo = "300 mm",
                    from = @From(value = Place.MEASUREMENT, name = "chord"))
            Optional<Measured<Length>> chord) {}

    /** What is given. */
    public record Inputs(
            @Input(
                    label = "Throws",
                    help = "At full stick and a rate of 100 %, each in degrees or as a distance.",
                    from = @From(value = Place.SET_UP_ROWS, name = "throw"))
            List<ThrowLine> surfaces,

            @Input(
                    label = "Measuring point",
                    help = "From the hinge line to where the ruler stands, for throws without their own.",
                    unit = "mm",
                    atLeast = "1 mm",
                    atMost = "2 m",
                    usuallyFrom = "15 mm",
                    usuallyTo = "300 mm",
                    from = @From(value = Place.MEASUREMENT, name = "surface chord"))
            Optional<Measured<Length>> chord,

            @Input(
                    label = "Way of measuring",
                    help =
                            "Straight between both places of the point, square to the neutral surface, or along its arc.",
                    initial = "straight line")
            Way way,

            @Input(
                    label = "High rate",
                    help = "Part of the throws above that the stick's end gives at high rate.",
                    unit = "%",
                    initial = "100 %",
                    above = "0 %",
                    atMost = "150 %",
                    under = "Rates",
                    from = @From(value = Place.SET_UP, name = "high rate"))
            Measured<Dimensionless> highRate,

            @Input(
                    label = "Low rate",
                    help = "Part of the throws above that the stick's end gives at low rate.",
                    unit = "%",
                    initial = "60 %",
                    above = "0 %",
                    atMost = "150 %",
                    usuallyFrom = "30 %",
                    under = "Rates",
                    from = @From(value = Place.SET_UP, name = "low rate"))
            Measured<Dimensionless> lowRate,

            @Input(
                    label = "Expo",
                    help = "Positive is softer about neutral; the ends stay.",
                    unit = "%",
                    initial = "0 %",
                    atLeast = "-50 %",
                    atMost = "100 %",
                    usuallyFrom = "0 %",
                    usuallyTo = "60 %",
                    under = "Rates",
                    from = @From(value = Place.SET_UP, name = "expo"))
            Measured<Dimensionless> expo) {}

    /** A throw both ways. */
    public record TravelLine(
            @Result(label = "Throw") String name,
            @Result(label = "Rate") String rate,
            @Result(label = "Chord", unit = "mm") Optional<Measured<Length>> chord,
            @Result(label = "Degrees", unit = "deg") Optional<Measured<Angle>> angle,
            @Result(label = "Straight line", unit = "mm") Optional<Measured<Length>> straight,

            @Result(label = "Square to neutral", unit = "mm")
            Optional<Measured<Length>> square,

            @Result(label = "Along the arc", unit = "mm") Optional<Measured<Length>> arc) {}

    /** What a place of the stick gives, as parts of the throw. */
    public record StickLine(
            @Result(label = "Stick", unit = "%") Measured<Dimensionless> stick,
            @Result(label = "High rate", unit = "%") Measured<Dimensionless> high,
            @Result(label = "Low rate", unit = "%") Measured<Dimensionless> low) {}

    /** What comes out. */
    public record Results(
            @Result(
                    label = "Feel about neutral",
                    help = "How far the surface follows a small stick at high rate, against none of expo at 100 %.",
                    unit = "%")
            Measured<Dimensionless> feel,

            @Result(label = "Half stick at high rate", help = "Part of the throw.", unit = "%")
            Measured<Dimensionless> halfStick,

            @Result(label = "Findings") List<Finding> findings,
            @Result(label = "Throws") List<TravelLine> travels,
            @Result(label = "Stick") List<StickLine> sticks,
            @Result(label = "Throw against stick") Chart stickChart,
            @Result(label = "Distance against degrees") Optional<Chart> rulerChart,
            @Result(label = "For the journal") List<Proposal> proposals) {}

    @Override
    public Results compute(Inputs inputs, Run run) throws UnsuitableInput {
        return TravelAnswer.of(new Words(run.language()), inputs).results();
    }
}
