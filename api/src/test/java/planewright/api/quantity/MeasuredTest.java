package planewright.api.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

class MeasuredTest {
    /** NIST Special Publication 811 (2008), appendix B.8: 1 oz (avoirdupois) is 28.349523125 g, exactly. */
    @Test
    void convertsValueAndSpreadTogether() {
        var mass = Measured.of(16, 0.5, Units.OUNCE).to(Units.GRAM);
        assertThat(mass.in(Units.GRAM)).isCloseTo(453.59237, within(1e-9));
        assertThat(mass.spreadIn(Units.GRAM)).isCloseTo(14.1747615625, within(1e-9));
    }

    @Test
    void isExactWhereNoSpreadIsKnown() {
        assertThat(Measured.of(1, Units.METRE).spreadIn(Units.MILLIMETRE)).isZero();
    }

    @Test
    void refusesWhatIsNotFinite() {
        assertThatThrownBy(() -> Measured.of(Double.NaN, Units.GRAM)).hasMessageContaining("accepted: a finite number");
        assertThatThrownBy(() -> Measured.of(1, Double.POSITIVE_INFINITY, Units.GRAM))
                .hasMessageContaining("accepted: a finite number");
    }

    @Test
    void refusesANegativeSpread() {
        assertThatThrownBy(() -> Measured.of(212, -1, Units.GRAM)).hasMessageContaining("accepted: 0 or more");
    }

    @Test
    void knowsItsKind() {
        Measured<?> measured = Measured.of(212, Units.GRAM);
        assertThat(measured.asType(Mass.class).in(Units.KILOGRAM)).isCloseTo(0.212, within(1e-15));
        assertThatThrownBy(() -> measured.asType(Length.class)).isInstanceOf(ClassCastException.class);
    }

    @Test
    void spreadOfATemperatureIsADifferenceInEveryUnit() {
        var shop = Measured.of(20, 2, Units.CELSIUS);
        assertThat(shop.spreadIn(Units.KELVIN)).isCloseTo(2, within(1e-9));
        assertThat(shop.to(Units.KELVIN).in(Units.KELVIN)).isCloseTo(293.15, within(1e-9));
        assertThat(Measured.of(293.15, 2, Units.KELVIN).to(Units.CELSIUS).spreadIn(Units.CELSIUS))
                .isCloseTo(2, within(1e-9));
    }
}
