package planewright.balance;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Volume;
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
import planewright.api.quantity.Units.Density;
import planewright.api.quantity.Units.MomentOfMass;

/** Why a wing hangs low or drops in flight, and what levels it. {@link LeanMoments} states the model. */
@Extension
@About(
        id = "balance.lean",
        version = "1",
        title = "Leaning",
        question = "Why does it lean?",
        sources = {
            "FAA-H-8083-1B, Aircraft Weight and Balance Handbook (2016), chapter 2: moments of masses",
            "J. Katz and A. Plotkin, Low-Speed Aerodynamics, 2nd edition, chapter 12: vortex lattice, for what twist does"
                    + " (cited from memory)",
            "JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2: the ± of sums and products"
        },
        cautions = {
            "Lithium pack disconnected and propeller off while it hangs or lies on supports.",
            "Fix tip ballast so that it cannot come loose in flight.",
            "A wing that drops in flight can be stalled, not heavy: try it high, away from people, where local rules allow it."
        })
public final class Lean implements Calculator<Lean.Inputs, Lean.Results> {
    /** What it does in flight, hands off. */
    public enum InFlight {
        NOT_FLOWN,
        LEVEL,
        ROLLS_LEFT,
        ROLLS_RIGHT
    }

    /** When it does so. */
    public enum When {
        NOT_KNOWN,
        AT_ALL_SPEEDS,
        MORE_WHEN_FAST,
        ONLY_UNDER_POWER
    }

