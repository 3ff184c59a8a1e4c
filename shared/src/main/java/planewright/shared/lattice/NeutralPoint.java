package planewright.shared.lattice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import planewright.api.journal.Planform;
import planewright.shared.planform.Outlines;

/**
 * Where the lift due to incidence acts, so that an aircraft which balances there neither returns nor departs: x = Σ xL_α / Σ
 * L_α over all surfaces, from lattices made finer until it stands still.
 *
 * <p>At a kink of a swept wing the lattice's error falls as 1/n, elsewhere faster, so each value is the straight line through
 * the last two lattices at 1/n = 0 (L. F. Richardson, Philosophical Transactions A 210 (1911) 307, cited from memory). The
 * error claimed is three times its change from the value before, or once the change before that, or three tenths of its
 * distance from the last lattice (all of it where one surface flies behind another), whichever is most; docs/convergence.md
 * of this module shows that it holds.
 *
 * @param x station, m
 * @param error how far the lattice's limit may lie from it, m
 * @param liftSlope dL/dα per ½ρU², m²
 * @param steps the lattices, the coarsest first
 * @param finest the last lattice
 */
public record NeutralPoint(double x, double error, double liftSlope, List<Step> steps, Lattice finest) {
    private static final int[] FINENESS = {2, 3, 4, 5, 6, 8, 10, 12, 16};

    /** How many times the last change of the value, and how much of the last correction, are doubted. */
    private static final double CHANGE = 3;

    private static final double CORRECTION = 0.3;

    /** The same where a surface flies in another's wake, which a coarse lattice sees nearer than it is. */
    private static final double CORRECTION_IN_WAKE = 1;

    /** A surface of less than this share of the largest's area leaves no wake to speak of. */
    private static final double SMALL = 0.02;

    private static final double FLOOR = 1e-6;

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
            if (last >= 2 && (settled(steps, planform) <= tolerance || next(steps.get(last), fineness) > mostPanels)) {
                break;
            }
            lattice = Lattice.of(planform, Resolution.fineness(fineness));
            steps.add(step(lattice, fineness, planform));
            each.accept(steps.get(steps.size() - 1));
        }
        return new NeutralPoint(
                line(steps, Step::x),
                settled(steps, planform),
                line(steps, Step::liftSlope),
                List.copyOf(steps),
                lattice);
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

    private static double settled(List<Step> steps, Planform planform) {
        int count = steps.size();
        double finest = steps.get(count - 1).x();
        double correction = doubted(planform) * Math.abs(line(steps, Step::x) - finest);
        double change = CHANGE * change(steps);
        if (count > 3) {
            change = Math.max(change, change(steps.subList(0, count - 1)));
        }
        return Math.max(Math.max(change, correction), FLOOR * Outlines.reach(planform));
    }

    private static double doubted(Planform planform) {
        var areas = planform.surfaces().stream()
                .mapToDouble(Outlines::projectedArea)
                .sorted()
                .toArray();
        boolean wake = areas.length > 1 && areas[areas.length - 2] > SMALL * areas[areas.length - 1];
        return wake ? CORRECTION_IN_WAKE : CORRECTION;
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
