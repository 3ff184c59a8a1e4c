package planewright.balance;

import java.util.List;
import java.util.Optional;
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

/** The lightest ballast of whole pieces, and where each goes. {@link PieceProblem} states the model. */
@Extension
@About(
        id = "balance.ballast",
        version = "1",
        title = "Ballast",
        question = "What do I add, where?",
        sources = {
            "FAA-H-8083-1B, Aircraft Weight and Balance Handbook (2016), chapter 7: ballast from moments",
            "United States Mint, Coin Specifications; Council Regulation (EC) No 975/98 as amended: masses of coins",
            "JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2: the ± of sums and means"
        },
        cautions = {
            "Fix ballast so that it cannot come loose or shift in flight: a piece that slides is worse than none.",
            "Lead is poisonous: gloves, no sanding or melting indoors, wash hands, keep it from children. Local rules first.",
            "A computed balance point does not replace a check: lift the finished aircraft at the balance point before it flies.",
            "Lithium pack disconnected and propeller off while parts are weighed, moved or fitted.",
            "Fly only where your local rules allow it, away from people."
        },
        quick = false)
public final class Ballast implements Calculator<Ballast.Inputs, Ballast.Results> {
    /** Pieces with a published mass. */
    public enum Coins {
        NONE,
        US_COINS,
        EURO_COINS,
        STEEL_WASHERS
    }

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
                    atMost = "200 kg",
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
            Measured<Length> y) {}

    /** A part that may still be shifted along x. */
    public record MovableLine(
            @Input(label = "Part", help = "As in the list of parts, such as pack.")
            String part,

            @Input(
                    label = "Forward to",
                    help = "The foremost station that its centre of mass can take.",
                    unit = "mm",
                    atLeast = "-100 m",
                    atMost = "100 m")
            Measured<Length> from,

            @Input(
                    label = "Aft to",
                    help = "The rearmost station that its centre of mass can take.",
                    unit = "mm",
                    atLeast = "-100 m",
                    atMost = "100 m")
            Measured<Length> to) {}

    /** A place for ballast. */
    public record PocketLine(
            @Input(label = "Pocket", help = "Such as nose, left tip or tail.")
            String name,

            @Input(
                    label = "x",
                    help = "Station where pieces would sit, aft of the datum.",
                    unit = "mm",
                    atLeast = "-100 m",
                    atMost = "100 m")
            Measured<Length> x,

            @Input(
                    label = "y",
                    help = "To the right wing.",
                    unit = "mm",
                    initial = "0 mm",
                    atLeast = "-100 m",
                    atMost = "100 m")
            Measured<Length> y,

            @Input(
                    label = "Room for pieces",
                    help = "How many pieces go in; empty where it takes any number.",
                    atLeast = "0",
                    atMost = "1000")
            Optional<Integer> pieces,

            @Input(
                    label = "Room for mass",
                    help = "The most mass it should carry; empty for any.",
                    unit = "g",
                    atLeast = "0 g",
                    atMost = "200 kg")
            Optional<Measured<Mass>> mass) {}

    /** Pieces at hand. */
    public record StockLine(
            @Input(label = "Piece", help = "Such as lead shot, wheel weight or bolt.")
            String name,

            @Input(
                    label = "Mass of one",
                    help = "Weigh ten and divide by ten.",
                    unit = "g",
                    atLeast = "0.01 g",
                    atMost = "20 kg")
            Measured<Mass> mass,

            @Input(
                    label = "How many",
                    help = "How many of them there are.",
                    initial = "10",
                    atLeast = "0",
                    atMost = "1000")
            int count) {}

    /** What is given. */
    public record Inputs(
            @Input(
                    label = "Parts",
                    help = "The mass ledger: everything that flies, with its mass and where it sits.",
                    from = @From(Place.PART_ROWS))
            List<PartLine> parts,

            @Input(label = "Part to leave out", help = "Ballast of old that comes out first, such as nose weight.")
            Optional<String> leaveOut,

            @Input(
                    label = "Target x",
                    help = "Where it should balance, aft of the datum; empty to level it sideways only.",
                    unit = "mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    under = "Target",
                    from = @From(value = Place.SET_UP, name = "balance point"))
            Optional<Measured<Length>> targetX,

            @Input(
                    label = "Tolerance",
                    help = "How far from the target along x is near enough.",
                    unit = "mm",
                    initial = "2 mm",
                    atLeast = "0.01 mm",
                    atMost = "10 m",
                    under = "Target")
            Measured<Length> tolerance,

            @Input(
                    label = "Sideways too",
                    help = "Whether it shall balance sideways as well.",
                    initial = "yes",
                    under = "Target")
            boolean sideways,

            @Input(
                    label = "Target y",
                    help = "Where it should balance sideways; 0 is the centre line.",
                    unit = "mm",
                    initial = "0 mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    under = "Target")
            Measured<Length> targetY,

            @Input(
                    label = "Tolerance sideways",
                    help = "How far from the target along y is near enough.",
                    unit = "mm",
                    initial = "1 mm",
                    atLeast = "0.01 mm",
                    atMost = "10 m",
                    under = "Target")
            Measured<Length> toleranceY,

            @Input(
                    label = "Parts that may move",
                    help = "Such as the pack; they are shifted before anything is added.",
                    under = "Moves")
            List<MovableLine> movable,

            @Input(label = "Pockets", help = "Where ballast could go.", under = "Ballast")
            List<PocketLine> pockets,

            @Input(label = "Pieces", help = "Weights at hand: lead, bolts, anything weighed.", under = "Ballast")
            List<StockLine> stock,

            @Input(
                    label = "Coins or washers",
                    help = "Pieces whose mass is published, offered as well.",
                    initial = "none",
                    under = "Ballast")
            Coins coins,

            @Input(
                    label = "Of each coin",
                    help = "How many of each kind of coin or washer there are.",
                    initial = "10",
                    atLeast = "0",
                    atMost = "1000",
                    under = "Ballast")
            int coinsEach,

            @Input(
                    label = "Lead to cut",
                    help = "How much lead or clay there is to cut to measure; empty for whole pieces only.",
                    unit = "g",
                    atLeast = "0 g",
                    atMost = "20 kg",
                    under = "Ballast")
            Optional<Measured<Mass>> leadToCut,

            @Input(
                    label = "Cut to",
                    help = "How finely it is cut and weighed.",
                    unit = "g",
                    initial = "0.5 g",
                    atLeast = "0.01 g",
                    atMost = "100 g",
                    under = "Ballast")
            Measured<Mass> cutStep,

            @Input(
                    label = "Shape",
                    help = "Drawn behind the pockets.",
                    under = "Drawing",
                    from = @From(value = Place.BUILD, name = "planform"))
            Optional<Planform> planform) {}

    /** What goes where. */
    public record PlacedLine(
            @Result(label = "Pocket") String pocket,
            @Result(label = "Piece") String piece,
            @Result(label = "How many") int count,
            @Result(label = "Together", unit = "g") Measured<Mass> mass,
            @Result(label = "x", unit = "mm") Measured<Length> x,
            @Result(label = "y", unit = "mm") Measured<Length> y) {}

    /** How a part is shifted. */
    public record MovedLine(
            @Result(label = "Part") String part,
            @Result(label = "From", unit = "mm") Measured<Length> from,
            @Result(label = "To", unit = "mm") Measured<Length> to,

            @Result(label = "Aft by", help = "Negative is forward.", unit = "mm")
            Measured<Length> by) {}

    /** Another way. */
    public record OtherLine(
            @Result(label = "What goes where") String what,
            @Result(label = "Mass", unit = "g") Measured<Mass> mass,
            @Result(label = "Pieces") int pieces,
            @Result(label = "Balance x", unit = "mm") Measured<Length> x,
            @Result(label = "Balance y", unit = "mm") Measured<Length> y) {}

    /** What comes out. */
    public record Results(
            @Result(label = "Ballast added", unit = "g") Measured<Mass> added,
            @Result(label = "Pieces") int pieces,

            @Result(label = "Balances at x before", unit = "mm")
            Measured<Length> beforeX,

            @Result(label = "Balances at y before", unit = "mm")
            Measured<Length> beforeY,

            @Result(label = "Balances at x after", unit = "mm")
            Measured<Length> afterX,

            @Result(label = "Balances at y after", unit = "mm")
            Measured<Length> afterY,

            @Result(label = "All-up mass after", unit = "g") Measured<Mass> allUp,

            @Result(label = "Findings") List<Finding> findings,
            @Result(label = "What goes where") List<PlacedLine> placed,
            @Result(label = "What moves") List<MovedLine> moves,
            @Result(label = "Next best") List<OtherLine> others,
            @Result(label = "From above") Drawing plan,
            @Result(label = "Ballast in each pocket") Chart perPocket,
            @Result(label = "For the journal") List<Proposal> proposals) {}

    @Override
    public Results compute(Inputs inputs, Run run) throws UnsuitableInput {
        return BallastAnswer.of(inputs, run).results();
    }
}
