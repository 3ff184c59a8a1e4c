package @PACKAGE@;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.MILLIMETRE;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.contract.CalculatorContract;
import planewright.api.contract.StillRun;
import planewright.api.quantity.Measured;

class DihedralTest {
    private static Dihedral.Inputs inputs(double left, double right) {
        return new Dihedral.Inputs(
                Measured.of(left, 1, MILLIMETRE), Measured.of(right, 1, MILLIMETRE), Measured.of(600, 1, MILLIMETRE));
    }

    @TestFactory
    Stream<DynamicNode> everyCalculatorKeepsTheContract() {
        return CalculatorContract.tests(inputs(52, 50));
    }

    /** Sines of 5 and 30 degrees as tables print them: 0.0871557 and 0.5 (from memory). */
    @Test
    void anglesAreThoseOfTheTable() throws Exception {
        var results = new Dihedral().compute(inputs(600 * 0.0871557, 300), StillRun.onAnEmptyJournal());
        assertEquals(5.0, results.left().in(DEGREE), 0.0001);
        assertEquals(30.0, results.right().in(DEGREE), 0.0001);
    }

    @Test
    void aTipHigherThanTheWingIsLongIsRefusedByName() {
        var refused = assertThrows(
                UnsuitableInput.class, () -> new Dihedral().compute(inputs(700, 50), StillRun.onAnEmptyJournal()));
        assertEquals("left", refused.problems().get(0).input());
    }
}
