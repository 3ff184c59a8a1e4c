package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.INCH;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.POUND;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.balance.Ballast.Coins;

/** Ballast as a builder meets it, each case worked by hand. */
class BallastTest {
    /**
     * 1000 g at 105 mm, target 100 ± 1: the nose at −100 is 200 ahead, so m·(200 + 1) ≥ 1000·(5 − 1), m ≥ 19.90 g. Of pieces of 5 g
     * four, 20 g.
     */
    @Test
    void addsJustEnoughWholePieces() throws Exception {
        var results = tailHeavy().pocket("nose", -100, 0).stock("lead", 5, 10).answer();
        assertThat(results.added().in(GRAM)).isCloseTo(20, within(1e-9));
        assertThat(results.pieces()).isEqualTo(4);
        assertThat(results.placed()).singleElement().satisfies(line -> {
            assertThat(line.pocket()).isEqualTo("nose");
            assertThat(line.count()).isEqualTo(4);
        });
        assertThat(results.beforeX().in(MILLIMETRE)).isCloseTo(105, within(1e-9));
        assertThat(results.afterX().in(MILLIMETRE)).isCloseTo((105000 - 2000) / 1020.0, within(1e-9));
        assertThat(graded(results, Finding.Grade.FINE)).anyMatch(text -> text.contains("nose: 4 × lead"));
        assertThat(graded(results, Finding.Grade.FINE)).anyMatch(text -> text.contains("No lighter choice"));
        assertThat(results.proposals()).extracting(Proposal::name).containsExactly("ballast nose", "balance point");
    }

    /** As light with one piece of 20 g as with four of 5 g: the one is taken. */
    @Test
    void prefersFewerPieces() throws Exception {
        var results = tailHeavy()
                .pocket("nose", -100, 0)
                .stock("small", 5, 10)
                .stock("large", 20, 1)
                .answer();
        assertThat(results.pieces()).isEqualTo(1);
        assertThat(results.placed().get(0).piece()).isEqualTo("large");
        assertThat(results.others().get(0).pieces()).isEqualTo(4);
    }

    /** The nose holds two pieces; the rest must go to the cabin at 0, 100 ahead: 10·201 + m·101 ≥ 4000, m ≥ 19.7, four more. */
    @Test
    void overflowsIntoTheNextPocket() throws Exception {
        var results = tailHeavy()
                .pocket("nose", -100, 0, Optional.of(2), Optional.empty())
                .pocket("cabin", 0, 0)
                .stock("lead", 5, 10)
                .answer();
        assertThat(results.added().in(GRAM)).isCloseTo(30, within(1e-9));
        assertThat(results.placed()).extracting(Ballast.PlacedLine::count).containsExactly(2, 4);
    }

    /** A pack of 200 g at 60 mm moves the balance of 1000 g by 1 mm per 5 mm: 25 forward for 5. */
    @Test
    void movesThePackFirstAndSaysThatItIsEnough() throws Exception {
        var results = new BallastLines()
                .part("airframe", 800, 116.25, 0)
                .part("pack", 200, 60, 0)
                .movable("pack", 20, 90)
                .pocket("nose", -100, 0)
                .stock("lead", 5, 10)
                .target(100, 1)
                .answer();
        assertThat(results.added().in(GRAM)).isZero();
        assertThat(results.placed()).isEmpty();
        assertThat(results.moves()).singleElement().satisfies(move -> {
            assertThat(move.to().in(MILLIMETRE)).isCloseTo(35, within(1e-9));
            assertThat(move.by().in(MILLIMETRE)).isCloseTo(-25, within(1e-9));
        });
        assertThat(results.afterX().in(MILLIMETRE)).isCloseTo(100, within(1e-9));
        assertThat(graded(results, Finding.Grade.FINE))
                .anyMatch(text ->
                        text.equals("Moving 'pack' 25.0 mm forward, to station 35.0 mm is enough: nothing to add."))
                .anyMatch(text -> text.equals("With nothing moved it would take 20.00 g more."));
    }

