package planewright.shared.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

class QuantityTextTest {
    /** Exact factors: NIST Special Publication 811 (2008), appendix B.8: inch 25.4 mm, pound 453.59237 g, foot 304.8 mm. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "3 1/2 in | mm | 88.9",
                "1/8\" | mm | 3.175",
                "2' 3 1/2\" | mm | 698.5",
                "2 ft 3 in | mm | 685.8",
                "3½ in | mm | 88.9",
                "1 lb | g | 453.59237",
                "16 oz | g | 453.59237",
                "3,5 cm | mm | 35",
                "-12.5 mm | mm | -12.5",
                "- 4 mm | cm | -0.4",
                "1.5 h | min | 90",
                "2200 mAh | Ah | 2.2",
                "20 °C | K | 293.15",
                "90° | rad | 1.5707963267948966"
            })
    void readsWhatABuilderWrites(String text, String unit, double expected) throws QuantityProblem {
        var value = QuantityText.in(QuantityText.parse(text, Units.NUMBER).measured(), QuantityText.unit(unit));
        assertThat(value.value().getValue().doubleValue()).isCloseTo(expected, within(1e-9 * Math.abs(expected)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"212 g ± 1 g", "212 ± 1 g", "212±1g", "212 g +/- 0.001 kg", "212 g +- 1 g"})
    void readsPlusMinusInAnyPlace(String text) throws QuantityProblem {
        var mass = QuantityText.parse(text, Units.NUMBER).measured().asType(Mass.class);
        assertThat(mass.in(Units.GRAM)).isEqualTo(212);
        assertThat(mass.spreadIn(Units.GRAM)).isCloseTo(1, within(1e-12));
    }

    @Test
    void keepsTheNumberAsItWasWritten() throws QuantityProblem {
        assertThat(QuantityText.parse("3 1/2 in", Units.NUMBER).text()).isEqualTo("3 1/2 in");
        assertThat(QuantityText.parse("0.850 kg", Units.NUMBER).number()).isEqualTo("0.850");
        assertThat(QuantityText.parse("2' 3 1/2\"", Units.NUMBER).text()).isEqualTo("27 1/2 in");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "heavy", "12 furlongs", "1/0 in", "3 1/2 1/2 in", "NaN g", "1e999 g", "12 g ± 1 mm", "±3 g"})
    void refusesWhatIsNoQuantityAndNamesIt(String text) {
        assertThatThrownBy(() -> QuantityText.parse(text, Units.GRAM))
                .isInstanceOf(QuantityProblem.class)
                .hasMessageContaining("accepted: ");
    }

    @Test
    void refusesAnotherKindOfUnitAndListsThoseAccepted() {
        assertThatThrownBy(() -> QuantityText.parseLike("12 mm", Units.GRAM))
                .hasMessage("'12 mm' is in mm; accepted: kg, g, mg, lb, oz");
    }

    @Test
    void findsTheQuantityAtTheEndOfALine() {
        var line = QuantityText.trailing("panel 2 of 3 left 3 1/2 in").orElseThrow();
        assertThat(line.before()).isEqualTo("panel 2 of 3 left");
        assertThat(line.quantity().text()).isEqualTo("3 1/2 in");
        assertThat(QuantityText.trailing("sanded the left panel")).isEmpty();
        assertThat(QuantityText.trailing("ordered 3 spars")).isEmpty();
        assertThat(QuantityText.trailing("212 g")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            doubles = {Double.MAX_VALUE, -Double.MAX_VALUE, 1e200, 123_456, 0.000_123_456, 1e-200, Double.MIN_VALUE})
    void whatItShowsOfAnyNumberReadsAsThatNumberToFiveFigures(double number) throws Exception {
        var shown = QuantityText.show(Measured.of(number, Units.GRAM));
        assertThat(shown).hasSizeLessThan(20);
        assertThat(QuantityText.parse(shown, Units.GRAM)
                                .measured()
                                .value()
                                .getValue()
                                .doubleValue()
                        / number)
                .isCloseTo(1, within(1e-4));
    }

    /** Two figures of the ±, and the value to the same place: JCGM 100:2008 (GUM), 7.2.6. */
    @Test
    void showsNoMoreDigitsThanThePlusMinusDeserves() {
        assertThat(QuantityText.show(Measured.of(1234.5678, 0.1234, Units.GRAM)))
                .isEqualTo("1234.57 g ± 0.12 g");
        assertThat(QuantityText.show(Measured.of(1234.5678, Units.GRAM))).isEqualTo("1234.6 g");
        assertThat(QuantityText.show(Measured.of(0, 2, Units.MILLIMETRE))).isEqualTo("0 mm ± 2 mm");
        assertThat(QuantityText.show(Measured.of(1.5, Units.KILOGRAM), Units.GRAM))
                .isEqualTo("1500 g");
    }

