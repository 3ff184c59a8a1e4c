package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.KILOGRAM_PER_CUBIC_METRE;
import static planewright.api.quantity.Units.METRE_PER_SECOND;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.NUMBER;
import static planewright.api.quantity.Units.PERCENT;
import static planewright.balance.Shapes.surface;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.api.calculator.Finding.Grade;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Role;
import planewright.api.journal.Planform.Surface;
import planewright.api.quantity.Measured;

class TrimTest {
    private static final Surface WING = surface("wing", 0, true, new Panel(0.2, 0.2, 0.6, 0, 0, 0));
    private static final Surface TAIL = surface("tail", 0.7, true, new Panel(0.14, 0.12, 0.22, 0.1, 0, 0));
    private static final Surface FIN =
            new Surface("fin", 0.7, 0, 0.02, false, List.of(new Panel(0.14, 0.1, 0.15, 0.2, Math.PI / 2, 0)));
    private static final Surface SWEPT =
            surface("wing", 0, true, new Panel(0.3, 0.18, 0.7, Math.toRadians(25), 0, Math.toRadians(-2)));

    /**
     * C-08: Anderson, Introduction to Flight, examples 7.3 to 7.7. Wing with body and tail are summed as there; the tail's
     * lift is not counted in the slope of the whole.
     */
    @Test
    void theWingWithTailOfAnderson() {
        var published = Published.of("C-08");
        double slope = published.input("a_wing_body");
        double volume = published.input("tail_arm")
                * published.input("tail_area")
                / (published.input("wing_area") * published.input("chord"));
        double tail = volume * published.input("a_tail");
        var linear = new Longitudinal(
                0,
                slope,
                0,
                published.input("CM_ac_wb")
                        + tail * (published.input("tail_setting_i_t") + published.input("epsilon_0")),
                slope * (published.input("h_cg") - published.input("h_ac_wb"))
                        - tail * (1 - published.input("downwash_slope")),
                0);
        assertThat(volume).isCloseTo(published.expected("V_H"), within(published.tolerance("V_H")));
        close(published, "dCM_dalpha", linear.momentSlope());
        close(published, "CM_0", linear.moment());
        double alone = -linear.moment() / linear.momentSlope();
        close(published, "alpha_e", alone);
        assertThat(linear.momentIn(new Longitudinal.State(alone, 0))).isCloseTo(0, within(1e-12));
        close(published, "static_margin", linear.staticMargin());
        close(published, "h_n", published.input("h_cg") + linear.staticMargin());
        close(published, "CM_cg_at_alpha", linear.momentIn(new Longitudinal.State(published.input("alpha"), 0)));
    }

    /** C-09: Raymer, chapter 24: the trim sheet's straight lines; elevator for its cruise lift. */
    @Test
    void theTrimSheetOfRaymer() {
        var published = Published.of("C-09");
        double slope = (entry(published, "CL", 0, 5) - entry(published, "CL", 0, 0)) / 10;
        double momentSlope = (entry(published, "Cm", 0, 5) - entry(published, "Cm", 0, 0)) / 10;
        double liftPower = (entry(published, "CL", 3, 0) - entry(published, "CL", 0, 0)) / -6;
        double momentPower = (entry(published, "Cm", 3, 0) - entry(published, "Cm", 0, 0)) / -6;
        var linear = new Longitudinal(
                entry(published, "CL", 0, 0), slope, liftPower, entry(published, "Cm", 0, 0), momentSlope, momentPower);
        var state = linear.trimmed(published.input("CL_cruise"));
        close(published, "trim_elevator", state.control());
        close(published, "static_margin", linear.staticMargin());
        assertThat(linear.momentIn(state)).isCloseTo(0, within(1e-12));
    }

