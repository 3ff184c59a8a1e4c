package planewright.ducts;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
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
import planewright.api.figure.Drawing;
import planewright.api.quantity.Measured;

/** An inlet that lies below the skin, drawn to cut from. */
@Extension
@About(
        id = "ducts.inlet",
        version = "1",
        title = "Submerged inlet",
        question = "What does the submerged inlet look like, at true size?",
        sources = {
            "NACA RM A7I30 (1948): curved diverging walls, ramp of 5° to 7°, width 3 to 5 times the depth",
            "NACA ACR 5I20 (1945): the place for it has a thin boundary layer and little extra speed",
            "Raymer, Aircraft Design: A Conceptual Approach, 6th ed., Table 10.1: the ordinates of the wall",
            "'NACA Submerged Duct Construction' (Whitehouse), second hand: length, nose radius and thickness of the lip;"
                    + " the curve between them is drawn here without a source",
            "JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2"
        },
        cautions = {
            "Hot wire: it burns skin and melts foam into fumes. Work in moving air, at the least heat that cuts, never"
                    + " alone with it switched on, and keep to the foam maker's sheet and local rules.",
            "Knife and blade: cut away from the hand that holds, in several light passes, with the work held down.",
            "Sanded foam, glass and filler: a mask that fits, glasses, and the dust taken up wet or by suction.",
            "Look below the skin before you cut: pack, leads and spars may lie there. Take the pack out first.",
            "An inlet cools only where the air can leave again, and a lithium pack that gets hot needs less load before"
                    + " more air: keep to its maker's limits, and keep water and grit away from it."
        })
public final class SubmergedInlet implements Calculator<SubmergedInlet.Inputs, SubmergedInlet.Results> {
    /** How the rear edge is made. */
    public enum Edge {
        SHAPED,
        PLAIN
    }

    /** What is given. */
    public record Inputs(
            @Input(
                    label = "Width",
                    help = "Of the entrance from wall to wall; or leave it empty and give the area.",
                    unit = "mm",
                    atLeast = "5 mm",
                    atMost = "500 mm",
                    usuallyFrom = "15 mm",
                    usuallyTo = "200 mm")
            Optional<Measured<Length>> width,

            @Input(
                    label = "Area",
                    help = "Of the entrance, width times depth; or leave it empty and give the width.",
                    unit = "mm2",
                    atLeast = "10 mm2",
                    atMost = "50000 mm2",
                    usuallyFrom = "50 mm2",
                    usuallyTo = "10000 mm2")
            Optional<Measured<Area>> area,

            @Input(
                    label = "Width over depth",
                    help = "Of the entrance; 3 to 5 works best.",
                    unit = "1",
                    initial = "4",
                    atLeast = "1",
                    atMost = "12")
            Measured<Dimensionless> ratio,

            @Input(
                    label = "Ramp angle",
                    help = "Of the floor to the skin; 5° to 7° works best, and 7° is the shortest of them.",
                    unit = "deg",
                    initial = "7°",
                    atLeast = "2°",
                    atMost = "20°")
            Measured<Angle> ramp,

            @Input(
                    label = "Lip",
                    help =
                            "Shaped: thick and rounded, to the published proportions. Plain: the rounded edge of the skin.",
                    initial = "shaped",
                    under = "Lip and skin")
            Edge lip,

            @Input(
                    label = "Skin thickness",
                    help = "At the lip; for a plain lip only.",
                    unit = "mm",
                    initial = "2 mm",
                    atLeast = "0.1 mm",
                    atMost = "30 mm",
                    usuallyTo = "10 mm",
                    under = "Lip and skin")
            Measured<Length> skinThickness,

            @Input(
                    label = "Skin radius across",
                    help =
                            "Where the skin is round across the flow, such as the side of a fuselage; empty where it is flat.",
                    unit = "mm",
                    atLeast = "5 mm",
                    atMost = "100 m",
                    under = "Lip and skin")
            Optional<Measured<Length>> radiusAcross,

            @Input(
                    label = "Skin radius along",
                    help = "Where the skin bulges along the flow; empty where it is straight.",
                    unit = "mm",
                    atLeast = "5 mm",
                    atMost = "100 m",
                    under = "Lip and skin")
            Optional<Measured<Length>> radiusAlong,

            @Input(
                    label = "Foam thickness",
                    help =
                            "From the skin to the inside, where the inlet goes; empty where there is nothing to cut through.",
                    unit = "mm",
                    above = "0 mm",
                    atMost = "500 mm",
                    under = "Foam",
                    from = @From(value = Place.MEASUREMENT, name = "foam thickness"))
            Optional<Measured<Length>> foamThickness,

            @Input(
                    label = "Foam to keep",
                    help = "Between the floor and the inside.",
                    unit = "mm",
                    initial = "3 mm",
                    atLeast = "0 mm",
                    atMost = "100 mm",
                    under = "Foam")
            Measured<Length> keep) {}

    /** A station of the ramp. */
    public record StationLine(
            @Result(label = "From apex", unit = "mm") Measured<Length> fromApex,
            @Result(label = "From lip", unit = "mm") Measured<Length> fromLip,
            @Result(label = "Half width", unit = "mm") Measured<Length> halfWidth,

            @Result(label = "Half width on the skin", unit = "mm")
            Measured<Length> halfWidthOnSkin,

            @Result(label = "Depth in the middle", unit = "mm")
            Measured<Length> depth,

            @Result(label = "Depth at the wall", unit = "mm")
            Measured<Length> depthAtWall) {}

    /** A place of the lip. */
    public record LipLine(
            @Result(label = "Behind its nose", unit = "mm") Measured<Length> behindNose,

            @Result(label = "Outside below the skin", unit = "mm")
            Measured<Length> outside,

            @Result(label = "Inside below the skin", unit = "mm")
            Measured<Length> inside) {}

    /** What comes out. */
    public record Results(
            @Result(label = "Length", help = "Of the cut-out, along the skin from the apex to the lip.", unit = "mm")
            Measured<Length> length,

            @Result(label = "Width", help = "Of the entrance, wall to wall.", unit = "mm")
            Measured<Length> width,

            @Result(label = "Depth", help = "Of the entrance, lip to floor; the mean over its width.", unit = "mm")
            Measured<Length> depth,

            @Result(label = "Area", help = "Of the entrance.", unit = "mm2")
            Measured<Area> area,

            @Result(label = "Floor below the skin", help = "At its deepest, in the middle.", unit = "mm")
            Measured<Length> floor,

            @Result(label = "Foam left under the floor", help = "Less than nothing: it comes out inside.", unit = "mm")
            Optional<Measured<Length>> foamLeft,

            @Result(label = "Room from the apex to the end of the lip", help = "Along the skin.", unit = "mm")
            Measured<Length> room,

            @Result(label = "Radius of the lip's nose", unit = "mm")
            Measured<Length> lipRadius,

            @Result(label = "Cut-out of the skin", help = "As it lies flat.", unit = "mm2")
            Measured<Area> cutOut,

            @Result(label = "Findings") List<Finding> findings,
            @Result(label = "Plan and section") Drawing drawing,
            @Result(label = "Entrance from ahead") Drawing entrance,
            @Result(label = "Ramp, station by station") List<StationLine> stations,
            @Result(label = "Lip") List<LipLine> lip,
            @Result(label = "For the journal") List<Proposal> proposals) {}

    @Override
    public Results compute(Inputs inputs, Run run) throws UnsuitableInput {
        var words = new Words(run.language());
        InletChecks.require(words, inputs);
        return new InletAnswer(words, inputs).results();
    }
}