    /** One line of the ledger. */
    public record PartLine(
            @Input(
                    label = "Part",
                    help = "Pairs are told by their names, such as left wing panel and right wing panel.",
                    from = @From(value = Place.PART, name = "name"))
            String name,

            @Input(
                    label = "Mass",
                    help = "Empty for a part that is not weighed yet.",
                    unit = "g",
                    atLeast = "0.001 g",
                    atMost = "200 kg",
                    from = @From(value = Place.PART, name = "mass"))
            Optional<Measured<Mass>> mass,

            @Input(
                    label = "y",
                    help = "Station of its own centre of mass, to the right wing.",
                    unit = "mm",
                    initial = "0 mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    from = @From(value = Place.PART, name = "y"))
            Measured<Length> y) {}

    /** A pair that could differ. */
    public record SuspectLine(
            @Input(label = "Pair", help = "Such as foam cores, spars or glass cloth.")
            String name,

            @Input(
                    label = "Arm",
                    help = "From the centre line to the middle of one side's.",
                    unit = "mm",
                    atLeast = "1 mm",
                    atMost = "100 m")
            Measured<Length> arm,

            @Input(
                    label = "Volume of one",
                    help = "Of one side; empty to ask for the difference in mass only.",
                    unit = "mL",
                    atLeast = "0.001 mL",
                    atMost = "100 m3")
            Optional<Measured<Volume>> volume,

            @Input(
                    label = "Density from",
                    help = "The lightest that this material comes.",
                    unit = "kg/m3",
                    atLeast = "0.1 kg/m3",
                    atMost = "25000 kg/m3")
            Optional<Measured<Density>> densityFrom,

            @Input(
                    label = "Density to",
                    help = "The heaviest that this material comes.",
                    unit = "kg/m3",
                    atLeast = "0.1 kg/m3",
                    atMost = "25000 kg/m3")
            Optional<Measured<Density>> densityTo) {}

    /** What is given. */
    public record Inputs(
            @Input(
                    label = "Levelled by",
                    help = "Mass that made it hang level; empty where that was not tried.",
                    unit = "g",
                    above = "0 g",
                    atMost = "20 kg",
                    from = @From(value = Place.MEASUREMENT, name = "tip ballast"))
            Optional<Measured<Mass>> levelledBy,

            @Input(
                    label = "Put at y",
                    help = "Where that mass was put; the right wing is positive, the left negative.",
                    unit = "mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    from = @From(value = Place.MEASUREMENT, name = "tip ballast y"))
            Optional<Measured<Length>> levelledAt,

            @Input(
                    label = "Scale under a tip",
                    help = "Resting on two points of the centre line, level: what a scale under the low wing shows.",
                    unit = "g",
                    atLeast = "0 g",
                    atMost = "200 kg",
                    from = @From(value = Place.MEASUREMENT, name = "tip scale"))
            Optional<Measured<Mass>> tipReading,

            @Input(
                    label = "Scale at y",
                    help = "Where the scale touched; right is positive.",
                    unit = "mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    from = @From(value = Place.MEASUREMENT, name = "tip scale y"))
            Optional<Measured<Length>> tipReadingAt,

            @Input(
                    label = "Lean while hung",
                    help =
                            "Hung from one line along the centre: how far the right wing is down; left down is negative.",
                    unit = "deg",
                    atLeast = "-45 deg",
                    atMost = "45 deg",
                    from = @From(value = Place.MEASUREMENT, name = "lean"))
            Optional<Measured<Angle>> lean,

            @Input(
                    label = "Pivot above balance point",
                    help = "Height of the pivot above the balance point; needed with the lean.",
                    unit = "mm",
                    atLeast = "1 mm",
                    atMost = "10 m",
                    from = @From(value = Place.MEASUREMENT, name = "hanging height"))
            Optional<Measured<Length>> hangingHeight,

            @Input(
                    label = "All-up mass",
                    help = "Empty to take the sum of the parts.",
                    unit = "g",
                    atLeast = "0.001 g",
                    atMost = "200 kg",
                    from = @From(value = Place.MEASUREMENT, name = "all-up mass"))
            Optional<Measured<Mass>> mass,

            @Input(
                    label = "Parts",
                    help = "The mass ledger; parts beside the centre line are looked at.",
                    under = "On the scale",
                    from = @From(Place.PART_ROWS))
            List<PartLine> parts,

            @Input(
                    label = "Part that is the ballast",
                    help = "Left out of the causes; its place and mass stand in where none are given above.",
                    initial = "tip ballast",
                    under = "On the scale")
            String ballastPart,

            @Input(label = "Suspects", help = "Pairs that were not weighed and could differ.", under = "On the scale")
            List<SuspectLine> suspects,

            @Input(
                    label = "Tip",
                    help = "How far out ballast could go; empty to take the tip of the shape.",
                    unit = "mm",
                    atLeast = "1 mm",
                    atMost = "100 m",
                    under = "On the scale")
            Optional<Measured<Length>> tip,

            @Input(
                    label = "In flight",
                    help = "What it does hands off, wings level, aileron trim at neutral.",
                    initial = "not flown",
                    under = "In flight")
            InFlight flight,

            @Input(label = "When", help = "At which speed or power.", initial = "not known", under = "In flight")
            When when,

            @Input(
                    label = "Speed",
                    help = "At which it was flown; needed for twist.",
                    unit = "m/s",
                    atLeast = "1 m/s",
                    atMost = "150 m/s",
                    under = "In flight")
            Optional<Measured<Speed>> speed,

            @Input(
                    label = "Left half span",
                    help = "From the centre line to the left tip, as measured.",
                    unit = "mm",
                    atLeast = "1 mm",
                    atMost = "100 m",
                    under = "In flight",
                    from = @From(value = Place.MEASUREMENT, name = "left half span"))
            Optional<Measured<Length>> leftSpan,

            @Input(
                    label = "Right half span",
                    help = "From the centre line to the right tip, as measured.",
                    unit = "mm",
                    atLeast = "1 mm",
                    atMost = "100 m",
                    under = "In flight",
                    from = @From(value = Place.MEASUREMENT, name = "right half span"))
            Optional<Measured<Length>> rightSpan,

            @Input(
                    label = "Left wing area",
                    help = "Of the left half; empty where both halves have the same chords.",
                    unit = "dm2",
                    atLeast = "0.0001 dm2",
                    atMost = "10000 m2",
                    under = "In flight",
                    from = @From(value = Place.MEASUREMENT, name = "left wing area"))
            Optional<Measured<Area>> leftArea,

            @Input(
                    label = "Right wing area",
                    help = "Of the right half.",
                    unit = "dm2",
                    atLeast = "0.0001 dm2",
                    atMost = "10000 m2",
                    under = "In flight",
                    from = @From(value = Place.MEASUREMENT, name = "right wing area"))
            Optional<Measured<Area>> rightArea,

            @Input(
                    label = "Left tip twist",
                    help = "Of the tip against the root, leading edge up positive; washout is negative.",
                    unit = "deg",
                    atLeast = "-20 deg",
                    atMost = "20 deg",
                    under = "In flight",
                    from = @From(value = Place.MEASUREMENT, name = "left tip twist"))
            Optional<Measured<Angle>> leftTwist,

            @Input(
                    label = "Right tip twist",
                    help = "Of the tip against the root, leading edge up positive.",
                    unit = "deg",
                    atLeast = "-20 deg",
                    atMost = "20 deg",
                    under = "In flight",
                    from = @From(value = Place.MEASUREMENT, name = "right tip twist"))
            Optional<Measured<Angle>> rightTwist,

            @Input(
                    label = "Shape",
                    help = "Gives the tip, the areas and the lift of the wing.",
                    under = "Drawing",
                    from = @From(value = Place.BUILD, name = "planform"))
            Optional<Planform> planform) {}

    /** Something that could be the reason. */
    public record CauseLine(
            @Result(label = "Cause") String cause,
            @Result(label = "Shows") String shows,

            @Result(label = "Rolling moment", help = "Right wing down is positive.", unit = "g.mm")
            Measured<MomentOfMass> moment,

            @Result(label = "Like at the tip", unit = "g") Measured<Mass> atTip,

            @Result(label = "Share of the lean", unit = "%") Optional<Measured<Dimensionless>> share,

            @Result(label = "Verdict") String verdict) {}

    /** How much a pair would have to differ. */
    public record SuspectAnswer(
            @Result(label = "Pair") String pair,
            @Result(label = "Heavier side") String side,

            @Result(label = "Needs a difference of", unit = "g")
            Measured<Mass> mass,

            @Result(label = "In density", unit = "kg/m3") Optional<Measured<Density>> density,

            @Result(label = "Material differs by up to", unit = "kg/m3")
            Optional<Measured<Density>> range,

            @Result(label = "Verdict") String verdict) {}

    /** What comes out. */
    public record Results(
            @Result(label = "Lean", help = "Rolling moment; right wing heavy is positive.", unit = "g.mm")
            Measured<MomentOfMass> moment,

            @Result(label = "By the parts alone", unit = "g.mm")
            Measured<MomentOfMass> byParts,

            @Result(label = "Balance point beside the centre line", unit = "mm")
            Optional<Measured<Length>> offset,

            @Result(label = "Levelled by", unit = "g") Measured<Mass> levelledBy,

            @Result(label = "At", help = "Right is positive.", unit = "mm")
            Measured<Length> levelledAt,

            @Result(label = "Findings") List<Finding> findings,
            @Result(label = "Causes") List<CauseLine> causes,
            @Result(label = "Suspects") List<SuspectAnswer> suspects,
            @Result(label = "From above") Drawing plan,

            @Result(label = "Which wing each cause pulls down")
            Chart pull,

            @Result(label = "For the journal") List<Proposal> proposals) {}

    @Override
    public Results compute(Inputs inputs, Run run) throws UnsuitableInput {
        return LeanAnswer.of(new Words(run.language()), inputs).results();
    }
}