    /** Only 15 mm of those 25: the moment lacks 2000 − 1000 g·mm, 201 m ≥ 1000, 4.98 g, so one piece of 5 g. */
    @Test
    void movesThePackAsFarAsItGoesAndAddsTheRest() throws Exception {
        var results = new BallastLines()
                .part("airframe", 800, 116.25, 0)
                .part("pack", 200, 60, 0)
                .movable("pack", 45, 90)
                .pocket("nose", -100, 0)
                .stock("lead", 5, 10)
                .target(100, 1)
                .answer();
        assertThat(results.added().in(GRAM)).isCloseTo(5, within(1e-9));
        assertThat(results.moves().get(0).to().in(MILLIMETRE)).isCloseTo(45, within(1e-9));
        assertThat(results.proposals())
                .extracting(Proposal::name)
                .containsExactly("ballast nose", "station of pack", "balance point");
    }

    /**
     * Both axes at once: 5000 g·mm tail-heavy, 2000 g·mm right-heavy, tolerances 1 mm. The left tip alone at (100, −400) levels
     * it with 2000 − 1000 = 400 m − m, 2.51 g; the nose then needs 19.9 g as before. One cent of 2.5 g is too little at the tip:
     * (1000 + w) ≥ 2000 − 400·2.5 = 1000 holds, so it is just enough.
     */
    @Test
    void balancesLengthwiseAndSidewaysAtOnce() throws Exception {
        var results = tailHeavy()
                .part("camera", 100, 105, 20)
                .pocket("nose", -100, 0)
                .pocket("left tip", 100, -400)
                .coins(Coins.US_COINS)
                .sideways(1)
                .answer();
        assertThat(Math.abs(results.afterX().in(MILLIMETRE) - 100)).isLessThanOrEqualTo(1 + 1e-9);
        assertThat(Math.abs(results.afterY().in(MILLIMETRE))).isLessThanOrEqualTo(1 + 1e-9);
        assertThat(results.placed()).extracting(Ballast.PlacedLine::pocket).contains("nose", "left tip");
    }

    /** FAA-H-8083-1B, chapter 7, "Permanent Ballast": 1,876 lb at 32.2 in, limit 33.0 in, compartment at 228 in: 7.7 lb. */
    @Test
    void addsTheHandbooksPermanentBallast() throws Exception {
        var published = Published.of("A-11");
        double limit = published.input("forward_limit");
        var inputs = new Ballast.Inputs(
                List.of(new Ballast.PartLine(
                        "empty aircraft at a tenth of its mass",
                        Optional.of(Measured.of(published.input("empty_weight") / 10, POUND)),
                        Optional.of(Measured.of(published.input("ewcg"), INCH)),
                        Measured.of(0, INCH))),
                Optional.empty(),
                Optional.of(Measured.of(limit, INCH)),
                Measured.of(0.01, MILLIMETRE),
                false,
                Measured.of(0, INCH),
                Measured.of(1, MILLIMETRE),
                List.of(),
                List.of(new Ballast.PocketLine(
                        "compartment",
                        Measured.of(published.input("ballast_station"), INCH),
                        Measured.of(0, INCH),
                        Optional.empty(),
                        Optional.empty())),
                List.of(),
                Coins.NONE,
                0,
                Optional.of(Measured.of(1, POUND)),
                Measured.of(0.01, GRAM),
                Optional.empty());
        var results = new Ballast().compute(inputs, LightestPiecesTest.unwatched());
        assertThat(10 * results.added().in(POUND))
                .isCloseTo(published.expected("ballast"), within(published.tolerance("ballast")));
        assertThat(results.afterX().in(INCH))
                .isCloseTo(published.expected("new_cg"), within(published.tolerance("new_cg")));
    }

    @Test
    void saysWhenThereIsNothingToDo() throws Exception {
        var results = new BallastLines()
                .part("airframe", 1000, 100.5, 0)
                .target(100, 1)
                .answer();
        assertThat(results.added().in(GRAM)).isZero();
        assertThat(graded(results, Finding.Grade.FINE)).anyMatch(text -> text.contains("nothing to add"));
    }

