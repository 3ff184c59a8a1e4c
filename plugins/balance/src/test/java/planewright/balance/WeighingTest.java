package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Finding;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Weighing against the handbook's procedures; sources, flags and tolerances stand in {@code published.json}. */
class WeighingTest {
    /** FAA-H-8083-1B, chapter 10: 340 lb on the nose wheel, 78 in ahead of the mains, 2,006 lb in all: −13.2 in. */
    @Test
    void weighsOnANoseWheelWithTheDatumAtTheMains() throws Exception {
        var published = Published.of("A-07");
        double nose = published.input("nosewheel_weight_F");
        var results = weigh(
                support("nose", nose, published.input("distance_L"), 0),
                support("left", (published.input("total_weight_W") - nose) / 2, 0, -40),
                support("right", (published.input("total_weight_W") - nose) / 2, 0, 40));
        assertThat(results.mass().in(Units.POUND)).isCloseTo(published.input("total_weight_W"), within(1e-9));
        assertThat(results.balanceX().in(Units.INCH))
                .isCloseTo(
                        published.expected("cg_from_main_wheels"), within(published.tolerance("cg_from_main_wheels")));
        assertThat(results.balanceY().orElseThrow().in(Units.INCH)).isCloseTo(0, within(1e-9));
    }

    /** FAA-H-8083-1B, chapter 3: the same aeroplane, datum ahead of it: 114.8 in (datum and answer from memory). */
    @Test
    void weighsOnANoseWheelWithTheDatumAhead() throws Exception {
        var published = Published.of("A-08");
        double datum = published.input("D_datum_to_main_wheels");
        var results = weigh(
                support("nose", published.input("F"), datum - published.input("L"), 0),
                support("mains", published.input("W") - published.input("F"), datum, 0));
        assertThat(results.balanceX().in(Units.INCH))
                .isCloseTo(published.expected("cg"), within(published.tolerance("cg")));
        assertThat(results.balanceY()).isEmpty();
    }

    /** FAA-H-8083-1B, chapter 3: a tail wheel, datum ahead of the mains: 19.7 in (all numbers from memory). */
    @Test
    void weighsOnATailWheel() throws Exception {
        var published = Published.of("A-09");
        double datum = published.input("D_datum_to_main_wheels");
        double tail = published.input("tail_weight_R");
        var results = weigh(
                support("mains", published.input("W") - tail, datum, 0),
                support("tail", tail, datum + published.input("L_mains_to_tailwheel"), 0));
        assertThat(results.balanceX().in(Units.INCH))
                .isCloseTo(published.expected("cg"), within(published.tolerance("cg")));
    }

    @Test
    void takesTheTareOff() throws Exception {
        var nose = new Weighing.SupportLine(
                "nose", pounds(345), pounds(5), Measured.of(-78, Units.INCH), Measured.of(0, Units.INCH), "");
        var results = weigh(nose, support("mains", 1666, 0, 0));
        assertThat(results.balanceX().in(Units.INCH)).isCloseTo(-340.0 * 78 / 2006, within(1e-9));
    }

    /**
     * By hand from JCGM 100:2008, equation (10), for x = (F₁x₁ + F₂x₂)/M with exact stations: u(x) = |x₂ − x₁|·√((F₂u₁)² +
     * (F₁u₂)²)/M². F₁ = 100 g ± 1 g at 0 mm, F₂ = 300 g ± 2 g at 200 mm: 200·√(300² + 200²)/400² = 0.4507 mm.
     */
    @Test
    void carriesTheScalesDoubtOver() throws Exception {
        var results = weigh(List.of(
                metric("front", Measured.of(100, 1, Units.GRAM), 0, ""),
                metric("back", Measured.of(300, 2, Units.GRAM), 200, "")));
        assertThat(results.balanceX().in(Units.MILLIMETRE)).isCloseTo(150, within(1e-9));
        assertThat(results.balanceX().spreadIn(Units.MILLIMETRE)).isCloseTo(0.45069, within(1e-4));
        assertThat(results.mass().spreadIn(Units.GRAM)).isCloseTo(Math.sqrt(5), within(1e-9));
    }

