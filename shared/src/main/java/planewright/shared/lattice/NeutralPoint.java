package planewright.shared.lattice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import planewright.api.journal.Planform;
import planewright.shared.planform.Outlines;
import planewright.shared.planform.SurfaceGeometry;
import planewright.shared.planform.SurfaceGeometry.View;

/**
 * Where the lift due to incidence acts, so that an aircraft which balances there neither returns nor departs: x = Σ xL_α / Σ
 * L_α over all surfaces, from lattices made finer until it stands still.
 *
 * <p>At a kink of a swept wing the lattice's error falls as 1/n, elsewhere faster, so the value is the straight line through
 * the last two lattices at 1/n = 0 (L. F. Richardson, Philosophical Transactions A 210 (1911) 307, cited from memory). The
 * error claimed for it is twice its change from the value before, or half the change before that, or 0.15 of its distance from
 * the last lattice, whichever is most. Where a wake meets a surface, lattices jump about a value more than they approach it,
 * and the line would magnify that: so the last lattice itself is the value where its own claim, twice its
 * distance from the line or half that distance one lattice before, is smaller. docs/convergence.md of this module shows that
 * the claims hold.
 *
 * @param x station, m
 * @param error how far the lattice's limit may lie from it, m
 * @param liftSlope dL/dα per ½ρU², m²
 * @param steps the lattices, the coarsest first
 * @param finest the last lattice
 */
public record NeutralPoint(double x, double error, double liftSlope, List<Step> steps, Lattice finest) {
    private static final int[] FINENESS = {2, 3, 4, 5, 6, 8, 10, 12};

    /** The least error claimed, as a share of the wings' mean chord. */
    private static final double FLOOR = 5e-5;

    /** The same where only the two coarsest lattices were made. */
    private static final double FLOOR_AT_FIRST = 1.5e-3;

    /** What lattices tell together, and how far from it the truth may lie. */
    private record Estimate(double x, double error) {}

    /**
     * One lattice.
     *
     * @param fineness steps of {@link Resolution#fineness}
     * @param panels on both sides
     * @param x station of the neutral point on this lattice, m
     * @param liftSlope dL/dα per ½ρU², m²
     */
    public record Step(int fineness, int panels, double x, double liftSlope) {}

    /**
     * Refines until the error claimed is within a tolerance, or the next lattice would be too large.
     *
     * @param tolerance m
     * @param mostPanels how many panels on both sides a lattice may have; the first three are made whatever it says
     * @param each told of each lattice that was solved; may throw to stop
     * @throws ArithmeticException where the surfaces carry no lift, or lie on each other so that no flow can be told
     */
    public static NeutralPoint of(Planform planform, double tolerance, int mostPanels, Consumer<Step> each) {
        var steps = new ArrayList<Step>();
        Lattice lattice = null;
        for (int fineness : FINENESS) {
            int last = steps.size() - 1;
            if (last >= 2 && (estimate(steps).error() <= tolerance || next(steps.get(last), fineness) > mostPanels)) {
                break;
            }
            lattice = Lattice.of(planform, Resolution.fineness(fineness));
            steps.add(step(lattice, fineness, planform));
            each.accept(steps.get(steps.size() - 1));
        }
        var estimate = estimate(steps);
        return new NeutralPoint(
                estimate.x(),
                Math.max(estimate.error(), FLOOR * chord(planform)),
                line(steps, Step::liftSlope),
                List.copyOf(steps),
                lattice);
    }

    /**
     * From the two coarsest lattices alone, for a shape that changes again at once. The error claimed is twice the distance of
     * the straight line's value from the finer one, and never little.
     *
     * @throws ArithmeticException as {@link #of} does
     */
    public static NeutralPoint first(Planform planform) {
        var steps = new ArrayList<Step>();
        Lattice lattice = null;
        for (int fineness : List.of(FINENESS[0], FINENESS[1])) {
            lattice = Lattice.of(planform, Resolution.fineness(fineness));
            steps.add(step(lattice, fineness, planform));
        }
        return new NeutralPoint(
                line(steps, Step::x),
                Math.max(2 * correction(steps), FLOOR_AT_FIRST * chord(planform)),
                line(steps, Step::liftSlope),
                List.copyOf(steps),
                lattice);
    }

    private static double chord(Planform planform) {
        return SurfaceGeometry.of(SurfaceGeometry.wings(planform), View.ABOVE).meanChord();
    }

    private static double next(Step last, int fineness) {
        return last.panels() * Math.pow((double) fineness / last.fineness(), 2);
    }

    private static Step step(Lattice lattice, int fineness, Planform planform) {
        var load = lattice.load(Motion.INCIDENCE, Motion.AHEAD);
        double lift = load.force().z();
        double x = -load.moment().y() / lift;
        if (!(lift > 0) || !(Math.abs(x) <= 10 * Outlines.reach(planform))) {
            throw new ArithmeticException("lift per incidence is " + lift + " m² at station " + x + " m");
        }
        return new Step(fineness, lattice.panels(), x, 2 * lift);
    }

    private static Estimate estimate(List<Step> steps) {
        var before = steps.subList(0, steps.size() - 1);
        var extrapolated = new Estimate(
                line(steps, Step::x),
                Math.max(
                        Math.max(2 * change(steps), before.size() > 2 ? change(before) / 2 : 0),
                        0.15 * correction(steps)));
        var finest =
                new Estimate(steps.get(before.size()).x(), Math.max(2 * correction(steps), correction(before) / 2));
        return finest.error() < extrapolated.error() ? finest : extrapolated;
    }

    private static double correction(List<Step> steps) {
        return Math.abs(line(steps, Step::x) - steps.get(steps.size() - 1).x());
    }

    private static double change(List<Step> steps) {
        return Math.abs(line(steps, Step::x) - line(steps.subList(0, steps.size() - 1), Step::x));
    }

    /** The straight line through the last two lattices over 1/fineness, at 0. */
    private static double line(List<Step> steps, ToDoubleFunction<Step> value) {
        var one = steps.get(steps.size() - 2);
        var other = steps.get(steps.size() - 1);
        return (value.applyAsDouble(other) * other.fineness() - value.applyAsDouble(one) * one.fineness())
                / (other.fineness() - one.fineness());
    }
}
