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
import planewright.api.figure.Drawing;
import planewright.api.quantity.Measured;

/** What a control surface does when the servo moves, and which holes give the throw that is wanted. */
@Extension
@About(
        id = "throws.linkage",
        version = "1",
        title = "Control linkage",
        question = "What does the surface do when the servo moves?",
        sources = {
            "F. Freudenstein, Transactions of the ASME 77 (1955) 853-861: the four-bar loop equation (cited from memory)",
            "R. L. Norton, Design of Machinery, chapters 4 and 6: position, speed and transmission angle of a four-bar linkage"
                    + " (cited from memory)",
            "Documentation of a microcontroller's servo library: pulses of 1000 to 2000 µs, 1500 µs in the middle; 45° each"
                    + " way for 500 µs is common practice",
            "JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2"
        },
        cautions = {
            "Propeller off, or the motor's lead disconnected, whenever servos move on the bench; fingers out of linkages.",
            "A linkage that locks or passes over centre stalls the servo, flattens the pack and can jam the surface in flight:"
                    + " move every stick and switch to its end by hand before the first flight, and listen.",
            "Before every flight look whether each surface goes the right way; fly where nobody stands under it, by your local"
                    + " rules."
        })
public final class ServoLinkage implements Calculator<ServoLinkage.Inputs, ServoLinkage.Results> {
    /** The side of the surface that the horn stands on. */
    public enum Side {
        ABOVE,
        BELOW
    }

    /** A hole that could be used. */
    public record HoleLine(
            @Input(
                    label = "Distance",
                    help = "Of the hole from the servo's shaft, or from the hinge line square to the surface.",
                    unit = "mm",
                    atLeast = "1 mm",
                    atMost = "200 mm",
                    usuallyFrom = "4 mm",
                    usuallyTo = "50 mm")
            Measured<Length> distance) {}

