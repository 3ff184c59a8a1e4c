package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.GRAM_MILLIMETRE;
import static planewright.api.quantity.Units.KILOGRAM_PER_CUBIC_METRE;
import static planewright.api.quantity.Units.MILLIMETRE;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;

/** Leaning wings, each worked by hand. */
class LeanTest {
    /** 2.6 g at 690 mm right level it: 1794 g·mm too much on the left. */
    @Test
    void ballastThatLevelsItTellsTheMoment() throws Exception {
        var results = new LeanLines().levelled(2.6, 690).answer();
        assertThat(results.moment().in(GRAM_MILLIMETRE)).isCloseTo(-1794, within(1e-6));
        assertThat(results.levelledBy().in(GRAM)).isCloseTo(2.6, within(1e-9));
        assertThat(results.levelledAt().in(MILLIMETRE)).isCloseTo(690, within(1e-9));
        assertThat(texts(results)).anyMatch(text -> text.contains("the left wing is heavy, like 2.6 g at the tip"));
        assertThat(results.proposals())
                .singleElement()
                .satisfies(proposal -> assertThat(proposal.name()).isEqualTo("tip ballast to level"));
    }

    /** (690·0.1)² + (2.6·2)² = 69.2²; JCGM 100:2008, equation (10). */
    @Test
    void carriesTheSpread() throws Exception {
        var lines = new LeanLines();
        lines.levelledBy = Optional.of(Measured.of(2.6, 0.1, GRAM));
        lines.levelledAt = Optional.of(Measured.of(690, 2, MILLIMETRE));
        assertThat(lines.answer().moment().spreadIn(GRAM_MILLIMETRE)).isCloseTo(Math.hypot(69, 5.2), within(1e-6));
    }

    /** 212 g and 207 g at 365 mm: 1825 g·mm left, 102 % of 1794. */
    @Test
    void thePairThatDiffersExplainsIt() throws Exception {
        var results = new LeanLines()
                .levelled(2.6, 690)
                .part("left wing panel", 212, -365)
                .part("right wing panel", 207, 365)
                .part("receiver", 8, 22)
                .part("tip ballast", 2.6, 690)
                .answer();
        assertThat(results.causes()).hasSize(2);
        var pair = results.causes().get(0);
        assertThat(pair.cause()).isEqualTo("wing panel, left and right");
        assertThat(pair.moment().in(GRAM_MILLIMETRE)).isCloseTo(-1825, within(1e-6));
        assertThat(pair.verdict()).isEqualTo("explains it");
        assertThat(results.causes().get(1).verdict()).isEqualTo("works the other way");
        assertThat(texts(results))
                .anyMatch(text -> text.contains("'wing panel, left and right' explains it"))
                .anyMatch(text -> text.contains("The weighed parts account for it"));
    }

    /** u² = (365·1)² + (212·3)² + (365·1)² + (207·3)² = 1027.9², so twice that is more than the 1825 themselves. */
    @Test
    void aPairThatFitsWithALargeSpreadIsToBeMeasuredAgain() throws Exception {
        var results = new LeanLines()
                .levelled(2.6, 690)
                .part("left wing panel", Measured.of(212, 1, GRAM), Measured.of(-365, 3, MILLIMETRE))
                .part("right wing panel", Measured.of(207, 1, GRAM), Measured.of(365, 3, MILLIMETRE))
                .answer();
        var pair = results.causes().get(0);
        assertThat(pair.moment().spreadIn(GRAM_MILLIMETRE)).isCloseTo(1027.9, within(0.05));
        assertThat(pair.verdict()).isEqualTo("fits, but its ± is as large: weigh and measure again");
        assertThat(texts(results)).anyMatch(text -> text.contains("deserve a finer measure"));
    }

    @Test
    void theBallastInTheLedgerStandsInForAMeasurement() throws Exception {
        var results = new LeanLines()
                .part("left wing panel", 212, -365)
                .part("right wing panel", 207, 365)
                .part("tip ballast", 2.6, 690)
                .plank()
                .answer();
        assertThat(results.moment().in(GRAM_MILLIMETRE)).isCloseTo(-1794, within(1e-6));
        assertThat(results.byParts().in(GRAM_MILLIMETRE)).isCloseTo(-1825, within(1e-6));
        assertThat(results.levelledAt().in(MILLIMETRE)).isCloseTo(500, within(1e-9));
        assertThat(results.levelledBy().in(GRAM)).isCloseTo(1794 / 500.0, within(1e-9));
    }

    @Test
    void aScaleUnderTheLowTipTellsTheSame() throws Exception {
        var results = new LeanLines().scale(3, -600).answer();
        assertThat(results.moment().in(GRAM_MILLIMETRE)).isCloseTo(-1800, within(1e-6));
        assertThat(results.levelledAt().in(MILLIMETRE)).isPositive();
    }

