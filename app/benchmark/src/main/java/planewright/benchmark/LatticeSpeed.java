package planewright.benchmark;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.lu.LUDecompositionAlt_DDRM;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;
import planewright.shared.lattice.Derivatives;
import planewright.shared.lattice.Lattice;
import planewright.shared.lattice.Reference;
import planewright.shared.lattice.Resolution;
import planewright.shared.lattice.Spacing;
import planewright.shared.lattice.Symmetry;
import planewright.shared.lattice.Turn;
import planewright.shared.lattice.Vector;

/**
 * How long a lattice takes from the shape to all derivatives, those of its elevons with them, and what the same library takes
 * to write a matrix of as many rows and factor it; by turns in one process. Once an aircraft whose sides are alike, which is
 * two systems of half the size, once one whose sides are not.
 */
final class LatticeSpeed implements Section {
    private static final int PANELS = 800;
    private static final int[] GROWTH = {100, 200, 400, 800, 1600, 3200};
    private static final int CHORDWISE = 10;
    private static final double RATIO = 1.5;
    private static final int WARM_UP = 5;

    /** Lattices larger than the goal's take seconds each and waver little. */
    private static final int ROUNDS_OF_LARGER = 3;

    /** So many rounds give one figure at the least. */
    private static final int LEAST_ROUNDS = 5;

    private static final Panel PANEL = new Panel(0.24, 0.16, 0.7, 0.3, 0.05, -0.03);
    private static final Planform ALIKE = shape(new Surface("wing", 0, 0, 0, true, List.of(PANEL)));
    private static final Planform NOT_ALIKE = shape(
            new Surface("right", 0, 0, 0, false, List.of(PANEL)),
            new Surface("left", 0, 0, 0, false, List.of(new Panel(0.24, 0.16, 0.7, 0.3, Math.PI - 0.05, -0.03))));

    @Override
    public void measure(Run run) throws IOException {
        boolean brief = run.rounds() == 1;
        int rounds = brief ? 1 : Math.max(LEAST_ROUNDS, run.rounds());
        for (int i = 0; i < (brief ? 1 : WARM_UP); i++) {
            bare(PANELS);
            derivatives(ALIKE, PANELS);
            derivatives(NOT_ALIKE, PANELS);
        }
        for (int panels : GROWTH) {
            if (brief && panels > PANELS) {
                break;
            }
            size(run, panels, panels > PANELS ? Math.min(ROUNDS_OF_LARGER, rounds) : rounds);
        }
        new DraggedHandle(rounds).measure(run);
    }

    @Override
    public boolean needsJournal() {
        return false;
    }

    private static void size(Run run, int panels, int rounds) {
        var bare = new ArrayList<Double>();
        var alike = new ArrayList<Double>();
        var whole = new ArrayList<Double>();
        for (int round = 0; round < rounds; round++) {
            bare.add(timed(() -> bare(panels)));
            alike.add(timed(() -> derivatives(ALIKE, panels)));
            whole.add(timed(() -> derivatives(NOT_ALIKE, panels)));
        }
        if (panels == PANELS) {
            run.report().goal(goal("lattice of 800 panels with all derivatives", alike, bare));
            run.report().goal(goal("the same, sides not alike", whole, bare));
        }
        var group = String.format(Locale.ROOT, "lattice of %d panels, ms", panels);
        run.report().figure(group, "matrix written and factored", Median.of(bare));
        run.report().figure(group, "all derivatives, sides alike", Median.of(alike));
        run.report().figure(group, "all derivatives, sides not alike", Median.of(whole));
    }

    private static Goal goal(String name, List<Double> ours, List<Double> bare) {
        return Goal.of(name, "ms", Median.of(ours))
                .comparedWith("matrix of 800 rows written and factored", Median.of(bare), RATIO);
    }

    private static double timed(Supplier<?> work) {
        var watch = new Stopwatch();
        if (work.get() == null) {
            throw new IllegalStateException("nothing came out");
        }
        return watch.milliseconds();
    }

    private static DMatrixRMaj bare(int rows) {
        var matrix = new DMatrixRMaj(rows, rows);
        for (int i = 0; i < matrix.data.length; i++) {
            matrix.data[i] = (i % (rows + 1) == 0 ? rows : 0) + (i * 31 % 997) / 997.0;
        }
        var factored = new LUDecompositionAlt_DDRM();
        return factored.decompose(matrix) ? factored.getLU() : null;
    }

    private static Derivatives.Slopes derivatives(Planform planform, int panels) {
        var centre = new Vector(0.2, 0, 0);
        var lattice =
                Lattice.of(planform, new Resolution(CHORDWISE, panels / CHORDWISE / 2, 1, Spacing.SEMICIRCLE), centre);
        if (lattice.panels() != panels) {
            throw new IllegalStateException(lattice.panels() + " panels instead of " + panels);
        }
        var derivatives = Derivatives.of(lattice, new Reference(0.28, 1.4, 0.2, centre), 0.06);
        var elevon = new Turn(0, 0.3, 0.95, 0.75, 0.75, Symmetry.SYMMETRIC);
        return derivatives.by(elevon).plus(derivatives.by(elevon.turning(Symmetry.ANTISYMMETRIC)), 1);
    }

    private static Planform shape(Surface... surfaces) {
        return new Planform(List.of(surfaces), List.of());
    }
}
