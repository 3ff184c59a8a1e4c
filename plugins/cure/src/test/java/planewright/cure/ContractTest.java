package planewright.cure;

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
                Asked.of("laminating epoxy").thick(2).inputs(),
                Asked.of("lightweight spackle")
                        .thick(3)
                        .reading(Asked.EVENING, 15)
                        .inputs());
    }

    @ParameterizedTest
    @ValueSource(strings = {"data sheet", "local rules", "fumes", "Gloves", "heats itself", "flame", "foam"})
    void warnsOf(String word) {
        assertThat(CureTime.class.getAnnotation(About.class).cautions()).anyMatch(caution -> caution.contains(word));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Arrhenius", "JCGM 100:2008"})
    void namesItsSource(String word) {
        assertThat(CureTime.class.getAnnotation(About.class).sources()).anyMatch(source -> source.contains(word));
    }
}
