package planewright.balance;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.Result;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units.AreaDensity;
import planewright.api.quantity.Units.Density;

/** What comes out of {@link BalanceRange}. */
public record BalanceRangeResults(
        @Result(
                label = "Balance from",
                help = "From the nose-heavy to the tail-heavy end of the range, aft of the datum.",
                upTo = "balanceTo",
                unit = "mm")
        Measured<Length> balanceFrom,

        @Result(label = "Balance to", help = "Tail-heavy end of the range.", unit = "mm")
        Measured<Length> balanceTo,

        @Result(
                label = "Neutral point",
                help = "Balanced here it would neither return nor depart. ± is the lattice's error and a third of what"
                        + " the bodies do.",
                unit = "mm")
        Measured<Length> neutralPoint,

        @Result(label = "Static margin now", help = "In mean chords ahead of the neutral point.", unit = "%")
        Optional<Measured<Dimensionless>> marginNow,

        @Result(
                label = "Stall speed",
                help = "In level flight, trimmed, when the first section along the span stalls.",
                unit = "m/s")
        Optional<Measured<Speed>> stallSpeed,

        @Result(label = "Findings") List<Finding> findings,

        @Result(label = "Lift coefficient", help = "Needed at the speed.", unit = "1")
        Optional<Measured<Dimensionless>> liftNeeded,

        @Result(label = "Angle of attack", help = "Of the datum line at the speed.", unit = "deg")
        Optional<Measured<Angle>> angleOfAttack,

        @Result(
                label = "Trim angle",
                help = "Of the control surface that trims; trailing edge down is +.",
                unit = "deg")
        Optional<Measured<Angle>> trimAngle,

        @Result(
                label = "Lift at the stall",
                help = "Lift coefficient of the whole when the first section stalls.",
                unit = "1")
        Measured<Dimensionless> stallLift,

        @Result(label = "Stalls first at", help = "From root to tip of the surface that does.", unit = "%")
        Measured<Dimensionless> stallsAt,

        @Result(
                label = "Reserve of the tip",
                help =
                        "How much more lift than the first section's stall the outer quarter of the wing bears; below 0 it"
                                + " stalls before the rest.",
                unit = "%")
        Measured<Dimensionless> tipReserve,

        @Result(label = "Air density", unit = "kg/m3") Measured<Density> airDensity,

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

        @Result(
                label = "Moved by the bodies",
                under = BalanceRangeResults.ASIDE,
                help = "Part of the neutral point; forward is −.",
                unit = "mm")
        Measured<Length> bodyShift,

        @Result(
                label = "Error of the lattice",
                under = BalanceRangeResults.ASIDE,
                help = "Part of the ± of the neutral point.",
                unit = "mm")
        Measured<Length> latticeError,

        @Result(
                label = "Lift slope",
                under = BalanceRangeResults.ASIDE,
                help = "Lift coefficient gained per radian of incidence.",
                unit = "1")
        Measured<Dimensionless> liftSlope,

        @Result(
                label = "Span efficiency",
                under = BalanceRangeResults.ASIDE,
                help = "1 is the least induced drag of one flat wing.",
                unit = "1")
        Measured<Dimensionless> spanEfficiency,

        @Result(
                label = "Incidence of no lift",
                under = BalanceRangeResults.ASIDE,
                help = "Of the datum line, by twist, settings and sections.",
                unit = "deg")
        Measured<Angle> zeroLift,

        @Result(label = "Wing loading", unit = "g/dm2") Optional<Measured<AreaDensity>> wingLoading,
        @Result(label = "From above") Drawing plan,
        @Result(label = "Margin against balance point") Chart marginChart,
        @Result(label = "Lift along the span") Chart liftChart,
        @Result(label = "Surfaces") List<SurfaceLine> surfaces,

        @Result(
                label = "Responses",
                help = "Per radian, or per half chord or half span of turning a radian; at a lift coefficient of 0.3.")
        List<ResponseLine> responses,

        @Result(label = "Control power", help = "Coefficients for each degree.")
        List<PowerLine> powers,

        @Result(label = "Lattices") List<LatticeLine> lattices,
        @Result(label = "For the journal") List<Proposal> proposals) {
    private static final String ASIDE = "Behind the figures";

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

    /** What a degree of a control surface does. */
    public record PowerLine(
            @Result(label = "Control surface") String control,

            @Result(label = "Lift", help = "Trailing edge down is +.", unit = "1")
            Measured<Dimensionless> lift,

            @Result(label = "Pitch", help = "Nose up is +.", unit = "1")
            Measured<Dimensionless> pitch,

            @Result(label = "Roll", help = "Trailing edge of the right side down; right wing down is +.", unit = "1")
            Measured<Dimensionless> roll,

            @Result(label = "Yaw", help = "Nose right is +; a fin's trailing edge to the right.", unit = "1")
            Measured<Dimensionless> yaw,

            @Result(label = "Side", help = "To the right is +.", unit = "1")
            Measured<Dimensionless> side) {}

    /** One lattice on the way. */
    public record LatticeLine(
            @Result(label = "Panels") int panels,
            @Result(label = "Neutral point", unit = "mm") Measured<Length> neutralPoint) {}
}
