package planewright.shared.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;

class TurnTest {
    private static final Resolution USUAL = Resolution.fineness(2);

    /**
     * H. Glauert, The Elements of Aerofoil and Airscrew Theory, chapter 7 (from memory; derived anew): with the hinge at cos θ
     * = 1 − 2x a flap of a thin section gives cl = 2(π − θ + sin θ) and a moment about the quarter chord of −½ sin θ (1 − cos
     * θ) per radian. The wing of aspect ratio 1000 lacks 0.4 % of a section's lift; six panels see the moment within 5 %.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.6, 0.7, 0.75, 0.8, 0.9})
    void aFlapIsAsThinAerofoilTheorySays(double hinge) {
        var lattice = Lattice.of(Shapes.rectangle(1000), Resolution.fineness(3));
        var load = lattice.load(lattice.flow(new Turn(0, 0, 1, hinge, hinge, Symmetry.SYMMETRIC)), Motion.AHEAD);
        double angle = Math.acos(1 - 2 * hinge);
        double lift = 2 * (Math.PI - angle + Math.sin(angle));
        double moment = -Math.sin(angle) * (1 - Math.cos(angle)) / 2;
        assertThat(2 * load.force().z() / 1000).isCloseTo(lift, within(0.006 * lift));
        assertThat(2 * load.momentAbout(new Vector(0.25, 0, 0)).y() / 1000)
                .isCloseTo(moment, within(0.06 * Math.abs(moment)));
    }

    /** A whole surface that turns is a wing at incidence. */
    @Test
    void aWholeFlatWingThatTurnsIsOneAtIncidence() {
        var lattice = Lattice.of(Shapes.wing(Shapes.panel(0.3, 0.2, 0.8, 30)), USUAL);
        var turned = lattice.load(lattice.flow(Turn.whole(0)), Motion.AHEAD);
        var incidence = lattice.load(Motion.INCIDENCE, Motion.AHEAD);
        assertThat(turned.force().z()).isCloseTo(incidence.force().z(), within(1e-12));
        assertThat(turned.moment().y()).isCloseTo(incidence.moment().y(), within(1e-12));
    }

    /** Two halves of a control surface do together what the whole does. */
    @Test
    void partsAddUp() {
        var lattice = Lattice.of(Shapes.wing(Shapes.panel(0.3, 0.2, 0.8, 30)), USUAL);
        double whole = lift(lattice, 0.3, 0.9, 0.7, 0.8);
        double inner = lift(lattice, 0.3, 0.55, 0.7, 0.7 + 0.1 * 0.25 / 0.6);
        double outer = lift(lattice, 0.55, 0.9, 0.7 + 0.1 * 0.25 / 0.6, 0.8);
        assertThat(inner + outer).isCloseTo(whole, within(0.01 * whole));
    }

    /** A wing in V given mirrored is solved by halves; one of two surfaces, each turning as it is, is solved whole. */
    @ParameterizedTest
    @EnumSource(
            value = Symmetry.class,
            names = {"SYMMETRIC", "ANTISYMMETRIC"})
    void halvesAndWholeAgree(Symmetry sides) {
        double dihedral = Math.toRadians(8);
        var right = new Panel(0.3, 0.2, 0.8, 0.3, dihedral, 0);
        var left = new Panel(0.3, 0.2, 0.8, 0.3, Math.PI - dihedral, 0);
        var halves = Lattice.of(Shapes.wing(right), USUAL);
        var whole = Lattice.of(
                Shapes.of(
                        new Surface("right", 0, 0, 0, false, List.of(right)),
                        new Surface("left", 0, 0, 0, false, List.of(left))),
                USUAL);
        var turn = new Turn(0, 0.4, 0.9, 0.7, 0.8, sides);
        var one = halves.load(halves.flow(turn), Motion.AHEAD);
        int side = sides == Symmetry.SYMMETRIC ? 1 : -1;
        var both = whole.flow(turn)
                .plus(whole.flow(new Turn(1, 0.4, 0.9, 0.7, 0.8, Symmetry.SYMMETRIC))
                        .times(side));
        var other = whole.load(both, Motion.AHEAD);
        assertThat(length(one.force().minus(other.force()))).isLessThan(1e-10);
        assertThat(length(one.moment().minus(other.moment()))).isLessThan(1e-10);
    }

    /** In a lattice that must hold both sides, the left side turns with the right one or against it. */
    @Test
    void anAileronRollsAnAircraftWithOneFinBesideTheMiddle() {
        var planform = Shapes.of(
                Shapes.surface("wing", 0, 0, Shapes.panel(0.3, 0.2, 0.8, 10)),
                new Surface("fin", 0.5, 0.1, 0, false, List.of(new Panel(0.1, 0.1, 0.1, 0, Math.PI / 2, 0))));
        var lattice = Lattice.of(planform, USUAL);
        assertThat(lattice.bothSidesAlike()).isFalse();
        var alone = Lattice.of(Shapes.wing(Shapes.panel(0.3, 0.2, 0.8, 10)), USUAL);
        var aileron = new Turn(0, 0.6, 1, 0.75, 0.75, Symmetry.ANTISYMMETRIC);
        var roll = lattice.load(lattice.flow(aileron), Motion.AHEAD).moment().x();
        assertThat(roll)
                .isCloseTo(
                        alone.load(alone.flow(aileron), Motion.AHEAD).moment().x(), within(0.02 * roll))
                .isPositive();
    }