    /** A tenth of a millimetre, gram, degree or percent is what rule, scale and gauge tell: common practice, no source. */
    @Test
    void showsOfAResultWithoutPlusMinusWhatTheBenchCanUse() {
        assertThat(QuantityText.result(Measured.of(113.1204, Units.MILLIMETRE), Units.MILLIMETRE, Locale.ENGLISH))
                .isEqualTo("113.1 mm");
        assertThat(QuantityText.result(Measured.of(1.416_83, Units.METRE), Units.MILLIMETRE, Locale.ENGLISH))
                .isEqualTo("1416.8 mm");
        assertThat(QuantityText.result(Measured.of(1.416_83, Units.METRE), Units.METRE, Locale.ENGLISH))
                .isEqualTo("1.4168 m");
        assertThat(QuantityText.result(Measured.of(6.8403, Units.PERCENT), Units.PERCENT, Locale.ENGLISH))
                .isEqualTo("6.84 %");
        assertThat(QuantityText.result(Measured.of(46.977, Units.PERCENT), Units.PERCENT, Locale.ENGLISH))
                .isEqualTo("47 %");
        assertThat(QuantityText.result(Measured.of(0.008_238_4, Units.MILLIMETRE), Units.MILLIMETRE, Locale.ENGLISH))
                .isEqualTo("0.00824 mm");
        assertThat(QuantityText.result(Measured.of(-14.7751, Units.NUMBER), Units.NUMBER, Locale.ENGLISH))
                .isEqualTo("-14.8");
        assertThat(QuantityText.result(Measured.of(86_400, Units.PASCAL), Units.PASCAL, Locale.ENGLISH))
                .isEqualTo("86400 Pa");
        assertThat(QuantityText.result(Measured.of(113.1204, Units.MILLIMETRE), Units.MILLIMETRE, Locale.GERMAN))
                .isEqualTo("113,1 mm");
        assertThat(QuantityText.result(Measured.of(0, Units.GRAM), Units.GRAM, Locale.ENGLISH))
                .isEqualTo("0 g");
    }

    /** As many as in metric units tell a tenth of a gram, or some of a millimetre. */
    @ParameterizedTest
    @CsvSource({
        "2345.6, g, lb, 5.1712 lb",
        "212345.6, mg, mg, 212300 mg",
        "1416.83, mm, ft, 4.648 ft",
        "1416.83, mm, in, 55.78 in",
        "70.53, °, rad, 1.231 rad"
    })
    void showsOfAResultInOtherUnitsAsMuch(double number, String from, String to, String shown) throws QuantityProblem {
        var value = new Written(Double.toString(number), QuantityText.unit(from), Optional.empty()).measured();
        assertThat(QuantityText.result(value, QuantityText.unit(to), Locale.ENGLISH))
                .isEqualTo(shown);
    }

    @Test
    void showsOfAResultWithPlusMinusWhatThatDeserves() {
        assertThat(QuantityText.result(Measured.of(1234.5678, 0.1234, Units.GRAM), Units.GRAM, Locale.ENGLISH))
                .isEqualTo("1234.57 g ± 0.12 g");
        assertThat(QuantityText.result(Measured.of(113.1204, 0, Units.MILLIMETRE), Units.MILLIMETRE, Locale.ENGLISH))
                .isEqualTo("113.1 mm");
    }

    @Test
    void everyUnitIsFoundByItsCodeAndItsSymbol() throws QuantityProblem {
        assertThat(Units.all()).hasSizeGreaterThan(40);
        for (var coded : Units.all()) {
            assertThat(Units.ofCode(coded.code())).hasValue(coded.unit());
            assertThat(Units.codeOf(coded.unit())).isEqualTo(coded.code());
            if (!coded.symbol().isEmpty()) {
                assertThat(QuantityText.unit(coded.symbol())).isEqualTo(coded.unit());
            }
        }
    }
}