    /** 1000 g hung 50 mm above, right wing 2° down: 1000·50·tan 2° = 1746.04 g·mm, 1.746 mm beside the centre line. */
    @Test
    void aLeanWhileHungTellsTheOffset() throws Exception {
        var lines = new LeanLines().hung(2, 50).mass(1000);
        lines.tip = Optional.of(Measured.of(700, MILLIMETRE));
        var results = lines.answer();
        assertThat(results.moment().in(GRAM_MILLIMETRE)).isCloseTo(1746.04, within(0.005));
        assertThat(results.offset().orElseThrow().in(MILLIMETRE)).isCloseTo(1.74604, within(5e-6));
        assertThat(results.levelledAt().in(MILLIMETRE)).isCloseTo(-700, within(1e-9));
    }

    @Test
    void saysWhenTwoWaysOfLookingDisagree() throws Exception {
        assertThat(texts(new LeanLines().levelled(2.6, 690).scale(3, 600).answer()))
                .anyMatch(text -> text.contains("one of them was not read right"));
    }

    /** 1794 / 365 = 4.915 g; over 4000 ml 1.229 kg/m³, over 1000 ml 4.915 kg/m³; the foam differs by 4. */
    @Test
    void aSuspectedPairIsPlausibleOrNot() throws Exception {
        var results = new LeanLines()
                .levelled(2.6, 690)
                .suspect("foam cores", 365, 4000, 18, 22)
                .suspect("foam tips", 365, 1000, 18, 22)
                .answer();
        var cores = results.suspects().get(0);
        assertThat(cores.side()).isEqualTo("left");
        assertThat(cores.mass().in(GRAM)).isCloseTo(1794 / 365.0, within(1e-9));
        assertThat(cores.density().orElseThrow().in(KILOGRAM_PER_CUBIC_METRE))
                .isCloseTo(1794 / 365.0 / 4, within(1e-9));
        assertThat(cores.verdict()).startsWith("plausible");
        assertThat(results.suspects().get(1).verdict()).startsWith("not plausible");
    }

    /** 700 and 690 mm of one chord under 1000 g: −1000·½·(690² − 700²)/1390 = 5000 g·mm, the short right half goes down. */
    @Test
    void theShorterHalfGoesDown() throws Exception {
        var results =
                new LeanLines().levelled(1, 650).mass(1000).spans(700, 690).answer();
        assertThat(results.causes()).singleElement().satisfies(cause -> {
            assertThat(cause.moment().in(GRAM_MILLIMETRE)).isCloseTo(5000, within(1e-6));
            assertThat(cause.verdict()).isEqualTo("would roll it right");
            assertThat(cause.shows()).isEqualTo("in flight only");
        });
    }

    /**
     * An elliptic wing of aspect ratio 20 is damped in roll by Clp = −πA/(4(A + 4)) (H. Glauert, Elements of Aerofoil and Airscrew
     * Theory, chapter 11, from memory), and a difference of tip twist δ is a roll of pb/2V = δ/2 to it: −½ρV²·S·b·Clp·δ/2 rolls it,
     * and it ends in p = V·δ/(2·s) = 10·0.0174533/2 rad/s = 5° a second. A surface lies up to 5 % below the line.
     */
    @Test
    void theTipTwistedUpGoesUp() throws Exception {
        double aspectRatio = 20;
        var results = new LeanLines()
                .levelled(1, 450)
                .shape(new Planform(List.of(surface(ellipse(aspectRatio, 12))), List.of()))
                .speed(10)
                .twist(-2, -1)
                .flies(Lean.InFlight.ROLLS_LEFT, Lean.When.MORE_WHEN_FAST)
                .answer();
        var twist = results.causes().get(0);
        double damping = -Math.PI * aspectRatio / (4 * (aspectRatio + 4));
        double line = 0.5 * 1.225 * 100 * 4 / aspectRatio * 2 * damping * Math.toRadians(1) / 2 / 9.80665 * 1e6;
        assertThat(twist.moment().in(GRAM_MILLIMETRE) / line).isBetween(0.95, 1.0);
        assertThat(twist.moment().spreadIn(GRAM_MILLIMETRE))
                .isCloseTo(-0.1 * twist.moment().in(GRAM_MILLIMETRE), within(0.1));
        assertThat(twist.verdict()).isEqualTo("fits");
        assertThat(texts(results))
                .anyMatch(text -> text.contains("about 5° of roll a second"))
                .anyMatch(text -> text.contains("More when fast: twist"));
    }

    @Test
    void whatTwistDoesIsNotToldOfAWingWithoutChord() {
        assertThat(LeanMoments.damping(surface(new Planform.Panel(0, 0, 1, 0, 0, 0))))
                .isEmpty();
    }

