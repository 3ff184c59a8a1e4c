package planewright.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.shared.material.Materials;

/** Rates and activation energies as printed elsewhere. */
class ArrheniusPublishedTest {
    /**
     * Worked answers of chemistry teaching: a rate that doubles from 25 to 35 °C means 52.9 kJ/mol (last printed digit), one
     * that doubles from 303 to 313 K 54.66 kJ/mol (log tables, hence 0.01).
     */
    @ParameterizedTest
    @CsvSource({"298.15, 308.15, 52.9, 0.05", "303, 313, 54.66, 0.01"})
    void doublingMeansTheEnergyThatIsPrinted(double from, double to, double printed, double tolerance) {
        assertThat(Arrhenius.energy(2, from, to) / 1000).isCloseTo(printed, within(tolerance));
    }

    /** Solved exercise: with 50 kJ/mol a rate grows 1.925-fold, rounded in print to 1.93, from 298 to 308 K. */
    @Test
    void fiftyKilojoulesAlmostDoubleARate() {
        assertThat(Arrhenius.rate(50_000, 308, 298)).isCloseTo(1.93, within(0.006));
    }

    /**
     * Thermochimica Acta 447(2) (2006) 167-177, abstract: 55-60 kJ/mol for the primary amine of an epoxy; an epoxy supplier:
     * working time doubles for every 18 °F (10 K) below 77 °F (25 °C). The second follows from the first to 10 %.
     */
    @Test
    void tablesEpoxyHasTheEnergyThatIsPrintedAndDoublesAsItsSupplierSays() {
        var energy = Curing.of(Materials.table(), "laminating epoxy").energy();
        assertThat(energy.typical()).isEqualTo(55_000);
        assertThat(energy.high()).isEqualTo(60_000);
        assertThat(1 / Arrhenius.rate(energy.typical(), 288.15, 298.15)).isCloseTo(2, within(0.2));
    }

    /**
     * Six hours at 15 °C, then 23 °C, for a cure of 24 h at 23 °C with 55 kJ/mol: 26.772778 h, computed apart from this program
     * in double precision with R = 8.314462618 J/(mol·K); 1e-6 relative.
     */
    @Test
    void coldEveningCostsWhatTheIntegralSays() {
        double cold = 288.15;
        double warm = 296.15;
        assertThat(Arrhenius.rate(55_000, cold, warm)).isCloseTo(0.53787037, within(1e-6));
        var air = ShopAir.history(
                List.of(new ShopAir.Reading(0, cold), new ShopAir.Reading(6, cold), new ShopAir.Reading(6, warm)));
        var progress = new Progress(air, kelvin -> Arrhenius.rate(55_000, kelvin, warm));
        assertThat(progress.hoursToEarn(24).orElseThrow()).isCloseTo(26.772778, within(26.8e-6));
    }
}
