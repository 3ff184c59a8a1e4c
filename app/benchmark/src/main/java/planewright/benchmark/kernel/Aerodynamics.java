package planewright.benchmark.kernel;

import java.util.List;
import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.lu.LUDecompositionAlt_DDRM;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import planewright.api.journal.Planform;
import planewright.shared.lattice.Lattice;
import planewright.shared.lattice.Load;
import planewright.shared.lattice.Motion;
import planewright.shared.lattice.Resolution;

/** A lattice over a wing and a tail, made and solved; a bare dense factorisation with as many unknowns is the yardstick. */
@State(Scope.Benchmark)
public class Aerodynamics {
    private static final int FINENESS = 3;

    private final Planform aircraft = new Planform(
            List.of(
                    new Planform.Surface(
                            "wing", 0, 0, 0, true, List.of(new Planform.Panel(0.24, 0.16, 0.7, 0.1, 0.05, 0))),
                    new Planform.Surface(
                            "tail", 0.8, 0, 0.05, true, List.of(new Planform.Panel(0.14, 0.1, 0.25, 0.1, 0, 0)))),
            List.of());
    private DMatrixRMaj matrix;

    @Setup
    public void fill() {
        var random = new Random(1);
        int unknowns = Lattice.of(aircraft, Resolution.fineness(FINENESS)).panels() / 2;
        matrix = new DMatrixRMaj(unknowns, unknowns);
        for (int row = 0; row < unknowns; row++) {
            for (int column = 0; column < unknowns; column++) {
                matrix.set(row, column, random.nextDouble() + (row == column ? unknowns : 0));
            }
        }
    }

    /** Neutral point and lift slope: laid, assembled, factored and solved in symmetric flow. */
    @Benchmark
    public Load lattice() {
        return Lattice.of(aircraft, Resolution.fineness(FINENESS)).load(Motion.INCIDENCE, Motion.AHEAD);
    }

    @Benchmark
    public boolean denseSolve() {
        return new LUDecompositionAlt_DDRM().decompose(matrix.copy());
    }
}
