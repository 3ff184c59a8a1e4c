package planewright.shared.lattice;

import java.util.List;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.lu.LUDecompositionAlt_DDRM;
import org.ejml.dense.row.linsol.lu.LinearSolverLu_DDRM;

/**
 * What each horseshoe does at each control point, for one symmetry; factored once, then solved for any number of motions.
 * Horseshoes in the plane of symmetry carry nothing in a symmetric flow and have no image in the opposite one.
 */
final class Influence {
    /** Pivots that differ by more than this tell of a matrix that no flow solves: rounding of doubles and some digits. */
    private static final double SINGULAR = 1e-11;

    private final List<Horseshoe> all;
    private final Symmetry symmetry;
    private final int[] carrying;
    private final boolean[] imaged;
    private final LinearSolverLu_DDRM solver;

    /**
     * Of a lattice.
     *
     * @throws ArithmeticException where surfaces lie on each other
     */
    Influence(List<Horseshoe> all, List<Strip> strips, Symmetry symmetry) {
        this.all = all;
        this.symmetry = symmetry;
        this.carrying = IntStream.range(0, all.size())
                .filter(i -> symmetry != Symmetry.SYMMETRIC
                        || !strips.get(all.get(i).strip()).inPlane())
                .toArray();
        this.imaged = new boolean[all.size()];
        for (int i : carrying) {
            imaged[i] = symmetry.image() != 0 && !strips.get(all.get(i).strip()).inPlane();
        }
        this.solver = carrying.length == 0 ? null : factored(matrix());
    }

    /** Circulations, one a horseshoe of the whole lattice, that cancel the given velocities through the panels. */
    double[] solve(double[] through) {
        var circulation = new double[all.size()];
        if (solver != null) {
            var right = new DMatrixRMaj(carrying.length, 1);
            for (int i = 0; i < carrying.length; i++) {
                right.set(i, -through[carrying[i]]);
            }
            var solution = new DMatrixRMaj(carrying.length, 1);
            solver.solve(right, solution);
            for (int i = 0; i < carrying.length; i++) {
                circulation[carrying[i]] = solution.get(i);
            }
        }
        return circulation;
    }

    private static LinearSolverLu_DDRM factored(DMatrixRMaj matrix) {
        var lu = new LUDecompositionAlt_DDRM();
        var solver = new LinearSolverLu_DDRM(lu);
        boolean solvable = solver.setA(matrix);
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 0; i < matrix.numRows; i++) {
            double pivot = Math.abs(lu.getLU().get(i, i));
            least = Math.min(least, pivot);
            most = Math.max(most, pivot);
        }
        if (!solvable || !(least > SINGULAR * most)) {
            throw new ArithmeticException("surfaces lie on each other: no flow can be told");
        }
        return solver;
    }

    /** Velocity of all horseshoes and their images at a place. */
    Vector velocity(double[] circulation, Vector place) {
        var one = new double[3];
        var sum = Vector.ZERO;
        for (int i : carrying) {
            all.get(i).velocity(place.x(), place.y(), place.z(), one);
            sum = sum.plus(new Vector(one[0], one[1], one[2]).times(circulation[i]));
            if (imaged[i]) {
                all.get(i).velocity(place.x(), -place.y(), place.z(), one);
                sum = sum.plus(new Vector(one[0], -one[1], one[2]).times(symmetry.image() * circulation[i]));
            }
        }
        return sum;
    }

    private DMatrixRMaj matrix() {
        var matrix = new DMatrixRMaj(carrying.length, carrying.length);
        IntStream.range(0, carrying.length)
                .parallel()
                .forEach(row -> fill(matrix.data, row * carrying.length, all.get(carrying[row])));
        return matrix;
    }

    private void fill(double[] matrix, int start, Horseshoe at) {
        var control = at.control();
        var normal = at.normal();
        var one = new double[3];
        for (int column = 0; column < carrying.length; column++) {
            var horseshoe = all.get(carrying[column]);
            horseshoe.velocity(control.x(), control.y(), control.z(), one);
            double through = normal.x() * one[0] + normal.y() * one[1] + normal.z() * one[2];
            if (imaged[carrying[column]]) {
                horseshoe.velocity(control.x(), -control.y(), control.z(), one);
                through += symmetry.image() * (normal.x() * one[0] - normal.y() * one[1] + normal.z() * one[2]);
            }
            matrix[start + column] = through;
        }
    }
}
