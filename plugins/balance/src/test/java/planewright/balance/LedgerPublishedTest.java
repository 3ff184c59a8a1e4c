package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static planewright.balance.Lines.ledger;
import static planewright.balance.Lines.part;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Proposal;
import planewright.api.quantity.Units;

/** The ledger against worked examples; sources, flags and tolerances stand in {@code published.json}. */
class LedgerPublishedTest {
    /** FAA-H-8083-25C, chapter 10, figure 10-5: five items, 3,320 lb at 84.8 in. */
    @Test
    void loadsFiveItemsAsTheHandbookDoes() throws Exception {
        var published = Published.of("A-01");
        var results = ledger(rows(published, "weights", "arms"));
        assertThat(results.mass().in(Units.POUND)).isCloseTo(published.expected("total_weight"), within(1e-6));
        assertThat(results.balanceX().in(Units.INCH))
                .isCloseTo(published.expected("cg"), within(published.tolerance("cg")));
        double moment = results.moments().stream()
                        .mapToDouble(line -> line.momentX().in(Units.KILOGRAM_METRE))
                        .sum()
                / 0.45359237
                / 0.0254;
        assertThat(moment).isCloseTo(published.expected("total_moment"), within(0.5));
        assertThat(results.proposals())
                .as("it may become what the build flies with")
                .contains(new Proposal.NewSetUpValue("balance point", results.balanceX()));
    }

    /** FAA-H-8083-25C, chapter 10, figure 10-10: oil ahead of the datum has a negative arm. */
    @Test
    void takesStationsAheadOfTheDatum() throws Exception {
        var published = Published.of("A-02");
        var results = ledger(rows(published, "weights", "arms"));
        assertThat(results.mass().in(Units.POUND))
                .isCloseTo(published.expected("total_weight"), within(published.tolerance("total_weight")));
        assertThat(results.balanceX().in(Units.INCH))
                .isCloseTo(published.expected("cg"), within(published.tolerance("cg")));
    }

    /** FAA-H-8083-25C, chapter 10, "Weight Shifting": 8,000 lb, 100 lb moved from 30 to 150 in: 78.5 in. */
    @Test
    void movesTheBalancePointWhenAPartMoves() throws Exception {
        var published = Published.of("A-04");
        double moved = published.input("weight_moved");
        double rest = published.input("total_weight") - moved;
        double restArm = (published.input("old_total_moment") - moved * published.input("from_station")) / rest;
        var results = ledger(part("rest", rest, restArm), part("shifted", moved, published.input("to_station")));
        assertThat(results.balanceX().in(Units.INCH))
                .isCloseTo(published.expected("new_cg"), within(published.tolerance("new_cg")));
    }

    /** The same example asked backwards: from 77.0 in, how far must those 100 lb go to reach 78.5 in. */
    @Test
    void tellsHowFarAPartMustMove() throws Exception {
        var published = Published.of("A-04");
        double moved = published.input("weight_moved");
        double from = published.input("from_station");
        double rest = published.input("total_weight") - moved;
        double restArm = (published.input("old_total_moment") - moved * from) / rest;
        var line = whatIf(
                ledger(published.expected("new_cg"), part("rest", rest, restArm), part("shifted", moved, from)),
                "shifted");
        assertThat(line.station().in(Units.INCH)).isCloseTo(published.input("to_station"), within(1e-6));
    }

    /** FAA-H-8083-25C, chapter 10, "Weight Addition": 140 lb added at 150 in to 6,860 lb at 80.0 in: 81.4 in. */
    @Test
    void addsAPart() throws Exception {
        var published = Published.of("A-06");
        var results = ledger(
                part("before", published.input("old_weight"), published.input("old_cg")),
                part("added", published.input("added_weight"), published.input("station")));
        assertThat(results.balanceX().in(Units.INCH))
                .isCloseTo(published.expected("new_cg"), within(published.tolerance("new_cg")));
    }

    /** FAA-H-8083-25C, chapter 10, figures 10-3 and 10-4: 100 lb at 25 in and 50 lb at 50 in against 50 lb at 100 in. */
    @Test
    void balancesALeverAboutItsFulcrum() throws Exception {
        var published = Published.of("A-03");
        var results = ledger(
                part("one", published.input("left", 0), -published.input("left", 1)),
                part("two", published.input("left", 2), -published.input("left", 3)),
                part("other side", published.input("right", 0), published.input("right", 1)));
        assertThat(results.balanceX().in(Units.INCH)).isCloseTo(0, within(1e-9));
        assertThat(results.moments().get(2).momentX().in(Units.KILOGRAM_METRE) / 0.45359237 / 0.0254)
                .isCloseTo(published.expected("right_moment"), within(1e-9));
    }

    /** FAA-H-8083-25C, chapter 10, "Weight Shifting", second example: 65 lb from 150 to 30 in bring 81.5 to 80.5 in. */
    @Test
    void theHandbooksWeightToShiftIsTheOneThatEndsWhereItSays() throws Exception {
        var published = Published.of("A-05");
        double moved = published.expected("weight_to_shift");
        double from = published.input("from_station");
        double rest = published.input("total_weight") - moved;
        double restArm = (published.input("total_weight") * published.input("cg") - moved * from) / rest;
        var results = ledger(published.input("aft_limit"), part("rest", rest, restArm), part("baggage", moved, from));
        assertThat(whatIf(results, "baggage").station().in(Units.INCH))
                .isCloseTo(published.input("to_station"), within(1e-6));
    }