    /** Room for 10 g at −100: (105000 − 1000) / 1010 = 102.97 mm; the lever asks for 19.90 g. */
    @Test
    void saysHowNearItGetsAndWhatWouldBeNeeded() throws Exception {
        var results = tailHeavy()
                .pocket("nose", -100, 0, Optional.empty(), Optional.of(10.0))
                .stock("lead", 5, 10)
                .answer();
        assertThat(results.afterX().in(MILLIMETRE)).isCloseTo(104000 / 1010.0, within(1e-9));
        assertThat(graded(results, Finding.Grade.STOP))
                .singleElement()
                .asString()
                .contains("The nearest found is 3.0 mm behind the target with nose: 2 × lead")
                .contains("With room and pieces enough, 19.90 g in these pockets would do.");
        assertThat(results.proposals()).extracting(Proposal::name).containsExactly("ballast nose");
    }

    /** Nothing ahead of the target: 5000 g·mm over an arm from 100 to the nose at −150 is 20 g. */
    @Test
    void saysWhereAPocketIsMissing() throws Exception {
        var shape = new Planform(
                List.of(),
                List.of(new Planform.Body(
                        "pod",
                        0,
                        List.of(
                                new Planform.Section(-0.15, 0.02, 0.01, -0.01),
                                new Planform.Section(0.5, 0.02, 0.01, -0.01)))));
        var results = tailHeavy()
                .pocket("tail", 400, 0)
                .stock("lead", 5, 10)
                .shape(shape)
                .answer();
        assertThat(results.added().in(GRAM)).isZero();
        assertThat(graded(results, Finding.Grade.STOP))
                .singleElement()
                .asString()
                .contains("a pocket ahead of the target: about 20.00 g at x -150.0 mm");
    }

    @Test
    void saysWhenPiecesAreTooCoarse() throws Exception {
        var results = new BallastLines()
                .part("airframe", 1000, 105, 0)
                .target(100, 0.1)
                .pocket("nose", -100, 0)
                .stock("brick", 200, 1)
                .answer();
        assertThat(graded(results, Finding.Grade.STOP))
                .singleElement()
                .asString()
                .contains("too coarse");
    }

    @Test
    void reachesTheTargetLengthwiseWhereSidewaysIsOutOfReach() throws Exception {
        var results = tailHeavy()
                .part("camera", 100, 105, 50)
                .pocket("nose", -100, 0)
                .stock("lead", 5, 20)
                .sideways(1)
                .answer();
        assertThat(results.afterX().in(MILLIMETRE)).isCloseTo(100, within(1.0));
        assertThat(graded(results, Finding.Grade.LOOK_AGAIN))
                .anyMatch(text -> text.contains("Sideways it stays") && text.contains("a pocket to the left"));
    }

    /** Old nose weight of 40 g out, 20 g in. */
    @Test
    void takesOldBallastOutFirst() throws Exception {
        var results = tailHeavy()
                .part("nose weight", 40, -100, 0)
                .leaveOut("Nose weight")
                .pocket("nose", -100, 0)
                .stock("lead", 5, 10)
                .answer();
        assertThat(results.added().in(GRAM)).isCloseTo(20, within(1e-9));
        assertThat(graded(results, Finding.Grade.FINE)).anyMatch(text -> text.contains("20.00 g lighter"));
    }

    /** 19.90 g by the lever, so 20 g in steps of 0.5 g; a lump is one piece. */
    @Test
    void cutsLeadToMeasure() throws Exception {
        var results = tailHeavy().pocket("nose", -100, 0).lead(100).answer();
        assertThat(results.added().in(GRAM)).isCloseTo(20, within(1e-9));
        assertThat(results.pieces()).isEqualTo(1);
        assertThat(graded(results, Finding.Grade.FINE)).anyMatch(text -> text.contains("20 g of lead cut to measure"));
    }