    /** H-03: Çengel and Cimbala, example 11-5: stall speeds and the lift coefficient of cruise, with g = 9.81 m/s² there. */
    @Test
    void theAirlinerOfCengelAndCimbala() {
        var published = Published.of("H-03");
        double mass = published.input("mass") * published.input("g") / 9.80665;
        double area = published.input("wing_area");
        assertThat(LevelFlight.stallSpeed(mass, published.input("rho_ground"), area, published.input("CLmax_clean")))
                .isCloseTo(published.expected("V_stall_clean"), within(0.05));
        assertThat(LevelFlight.stallSpeed(mass, published.input("rho_ground"), area, published.input("CLmax_flaps")))
                .isCloseTo(published.expected("V_stall_flaps"), within(0.05));
        assertThat(LevelFlight.liftCoefficient(
                        mass, published.input("rho_cruise"), published.input("cruise_speed") / 3.6, area))
                .isCloseTo(published.expected("CL_cruise"), within(0.005));
    }

    /** C-11: Nicolai and Carichner, table 23.2: neutral points of aft tail, tailless and canard lie in this order. */
    @Test
    void aTailPutsTheNeutralPointAftAndACanardForward() throws UnsuitableInput {
        var published = Published.of("C-11");
        assertThat(published
                        .node()
                        .at("/expected/np_percent_mac/value/aft tail")
                        .asDouble())
                .isGreaterThan(published
                        .node()
                        .at("/expected/np_percent_mac/value/tailless")
                        .asDouble());
        var canard = surface("canard", -0.5, true, new Panel(0.12, 0.1, 0.15, 0.1, 0, 0));
        double alone = neutral(new Shapes(WING));
        assertThat(neutral(new Shapes(WING, TAIL))).isGreaterThan(alone + 5);
        assertThat(neutral(new Shapes(WING, canard))).isLessThan(alone - 5);
    }

    /** Level flight by hand: L = W, with the standard air of sea level. */
    @Test
    void levelFlightIsAsByHand() throws UnsuitableInput {
        var results = elevons().results();
        double area = 0.336;
        assertThat(results.airDensity().in(KILOGRAM_PER_CUBIC_METRE)).isCloseTo(1.225, within(5e-5));
        double lift = 2 * 0.9 * 9.80665 / (1.225 * 12 * 12 * area);
        assertThat(results.liftNeeded().orElseThrow().in(NUMBER)).isCloseTo(lift, within(1e-4));
        double stall = Math.sqrt(
                2 * 0.9 * 9.80665 / (1.225 * area * results.stallLift().in(NUMBER)));
        assertThat(results.stallSpeed().orElseThrow().in(METRE_PER_SECOND)).isCloseTo(stall, within(1e-3));
        assertThat(results.stallSpeed().orElseThrow().spreadIn(METRE_PER_SECOND))
                .isBetween(0.2, 0.8);
        assertThat(results.stallLift().in(NUMBER)).isBetween(0.6, 1.1);
    }

    /** Further forward needs more up elevon, faster less; up is − . Trim costs lift on a tailless aircraft. */
    @Test
    void elevonsTrimAsAnyFlyerOfTaillessAircraftKnows() throws UnsuitableInput {
        double neutral = elevons().results().neutralPoint().in(MILLIMETRE);
        double aft = trim(elevons().balancesAt(neutral - 12));
        double forward = trim(elevons().balancesAt(neutral - 36));
        double fast = trim(elevons().balancesAt(neutral - 36).speed(25));
        assertThat(forward).isLessThan(aft).isLessThan(fast);
        assertThat(elevons().balancesAt(neutral - 36).results().stallLift().in(NUMBER))
                .isLessThan(
                        elevons().balancesAt(neutral - 12).results().stallLift().in(NUMBER));
    }

    /** A reflexed section pitches up by itself: less up elevon by Cm0 over the elevon's own power. */
    @Test
    void reflexSparesUpElevon() throws UnsuitableInput {
        var plain = elevons().results();
        var reflexed = elevons().section("wing", 0, 0, 0.02, 1).results();
        double spared = reflexed.trimAngle().orElseThrow().in(DEGREE)
                - plain.trimAngle().orElseThrow().in(DEGREE);
        assertThat(spared).isBetween(1.0, 6.0);
    }

