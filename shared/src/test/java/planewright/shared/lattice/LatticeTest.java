package planewright.shared.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;

class LatticeTest {
    private static final Resolution USUAL = Resolution.fineness(2);

    /** A wing in V given side by side, each side a surface of its own, is solved whole; given mirrored, by halves. */
    @ParameterizedTest
    @EnumSource(Motion.class)
    void halvesAndWholeAgree(Motion motion) {
        double dihedral = Math.toRadians(8);
        var right = new Panel(0.3, 0.2, 0.8, 0.3, dihedral, Math.toRadians(-2));
        var left = new Panel(0.3, 0.2, 0.8, 0.3, Math.PI - dihedral, Math.toRadians(-2));
        var halves = Lattice.of(Shapes.wing(right), USUAL, new Vector(0.2, 0, 0));
        var whole = Lattice.of(
                Shapes.of(
                        new Surface("right", 0, 0, 0, false, List.of(right)),
                        new Surface("left", 0, 0, 0, false, List.of(left))),
                USUAL,
                new Vector(0.2, 0, 0));
        assertThat(halves.bothSidesAlike()).isTrue();
        assertThat(whole.bothSidesAlike()).isFalse();
        assertThat(whole.panels()).isEqualTo(halves.panels());
        for (var air : Motion.values()) {
            same(whole.load(motion, air), halves.load(motion, air));
        }
    }

    /** Without a fin the aircraft is the same mirrored; with one to the right it is not, and rolls and yaws. */
    @Test
    void anAircraftWithoutSymmetryIsSolvedWhole() {
        var wing = Shapes.surface("wing", 0, 0, Shapes.panel(0.3, 0.2, 0.8, 10));
        var fin = new Surface("fin", 0.1, 0.4, 0, false, List.of(new Panel(0.2, 0.1, 0.2, 0.3, Math.toRadians(80), 0)));
        var lattice = Lattice.of(Shapes.of(wing, fin), USUAL);
        var load = lattice.load(Motion.INCIDENCE, Motion.AHEAD);
        assertThat(lattice.bothSidesAlike()).isFalse();
        assertThat(load.force().z()).isPositive();
        assertThat(Math.abs(load.moment().x())).isGreaterThan(1e-4);
        assertThat(Math.abs(load.force().y())).isGreaterThan(1e-4);
    }

    /** No air passes through the trailing edge, where the last control point stands. */
    @Test
    void noAirPassesThroughTheSurface() {
        var lattice = Lattice.of(Shapes.wing(Shapes.panel(0.4, 0.2, 1, 35)), USUAL);
        for (var strip : lattice.strips()) {
            var edge = strip.middle().plus(new Vector(strip.chord(), 0, 0));
            assertThat(lattice.wash(Motion.INCIDENCE, edge).z()).isCloseTo(-1, within(1e-9));
        }
    }

    @Test
    void aFinOnTheCentreLineFeelsSideslipAlone() {
        var lattice = Lattice.of(
                Shapes.of(
                        Shapes.surface("wing", 0, 0, Shapes.panel(0.3, 0.2, 0.8, 10)),
                        new Surface("fin", 0.6, 0, 0.1, false, List.of(new Panel(0.2, 0.1, 0.2, 0.3, Math.PI / 2, 0)))),
                USUAL);
        assertThat(lattice.load(Motion.INCIDENCE, Motion.AHEAD, 1).force()).isEqualTo(Vector.ZERO);
        var side = lattice.load(Motion.SIDESLIP, Motion.AHEAD, 1);
        assertThat(side.force().y())
                .as("pushed to the left by wind from the right")
                .isNegative();
        assertThat(side.moment().z()).as("nose to the right, into the wind").isNegative();
    }

