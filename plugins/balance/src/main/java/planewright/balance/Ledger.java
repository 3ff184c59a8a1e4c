package planewright.balance;

import java.util.List;
import java.util.Optional;
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
import planewright.api.quantity.Units.MomentOfInertia;
import planewright.api.quantity.Units.MomentOfMass;

/** Where an aircraft balances, from the masses and stations of its parts. */
@Extension
@About(
        id = "balance.ledger",
        version = "1",
        title = "Mass ledger",
        question = "Where does it balance?",
        sources = {
            "FAA-H-8083-1B, Aircraft Weight and Balance Handbook (2016), chapters 2 and 7: moments, balance point, ballast",
            "JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2: the ± of sums and means",
            "Parallel-axis theorem and the uniform box: any text on mechanics"
        },
        cautions = {
            "A computed balance point does not replace a check: lift the finished aircraft at the balance point before it flies.",
            "Lithium pack disconnected and propeller off while parts are weighed, moved or fitted.",
            "Fly only where your local rules allow it, away from people."
        })
public final class Ledger implements Calculator<Ledger.Inputs, Ledger.Results> {
    /** One line of the ledger. */
    public record PartLine(
            @Input(
                    label = "Part",
                    help = "Each part once, such as left wing panel.",
                    from = @From(value = Place.PART, name = "name"))
            String name,

            @Input(
                    label = "Mass",
                    help = "Leave it empty for a part that is not weighed yet; it is named and not counted.",
                    unit = "g",
                    atLeast = "0.001 g",
                    atMost = "1000 kg",
                    usuallyTo = "20 kg",
                    from = @From(value = Place.PART, name = "mass"))
            Optional<Measured<Mass>> mass,

            @Input(
                    label = "x",
                    help = "Station of the part's own centre of mass, aft of the datum.",
                    unit = "mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    from = @From(value = Place.PART, name = "x"))
            Optional<Measured<Length>> x,

            @Input(
                    label = "y",
                    help = "To the right wing.",
                    unit = "mm",
                    initial = "0 mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    from = @From(value = Place.PART, name = "y"))
            Measured<Length> y,

            @Input(
                    label = "z",
                    help = "Up.",
                    unit = "mm",
                    initial = "0 mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    from = @From(value = Place.PART, name = "z"))
            Measured<Length> z,

            @Input(
                    label = "Group",
                    help = "What it belongs to, such as airframe, power or radio; masses are summed by it.",
                    from = @From(value = Place.PART, name = "group"))
            String group,

            @Input(
                    label = "Length",
                    help = "The part's own extent along x; without it the part counts as a point.",
                    unit = "mm",
                    atLeast = "0 mm",
                    atMost = "100 m",
                    from = @From(value = Place.PART, name = "length"))
            Optional<Measured<Length>> length,

            @Input(
                    label = "Width",
                    help = "Its own extent along y.",
                    unit = "mm",
                    atLeast = "0 mm",
                    atMost = "100 m",
                    from = @From(value = Place.PART, name = "width"))
            Optional<Measured<Length>> width,

            @Input(
                    label = "Height",
                    help = "Its own extent along z.",
                    unit = "mm",
                    atLeast = "0 mm",
                    atMost = "100 m",
                    from = @From(value = Place.PART, name = "height"))
            Optional<Measured<Length>> height) {}

    /** What is given. */
    public record Inputs(
            @Input(
                    label = "Parts",
                    help = "The mass ledger: everything that flies, with its mass and where it sits.",
                    from = @From(Place.PART_ROWS))
            List<PartLine> parts,

            @Input(
                    label = "Target x",
                    help = "Where it should balance, aft of the datum.",
                    unit = "mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    under = "Target",
                    from = @From(value = Place.SET_UP, name = "balance point"))
            Optional<Measured<Length>> targetX,

            @Input(
                    label = "Target y",
                    help = "Where it should balance sideways; empty for the centre line.",
                    unit = "mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    under = "Target")
            Optional<Measured<Length>> targetY,

            @Input(
                    label = "Tolerance",
                    help = "How far from the target is near enough.",
                    unit = "mm",
                    initial = "2 mm",
                    above = "0 mm",
                    atMost = "10 m",
                    under = "Target")
            Measured<Length> tolerance,

            @Input(
                    label = "Range from",
                    help = "Nose-heavy end of the balance range, as kept from the shape.",
                    unit = "mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    under = "Target",
                    from = @From(value = Place.SET_UP, name = "balance point from"))
            Optional<Measured<Length>> rangeFrom,

            @Input(
                    label = "Range to",
                    help = "Tail-heavy end of the balance range.",
                    unit = "mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    under = "Target",
                    from = @From(value = Place.SET_UP, name = "balance point to"))
            Optional<Measured<Length>> rangeTo,

            @Input(
                    label = "Part that may move",
                    help =
                            "Such as the pack, where only one part can still be shifted; empty where any may but the airframe.",
                    under = "Target")
            Optional<String> mayMove,

            @Input(
                    label = "Datum",
                    help = "Where stations are measured from; written at its mark.",
                    under = "Drawing",
                    from = @From(value = Place.BUILD, name = "datum"))
            String datum,

            @Input(
                    label = "Shape",
                    help = "Drawn behind the parts, and tells whether a part would still be inside.",
                    under = "Drawing",
                    from = @From(value = Place.BUILD, name = "planform"))
            Optional<Planform> planform) {}

    /** A line of the table of moments. */
    public record MomentLine(
            @Result(label = "Part") String part,
            @Result(label = "Group") String group,
            @Result(label = "Mass", unit = "g") Measured<Mass> mass,
            @Result(label = "x", unit = "mm") Measured<Length> x,
            @Result(label = "Moment x", unit = "g.mm") Measured<MomentOfMass> momentX,
            @Result(label = "Moment y", unit = "g.mm") Measured<MomentOfMass> momentY,
            @Result(label = "Moment z", unit = "g.mm") Measured<MomentOfMass> momentZ) {}

    /** What a part does to the whole. */
    public record ContributionLine(
            @Result(label = "Part") String part,
            @Result(label = "Share of mass", unit = "%") Measured<Dimensionless> share,

            @Result(label = "Without it x moves", unit = "mm")
            Measured<Length> shiftWithout,

            @Result(label = "Share of the doubt", unit = "%")
            Measured<Dimensionless> varianceShare) {}

    /** What would bring the balance point to the target. */
    public record WhatIfLine(
            @Result(label = "Part") String part,

            @Result(label = "Move it along x by", unit = "mm")
            Measured<Length> move,

            @Result(label = "To station", unit = "mm") Measured<Length> station,
            @Result(label = "Still inside") String inside,
            @Result(label = "Or add there", unit = "g") Optional<Measured<Mass>> ballast) {}

    /** What comes out. */
    public record Results(
            @Result(label = "All-up mass", unit = "g") Measured<Mass> mass,

            @Result(label = "Balance point x", help = "Aft of the datum.", unit = "mm")
            Measured<Length> balanceX,

            @Result(label = "Balance point y", help = "To the right wing.", unit = "mm")
            Measured<Length> balanceY,

            @Result(label = "Balance point z", help = "Up.", unit = "mm")
            Measured<Length> balanceZ,

            @Result(label = "Roll inertia", help = "About the x axis through the balance point.", unit = "kg.m2")
            Measured<MomentOfInertia> rollInertia,

            @Result(label = "Pitch inertia", help = "About the y axis.", unit = "kg.m2")
            Measured<MomentOfInertia> pitchInertia,

            @Result(label = "Yaw inertia", help = "About the z axis.", unit = "kg.m2")
            Measured<MomentOfInertia> yawInertia,

            @Result(label = "Product of inertia xz", unit = "kg.m2")
            Measured<MomentOfInertia> productXz,

            @Result(label = "Findings") List<Finding> findings,
            @Result(label = "Moments") List<MomentLine> moments,
            @Result(label = "What each part does") List<ContributionLine> contributions,
            @Result(label = "What would reach the target") List<WhatIfLine> whatIf,
            @Result(label = "From above") Drawing plan,
            @Result(label = "From the side") Drawing side,
            @Result(label = "Mass by group") Chart massByGroup,
            @Result(label = "Pull of each part") Chart pull,
            @Result(label = "For the journal") List<Proposal> proposals) {}

    @Override
    public Results compute(Inputs inputs, Run run) throws UnsuitableInput {
        return LedgerAnswer.of(new Words(run.language()), inputs).results();
    }
}
