package planewright.throws_;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;
import planewright.api.contract.CalculatorContract;

/** What every calculator promises. */
class ContractTest {
    @TestFactory
    Stream<DynamicNode> everyCalculatorKeepsTheContract() {
        return CalculatorContract.tests(
                Shops.linkage()
                        .pushrod(83)
                        .chord(38)
                        .wanted(20, 14)
                        .holes(List.of(9.0, 12.0), List.of(12.0, 16.0))
                        .inputs(),
                SurfaceTravelTest.usual());
    }
}