    /** What is given. */
    public record Inputs(
            @Input(label = "Surface", help = "Such as aileron, elevator or rudder; the set-up values bear its name.")
            String surface,

            @Input(
                    label = "Servo arm",
                    help = "From the servo's shaft to the hole in use.",
                    unit = "mm",
                    atLeast = "1 mm",
                    atMost = "200 mm",
                    usuallyFrom = "5 mm",
                    usuallyTo = "30 mm",
                    under = "Servo",
                    from = @From(value = Place.MEASUREMENT, name = "servo arm hole"))
            Measured<Length> armLength,

            @Input(
                    label = "Arm leans",
                    help = "With the servo centred, from square to the line aft; towards the surface is positive.",
                    unit = "deg",
                    initial = "0°",
                    atLeast = "-180°",
                    atMost = "180°",
                    usuallyFrom = "-30°",
                    usuallyTo = "30°",
                    under = "Servo",
                    from = @From(value = Place.MEASUREMENT, name = "servo arm lean"))
            Measured<Angle> clocking,

            @Input(
                    label = "Travel",
                    help = "Of the arm to each side at an end point of 100 %, that is for 500 µs of pulse.",
                    unit = "deg",
                    initial = "45°",
                    atLeast = "1°",
                    atMost = "90°",
                    usuallyFrom = "25°",
                    usuallyTo = "65°",
                    under = "Servo",
                    from = @From(value = Place.MEASUREMENT, name = "servo travel"))
            Measured<Angle> travel,

            @Input(
                    label = "End point towards",
                    help = "How far the transmitter lets the arm go towards the surface.",
                    unit = "%",
                    initial = "100 %",
                    atLeast = "1 %",
                    atMost = "200 %",
                    usuallyFrom = "40 %",
                    usuallyTo = "125 %",
                    under = "Servo")
            Measured<Dimensionless> endTowards,

            @Input(
                    label = "End point away",
                    help = "How far the transmitter lets the arm go away from the surface.",
                    unit = "%",
                    initial = "100 %",
                    atLeast = "1 %",
                    atMost = "200 %",
                    usuallyFrom = "40 %",
                    usuallyTo = "125 %",
                    under = "Servo")
            Measured<Dimensionless> endAway,

            @Input(
                    label = "Smallest step",
                    help = "Of the arm, before the servo answers: common practice, no source.",
                    unit = "deg",
                    initial = "0.5°",
                    atLeast = "0°",
                    atMost = "20°",
                    usuallyTo = "2°",
                    under = "Servo")
            Measured<Angle> servoStep,

            @Input(label = "Horn stands", help = "On which side of the surface.", initial = "above", under = "Surface")
            Side hornSide,

            @Input(
                    label = "Horn",
                    help = "From the hinge line to the hole in use, square to the neutral surface.",
                    unit = "mm",
                    atLeast = "1 mm",
                    atMost = "200 mm",
                    usuallyFrom = "6 mm",
                    usuallyTo = "40 mm",
                    under = "Surface",
                    from = @From(value = Place.MEASUREMENT, name = "horn hole above hinge"))
            Measured<Length> hornLength,

            @Input(
                    label = "Horn hole aft of hinge",
                    help = "How far behind the hinge line it lies with the surface neutral; ahead of it is negative.",
                    unit = "mm",
                    initial = "0 mm",
                    atLeast = "-200 mm",
                    atMost = "200 mm",
                    usuallyFrom = "-8 mm",
                    usuallyTo = "8 mm",
                    under = "Surface",
                    from = @From(value = Place.MEASUREMENT, name = "horn hole aft of hinge"))
            Measured<Length> hornOffset,

            @Input(
                    label = "Measuring point",
                    help = "How far aft of the hinge line throws are measured; empty for degrees only.",
                    unit = "mm",
                    atLeast = "1 mm",
                    atMost = "2 m",
                    usuallyTo = "300 mm",
                    under = "Surface",
                    from = @From(value = Place.MEASUREMENT, name = "surface chord"))
            Optional<Measured<Length>> chord,

            @Input(
                    label = "Shaft to hinge",
                    help = "How far aft of the servo's shaft the hinge line lies.",
                    unit = "mm",
                    atLeast = "1 mm",
                    atMost = "2 m",
                    usuallyFrom = "20 mm",
                    usuallyTo = "1 m",
                    under = "Between them",
                    from = @From(value = Place.MEASUREMENT, name = "servo to hinge"))
            Measured<Length> hingeDistance,

            @Input(
                    label = "Hinge over shaft",
                    help = "How far the hinge line lies to the horn's side of the servo's shaft.",
                    unit = "mm",
                    initial = "0 mm",
                    atLeast = "-200 mm",
                    atMost = "200 mm",
                    usuallyFrom = "-30 mm",
                    usuallyTo = "30 mm",
                    under = "Between them",
                    from = @From(value = Place.MEASUREMENT, name = "hinge over servo shaft"))
            Measured<Length> hingeRise,

            @Input(
                    label = "Pushrod",
                    help = "Between the holes; empty for one that leaves the surface neutral with the servo centred.",
                    unit = "mm",
                    atLeast = "1 mm",
                    atMost = "3 m",
                    usuallyFrom = "15 mm",
                    usuallyTo = "1 m",
                    under = "Between them",
                    from = @From(value = Place.MEASUREMENT, name = "pushrod length"))
            Optional<Measured<Length>> pushrodLength,

            @Input(
                    label = "Wanted up",
                    help = "The throw up that it should have; holes are then compared.",
                    unit = "deg",
                    atLeast = "0.1°",
                    atMost = "85°",
                    usuallyTo = "45°",
                    under = "Which holes")
            Optional<Measured<Angle>> wantedUp,

            @Input(
                    label = "Wanted down",
                    help = "The throw down that it should have; holes are then compared.",
                    unit = "deg",
                    atLeast = "0.1°",
                    atMost = "85°",
                    usuallyTo = "45°",
                    under = "Which holes")
            Optional<Measured<Angle>> wantedDown,

            @Input(
                    label = "Holes in the arm",
                    help = "All that could be used; none for the one in use only.",
                    under = "Which holes")
            List<HoleLine> armHoles,

            @Input(
                    label = "Holes in the horn",
                    help = "All that could be used; none for the one in use only.",
                    under = "Which holes")
            List<HoleLine> hornHoles) {}

