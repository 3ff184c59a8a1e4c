package planewright.benchmark.kernel;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import planewright.api.quantity.Units;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** A quantity as it is typed. */
@State(Scope.Benchmark)
public class Quantity {
    private String fraction = "3 1/2 in ± 1/16 in";
    private String plain = "212 g";

    @Benchmark
    public Written read() throws QuantityProblem {
        return QuantityText.parse(plain, Units.NUMBER);
    }

    @Benchmark
    public Written readFraction() throws QuantityProblem {
        return QuantityText.parse(fraction, Units.NUMBER);
    }
}