    /** The weighted mean by hand: (10/1 + 12/4)/(1/1 + 1/4) = 10.4, u = 1/√1.25 = 0.894, χ² = 0.16 + 0.64 = 0.8. */
    @Test
    void combinesRoundsByWeightedLeastSquares() {
        var combined = Weighings.combine(List.of(new Weighings.Estimate(10, 1), new Weighings.Estimate(12, 2)));
        assertThat(combined.best().value()).isCloseTo(10.4, within(1e-12));
        assertThat(combined.best().spread()).isCloseTo(1 / Math.sqrt(1.25), within(1e-12));
        assertThat(combined.birgeRatio()).isCloseTo(Math.sqrt(0.8), within(1e-12));
        assertThat(combined.worstResidual()).isCloseTo(1.6, within(1e-12));
    }

    @Test
    void saysWhenRoundsDisagree() throws Exception {
        var results = weigh(List.of(
                metric("front", Measured.of(100, 1, Units.GRAM), 0, "first"),
                metric("back", Measured.of(300, 1, Units.GRAM), 200, "first"),
                metric("front", Measured.of(130, 1, Units.GRAM), 0, "second"),
                metric("back", Measured.of(270, 1, Units.GRAM), 200, "second")));
        assertThat(results.rounds()).hasSize(2);
        assertThat(results.agreement().orElseThrow().in(Units.NUMBER)).isGreaterThan(2);
        assertThat(results.findings())
                .extracting(Finding::text)
                .anyMatch(text -> text.contains("something moved, or a ± is too small"));
    }

    @Test
    void comparesWithAMassKnownOtherwise() throws Exception {
        var supports = List.of(
                metric("front", Measured.of(100, 1, Units.GRAM), 0, ""),
                metric("back", Measured.of(300, 1, Units.GRAM), 200, ""));
        assertThat(findings(supports, 401)).contains("within what the ± allow");
        assertThat(findings(supports, 420)).contains("more than the ± allow");
    }

    @Test
    void refusesWhatCannotBeWeighed() {
        assertThatThrownBy(() -> weigh(support("nose", 340, -78, 0)))
                .isInstanceOf(UnsuitableInput.class)
                .hasMessageContaining("accepted: 2 or more in each round");
        assertThatThrownBy(() -> weigh(support("left", 340, 10, -40), support("right", 340, 10, 40)))
                .hasMessageContaining("accepted: supports at different x");
        assertThatThrownBy(() -> weigh(
                        new Weighing.SupportLine(
                                "nose",
                                pounds(1),
                                pounds(3),
                                Measured.of(0, Units.INCH),
                                Measured.of(0, Units.INCH),
                                ""),
                        support("mains", 340, 10, 40)))
                .hasMessageContaining("tare of 'nose' is 3 lb; accepted: up to its reading of 1 lb");
        assertThatThrownBy(() -> weigh(support("nose", 0, 0, 0), support("mains", 0, 10, 0)))
                .hasMessageContaining("accepted: readings above the tare");
        assertThatThrownBy(() -> weigh(List.of())).hasMessageContaining("Supports is empty");
    }

    private static String findings(List<Weighing.SupportLine> supports, double knownGrams) throws UnsuitableInput {
        return WeighingAnswer.of(new Weighing.Inputs(
                        supports,
                        Optional.of(Measured.of(knownGrams, 1, Units.GRAM)),
                        Optional.empty(),
                        Optional.empty()))
                .results()
                .findings()
                .toString();
    }

    private static Weighing.Results weigh(Weighing.SupportLine... supports) throws UnsuitableInput {
        return weigh(List.of(supports));
    }

    private static Weighing.Results weigh(List<Weighing.SupportLine> supports) throws UnsuitableInput {
        return WeighingAnswer.of(new Weighing.Inputs(supports, Optional.empty(), Optional.empty(), Optional.empty()))
                .results();
    }

    private static Weighing.SupportLine metric(String name, Measured<Mass> reading, double x, String round) {
        return new Weighing.SupportLine(
                name,
                reading,
                Measured.of(0, Units.GRAM),
                Measured.of(x, Units.MILLIMETRE),
                Measured.of(0, Units.MILLIMETRE),
                round);
    }

    private static Weighing.SupportLine support(String name, double load, double x, double y) {
        return new Weighing.SupportLine(
                name, pounds(load), pounds(0), Measured.of(x, Units.INCH), Measured.of(y, Units.INCH), "");
    }

    private static Measured<Mass> pounds(double pounds) {
        return Measured.of(pounds, Units.POUND);
    }
}