    /** A cambered section and a setting by as much are the same to the lattice. */
    @Test
    void camberIsASetting() throws UnsuitableInput {
        var cambered = tailed().section("wing", 0, -3, 0, 1).results();
        var set = tailed().section("wing", 3, 0, 0, 1).results();
        assertThat(cambered.angleOfAttack().orElseThrow().in(DEGREE))
                .isCloseTo(set.angleOfAttack().orElseThrow().in(DEGREE), within(1e-9));
        assertThat(cambered.zeroLift().in(DEGREE)).isBetween(-3.0, -2.0);
    }

    @ParameterizedTest
    @CsvSource({"7, STOP, stalls below", "9.5, LOOK_AGAIN, little room", "14, FINE, above its stall speed"})
    void speedIsHeldAgainstTheStall(double speed, Grade grade, String words) throws UnsuitableInput {
        assertThat(tailed().speed(speed).results().findings())
                .anyMatch(finding -> finding.grade() == grade && finding.text().contains(words));
    }

    /** A wing of aspect ratio 0.05 flies on vortices at angles of which no lattice tells; nothing absurd is told instead. */
    @Test
    void whatIsBeyondStraightLinesIsNotTold() throws UnsuitableInput {
        var slender = surface("wing", 0, true, new Panel(4, 4, 0.1, 0, 0, 0));
        var results = new Shapes(slender)
                .mass(Measured.of(900, GRAM))
                .speed(4)
                .control("elevon", "wing", Role.ELEVON, 0, 100, 90)
                .results();
        assertThat(results.angleOfAttack()).isEmpty();
        assertThat(results.trimAngle()).isEmpty();
        assertThat(results.stallSpeed()).isEmpty();
        assertThat(results.findings()).anyMatch(finding -> finding.text().contains("beyond what is told"));
        assertThat(results.responses())
                .filteredOn(line -> line.response().equals("roll to roll rate"))
                .allMatch(line -> line.derivative().in(NUMBER) < 0);
    }

    @Test
    void withoutAnElevatorItSaysWhereTheNoseGoes() throws UnsuitableInput {
        var results =
                new Shapes(WING, TAIL).mass(Measured.of(900, GRAM)).speed(12).results();
        assertThat(results.trimAngle()).isEmpty();
        assertThat(results.findings()).anyMatch(finding -> finding.text().contains("Give an elevator"));
    }

    @Test
    void withoutMassAndSpeedNothingIsSaidOfThem() throws UnsuitableInput {
        var results = new Shapes(WING, TAIL).results();
        assertThat(results.stallSpeed()).isEmpty();
        assertThat(results.liftNeeded()).isEmpty();
        assertThat(results.angleOfAttack()).isEmpty();
    }

    /** Any text on canards: the surface ahead must stall first. */
    @ParameterizedTest
    @CsvSource({"6, FINE, drops by itself", "-4, STOP, must stall first"})
    void aCanardMustStallFirst(double setAt, Grade grade, String words) throws UnsuitableInput {
        var canard = surface("canard", -0.6, true, new Panel(0.12, 0.1, 0.2, 0.1, 0, 0));
        assertThat(new Shapes(WING, canard)
                        .layout("canard")
                        .section("canard", setAt, 0, 0, 1)
                        .results()
                        .findings())
                .anyMatch(finding -> finding.grade() == grade && finding.text().contains(words));
    }

    /** Washout takes load off the tip: any text on wings. */
    @Test
    void washoutGivesTheTipReserve() throws UnsuitableInput {
        double plain = reserve(0);
        assertThat(reserve(-4)).isGreaterThan(plain + 5);
    }

