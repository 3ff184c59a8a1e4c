package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.calculator.About;
import planewright.api.calculator.Calculator;
import planewright.api.contract.CalculatorContract;

/** What every calculator promises, and what these warn of. */
class ContractTest {
    @TestFactory
    Stream<DynamicNode> everyCalculatorKeepsTheContract() {
        return CalculatorContract.tests(
                Lines.inputs(Optional.empty(), List.of(Lines.part("pod", 1, 2), Lines.part("tail", 0.5, 12))),
                new Weighing.Inputs(
                        List.of(Supports.support("nose", 1, 2, 0), Supports.support("main", 3, 12, 0)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                new BallastLines()
                        .part("airframe", 800, 116.25, 0)
                        .part("pack", 200, 60, 0)
                        .movable("pack", 20, 90)
                        .pocket("nose", -100, 0)
                        .stock("lead", 5, 10)
                        .target(100, 1)
                        .inputs(),
                new LeanLines()
                        .levelled(2.6, 690)
                        .part("left wing panel", 212, -365)
                        .part("right wing panel", 207, 365)
                        .inputs(),
                BalanceRangeTest.usual());
    }

    @ParameterizedTest
    @ValueSource(classes = {Ledger.class, Weighing.class, Ballast.class, Lean.class, BalanceRange.class})
    void warnsOfPackAndPropeller(Class<? extends Calculator<?, ?>> calculator) {
        assertThat(calculator.getAnnotation(About.class).cautions())
                .anyMatch(caution -> caution.contains("Lithium pack disconnected and propeller off"));
    }

    @ParameterizedTest
    @ValueSource(classes = {Ledger.class, Weighing.class, Ballast.class, Lean.class})
    void namesTheHandbooks(Class<? extends Calculator<?, ?>> calculator) {
        assertThat(calculator.getAnnotation(About.class).sources())
                .anyMatch(source -> source.contains("FAA-H-8083-1B"))
                .anyMatch(source -> source.contains("JCGM 100:2008"));
    }
}
