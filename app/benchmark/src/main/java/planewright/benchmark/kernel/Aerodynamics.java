package planewright.benchmark.kernel;

import java.util.List;
import java.util.Random;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import planewright.api.journal.Planform;
import planewright.shared.lattice.Lattice;
import planewright.shared.lattice.Resolution;

/** A lattice over a wing and a tail, made and solved; a bare dense solve with as many unknowns is the yardstick. */
@State(Scope.Benchmark)
public class Aerodynamics {
    private static final int FINENESS = 4;

    private final Planform aircraft = new Planform(
            List.of(
                    new Planform.Surface(
                            "wing", 0, 0, 0, true, List.of(new Planform.Panel(0.24, 0.16, 0.7, 0.1, 0.05, 0))),
                    new Planform.Surface(
                            "tail", 0.8, 0, 0.05, true, List.of(new Planform.Panel(0.14, 0.1, 0.25, 0.1, 0, 0)))),
            List.of());
    private RealMatrix matrix;
    private RealVector right;

    @Setup
    public void fill() {
        var random = new Random(1);
        int unknowns = Lattice.of(aircraft, Resolution.fineness(FINENESS)).panels() / 2;
        matrix = MatrixUtils.createRealMatrix(unknowns, unknowns);
        right = new ArrayRealVector(unknowns);
        for (int row = 0; row < unknowns; row++) {
            right.setEntry(row, random.nextDouble());
            for (int column = 0; column < unknowns; column++) {
                matrix.setEntry(row, column, random.nextDouble() + (row == column ? unknowns : 0));
            }
        }
    }

    @Benchmark
    public Lattice lattice() {
        return Lattice.of(aircraft, Resolution.fineness(FINENESS));
    }

    @Benchmark
    public RealVector denseSolve() {
        return new LUDecomposition(matrix).getSolver().solve(right);
    }
}