    /** Twice the size: force per ρU² four times, moment eight times. */
    @Test
    void sizeScalesOut() {
        var small =
                Lattice.of(Shapes.wing(Shapes.panel(0.4, 0.2, 1, 35)), USUAL).load(Motion.INCIDENCE, Motion.AHEAD);
        var large =
                Lattice.of(Shapes.wing(Shapes.panel(0.8, 0.4, 2, 35)), USUAL).load(Motion.INCIDENCE, Motion.AHEAD);
        assertThat(large.force().z()).isCloseTo(4 * small.force().z(), within(1e-9));
        assertThat(large.moment().y()).isCloseTo(8 * small.moment().y(), within(1e-9));
    }

    /** Washout lifts less, and at the swept-back tips it pitches the nose up. */
    @Test
    void washoutOfASweptWingPitchesUp() {
        var twisted = new Panel(0.3, 0.2, 0.8, Math.toRadians(30), 0, Math.toRadians(-3));
        var lattice = Lattice.of(Shapes.wing(twisted), USUAL);
        var twist = lattice.load(Motion.AHEAD, Motion.AHEAD);
        double x = Shapes.neutralPoint(lattice);
        assertThat(twist.force().z()).isNegative();
        assertThat(twist.momentAbout(new Vector(x, 0, 0)).y()).isPositive();
    }

    /** Dihedral rolls away from the wind, sweep and tail damp: signs that any text on stability gives. */
    @Test
    void derivativesHaveTheSignsThatFlightNeeds() {
        double dihedral = Math.toRadians(5);
        var planform = Shapes.of(
                Shapes.surface("wing", 0, 0, new Panel(0.2, 0.18, 0.7, 0, dihedral, 0)),
                Shapes.surface("tail", 0.7, 0, Shapes.panel(0.14, 0.12, 0.22, 4)),
                new Surface("fin", 0.7, 0, 0.01, false, List.of(new Panel(0.15, 0.1, 0.18, 0.3, Math.PI / 2, 0))));
        var centre = new Vector(0.06, 0, 0);
        var derivatives =
                Derivatives.of(Lattice.of(planform, USUAL, centre), new Reference(0.266, 1.4, 0.19, centre), 0.06);
        assertThat(derivatives.lift()).isBetween(0.2, 0.4);
        assertThat(derivatives.by(Motion.INCIDENCE).pitch())
                .as("pitch due to incidence")
                .isNegative();
        assertThat(derivatives.by(Motion.PITCH).pitch()).as("damping in pitch").isNegative();
        assertThat(derivatives.by(Motion.ROLL).roll()).as("damping in roll").isNegative();
        assertThat(derivatives.by(Motion.YAW).yaw()).as("damping in yaw").isNegative();
        assertThat(derivatives.by(Motion.SIDESLIP).roll()).as("dihedral").isNegative();
        assertThat(derivatives.by(Motion.SIDESLIP).yaw()).as("weathercock").isPositive();
        assertThat(derivatives.by(Motion.YAW).roll()).as("roll due to yaw").isPositive();
    }

    /** A fin drawn a hair above the wing tip is joined to it: the result is that of one drawn on it. */
    @Test
    void aHairsBreadthIsNoSlit() {
        assertThat(tipFins(0.0003)).isCloseTo(tipFins(0), within(1e-9));
    }

    @Test
    void aPlanformWithoutSurfacesIsRefused() {
        assertThatThrownBy(() -> Lattice.of(new Planform(List.of(), List.of()), USUAL))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no surfaces");
    }

    private static double tipFins(double gap) {
        return Shapes.neutralPoint(Lattice.of(
                Shapes.of(
                        Shapes.surface("wing", 0, 0, Shapes.panel(0.25, 0.17, 0.6, 18)),
                        new Surface(
                                "fins",
                                0.6 * Math.tan(Math.toRadians(18)),
                                0.6 + gap,
                                gap,
                                true,
                                List.of(new Panel(0.17, 0.1, 0.15, 0.5, Math.toRadians(85), 0)))),
                USUAL));
    }

    private static void same(Load one, Load other) {
        assertThat(one.force().minus(other.force()).dot(one.force().minus(other.force())))
                .isLessThan(1e-20);
        assertThat(one.moment().minus(other.moment()).dot(one.moment().minus(other.moment())))
                .isLessThan(1e-20);
    }
}