    /** 50 g at 4 mm is sure, and 212 g against 211 g at 365 ± 3 mm could as well hang the other way. */
    @Test
    void whatIsLevelIsNotExplained() throws Exception {
        var results = new LeanLines()
                .plank()
                .part("receiver", 50, 4)
                .part("left wing panel", Measured.of(212, GRAM), Measured.of(-365, 3, MILLIMETRE))
                .part("right wing panel", Measured.of(212, GRAM), Measured.of(365, 3, MILLIMETRE))
                .answer();
        assertThat(texts(results))
                .singleElement()
                .satisfies(text -> assertThat(text).contains("level as far as can be told"));
        assertThat(results.causes())
                .filteredOn(cause -> cause.cause().equals("receiver"))
                .singleElement()
                .satisfies(cause -> assertThat(cause.verdict()).isEqualTo("pulls right"));
    }

    @Test
    void massAloneIsNotBlamedForWhatGrowsWithSpeed() throws Exception {
        assertThat(texts(new LeanLines()
                        .levelled(2.6, 690)
                        .flies(Lean.InFlight.ROLLS_LEFT, Lean.When.MORE_WHEN_FAST)
                        .answer()))
                .anyMatch(text -> text.contains("mass is not all of it"))
                .noneMatch(text -> text.contains("mass fits"));
    }

    @Test
    void saysWhichKindOfCauseFitsTheFlight() throws Exception {
        assertThat(texts(new LeanLines()
                        .levelled(2.6, 690)
                        .flies(Lean.InFlight.ROLLS_LEFT, Lean.When.AT_ALL_SPEEDS)
                        .answer()))
                .anyMatch(text -> text.contains("mass fits"))
                .anyMatch(text -> text.contains("mass or unequal halves, not twist"));
        assertThat(texts(new LeanLines()
                        .levelled(2.6, 690)
                        .flies(Lean.InFlight.ROLLS_RIGHT, Lean.When.ONLY_UNDER_POWER)
                        .answer()))
                .anyMatch(text -> text.contains("look at twist"))
                .anyMatch(text -> text.contains("torque"));
        assertThat(texts(new LeanLines()
                        .levelled(2.6, 690)
                        .flies(Lean.InFlight.LEVEL, Lean.When.NOT_KNOWN)
                        .answer()))
                .anyMatch(text -> text.contains("leans on the bench and flies level"));
    }

    @Test
    void refusesWhatDoesNotGoTogether() {
        assertRefused(new LeanLines(), "What is known of the lean is nothing");
        assertRefused(new LeanLines().levelled(2, 0.5), "place of the mass that levels it is 0.5 mm");
        assertRefused(new LeanLines().hung(2, 50), "All-up mass is empty");
        assertRefused(new LeanLines().part("left tip", 1, -500), "Tip is empty, and no shape to take it from");
        var half = new LeanLines().levelled(2, 500);
        half.leftSpan = Optional.of(Measured.of(500, MILLIMETRE));
        assertRefused(half, "half spans is given for one side only");
        assertRefused(
                new LeanLines().levelled(2, 500).suspect("foam", 300, 1, 30, 20), "up to its other end, 20 kg/m³");
        var vague = new LeanLines().levelled(2, 500);
        vague.levelledBy = Optional.of(Measured.of(2, 1.5, GRAM));
        assertRefused(vague, "± of mass that levels it is 1.5 g; accepted: up to 1 g");
    }

    private static void assertRefused(LeanLines lines, String message) {
        assertThatThrownBy(lines::answer).isInstanceOf(UnsuitableInput.class).hasMessageContaining(message);
    }

    /** Of unit half span, about a straight quarter-chord line, in panels of even angle. */
    private static Planform.Panel[] ellipse(double aspectRatio, int panels) {
        double root = 8 / (Math.PI * aspectRatio);
        return IntStream.range(0, panels)
                .mapToObj(i -> {
                    double from = Math.PI / 2 * i / panels;
                    double to = Math.PI / 2 * (i + 1) / panels;
                    double span = Math.sin(to) - Math.sin(from);
                    double tip = i + 1 == panels ? 0 : root * Math.cos(to);
                    double back = (root * Math.cos(from) - tip) / 4;
                    return new Planform.Panel(root * Math.cos(from), tip, span, Math.atan2(back, span), 0, 0);
                })
                .toArray(Planform.Panel[]::new);
    }

    private static Planform.Surface surface(Planform.Panel... panels) {
        return new Planform.Surface("wing", 0, 0, 0, true, List.of(panels));
    }

    private static List<String> texts(Lean.Results results) {
        return results.findings().stream().map(finding -> finding.text()).toList();
    }
}
