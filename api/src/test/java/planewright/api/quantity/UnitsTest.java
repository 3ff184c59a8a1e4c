package planewright.api.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.AbstractUnit;

class UnitsTest {
    /**
     * Factors to SI. Inch, foot, pound, ounce and square inch: NIST Special Publication 811 (2008), appendix B.8. The others
     * follow from the definitions of the SI Brochure (9th edition), tables 4, 7 and 8.
     */
    @ParameterizedTest
    @CsvSource({
        "[in_i], 0.0254",
        "[ft_i], 0.3048",
        "[lb_av], 0.45359237",
        "[oz_av], 0.028349523125",
        "[sin_i], 6.4516e-4",
        "deg, 0.017453292519943295",
        "mA.h, 3.6",
        "km/h, 0.2777777777777778",
        "g/dm2, 0.1",
        "g.cm2, 1e-7",
        "g.mm, 1e-6",
        "[oz_av].[in_i], 7.20077887375e-4",
        "mL, 1e-6",
        "mOhm, 1e-3",
        "d, 86400",
        "[g], 9.80665",
        "kgf.cm, 0.0980665",
        "N.cm, 0.01",
        "{turn}/min, 0.10471975511965977",
        "deg/s, 0.017453292519943295",
        "W.h, 3600",
        "hPa, 100",
        "MPa, 1e6",
        "g/s, 1e-3",
        "L/s, 1e-3"
    })
    void carriesThePublishedFactorToSi(String code, double factor) {
        Unit<?> unit = Units.ofCode(code).orElseThrow();
        assertThat(toSystem(unit, 1)).isCloseTo(factor, within(1e-12 * factor));
    }

    /** To the seven figures in which NIST Special Publication 811 (2008), appendix B.8, tells them. */
    @ParameterizedTest
    @CsvSource({
        "[sft_i], 9.290304e-2",
        "[mi_i]/h, 4.4704e-1",
        "[oz_av].[g].[in_i], 7.061552e-3",
        "[lb_av].[in_i]2, 2.926397e-4",
        "[oz_av]/[sft_i], 3.051517e-1",
        "[lb_av]/[cft_i], 1.601846e1"
    })
    void carriesThePublishedFactorInSevenFigures(String code, double factor) {
        Unit<?> unit = Units.ofCode(code).orElseThrow();
        assertThat(toSystem(unit, 1)).isCloseTo(factor, within(5e-7 * factor));
    }

    /** 0 °C is 273.15 K: SI Brochure (9th edition), 2.3.1. */
    @Test
    void knowsTheZeroOfTheCelsiusScale() {
        assertThat(toSystem(Units.CELSIUS, 0)).isCloseTo(273.15, within(1e-9));
    }

    @Test
    void doesNotTakeAnAngleForABareNumber() {
        assertThat(Units.alike(Units.DEGREE, Units.RADIAN)).isTrue();
        assertThat(Units.alike(Units.DEGREE, Units.PERCENT)).isFalse();
        assertThat(Units.alike(Units.MILLIMETRE))
                .extracting(Units.Coded::code)
                .containsExactly("m", "cm", "mm", "[in_i]", "[ft_i]");
    }

    /** Both are newton times metre: SI Brochure (9th edition), 5.4.5 keeps torque and energy apart by their names. */
    @Test
    void doesNotTakeATorqueForAnEnergy() {
        assertThat(Units.alike(Units.NEWTON_METRE, Units.JOULE)).isFalse();
        assertThat(Units.alike(Units.TURN_PER_MINUTE, Units.HERTZ)).isFalse();
    }

    @Test
    void refusesAUnitThatIsNotInTheTable() {
        assertThat(Units.ofCode("furlong")).isEmpty();
        assertThatThrownBy(() -> Units.codeOf(Units.METRE.multiply(7))).hasMessageContaining("not in the table");
    }

    private static double toSystem(Unit<?> unit, double value) {
        return ((AbstractUnit<?>) unit).getSystemConverter().convert(value);
    }
}