    @Test
    void eachControlHasItsPower() throws UnsuitableInput {
        var results = new Shapes(WING, TAIL, FIN)
                .control("elevator", "tail", Role.ELEVATOR, 0, 100, 60)
                .control("ailerons", "wing", Role.AILERON, 60, 100, 75)
                .control("rudder", "fin", Role.RUDDER, 0, 100, 55)
                .results();
        assertThat(results.powers())
                .extracting(BalanceRangeResults.PowerLine::control)
                .containsExactly("elevator", "ailerons", "rudder");
        assertThat(results.powers().get(0).pitch().in(NUMBER)).isNegative();
        assertThat(results.powers().get(0).lift().in(NUMBER)).isPositive();
        assertThat(results.powers().get(1).roll().in(NUMBER)).isNegative();
        assertThat(results.powers().get(1).yaw().in(NUMBER)).as("adverse").isPositive();
        assertThat(results.powers().get(2).yaw().in(NUMBER)).isPositive();
        assertThat(results.proposals())
                .extracting(Proposal::name)
                .contains("elevator, pitch for each degree", "ailerons, roll for each degree");
        assertThat(elevons().results().powers()).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource({
        "flaperon, wnig, AILERON, 0, 100, 75, not in the shape",
        "flaperon, wing, AILERON, 60, 60, 75, beyond its begin",
        "flaperon, fin, AILERON, 0, 100, 75, yet no rudder",
        "' ', wing, AILERON, 0, 100, 75, name of a control surface is empty"
    })
    void controlSurfacesThatCannotBeAreRefused(
            String name, String surface, Role does, double from, double to, double hinge, String words) {
        assertThatThrownBy(() -> new Shapes(WING, FIN)
                        .control(name, surface, does, from, to, hinge)
                        .results())
                .isInstanceOf(UnsuitableInput.class)
                .hasMessageContaining(words);
    }

    @Test
    void aNameThatSeveralSurfacesBearIsRefusedWhereItIsMeant() throws Exception {
        var above = new Surface(WING.name(), WING.x(), WING.y(), 0.5, WING.mirrored(), WING.panels());
        assertThatThrownBy(() -> new Shapes(WING, above)
                        .control("ailerons", "wing", Role.AILERON, 0, 100, 75)
                        .results())
                .isInstanceOf(UnsuitableInput.class)
                .hasMessageContaining("several surfaces");
        assertThat(new Shapes(WING, above).results().surfaces()).hasSize(2);
    }

    @Test
    void sectionsThatCannotBeAreRefused() {
        assertThatThrownBy(() -> new Shapes(WING, FIN)
                        .section("wing", 0, 0, 0, 1)
                        .section("Wing", 0, 0, 0, 1)
                        .results())
                .hasMessageContaining("there twice");
        assertThatThrownBy(
                        () -> new Shapes(WING, FIN).section("fin", 2, 0, 0, 1).results())
                .hasMessageContaining("on a fin");
    }

    private static Shapes elevons() {
        return new Shapes(SWEPT)
                .layout("tailless")
                .mass(Measured.of(900, GRAM))
                .speed(12)
                .control("elevon", "wing", Role.ELEVON, 40, 95, 75);
    }

    private static Shapes tailed() {
        return new Shapes(WING, TAIL)
                .mass(Measured.of(1200, GRAM))
                .speed(12)
                .control("elevator", "tail", Role.ELEVATOR, 0, 100, 60);
    }

    private static double trim(Shapes shapes) throws UnsuitableInput {
        return shapes.results().trimAngle().orElseThrow().in(DEGREE);
    }

    private static double neutral(Shapes shapes) throws UnsuitableInput {
        return shapes.results().neutralShare().in(PERCENT);
    }

    private static double reserve(double twist) throws UnsuitableInput {
        return new Shapes(surface("wing", 0, true, new Panel(0.2, 0.12, 0.6, 0.1, 0, Math.toRadians(twist))))
                .results()
                .tipReserve()
                .in(PERCENT);
    }

    private static double entry(Published published, String table, int column, int row) {
        return published
                .node()
                .at("/inputs/" + table + "/value/" + column + "/" + row)
                .asDouble();
    }

    private static void close(Published published, String name, double value) {
        assertThat(value).as(name).isCloseTo(published.expected(name), within(published.tolerance(name)));
    }
}