    /**
     * FAA-H-8083-1B, chapter 7, "Permanent Ballast": 7.7 lb at station 228 bring 1,876 lb from 32.2 to 33.0 in. The limit,
     * the station and the answer are from memory; they agree with the formula. 10 of the 1,876 lb sit at that station here,
     * so that the ledger has a place to add to.
     */
    @Test
    void tellsTheBallastForATarget() throws Exception {
        var published = Published.of("A-11");
        double station = published.input("ballast_station");
        double rest = published.input("empty_weight") - 10;
        double restArm = (published.input("empty_weight") * published.input("ewcg") - 10 * station) / rest;
        var empty = List.of(part("rest", rest, restArm), part("tail", 10, station));
        var ballast = whatIf(ledger(published.input("forward_limit"), empty.toArray(Ledger.PartLine[]::new)), "tail")
                .ballast()
                .orElseThrow();
        assertThat(ballast.in(Units.POUND))
                .isCloseTo(published.expected("ballast"), within(published.tolerance("ballast")));
        var after = new ArrayList<>(empty);
        after.add(part("ballast", ballast.in(Units.POUND), station));
        assertThat(ledger(after).balanceX().in(Units.INCH))
                .isCloseTo(published.expected("new_cg"), within(published.tolerance("new_cg")));
    }

    /** FAA-H-8083-1B, chapter 2, lever with three weights (from memory); and the datum may lie anywhere. */
    @Test
    void balancesInTheSamePlaceWhereverTheDatumIs() throws Exception {
        var published = Published.of("A-12");
        for (double datum : new double[] {0, 37.5, -1200}) {
            var parts = new ArrayList<Ledger.PartLine>();
            for (int i = 0; i < published.count("weights"); i++) {
                parts.add(part("weight " + i, published.input("weights", i), published.input("arms", i) - datum));
            }
            assertThat(ledger(parts).balanceX().in(Units.INCH) + datum)
                    .isCloseTo(published.expected("cg"), within(1e-9));
        }
    }

    /** Raymer, Aircraft Design, 6th edition, p. 887: a homebuilt's balance sheet; see the case for its rounding. */
    @Test
    void balancesAHomebuiltInThreeStatesOfLoading() throws Exception {
        var published = Published.of("A-13");
        var parts = rows(published, "component_weights", "component_arms");
        assertThat(ledger(parts).balanceX().in(Units.INCH))
                .isCloseTo(published.expected("empty_cg"), within(published.tolerance("empty_cg")));
        parts.add(part("pilot", published.input("pilot", 0), published.input("pilot", 1)));
        assertThat(ledger(parts).balanceX().in(Units.INCH))
                .isCloseTo(
                        published.expected("empty_plus_pilot_cg"), within(published.tolerance("empty_plus_pilot_cg")));
        parts.add(part("fuel", published.input("fuel", 0), published.input("fuel", 1)));
        assertThat(ledger(parts).mass().in(Units.POUND)).isCloseTo(published.expected("gross_weight"), within(1e-6));
        assertThat(ledger(parts).balanceX().in(Units.INCH))
                .isCloseTo(published.expected("gross_cg"), within(published.tolerance("gross_cg")));
    }

    /** Elementary solids (formulas of any mechanics text, from memory): a box about its middle, a rod about its middle. */
    @Test
    void givesABoxAndARodTheirOwnInertia() {
        var published = Published.of("F-06");
        var box = MassProperties.of(List.of(Lines.solid(
                published.input("box", 3),
                published.input("box", 0),
                published.input("box", 1),
                published.input("box", 2))));
        assertThat(box.roll().value()).isCloseTo(published.expected("box_I"), within(1e-12));
        var rod = MassProperties.of(List.of(Lines.solid(published.input("rod", 1), published.input("rod", 0), 0, 0)));
        assertThat(rod.yaw().value()).isCloseTo(published.expected("rod_I_centre"), within(1e-12));
    }

    /**
     * McLean and Nelson, Engineering Mechanics, 5th edition, problem 15.37: a wheel of hub, rim and six spokes has 38.1
     * slug·ft² about its axis. A ring counts as points on the circle of its radius of gyration, √((r₁² + r₂²)/2), which is
     * exact about the axis.
     */
    @Test
    void addsUpAWheelByTheParallelAxisTheorem() {
        var published = Published.of("F-01");
        double density = published.input("density") / published.input("g");
        var parts = new ArrayList<MassPoint>();
        for (var ring : new String[] {"hub", "rim"}) {
            double outer = published.input(ring, 0);
            double inner = published.input(ring, 1);
            double mass = Math.PI * (outer * outer - inner * inner) * published.input(ring, 2) * density;
            double radius = Math.sqrt((outer * outer + inner * inner) / 2);
            for (int i = 0; i < 4; i++) {
                parts.add(
                        Lines.at(mass / 4, radius * Math.cos(i * Math.PI / 2), radius * Math.sin(i * Math.PI / 2), 0));
            }
        }
        double spoke = Math.PI
                * published.input("spokes", 1)
                * published.input("spokes", 2)
                * published.input("spokes", 3)
                * density;
        for (int i = 0; i < published.input("spokes", 0); i++) {
            double side = i % 2 == 0 ? 1 : -1;
            parts.add(Lines.at(spoke, side * published.input("spokes", 4), 0, published.input("spokes", 3)));
        }
        assertThat(MassProperties.of(parts).yaw().value())
                .isCloseTo(published.expected("I"), within(published.tolerance("I")));
    }

    private static Ledger.WhatIfLine whatIf(Ledger.Results results, String part) {
        return results.whatIf().stream()
                .filter(line -> line.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    private static ArrayList<Ledger.PartLine> rows(Published published, String weights, String arms) {
        var parts = new ArrayList<Ledger.PartLine>();
        for (int i = 0; i < published.count(weights); i++) {
            parts.add(part("part " + i, published.input(weights, i), published.input(arms, i)));
        }
        return parts;
    }
}
