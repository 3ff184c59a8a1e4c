package planewright.shared.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Language;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

class UnitChoiceTest {
    private static UnitChoice choosing(Unit<?> chosen) {
        return kind -> Optional.<Unit<?>>of(chosen).filter(unit -> Units.alike(unit, kind));
    }

    @Test
    void aBareNumberStaysOneThoughPercentIsChosen() throws QuantityProblem {
        var percent = choosing(Units.PERCENT);
        var ratio = QuantityText.parse("0.35", Units.NUMBER);
        assertThat(percent.written(ratio)).isEqualTo(ratio);
        assertThat(percent.written(ratio.measured()).text()).isEqualTo("0.35");
        assertThat(percent.measured(ratio.measured())).isEqualTo(ratio.measured());
        assertThat(percent.shown(Units.NUMBER)).isEqualTo(Units.NUMBER);
    }

    /** The ounce has 28.349523125 g: NIST Special Publication 811 (2008), appendix B.8. */
    @Test
    void whatHasAUnitIsReadInTheChosenOne() throws QuantityProblem {
        var ounces = choosing(Units.OUNCE);
        var panel = QuantityText.parse("283.49523125 g", Units.GRAM);
        assertThat(ounces.written(panel).text()).isEqualTo("10 oz");
        assertThat(ounces.written(panel.measured()).text()).isEqualTo("10 oz");
        assertThat(ounces.measured(panel.measured()).value().getUnit()).isEqualTo(Units.OUNCE);
        assertThat(ounces.shown(Units.GRAM)).isEqualTo(Units.OUNCE);
        assertThat(ounces.written(Measured.of(3.25, Units.MILLIMETRE)).text()).isEqualTo("3.25 mm");
    }

    /** 0.3048 m are a foot, 25.4 mm an inch: NIST Special Publication 811 (2008), appendix B.8. */
    @Test
    void whatWasTypedInMetresIsReadInInchesAndHeightsInFeet() {
        var reader = Language.ENGLISH.in(choosing(Units.INCH)::shown);
        assertThat(reader.unit(Units.METRE)).isEqualTo(Units.FOOT);
        assertThat(QuantityText.show(Measured.of(1.27, Units.METRE), reader)).isEqualTo("50 in");
        assertThat(QuantityText.show(Measured.of(1.27, Units.METRE), Language.ENGLISH))
                .isEqualTo("1.27 m");
    }
}
