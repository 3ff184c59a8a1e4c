package planewright.cure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import planewright.api.calculator.Language;
import planewright.api.quantity.Units;

class WordsTest {
    /** A difference of 1 °C is one of 1 K: SI Brochure (9th edition), 2.3.1. */
    @Test
    void aSpreadOfTemperaturesIsNoTemperature() {
        var words = new Words(Language.ENGLISH.in(told -> Units.alike(told, Units.CELSIUS) ? Units.CELSIUS : told));
        assertThat(words.spread(25, Units.KELVIN)).isEqualTo("25 K");
        assertThat(words.celsius(298.15)).isEqualTo("25 °C");
    }

    /** An inch is 25.4 mm: NIST Special Publication 811 (2008), appendix B.8. */
    @Test
    void figuresOfGluesGoWithTheUnitBesideThem() {
        var inches = new Words(Language.ENGLISH.in(told -> Units.alike(told, Units.INCH) ? Units.INCH : told));
        assertThat(inches.figure(3.175, Units.ofCode("mm"))).isEqualTo("0.125");
        assertThat(inches.figure(53, Units.ofCode("kJ/mol"))).isEqualTo("53");
        assertThat(inches.figure(0.05, Units.ofCode("h"))).isEqualTo("0.05");
    }
}
