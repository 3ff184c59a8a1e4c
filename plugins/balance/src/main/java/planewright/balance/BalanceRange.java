package planewright.balance;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
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
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units.AreaDensity;

/** Where an aircraft should balance, from its shape. */
@Extension
@About(
        id = "balance.planform",
        version = "1",
        title = "Balance range",
        question = "Where should it balance?",
        sources = {
            "J. Katz and A. Plotkin, Low-Speed Aerodynamics, 2nd edition, chapter 12: vortex lattice (cited from memory)",
            "C. E. Lan, Journal of Aircraft 11 (1974) 518: where vortices and control points stand (cited from memory)",
            "D. P. Raymer, Aircraft Design: A Conceptual Approach, 6th edition, figure 4.17: mean aerodynamic chord;"
                    + " equations 16.9 to 16.11: neutral point and static margin",
            "M. M. Munk, NACA Report 184, and H. Multhopp, NACA TM 1036: what a fuselage does (cited from memory)",
            "Usual static margins of each layout: common practice, no source"
        },
        cautions = {
            "A computed range is where to begin, not proof: first flights at its nose-heavy end, away from people and"
                    + " where your local rules allow them, then back in small steps.",
            "Not counted: thick and stalled wings, a propeller's wash and pull, soft foam that bends. A tractor propeller"
                    + " and a wide nose bring the neutral point further forward.",
            "Lithium pack disconnected and propeller off while parts are moved to shift the balance."
        })
public final class BalanceRange implements Calculator<BalanceRange.Inputs, BalanceRange.Results> {
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
                    help = "All-up; it gives the wing loading, the range does not need it.",
                    unit = "g",
                    above = "0 g",
                    atMost = "1000 kg",
                    under = "As it is",
                    from = @From(value = Place.MEASUREMENT, name = "all-up mass"))
            Optional<Measured<Mass>> mass,

            @Input(
                    label = "Datum",
                    help = "Where stations are measured from; written at its mark.",
                    under = "Drawing",
                    from = @From(value = Place.BUILD, name = "datum"))
            String datum) {}

    /** Measures of one surface. */
    public record SurfaceLine(
            @Result(label = "Surface") String surface,
            @Result(label = "Area", unit = "dm2") Measured<Area> area,
            @Result(label = "Span", unit = "mm") Measured<Length> span,
            @Result(label = "Aspect ratio", unit = "1") Measured<Dimensionless> aspectRatio,
            @Result(label = "Mean chord", unit = "mm") Measured<Length> meanChord,
            @Result(label = "Its leading edge", unit = "mm") Measured<Length> leadingEdge,

            @Result(label = "Share of the lift", help = "Of what one more degree of incidence brings.", unit = "%")
            Measured<Dimensionless> liftShare) {}

    /** How the aircraft answers. */
    public record ResponseLine(
            @Result(label = "Response") String response,
            @Result(label = "Derivative", unit = "1") Measured<Dimensionless> derivative,
            @Result(label = "Means") String meaning) {}

    /** One lattice on the way. */
    public record LatticeLine(
            @Result(label = "Panels") int panels,
            @Result(label = "Neutral point", unit = "mm") Measured<Length> neutralPoint) {}

    /** What comes out. */
    public record Results(
            @Result(label = "Balance from", help = "Nose-heavy end of the range, aft of the datum.", unit = "mm")
            Measured<Length> balanceFrom,

            @Result(label = "Balance to", help = "Tail-heavy end of the range.", unit = "mm")
            Measured<Length> balanceTo,

            @Result(
                    label = "Neutral point",
                    help =
                            "Balanced here it would neither return nor depart. ± is the lattice's error and a third of what"
                                    + " the bodies do.",
                    unit = "mm")
            Measured<Length> neutralPoint,

            @Result(label = "Static margin now", help = "In mean chords ahead of the neutral point.", unit = "%")
            Optional<Measured<Dimensionless>> marginNow,

            @Result(label = "Findings") List<Finding> findings,

            @Result(label = "Wing area", help = "As seen from above, of the wings that carry it.", unit = "dm2")
            Measured<Area> area,

            @Result(label = "Wing span", unit = "mm") Measured<Length> span,

            @Result(label = "Wing aspect ratio", unit = "1") Measured<Dimensionless> aspectRatio,

            @Result(label = "Mean aerodynamic chord", unit = "mm")
            Measured<Length> meanChord,

            @Result(label = "Leading edge of the mean chord", help = "Aft of the datum.", unit = "mm")
            Measured<Length> meanChordEdge,

            @Result(label = "Neutral point in the mean chord", unit = "%")
            Measured<Dimensionless> neutralShare,

            @Result(label = "Moved by the bodies", help = "Part of the neutral point; forward is −.", unit = "mm")
            Measured<Length> bodyShift,

            @Result(label = "Error of the lattice", help = "Part of the ± of the neutral point.", unit = "mm")
            Measured<Length> latticeError,

            @Result(label = "Lift slope", help = "Lift coefficient gained per radian of incidence.", unit = "1")
            Measured<Dimensionless> liftSlope,

            @Result(label = "Span efficiency", help = "1 is the least induced drag of one flat wing.", unit = "1")
            Measured<Dimensionless> spanEfficiency,

            @Result(label = "Incidence of no lift", help = "Of the root, by twist alone, flat sections.", unit = "deg")
            Measured<Angle> zeroLift,

            @Result(label = "Wing loading", unit = "g/dm2") Optional<Measured<AreaDensity>> wingLoading,
            @Result(label = "From above") Drawing plan,
            @Result(label = "Margin against balance point") Chart marginChart,
            @Result(label = "Lift along the span") Chart liftChart,
            @Result(label = "Surfaces") List<SurfaceLine> surfaces,

            @Result(
                    label = "Responses",
                    help =
                            "Per radian, or per half chord or half span of turning a radian; at a lift coefficient of 0.3.")
            List<ResponseLine> responses,

            @Result(label = "Lattices") List<LatticeLine> lattices,
            @Result(label = "For the journal") List<Proposal> proposals) {}

    @Override
    public Results compute(Inputs inputs, Run run) throws UnsuitableInput {
        return BalanceRangeAnswer.of(inputs, run).results();
    }
}
