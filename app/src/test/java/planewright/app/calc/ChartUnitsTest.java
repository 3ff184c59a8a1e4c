package planewright.app.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import planewright.api.figure.Chart;
import planewright.api.figure.Point;
import planewright.api.quantity.Units;
import planewright.shared.quantity.UnitChoice;

/** Every kind of chart in other units. NIST Special Publication 811 (2008), appendix B: an inch is 25.4 mm, 0 °C are 273.15 K. */
class ChartUnitsTest {
    private static final Chart.Axis MILLIMETRES = new Chart.Axis("along", "mm");
    private static final Chart.Axis DEGREES = new Chart.Axis("warm", "Cel");
    private static final Chart.Axis ODD = new Chart.Axis("odd", "furlong");
    private static final UnitChoice INCHES_AND_KELVINS = kind -> Units.alike(kind, Units.INCH)
            ? Optional.of(Units.INCH)
            : Units.alike(kind, Units.KELVIN) ? Optional.of(Units.KELVIN) : Optional.empty();
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 3, 1, 12, 0);
    private static final List<Chart.Series> SERIES = List.of(new Chart.Series("s", List.of(new Point(254, 20))));
    private static final List<Chart.Band> BANDS =
            List.of(new Chart.Band("b", List.of(new Chart.Span(254, 10, 20, 30))));
    private static final List<Chart.Level> LEVELS = List.of(new Chart.Level("l", 20, Optional.of(30.0)));

    static Stream<Chart> charts() {
        var dots = List.of(new Chart.Dot("d", new Point(254, 20)));
        return Stream.of(
                new Chart.Lines("t", MILLIMETRES, DEGREES, SERIES, LEVELS),
                new Chart.Bands("t", MILLIMETRES, DEGREES, BANDS, LEVELS),
                new Chart.Scatter(
                        "t", MILLIMETRES, DEGREES, List.of(new Chart.Group("g", dots)), Optional.of(SERIES.get(0))),
                new Chart.Region(
                        "t",
                        MILLIMETRES,
                        DEGREES,
                        List.of(new Chart.Area(
                                "a",
                                Chart.Sense.ALLOWED,
                                List.of(new Point(254, 20), new Point(254, 20), new Point(254, 20)))),
                        SERIES,
                        dots));
    }

    @ParameterizedTest
    @MethodSource("charts")
    void bothAxesTurn(Chart chart) {
        var turned = ChartUnits.in(chart, INCHES_AND_KELVINS);
        assertThat(turned).isInstanceOf(chart.getClass());
        assertThat(turned.toString())
                .contains("label=along, unit=[in_i]", "label=warm, unit=K", "293.15")
                .containsAnyOf("x=10.0", "x=9.99999999999")
                .doesNotContain("254");
        assertThat(ChartUnits.in(chart, UnitChoice.NONE)).isEqualTo(chart);
    }

    @Test
    void hoursStayAndSoDoesAUnitThatIsNotKnown() {
        var over = (Chart.OverTime)
                ChartUnits.in(new Chart.OverTime("t", NOON, DEGREES, SERIES, LEVELS, List.of()), INCHES_AND_KELVINS);
        assertThat(over.series().get(0).points().get(0)).isEqualTo(new Point(254, 293.15));
        assertThat(over.levels().get(0).to()).contains(303.15);
        var bands = (Chart.BandsOverTime) ChartUnits.in(
                new Chart.BandsOverTime("t", NOON, DEGREES, BANDS, LEVELS, List.of()), INCHES_AND_KELVINS);
        assertThat(bands.bands().get(0).spans().get(0)).isEqualTo(new Chart.Span(254, 283.15, 293.15, 303.15));
        var odd = new Chart.Bars("t", "", ODD, List.of(new Chart.Bar("one", 254, 2)));
        assertThat(ChartUnits.in(odd, INCHES_AND_KELVINS)).isEqualTo(odd);
    }

    /** A ± of 2 °C is one of 2 K. */
    @Test
    void whatIsDoubtedKeepsItsWidth() {
        var warm = (Chart.Bars) ChartUnits.in(
                new Chart.Bars("t", "", DEGREES, List.of(new Chart.Bar("one", 20, 2))), INCHES_AND_KELVINS);
        assertThat(warm.bars().get(0).value()).isEqualTo(293.15, within(1e-9));
        assertThat(warm.bars().get(0).plusMinus()).isEqualTo(2, within(1e-9));
        var wide = (Chart.Bars) ChartUnits.in(
                new Chart.Bars("t", "", MILLIMETRES, List.of(new Chart.Bar("one", 254, 2.54))), INCHES_AND_KELVINS);
        assertThat(wide.bars().get(0).plusMinus()).isEqualTo(0.1, within(1e-9));
    }
}
