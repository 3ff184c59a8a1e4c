package planewright.ducts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.calculator.About;
import planewright.api.contract.CalculatorContract;

/** What every calculator promises, and what this one warns of. */
class ContractTest {
    @TestFactory
    Stream<DynamicNode> everyCalculatorKeepsTheContract() {
        return CalculatorContract.tests(
                Asked.width(40).foam(30).inputs(),
                Asked.area(400).plain(2).across(60).inputs());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Hot wire", "fumes", "local rules", "Knife", "mask", "lithium pack", "maker's limits"})
    void warnsOf(String word) {
        assertThat(SubmergedInlet.class.getAnnotation(About.class).cautions())
                .anyMatch(caution -> caution.contains(word));
    }

    @ParameterizedTest
    @ValueSource(strings = {"NACA RM A7I30", "JCGM 100:2008"})
    void namesItsSource(String word) {
        assertThat(SubmergedInlet.class.getAnnotation(About.class).sources()).anyMatch(source -> source.contains(word));
    }
}
