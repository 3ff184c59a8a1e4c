package planewright.balance;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import org.pf4j.Extension;
import planewright.api.calculator.About;
import planewright.api.calculator.Calculator;
import planewright.api.calculator.From;
import planewright.api.calculator.From.Place;
import planewright.api.calculator.Input;
import planewright.api.calculator.Run;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units.Density;

/** Where an aircraft should balance, from its shape. */
@Extension
@About(
        id = "balance.planform",
        version = "3",
        title = "Balance range",
        question = "Where should it balance?",
        sources = {
            "J. Katz and A. Plotkin, Low-Speed Aerodynamics, 2nd edition, chapter 12: vortex lattice (cited from memory)",
            "C. E. Lan, Journal of Aircraft 11 (1974) 518: where vortices and control points stand (cited from memory)",
            "D. P. Raymer, Aircraft Design: A Conceptual Approach, 6th edition, figure 4.17: mean aerodynamic chord;"
                    + " equations 16.9 to 16.11: neutral point and static margin",
            "H. Glauert, The Elements of Aerofoil and Airscrew Theory: flaps, yaw of ailerons (cited from memory)",
            "U.S. Standard Atmosphere, 1976: density of the air",
            "M. M. Munk, NACA Report 184, and H. Multhopp, NACA TM 1036: what a fuselage does (cited from memory)",
            "Usual static margins of each layout, greatest lift of a small section: common practice, no source"
        },
        cautions = {
            "A computed range is where to begin, not proof: first flights at its nose-heavy end, away from people and"
                    + " where your local rules allow them, then back in small steps.",
            "Not counted: thick and stalled wings, a propeller's wash and pull, soft foam that bends. A tractor propeller"
                    + " brings the neutral point further forward, a pusher aft; a line of thrust above the balance point"
                    + " pushes the nose down with power.",
            "Lithium pack disconnected and propeller off while parts are moved to shift the balance."
        })
public final class BalanceRange implements Calculator<BalanceRange.Inputs, BalanceRangeResults> {
    /** What is given. */
    public record Inputs(
            @Input(
                    label = "Shape",
                    help = "All wings, tails and fins, and the bodies between them.",
                    from = @From(value = Place.BUILD, name = "planform"))
            Planform planform,

            @Input(
                    label = "Layout",
                    help = "Such as tailless, delta, canard or conventional; it suggests the static margin.",
                    from = @From(value = Place.BUILD, name = "layout"))
            String layout,

            @Input(
                    label = "Margin from",
                    help = "Least static margin wanted, in mean chords; empty for what is usual for the layout.",
                    unit = "%",
                    atLeast = "0 %",
                    atMost = "100 %",
                    usuallyFrom = "3 %",
                    usuallyTo = "20 %",
                    under = "Static margin")
            Optional<Measured<Dimensionless>> marginFrom,

            @Input(
                    label = "Margin to",
                    help = "Greatest static margin wanted; empty for what is usual for the layout.",
                    unit = "%",
                    atLeast = "0 %",
                    atMost = "100 %",
                    usuallyFrom = "5 %",
                    usuallyTo = "30 %",
                    under = "Static margin")
            Optional<Measured<Dimensionless>> marginTo,

            @Input(
                    label = "Balance point",
                    help = "Where it balances now, aft of the datum; it is held against the range.",
                    unit = "mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    under = "As it is",
                    from = @From(value = Place.SET_UP, name = "balance point"))
            Optional<Measured<Length>> balancePoint,

            @Input(
                    label = "Mass",
                    help = "All-up; it gives wing loading and stall speed, the range does not need it.",
                    unit = "g",
                    above = "0 g",
                    atMost = "1000 kg",
                    under = "As it is",
                    from = @From(value = Place.MEASUREMENT, name = "all-up mass"))
            Optional<Measured<Mass>> mass,

            @Input(
                    label = "Speed",
                    help = "At which trim is checked, in level flight.",
                    unit = "m/s",
                    atLeast = "0.1 m/s",
                    atMost = "150 m/s",
                    usuallyFrom = "5 m/s",
                    usuallyTo = "60 m/s",
                    under = "Trim")
            Optional<Measured<Speed>> speed,

            @Input(
                    label = "Altitude",
                    help = "Of the field above the sea; it gives the standard air's density.",
                    unit = "m",
                    initial = "0 m",
                    atLeast = "-400 m",
                    atMost = "9000 m",
                    under = "Trim")
            Measured<Length> altitude,

            @Input(
                    label = "Air density",
                    help = "Where it was measured; empty for that of the standard air.",
                    unit = "kg/m3",
                    atLeast = "0.3 kg/m3",
                    atMost = "2 kg/m3",
                    usuallyFrom = "0.9 kg/m3",
                    usuallyTo = "1.4 kg/m3",
                    under = "Trim")
            Optional<Measured<Density>> airDensity,

            @Input(
                    label = "Sections",
                    help =
                            "Settings and sections of surfaces; one that is not listed is flat, set at 0° and stalls at 1.0.",
                    under = "Trim")
            List<SectionLine> sections,

            @Input(
                    label = "Control surfaces",
                    help = "What turns about a hinge; the first that pitches is the one that trims.",
                    under = "Trim",
                    from = @From(Place.CONTROL_ROWS))
            List<ControlLine> controls,

            @Input(
                    label = "Datum",
                    help = "Where stations are measured from; written at its mark.",
                    under = "Drawing",
                    from = @From(value = Place.BUILD, name = "datum"))
            String datum) {}

