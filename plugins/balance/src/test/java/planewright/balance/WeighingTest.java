package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static planewright.balance.Supports.metric;
import static planewright.balance.Supports.pounds;
import static planewright.balance.Supports.support;
import static planewright.balance.Supports.weigh;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Language;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;
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
        assertThat(results.proposals())
                .as("it may become what the build flies with")
                .contains(new Proposal.NewSetUpValue("balance point", results.balanceX()));
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

    /** Four supports of a stiff aircraft: whatever each carries, the sums hold; by hand 4·100 g, x = (2·0 + 2·200)/4. */
    @Test
    void takesAnyNumberOfSupports() throws Exception {
        var even = weigh(List.of(
                square("front left", 100, 0, -50), square("front right", 100, 0, 50),
                square("back left", 100, 200, -50), square("back right", 100, 200, 50)));
        var rocking = weigh(List.of(
                square("front left", 150, 0, -50), square("front right", 50, 0, 50),
                square("back left", 50, 200, -50), square("back right", 150, 200, 50)));
        assertThat(even.balanceX().in(Units.MILLIMETRE)).isCloseTo(100, within(1e-9));
        assertThat(rocking.balanceX().in(Units.MILLIMETRE)).isCloseTo(100, within(1e-9));
        assertThat(rocking.balanceY().orElseThrow().in(Units.MILLIMETRE)).isCloseTo(0, within(1e-9));
        assertThat(rocking.findings())
                .extracting(Finding::text)
                .anyMatch(text -> text.startsWith("With more than three supports"));
    }

    private static Weighing.SupportLine square(String name, double grams, double x, double y) {
        return new Weighing.SupportLine(
                name,
                Measured.of(grams, 1, Units.GRAM),
                Measured.of(0, Units.GRAM),
                Measured.of(x, Units.MILLIMETRE),
                Measured.of(y, Units.MILLIMETRE),
                "");
    }

    @Test
    void momentsOfTheLoadsAddUpToTheBalancePoint() throws Exception {
        var results = weigh(List.of(
                metric("front", Measured.of(100, 1, Units.GRAM), -30, ""),
                metric("back", Measured.of(300, 2, Units.GRAM), 200, "")));
        double moment = results.loads().stream()
                .mapToDouble(line -> line.momentX().in(Units.GRAM_MILLIMETRE))
                .sum();
        assertThat(moment / 400).isCloseTo(results.balanceX().in(Units.MILLIMETRE), within(1e-9));
        assertThat(results.loads().get(1).momentX().spreadIn(Units.GRAM_MILLIMETRE))
                .isCloseTo(400, within(1e-6));
    }

    @Test
    void drawsSupportsAndBalancePointFromAboveAndFromTheSide() throws Exception {
        var results = weigh(List.of(
                metric("front", Measured.of(100, 1, Units.GRAM), 0, ""),
                metric("back", Measured.of(300, 2, Units.GRAM), 200, "")));
        assertThat(marks(results.plan())).contains(new Point(0, -150), new Point(0, -200));
        assertThat(marks(results.side())).contains(new Point(150, 0), new Point(200, 0));
    }

    private static List<Point> marks(Drawing drawing) {
        return drawing.layers().stream()
                .flatMap(layer -> layer.shapes().stream())
                .filter(Drawing.Mark.class::isInstance)
                .map(shape -> ((Drawing.Mark) shape).at())
                .toList();
    }

    @Test
    void comparesWithAMassKnownOtherwise() throws Exception {
        var supports = List.of(
                metric("front", Measured.of(100, 1, Units.GRAM), 0, ""),
                metric("back", Measured.of(300, 1, Units.GRAM), 200, ""));
        assertThat(findings(supports, 401)).contains("within what the ± allow");
        assertThat(findings(supports, 420)).contains("more than the ± allow");
    }

    /** 7 kg in thirds: sums of doubles differ in the last digit, which is no difference. */
    @Test
    void callsNoDifferenceFineEvenWithoutPlusMinus() throws Exception {
        var supports = List.of(
                metric("front", Measured.of(7000 / 3.0, Units.GRAM), 0.1, ""),
                metric("back", Measured.of(14000 / 3.0, Units.GRAM), 0.7 + 200, ""));
        double x = weigh(supports).balanceX().in(Units.MILLIMETRE);
        assertThat(against(supports, 7000, x + 1e-12))
                .contains("The supports carry the mass known otherwise.", "It balances at the target.");
        assertThat(against(supports, 7001, x + 1))
                .contains("The supports carry 1.0 g less", "It balances 1.0 mm ahead of the target.");
    }

    private static String against(List<Weighing.SupportLine> supports, double knownGrams, double target)
            throws UnsuitableInput {
        return WeighingAnswer.of(
                        new Words(Language.ENGLISH),
                        new Weighing.Inputs(
                                supports,
                                Optional.of(Measured.of(knownGrams, Units.GRAM)),
                                Optional.of(Measured.of(target, Units.MILLIMETRE)),
                                Optional.empty()))
                .results()
                .findings()
                .toString();
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
        assertThatThrownBy(
                        () -> weigh(support("nose", 34, 0, 0), support("mains", 40, 10, 0), support("Nose", 34, 0, 0)))
                .hasMessageContaining("'Nose' is there twice; accepted: each support once in a round");
        assertThatThrownBy(() -> weigh(support(" ", 34, 0, 0), support("mains", 40, 10, 0)))
                .hasMessageContaining("name of row 1 of Supports is empty");
        assertThatThrownBy(() -> weigh(List.of(
                        metric("front", Measured.of(1, 2, Units.GRAM), 0, ""),
                        metric("back", Measured.of(0.5, Units.GRAM), 200, ""))))
                .hasMessageContaining("readings that stand out of their ±");
    }

    private static String findings(List<Weighing.SupportLine> supports, double knownGrams) throws UnsuitableInput {
        return WeighingAnswer.of(
                        new Words(Language.ENGLISH),
                        new Weighing.Inputs(
                                supports,
                                Optional.of(Measured.of(knownGrams, 1, Units.GRAM)),
                                Optional.empty(),
                                Optional.empty()))
                .results()
                .findings()
                .toString();
    }
}