    /** The linkage at one place of the servo. */
    public record PlaceLine(
            @Result(label = "Stick", help = "Towards the surface positive.", unit = "%")
            Measured<Dimensionless> stick,

            @Result(label = "Pulse") String pulse,

            @Result(label = "Arm", help = "From its centre, towards the surface positive.", unit = "deg")
            Measured<Angle> arm,

            @Result(label = "Surface", help = "Up is positive.", unit = "deg")
            Measured<Angle> surface,

            @Result(
                    label = "Leverage",
                    help = "Torque at the hinge for torque at the servo, without friction.",
                    unit = "1")
            Optional<Measured<Dimensionless>> leverage,

            @Result(label = "At horn", help = "Between pushrod and horn; 0° is in line.", unit = "deg")
            Measured<Angle> pushrodToHorn,

            @Result(label = "At arm", help = "Between pushrod and arm; 0° is in line.", unit = "deg")
            Measured<Angle> pushrodToArm) {}

    /** Where something happens that ends the useful travel. */
    public record LimitLine(
            @Result(label = "In line") String inLine,
            @Result(label = "So") String then,

            @Result(label = "Arm", help = "From its centre, towards the surface positive.", unit = "deg")
            Measured<Angle> arm,

            @Result(label = "End point", unit = "%") Measured<Dimensionless> endPoint,

            @Result(label = "Surface", help = "Up is positive.", unit = "deg")
            Measured<Angle> surface,

            @Result(label = "In travel") boolean within) {}

    /** A pair of holes. */
    public record PairLine(
            @Result(label = "Arm", unit = "mm") Measured<Length> arm,
            @Result(label = "Horn", unit = "mm") Measured<Length> horn,
            @Result(label = "Pushrod", unit = "mm") Measured<Length> pushrod,

            @Result(label = "Up", help = "The most.", unit = "deg")
            Measured<Angle> up,

            @Result(label = "Down", help = "The most.", unit = "deg")
            Measured<Angle> down,

            @Result(label = "Towards", help = "The end point for what is wanted.", unit = "%")
            Optional<Measured<Dimensionless>> endTowards,

            @Result(label = "Away", help = "The end point for what is wanted.", unit = "%")
            Optional<Measured<Dimensionless>> endAway,

            @Result(label = "Verdict") String verdict) {}

    /** What comes out. */
    public record Results(
            @Result(label = "Throw up", help = "The most that the surface goes up.", unit = "deg")
            Measured<Angle> throwUp,

            @Result(label = "Throw down", help = "The most that the surface goes down.", unit = "deg")
            Measured<Angle> throwDown,

            @Result(label = "Up at measuring point", help = "In a straight line from neutral.", unit = "mm")
            Optional<Measured<Length>> pointUp,

            @Result(label = "Down at measuring point", help = "In a straight line from neutral.", unit = "mm")
            Optional<Measured<Length>> pointDown,

            @Result(
                    label = "Differential",
                    help = "By how much it goes down less than up; negative where it goes down more.",
                    unit = "%")
            Optional<Measured<Dimensionless>> differential,

            @Result(label = "Servo centred", help = "Where the surface then stands; up is positive.", unit = "deg")
            Measured<Angle> neutral,

            @Result(
                    label = "Pushrod for neutral",
                    help = "Between the holes, so that the surface is neutral with the servo centred.",
                    unit = "mm")
            Measured<Length> neutralPushrod,

            @Result(label = "Surface for arm, centre", help = "Degrees of surface for a degree of arm.", unit = "1")
            Measured<Dimensionless> centreRatio,

            @Result(label = "Step of the surface", help = "For the servo's smallest step about centre.", unit = "deg")
            Measured<Angle> surfaceStep,

            @Result(label = "Findings") List<Finding> findings,
            @Result(label = "Places") List<PlaceLine> places,
            @Result(label = "Limits") List<LimitLine> limits,
            @Result(label = "Which holes") List<PairLine> pairs,
            @Result(label = "Surface against stick") Chart curve,
            @Result(label = "Leverage against stick") Chart leverage,
            @Result(label = "Linkage at true size") Drawing drawing,
            @Result(label = "For the journal") List<Proposal> proposals) {}

    @Override
    public Results compute(Inputs inputs, Run run) throws UnsuitableInput {
        return LinkageAnswer.of(new Words(run.language()), inputs).results();
    }
}
