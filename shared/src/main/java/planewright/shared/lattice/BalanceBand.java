package planewright.shared.lattice;

import java.util.function.Consumer;
import planewright.api.journal.Planform;
import planewright.shared.planform.MarginBand;
import planewright.shared.planform.SurfaceGeometry;
import planewright.shared.planform.SurfaceGeometry.View;

/**
 * Where an aircraft should balance: ahead of its neutral point by the static margin wanted. The neutral point of the surfaces
 * comes from lattices made finer, what bodies do to it from {@link SlenderBody}.
 *
 * @param wing the wings that carry the aircraft, taken together
 * @param surfaces where its surfaces alone are neutral
 * @param bodyShift how far its bodies move that, m
 * @param margin the static margin wanted
 */
public record BalanceBand(SurfaceGeometry wing, NeutralPoint surfaces, double bodyShift, MarginBand margin) {
    /** How far the refinement goes, as a share of the mean chord. */
    private static final double SETTLED = 1e-3;

    /** Panels that the finest lattice may have; without a plane of symmetry each costs four times as much. */
    private static final int MOST_ALIKE = 2600;

    private static final int MOST_UNLIKE = 1300;

    /** Panels that the coarsest lattice may have; the program is to answer within seconds. */
    private static final int MOST_AT_FIRST_ALIKE = 1000;

    private static final int MOST_AT_FIRST_UNLIKE = 500;

    /** The share of what bodies do that is doubted: common practice, no source. */
    private static final double BODY_DOUBT = 1.0 / 3;

    /**
     * Refined until it moves less than a thousandth of the mean chord.
     *
     * @param each told of each lattice that was solved; may throw to stop
     * @throws ArithmeticException where the surfaces carry no lift, or lie on each other so that no flow can be told
     * @throws IllegalArgumentException for a shape without a wing
     */
    public static BalanceBand settled(Planform planform, MarginBand margin, Consumer<NeutralPoint.Step> each) {
        boolean alike = Lattice.of(planform, Resolution.fineness(2)).bothSidesAlike();
        double chord = wing(planform).meanChord();
        return of(planform, margin, NeutralPoint.of(planform, SETTLED * chord, alike ? MOST_ALIKE : MOST_UNLIKE, each));
    }

    /** From the two coarsest lattices alone, which is quick; the error claimed is larger. */
    public static BalanceBand first(Planform planform, MarginBand margin) {
        return of(planform, margin, NeutralPoint.first(planform));
    }

    /** Whether a shape is in few enough pieces for a lattice, none on another. */
    public static boolean isFeasible(Planform planform) {
        return Overlap.first(planform).isEmpty() && isFewEnough(planform);
    }

    private static boolean isFewEnough(Planform planform) {
        var lattice = Lattice.of(planform, Resolution.fineness(2));
        return lattice.panels() <= (lattice.bothSidesAlike() ? MOST_AT_FIRST_ALIKE : MOST_AT_FIRST_UNLIKE);
    }

    private static BalanceBand of(Planform planform, MarginBand margin, NeutralPoint surfaces) {
        double whole = SurfaceGeometry.of(planform.surfaces(), View.ALONG).area();
        if (surfaces.liftSlope() > 2 * Math.PI * whole) {
            throw new ArithmeticException("lift slope above that of a section");
        }
        double bodyShift = -SlenderBody.momentSlope(planform, surfaces.finest()) / surfaces.liftSlope();
        return new BalanceBand(wing(planform), surfaces, bodyShift, margin);
    }

    private static SurfaceGeometry wing(Planform planform) {
        return SurfaceGeometry.of(SurfaceGeometry.wings(planform), View.ABOVE);
    }

    /** Station of the neutral point, m. */
    public double neutral() {
        return surfaces.x() + bodyShift;
    }

    /** Standard uncertainty of the neutral point: the lattice's error, and a third of what the bodies do; m. */
    public double doubt() {
        return Math.hypot(surfaces.error(), BODY_DOUBT * bodyShift);
    }

    /** Nose-heavy end of the range, m. */
    public double from() {
        return neutral() - margin.to() * wing.meanChord();
    }

    /** Tail-heavy end of the range, m. */
    public double to() {
        return neutral() - margin.from() * wing.meanChord();
    }
}
