package planewright.shared.lattice;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;

/**
 * What each horseshoe does at each control point, for one symmetry; factored once, then solved for any number of motions.
 * Horseshoes in the plane of symmetry carry nothing in a symmetric flow and have no image in the opposite one.
 */
final class Influence {
    private final List<Horseshoe> all;
    private final Symmetry symmetry;
    private final int[] carrying;
    private final boolean[] imaged;
    private final DecompositionSolver solver;

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
        this.solver = carrying.length == 0
                ? null
                : new LUDecomposition(new Array2DRowRealMatrix(matrix(), false)).getSolver();
    }

    /**
     * Circulations, one a horseshoe of the whole lattice, that cancel the given velocities through the panels.
     *
     * @throws ArithmeticException where surfaces lie on each other
     */
    double[] solve(double[] through) {
        var circulation = new double[all.size()];
        if (solver != null) {
            var right = new ArrayRealVector(carrying.length);
            for (int i = 0; i < carrying.length; i++) {
                right.setEntry(i, -through[carrying[i]]);
            }
            var solution = solve(right);
            for (int i = 0; i < carrying.length; i++) {
                circulation[carrying[i]] = solution.getEntry(i);
            }
        }
        return circulation;
    }

    private RealVector solve(RealVector right) {
        try {
            return solver.solve(right);
        } catch (MathRuntimeException singular) {
            throw (ArithmeticException)
                    new ArithmeticException("surfaces lie on each other: no flow can be told").initCause(singular);
        }
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

    private double[][] matrix() {
        var matrix = new double[carrying.length][];
        IntStream.range(0, carrying.length).parallel().forEach(row -> matrix[row] = row(all.get(carrying[row])));
        return matrix;
    }

    private double[] row(Horseshoe at) {
        var control = at.control();
        var normal = at.normal();
        var row = new double[carrying.length];
        var one = new double[3];
        for (int column = 0; column < row.length; column++) {
            var horseshoe = all.get(carrying[column]);
            horseshoe.velocity(control.x(), control.y(), control.z(), one);
            row[column] = normal.x() * one[0] + normal.y() * one[1] + normal.z() * one[2];
            if (imaged[carrying[column]]) {
                horseshoe.velocity(control.x(), -control.y(), control.z(), one);
                row[column] += symmetry.image() * (normal.x() * one[0] - normal.y() * one[1] + normal.z() * one[2]);
            }
        }
        return row;
    }
}