    /** The trailing edge of a rudder to the right pushes the tail to the left: the nose goes right. */
    @Test
    void aRudderTurnsTheNoseToItsSide() {
        var planform = Shapes.of(
                Shapes.surface("wing", 0, 0, Shapes.panel(0.3, 0.2, 0.8, 10)),
                new Surface("fin", 0.7, 0, 0, false, List.of(new Panel(0.2, 0.1, 0.2, 0.3, Math.PI / 2, 0))));
        var derivatives = Derivatives.of(Lattice.of(planform, USUAL), new Reference(0.4, 1.6, 0.25, Vector.ZERO), 0.05);
        var rudder = derivatives.by(new Turn(1, 0, 1, 0.6, 0.6, Symmetry.SYMMETRIC));
        assertThat(rudder.yaw()).isPositive();
        assertThat(rudder.side()).isNegative();
        assertThat(rudder.lift()).isCloseTo(0, within(1e-12));
    }

    /**
     * Lifting-line theory of an elliptic wing with a₀ = 2π, two terms of the series (H. Glauert, chapters 10 and 11, from
     * memory; derived anew): yaw due to roll −CL/8 · (A − 2)/(A + 4), roll due to yaw CL/4 · (A + 3)/(A + 4). A
     * lifting surface of aspect ratio 20 lies within 3 %.
     */
    @Test
    void crossDerivativesOfAnEllipticWing() {
        double aspectRatio = 20;
        var derivatives = elliptic(aspectRatio);
        double lift = derivatives.lift();
        double yaw = -lift / 8 * (aspectRatio - 2) / (aspectRatio + 4);
        double roll = lift / 4 * (aspectRatio + 3) / (aspectRatio + 4);
        assertThat(derivatives.by(Motion.ROLL).yaw()).isCloseTo(yaw, within(-0.03 * yaw));
        assertThat(derivatives.by(Motion.YAW).roll()).isCloseTo(roll, within(0.03 * roll));
    }

    /** The same theory: whatever rolls an elliptic wing yaws it the other way by 3 CL/(πA) of the roll: adverse yaw. */
    @ParameterizedTest
    @ValueSource(doubles = {6, 8, 20})
    void aileronsYawAdversely(double aspectRatio) {
        var derivatives = elliptic(aspectRatio);
        var aileron = derivatives.by(new Turn(0, 0.5, 1, 0.75, 0.75, Symmetry.ANTISYMMETRIC));
        double expected = -3 * derivatives.lift() / (Math.PI * aspectRatio);
        assertThat(aileron.yaw() / aileron.roll()).isCloseTo(expected, within(-0.01 * expected));
    }

    /** H. S. Ribner, NACA TN 1423 (1947), slender triangular wings: Clp = −πA/32 (from memory); A = 0.25 lies a little below. */
    @Test
    void aSlenderDeltaIsDampedInRollAsRibnerSays() {
        var delta = Shapes.delta(0.25);
        var reference = new Reference(Shapes.area(delta), 2, 1, Vector.ZERO);
        var derivatives = Derivatives.of(Lattice.of(delta, Resolution.fineness(4)), reference, 0);
        assertThat(derivatives.by(Motion.ROLL).roll() / (-Math.PI * 0.25 / 32)).isBetween(0.94, 1.0);
    }

    @Test
    void partsThatAreNoneAreRefused() {
        assertThatThrownBy(() -> new Turn(0, 0.5, 0.5, 0, 0, Symmetry.SYMMETRIC))
                .hasMessageContaining("0.5 to 0.5");
        assertThatThrownBy(() -> new Turn(0, 0, 1, 1, 0.7, Symmetry.SYMMETRIC)).hasMessageContaining("less than 1");
        assertThatThrownBy(() -> new Turn(0, 0, 1, 0, 0, Symmetry.NONE)).hasMessageContaining("opposite");
        var lattice = Lattice.of(Shapes.rectangle(6), USUAL);
        assertThatThrownBy(() -> lattice.flow(Motion.ROLL).plus(lattice.flow(Motion.PITCH)))
                .hasMessageContaining("SYMMETRIC");
    }

    private static Derivatives elliptic(double aspectRatio) {
        Planform wing = Shapes.ellipse(aspectRatio, 12);
        var quarterChord = new Vector(2 / (Math.PI * aspectRatio), 0, 0);
        var lattice = Lattice.of(wing, USUAL, quarterChord);
        double area = 4 / aspectRatio;
        var reference = new Reference(area, 2, 1, quarterChord);
        return Derivatives.of(lattice, reference, 0.4 / Shapes.slope(lattice, area));
    }

    private static double lift(Lattice lattice, double from, double to, double hingeFrom, double hingeTo) {
        return lattice.load(lattice.flow(new Turn(0, from, to, hingeFrom, hingeTo, Symmetry.SYMMETRIC)), Motion.AHEAD)
                .force()
                .z();
    }

    private static double length(Vector vector) {
        return Math.sqrt(vector.dot(vector));
    }
}
