package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static planewright.balance.Lines.inputs;
import static planewright.balance.Lines.part;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Finding;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.figure.Drawing;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

class LedgerTest {
    private static final List<Ledger.PartLine> WING = List.of(
            part("left panel", Measured.of(212, 2, Units.GRAM), Measured.of(140, 2, Units.MILLIMETRE), -260),
            part("right panel", Measured.of(219, 2, Units.GRAM), Measured.of(141, 2, Units.MILLIMETRE), 260),
            part("motor", Measured.of(62, 0.5, Units.GRAM), Measured.of(330, 1, Units.MILLIMETRE), 0),
            part("pack", Measured.of(186, 1, Units.GRAM), Measured.of(-40, 3, Units.MILLIMETRE), 0));

    /**
     * First order against Monte Carlo, JCGM 101:2008, 5.1: 200,000 draws of normal readings. The spread of a standard
     * deviation from n draws is 1/√(2n), 0.16 %; the bound of 2 % also covers what first order leaves out.
     */
    @Test
    void theSpreadOfTheBalancePointIsThatOfManyWeighings() throws Exception {
        var results = LedgerAnswer.of(inputs(Optional.empty(), WING)).results();
        var random = new Random(20260112);
        int draws = 200_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < draws; i++) {
            double mass = 0;
            double moment = 0;
            for (var line : WING) {
                double m = drawn(
                        random,
                        line.mass().orElseThrow().in(Units.GRAM),
                        line.mass().get().spreadIn(Units.GRAM));
                double x = drawn(
                        random,
                        line.x().orElseThrow().in(Units.MILLIMETRE),
                        line.x().get().spreadIn(Units.MILLIMETRE));
                mass += m;
                moment += m * x;
            }
            double balance = moment / mass;
            sum += balance;
            squares += balance * balance;
        }
        double mean = sum / draws;
        double spread = Math.sqrt(squares / draws - mean * mean);
        assertThat(results.balanceX().in(Units.MILLIMETRE)).isCloseTo(mean, within(4 * spread / Math.sqrt(draws)));
        assertThat(results.balanceX().spreadIn(Units.MILLIMETRE)).isCloseTo(spread, within(0.02 * spread));
    }

    @Test
    void movingAPartAsToldReachesTheTarget() throws Exception {
        var target = Measured.of(100, Units.MILLIMETRE);
        var whatIf =
                LedgerAnswer.of(inputs(Optional.of(target), WING)).results().whatIf();
        assertThat(whatIf).hasSize(WING.size());
        for (var line : whatIf) {
            var moved = WING.stream()
                    .map(part -> part.name().equals(line.part())
                            ? part(part.name(), part.mass().orElseThrow(), line.station(), 0)
                            : part)
                    .toList();
            assertThat(Lines.ledger(moved).balanceX().in(Units.MILLIMETRE)).isCloseTo(100, within(1e-9));
        }
    }

    @Test
    void leavingAPartOutMovesTheBalancePointAsTold() throws Exception {
        var results = Lines.ledger(WING);
        var told = results.contributions().stream()
                .filter(line -> line.part().equals("pack"))
                .findFirst()
                .orElseThrow();
        var without = Lines.ledger(WING.subList(0, 3));
        assertThat(without.balanceX().in(Units.MILLIMETRE) - results.balanceX().in(Units.MILLIMETRE))
                .isCloseTo(told.shiftWithout().in(Units.MILLIMETRE), within(1e-9));
        assertThat(results.contributions().stream()
                        .mapToDouble(line -> line.varianceShare().in(Units.PERCENT))
                        .sum())
                .isCloseTo(100, within(1e-6));
    }

    @Test
    void saysWhetherItIsNoseHeavyAndWhatWouldHelp() throws Exception {
        var findings = LedgerAnswer.of(inputs(Optional.of(Measured.of(120, Units.MILLIMETRE)), WING))
                .results()
                .findings();
        assertThat(findings.get(0).grade()).isEqualTo(Finding.Grade.LOOK_AGAIN);
        assertThat(findings.get(0).text()).contains("ahead of the target", "nose-heavy", "aft would bring it there");
    }

    @Test
    void saysThatItLeansAndWhatWouldLevelIt() throws Exception {
        var lopsided = List.of(
                part("left panel", Measured.of(200, 1, Units.GRAM), Measured.of(140, Units.MILLIMETRE), -260),
                part("right panel", Measured.of(240, 1, Units.GRAM), Measured.of(140, Units.MILLIMETRE), 260));
        assertThat(LedgerAnswer.of(inputs(Optional.empty(), lopsided)).results().findings())
                .extracting(Finding::text)
                .anyMatch(text -> text.equals("It leans to the right: 40.0 g at the other tip would level it."));
    }

    @Test
    void namesPartsThatDoNotCount() throws Exception {
        var unweighed = new Ledger.PartLine(
                "canopy",
                "",
                Optional.empty(),
                Optional.of(Measured.of(10, Units.MILLIMETRE)),
                Measured.of(0, Units.MILLIMETRE),
                Measured.of(0, Units.MILLIMETRE),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        var parts = List.of(WING.get(0), unweighed);
        var results = LedgerAnswer.of(inputs(Optional.empty(), parts)).results();
        assertThat(results.mass().in(Units.GRAM)).isCloseTo(212, within(1e-9));
        assertThat(results.findings()).extracting(Finding::text).contains("Not counted: 'canopy' (no mass).");
    }

    @Test
    void refusesALedgerWithNothingToBalance() {
        assertThatThrownBy(() -> Lines.ledger(List.of()))
                .isInstanceOf(UnsuitableInput.class)
                .hasMessageContaining("Parts is empty; accepted: 1 or more parts with mass and station");
    }

    @Test
    void drawsEveryPartAndTheBalancePoint() throws Exception {
        var plan = LedgerAnswer.of(inputs(Optional.of(Measured.of(100, Units.MILLIMETRE)), WING))
                .results()
                .plan();
        var shapes =
                plan.layers().stream().flatMap(layer -> layer.shapes().stream()).toList();
        assertThat(shapes).filteredOn(Drawing.Disc.class::isInstance).hasSize(WING.size());
        assertThat(shapes)
                .filteredOn(Drawing.Mark.class::isInstance)
                .extracting(shape -> ((Drawing.Mark) shape).sign())
                .containsExactly(Drawing.Sign.DATUM, Drawing.Sign.TARGET, Drawing.Sign.BALANCE_POINT);
    }

    private static double drawn(Random random, double value, double spread) {
        return value + spread * random.nextGaussian();
    }
}
