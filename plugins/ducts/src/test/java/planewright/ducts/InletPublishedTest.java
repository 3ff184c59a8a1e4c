package planewright.ducts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Finding.Grade;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Against what is printed; sources, flags and tolerances stand with the cases in {@code published.json}. */
class InletPublishedTest {
    /** Raymer, 6th ed., Table 10.1, as the table of an answer gives it. */
    @Test
    void stationsAreThePrintedOrdinates() throws Exception {
        var printed = Published.of("A-01");
        var stations = Asked.width(200).answer().stations();
        assertThat(stations).hasSize(printed.count("x_over_L"));
        double length = stations.get(stations.size() - 1).fromApex().in(Units.MILLIMETRE);
        for (int i = 0; i < stations.size(); i++) {
            var station = stations.get(i);
            assertThat(station.fromLip().in(Units.MILLIMETRE) / length)
                    .isCloseTo(printed.input("x_over_L", i), within(1e-4));
            assertThat(station.halfWidth().in(Units.MILLIMETRE) / 100)
                    .isCloseTo(
                            printed.expected("y_over_half_width", i), within(printed.tolerance("y_over_half_width")));
        }
    }

    /** an independent listing, as shares of the whole width. */
    @Test
    void stationsAgreeWithASecondListing() {
        var printed = Published.of("A-02");
        for (int i = 0; i < printed.count("x_over_L_from_lip"); i++) {
            assertThat(Wall.halfWidth(1 - printed.input("x_over_L_from_lip", i)) / 2)
                    .isCloseTo(
                            printed.expected("y_over_full_width", i), within(printed.tolerance("y_over_full_width")));
        }
    }

    /** two more listings, each with one misprint that ours must not share: at 0.2 and at 0.3 of the length. */
    @Test
    void misprintsOfOtherListingsAreNotOurs() {
        var printed = Published.of("A-03");
        for (int i = 0; i < printed.count("x_over_L_from_lip"); i++) {
            double ours = Wall.halfWidth(1 - printed.input("x_over_L_from_lip", i));
            double a = printed.input("listing_a_half_width_fraction", i);
            double b = printed.input("listing_b_inches", i) / 1.44;
            assertThat(a - ours).isCloseTo(printed.expected("listing_a_minus_A01", i), within(5e-4));
            assertThat(b - ours).isCloseTo(printed.expected("listing_b_minus_A01", i), within(5e-4));
        }
        assertThat(printed.expected("listing_a_minus_A01", 2)).isEqualTo(0.05);
        assertThat(printed.expected("listing_b_minus_A01", 3)).isEqualTo(-0.0438);
    }

    /** the forward half of the wall is straight, y = 0.083 + 0.766 (1 − x/L). */
    @Test
    void forwardHalfIsStraight() {
        var printed = Published.of("A-04");
        double most = 0;
        for (int i = 0; i < printed.count("x_over_L"); i++) {
            double fromApex = 1 - printed.input("x_over_L", i);
            most = Math.max(most, Math.abs(Wall.halfWidth(fromApex) - (0.083 + 0.766 * fromApex)));
        }
        assertThat(most)
                .isCloseTo(
                        printed.expected("max_deviation_from_A01"),
                        within(printed.tolerance("max_deviation_from_A01")));
    }

    /** the cut-out by the trapezium rule on the eleven stations. */
    @Test
    void cutOutIsTheTrapeziumOverTheStations() throws Exception {
        var answer = Asked.width(120).answer();
        double share = answer.cutOut().in(Units.SQUARE_MILLIMETRE)
                / answer.width().in(Units.MILLIMETRE)
                / answer.length().in(Units.MILLIMETRE);
        double expected = Published.of("A-05").expected("area_over_width_times_length");
        assertThat(share).isCloseTo(expected, within(1e-9 * expected));
    }

    /** NACA RM A7I30 recommends ramps of 5° to 7° and widths of 3 to 5 depths. */
    @ParameterizedTest
    @CsvSource({
        "5, 3, fine, fine",
        "7, 5, fine, fine",
        "4.99, 2.99, look again, look again",
        "7.01, 5.01, look again, look again"
    })
    void windowIsThatOfTheReport(double ramp, double ratio, String rampGrade, String ratioGrade) throws Exception {
        var printed = Published.of("A-06");
        assertThat(new double[] {
                    printed.expected("ramp_angle_low"),
                    printed.expected("ramp_angle_high"),
                    printed.expected("width_to_depth_low"),
                    printed.expected("width_to_depth_high")
                })
                .containsExactly(5, 7, 3, 5);
        var findings = Asked.width(60).ramp(ramp).ratio(ratio).answer().findings();
        assertThat(findings)
                .filteredOn(finding -> finding.text().contains("ramp"))
                .extracting(Finding::grade)
                .extracting(Grade::word)
                .containsExactly(rampGrade);
        assertThat(findings)
                .filteredOn(finding -> finding.text().contains("wide as deep"))
                .extracting(Finding::grade)
                .extracting(Grade::word)
                .containsExactly(ratioGrade);
    }

    /** the worked example of an entrance 1 in deep and 4 in wide at 7°, with its lip. */
    @Test
    void workedExampleOfAnEntranceOneInchDeep() throws Exception {
        var printed = Published.of("A-07");
        var asked = Asked.width(Measured.of(printed.input("entrance_width"), Units.INCH))
                .ratio(printed.input("entrance_width") / printed.input("entrance_depth_h"))
                .ramp(printed.input("ramp_angle"));
        var answer = asked.answer();
        assertThat(answer.depth().in(Units.INCH)).isCloseTo(printed.input("entrance_depth_h"), within(1e-9));
        assertThat(answer.length().in(Units.INCH))
                .isCloseTo(
                        printed.expected("cutout_length_apex_to_lip"),
                        within(printed.tolerance("cutout_length_apex_to_lip")));
        assertThat(answer.floor().in(Units.INCH))
                .isCloseTo(
                        printed.expected("floor_depth_at_rotation_point"),
                        within(printed.tolerance("floor_depth_at_rotation_point")));
        var shape = InletAnswer.shape(asked.inputs());
        assertThat((shape.length() + shape.lip().throatBehind()) / 0.0254)
                .isCloseTo(
                        printed.expected("length_apex_to_rotation_point"),
                        within(printed.tolerance("length_apex_to_rotation_point")));
    }

    /** the lip's nose radius, its depth at three quarters of its chord, its thickness at the end. */
    @Test
    void lipPassesThroughItsPublishedPoints() {
        var printed = Published.of("A-07");
        var lip = new ShapedLip(1);
        assertThat(lip.noseRadius()).isCloseTo(printed.input("lip_nose_radius_over_h"), within(1e-12));
        assertThat(lip.below(0)).isCloseTo(printed.input("lip_nose_radius_over_h"), within(1e-12));
        assertThat(lip.below(0.75)).isCloseTo(printed.input("lip_rotation_depth_over_h"), within(1e-12));
        assertThat(lip.below(1)).isCloseTo(printed.input("lip_aft_thickness_over_h"), within(1e-12));
        assertThat(lip.throatBelow()).isEqualTo(printed.input("lip_rotation_depth_over_h"));
        for (double x = 0.01; x <= 1; x += 0.01) {
            assertThat(lip.below(x)).isGreaterThan(lip.below(x - 0.01));
        }
        double near = 1e-6;
        double radius = Math.pow(lip.below(near) - lip.below(0), 2) / (2 * near);
        assertThat(radius).isCloseTo(printed.input("lip_nose_radius_over_h"), within(1e-3));
    }
}
