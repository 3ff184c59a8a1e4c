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
import planewright.api.quantity.Units.MomentOfMass;

/** Mass and balance point from scales under the aircraft. */
@Extension
@About(
        id = "balance.weighing",
        version = "1",
        title = "Weighing",
        question = "What do the scales say?",
        sources = {
            "FAA-H-8083-1B, Aircraft Weight and Balance Handbook (2016), chapter 3: weighing and the balance point from scales",
            "JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2",
            "R. T. Birge, Physical Review 40 (1932) 207: do repeated weighings agree (cited from memory)"
        },
        cautions = {
            "Lithium pack disconnected and propeller off while the aircraft stands on scales.",
            "Support it so that it cannot roll or tip; weigh it level, out of the wind, with everything on board that flies."
        })
public final class Weighing implements Calculator<Weighing.Inputs, Weighing.Results> {
    /** A support with its scale. */
    public record SupportLine(
            @Input(label = "Support", help = "Such as nose, left, right or tail.", from = @From(Place.ROW_NAME))
            String name,

            @Input(
                    label = "Reading",
                    help = "What the scale shows with the aircraft on it, level; ± at least half its last step.",
                    unit = "g",
                    atLeast = "0 g",
                    atMost = "1000 kg",
                    from = @From(Place.MEASUREMENT))
            Measured<Mass> reading,

            @Input(
                    label = "Tare",
                    help = "What the scale shows with blocks and chocks alone.",
                    unit = "g",
                    initial = "0 g",
                    atLeast = "0 g",
                    atMost = "1000 kg",
                    from = @From(value = Place.MEASUREMENT, name = "tare"))
            Measured<Mass> tare,

            @Input(
                    label = "x",
                    help = "Station where the support touches, aft of the datum.",
                    unit = "mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    from = @From(value = Place.MEASUREMENT, name = "x"))
            Measured<Length> x,

            @Input(
                    label = "y",
                    help = "To the right wing.",
                    unit = "mm",
                    initial = "0 mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    from = @From(value = Place.MEASUREMENT, name = "y"))
            Measured<Length> y,

            @Input(
                    label = "Round",
                    help =
                            "Weighed more than once? Rows of one weighing share a word, such as first; else leave it empty.")
            String round) {}

    /** What is given. */
    public record Inputs(
            @Input(
                    label = "Supports",
                    help = "Two or more, each with its scale, one ahead of the others.",
                    from = @From(value = Place.MEASUREMENT_ROWS, name = "scale"))
            List<SupportLine> supports,

            @Input(
                    label = "Mass known otherwise",
                    help = "From one large scale or the mass ledger; the sum of the supports is checked by it.",
                    unit = "g",
                    above = "0 g",
                    atMost = "1000 kg",
                    under = "Check",
                    from = @From(value = Place.MEASUREMENT, name = "all-up mass"))
            Optional<Measured<Mass>> knownMass,

            @Input(
                    label = "Target x",
                    help = "Where it should balance, aft of the datum.",
                    unit = "mm",
                    atLeast = "-100 m",
                    atMost = "100 m",
                    under = "Check",
                    from = @From(value = Place.SET_UP, name = "balance point"))
            Optional<Measured<Length>> targetX,

            @Input(
                    label = "Shape",
                    help = "Drawn behind the supports.",
                    under = "Drawing",
                    from = @From(value = Place.BUILD, name = "planform"))
            Optional<Planform> planform) {}

    /** What a support carries. */
    public record LoadLine(
            @Result(label = "Support") String name,
            @Result(label = "Round") String round,
            @Result(label = "Net load", unit = "g") Measured<Mass> load,
            @Result(label = "Share", unit = "%") Measured<Dimensionless> share,
            @Result(label = "x", unit = "mm") Measured<Length> x,
            @Result(label = "y", unit = "mm") Measured<Length> y,
            @Result(label = "Moment x", unit = "g.mm") Measured<MomentOfMass> momentX) {}

    /** What one round says. */
    public record RoundLine(
            @Result(label = "Round") String round,
            @Result(label = "Mass", unit = "g") Measured<Mass> mass,
            @Result(label = "x", unit = "mm") Measured<Length> x,
            @Result(label = "y", unit = "mm") Optional<Measured<Length>> y) {}

    /** What comes out. */
    public record Results(
            @Result(label = "Mass", unit = "g") Measured<Mass> mass,

            @Result(label = "Balance point x", help = "Aft of the datum.", unit = "mm")
            Measured<Length> balanceX,

            @Result(
                    label = "Balance point y",
                    help = "To the right wing; needs supports beside the centre line.",
                    unit = "mm")
            Optional<Measured<Length>> balanceY,

            @Result(
                    label = "Largest residual of x",
                    help = "How far a round lies from the value taken; several rounds only.",
                    unit = "mm")
            Optional<Measured<Length>> residualX,

            @Result(
                    label = "Agreement of the rounds",
                    help =
                            "Birge ratio, the worst of mass, x and y: about 1 where rounds differ as their ± allows, above 2"
                                    + " where something moved; none without ±.",
                    unit = "1")
            Optional<Measured<Dimensionless>> agreement,

            @Result(label = "Findings") List<Finding> findings,
            @Result(label = "Loads") List<LoadLine> loads,
            @Result(label = "Rounds") List<RoundLine> rounds,
            @Result(label = "From above") Drawing plan,
            @Result(label = "From the side") Drawing side,
            @Result(label = "Load on each support") Chart loadChart,

            @Result(label = "Rounds against each other") Optional<Chart> roundChart,

            @Result(label = "For the journal") List<Proposal> proposals) {}

    @Override
    public Results compute(Inputs inputs, Run run) throws UnsuitableInput {
        return WeighingAnswer.of(new Words(run.language()), inputs).results();
    }
}