    /** The section of a surface, and how it is set. */
    public record SectionLine(
            @Input(label = "Surface", help = "Its name in the shape.")
            String surface,

            @Input(
                    label = "Set at",
                    help = "Incidence of its root against the datum line, leading edge up.",
                    unit = "deg",
                    atLeast = "-20 deg",
                    atMost = "20 deg",
                    usuallyFrom = "-5 deg",
                    usuallyTo = "5 deg")
            Optional<Measured<Angle>> setAt,

            @Input(
                    label = "Zero lift at",
                    help = "Incidence at which its section lifts nothing; below 0 where it is cambered.",
                    unit = "deg",
                    atLeast = "-15 deg",
                    atMost = "15 deg",
                    usuallyFrom = "-6 deg",
                    usuallyTo = "2 deg")
            Optional<Measured<Angle>> zeroLift,

            @Input(
                    label = "Moment",
                    help = "Moment coefficient of its section about the quarter chord; above 0 with reflex.",
                    unit = "1",
                    atLeast = "-0.5",
                    atMost = "0.5",
                    usuallyFrom = "-0.15",
                    usuallyTo = "0.05")
            Optional<Measured<Dimensionless>> moment,

            @Input(
                    label = "Most lift",
                    help = "Greatest lift coefficient of its section at this size and speed, with its ±.",
                    unit = "1",
                    atLeast = "0.2",
                    atMost = "4",
                    usuallyFrom = "0.6",
                    usuallyTo = "1.6")
            Optional<Measured<Dimensionless>> mostLift) {}

    /** A part of a surface that turns about a hinge. */
    public record ControlLine(
            @Input(label = "Name", help = "What you call it.", from = @From(value = Place.CONTROL, name = "name"))
            String name,

            @Input(
                    label = "Surface",
                    help = "Whose part it is, by its name in the shape.",
                    from = @From(value = Place.CONTROL, name = "surface"))
            String surface,

            @Input(label = "Does", help = "How its sides move.", from = @From(value = Place.CONTROL, name = "role"))
            Planform.Role does,

            @Input(
                    label = "From",
                    help = "Where along the surface it begins, from root to tip.",
                    unit = "%",
                    initial = "0 %",
                    atLeast = "0 %",
                    atMost = "100 %",
                    from = @From(value = Place.CONTROL, name = "from"))
            Measured<Dimensionless> from,

            @Input(
                    label = "To",
                    help = "Where it ends.",
                    unit = "%",
                    initial = "100 %",
                    atLeast = "0 %",
                    atMost = "100 %",
                    from = @From(value = Place.CONTROL, name = "to"))
            Measured<Dimensionless> to,

            @Input(
                    label = "Hinge",
                    help = "Where its hinge lies along the chord, from the leading edge; 0 % where all of it turns.",
                    unit = "%",
                    initial = "75 %",
                    atLeast = "0 %",
                    atMost = "98 %",
                    usuallyTo = "90 %",
                    from = @From(value = Place.CONTROL, name = "hinge"))
            Measured<Dimensionless> hinge,

            @Input(
                    label = "Outer hinge",
                    help = "The same at its outer end; empty where it is the same.",
                    unit = "%",
                    atLeast = "0 %",
                    atMost = "98 %",
                    usuallyTo = "90 %",
                    from = @From(value = Place.CONTROL, name = "hingeTo"))
            Optional<Measured<Dimensionless>> hingeTo) {}

    @Override
    public BalanceRangeResults compute(Inputs inputs, Run run) throws UnsuitableInput {
        return BalanceRangeAnswer.of(inputs, run).results();
    }
}
