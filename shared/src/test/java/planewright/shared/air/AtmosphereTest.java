package planewright.shared.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.shared.Published;

/** U.S. Standard Atmosphere, 1976, table I, and ISO 2533:1975; rows D-02 to D-07 of {@code published.json}. */
class AtmosphereTest {
    @ParameterizedTest
    @CsvSource({"D-02, 0", "D-03, 1000", "D-04, 2000", "D-05, 5000"})
    void rowsOfTheTable(String id, double altitude) {
        var published = Published.of(id);
        var air = Atmosphere.at(altitude);
        assertThat(air.temperature()).isCloseTo(published.expected("T"), within(published.tolerance("T")));
        assertThat(air.pressure()).isCloseTo(published.expected("p"), within(published.tolerance("p")));
        assertThat(air.density()).isCloseTo(published.expected("rho"), within(published.tolerance("rho")));
    }

    @ParameterizedTest
    @CsvSource({"0, 2500", "1, 6500"})
    void rowsBetween(int position, double altitude) {
        var published = Published.of("D-06");
        var air = Atmosphere.at(altitude);
        assertThat(air.temperature()).isCloseTo(published.expected("T", position), within(published.tolerance("T")));
        assertThat(air.pressure()).isCloseTo(published.expected("p", position), within(published.tolerance("p")));
        assertThat(air.density()).isCloseTo(published.expected("rho", position), within(published.tolerance("rho")));
    }

    @ParameterizedTest
    @CsvSource({"0, 1000", "1, 11000"})
    void rowsByGeopotentialAltitude(int position, double altitude) {
        var published = Published.of("D-07");
        var air = Atmosphere.atGeopotential(altitude);
        assertThat(air.temperature()).isCloseTo(published.expected("T", position), within(published.tolerance("T")));
        assertThat(air.pressure()).isCloseTo(published.expected("p", position), within(published.tolerance("p")));
        assertThat(air.density()).isCloseTo(published.expected("rho", position), within(published.tolerance("rho")));
    }

    @Test
    void nothingIsToldOfTheStratosphere() {
        assertThatThrownBy(() -> Atmosphere.at(12_000)).hasMessageContaining("accepted");
    }
}