    /** 198 + 1.01 mm ahead of the target, so 990 / 199.01 = 4.97 g and one piece; JCGM 100:2008, equation (10), written out. */
    @Test
    void carriesTheSpreadOfPiecesAndParts() throws Exception {
        var inputs = new BallastLines()
                .part("airframe", Measured.of(1000, 3, GRAM), Measured.of(105, 0.5, MILLIMETRE), 0)
                .target(103, 0.01)
                .pocket("nose", -95, 0)
                .inputs();
        var exact = new Ballast.Inputs(
                inputs.parts(),
                inputs.leaveOut(),
                inputs.targetX(),
                Measured.of(1.01, MILLIMETRE),
                false,
                inputs.targetY(),
                inputs.toleranceY(),
                List.of(),
                inputs.pockets(),
                List.of(new Ballast.StockLine("lead", Measured.of(5, 0.1, GRAM), 10)),
                Coins.NONE,
                0,
                Optional.empty(),
                inputs.cutStep(),
                Optional.empty());
        var results = new Ballast().compute(exact, LightestPiecesTest.unwatched());
        assertThat(results.added().in(GRAM)).isCloseTo(5, within(1e-9));
        assertThat(results.added().spreadIn(GRAM)).isCloseTo(0.1, within(1e-12));
        double after = (105000 - 475) / 1005.0;
        double byHand = Math.sqrt(Math.pow((105 - after) * 3 / 1005, 2)
                + Math.pow(1000 * 0.5 / 1005, 2)
                + Math.pow((-95 - after) * 0.1 / 1005, 2));
        assertThat(results.afterX().in(MILLIMETRE)).isCloseTo(after, within(1e-9));
        assertThat(results.afterX().spreadIn(MILLIMETRE)).isCloseTo(byHand, within(1e-9));
    }

    @Test
    void namesWhatWasNotCounted() throws Exception {
        var results = tailHeavy().unweighed("hatch").answer();
        assertThat(graded(results, Finding.Grade.LOOK_AGAIN))
                .anyMatch(text -> text.equals("Not counted: 'hatch' (no mass)."));
    }

    @Test
    void refusesWhatDoesNotGoTogether() {
        assertRefused(new BallastLines().target(100, 1), "Parts is empty");
        assertRefused(new BallastLines().part("a", 1000, 0, 0), "a target x, or sideways too, or both");
        assertRefused(tailHeavy().movable("pack", 0, 1), "part that may move is 'pack'");
        assertRefused(tailHeavy().movable("airframe", 200, 100), "up to its rearmost, 100 mm");
        assertRefused(
                tailHeavy().movable("airframe", 0, 50),
                "station of 'airframe' is 105 mm; accepted: within the range in which it may move, 0 mm to 50 mm");
        assertRefused(tailHeavy().leaveOut("keel"), "Part to leave out is 'keel'");
        assertRefused(tailHeavy().leaveOut("airframe"), "without a part that stays");
        assertRefused(tailHeavy().pocket("nose", 0, 0).pocket("Nose ", 1, 0), "'Nose ' is there twice");
        assertRefused(tailHeavy().stock("anvil", 20000, 11), "Mass of all pieces is 220 kg; accepted: up to 200 kg");
        var many = tailHeavy().coins(Coins.EURO_COINS);
        for (int i = 0; i < 5; i++) {
            many.stock("piece " + i, 1 + i, 1);
        }
        assertRefused(many, "Kinds of pieces is 13 in number; accepted: up to 12");
    }

    private static void assertRefused(BallastLines lines, String message) {
        assertThatThrownBy(lines::answer).isInstanceOf(UnsuitableInput.class).hasMessageContaining(message);
    }

    private static BallastLines tailHeavy() {
        return new BallastLines().part("airframe", 1000, 105, 0).target(100, 1);
    }

    private static List<String> graded(Ballast.Results results, Finding.Grade grade) {
        return results.findings().stream()
                .filter(finding -> finding.grade() == grade)
                .map(Finding::text)
                .toList();
    }
}
