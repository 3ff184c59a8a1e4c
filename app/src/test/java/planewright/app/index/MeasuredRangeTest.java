package planewright.app.index;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.api.quantity.Units;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.Written;

class MeasuredRangeTest {
    /** 14 oz = 14 × 0.028349523125 kg, NIST Special Publication 811 (2008), appendix B. */
    @Test
    void boundsMayBeInAnyUnit() throws QuantityProblem {
        var range = parse("wing mass", "300 g", "14 oz");
        assertThat(range.name()).isEqualTo("wing");
        assertThat(range.unit()).contains(Units.GRAM);
        assertThat(MeasuredRange.base(range.atLeast().orElseThrow())).isCloseTo(0.3, within(1e-12));
        assertThat(MeasuredRange.base(range.atMost().orElseThrow())).isCloseTo(0.39689332375, within(1e-12));
        assertThat(range.text()).isEqualTo("wing ≥ 300 g, ≤ 14 oz");
    }

    /** Against the units library, which the index does not ask for each value. */
    @Test
    void everyUnitHasItsSystemUnitsValues() {
        for (var coded : Units.all()) {
            for (var number : List.of("-40", "0", "3 1/2", "451.67")) {
                var written = new Written(number, coded.unit(), Optional.empty());
                double expected =
                        written.measured().value().toSystemUnit().getValue().doubleValue();
                assertThat(MeasuredRange.base(written))
                        .as("%s %s", number, coded.code())
                        .isCloseTo(expected, within(1e-12 * Math.max(1, Math.abs(expected))));
            }
        }
    }

    @Test
    void aNumberAloneIsInTheUnitThatIsMeant() throws QuantityProblem {
        assertThat(parse("wing mass", "300", null).atLeast().orElseThrow().unit())
                .isEqualTo(Units.GRAM);
        assertThat(parse("spar", "1/4", "3/8 in").atLeast().orElseThrow().unit())
                .isEqualTo(Units.INCH);
        assertThat(parse("cells", "3", null).atLeast().orElseThrow().unit()).isEqualTo(Units.NUMBER);
    }

    @Test
    void theNameAloneOrTheKindAloneIsEnough() throws QuantityProblem {
        assertThat(parse("balance point", null, null).unit()).isEmpty();
        assertThat(parse("mass", null, null).name()).isEmpty();
        assertThat(parse("", "300 g", null).unit()).contains(Units.GRAM);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "wing mass|3 in|-|'3 in' is in in; accepted: kg, g",
                "wing|3 in|300 g|'300 g' is in g; accepted: m, cm",
                "wing|heavy|-|'heavy' is not a quantity; accepted",
                "wing|300 g|200 g|at least 300 g and at most 200 g leaves nothing; accepted",
                "''|-|-|no measurement is named; accepted",
                "''|3|-|no measurement is named; accepted"
            })
    void whatCannotBeMeantIsRefused(String name, String least, String most, String message) {
        assertThatThrownBy(() -> parse(name, least, most))
                .isInstanceOf(QuantityProblem.class)
                .hasMessageContaining(message);
    }

    private static MeasuredRange parse(String name, String least, String most) throws QuantityProblem {
        return MeasuredRange.parse(name, Optional.ofNullable(least), Optional.ofNullable(most));
    }
}
