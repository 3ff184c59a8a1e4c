package planewright.shared.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Surface;

/**
 * The lattice against what theory says in closed form or to many figures. All sources are cited from memory; where a formula
 * follows in a few lines it was derived anew, and the comment says so.
 */
class LatticeTheoryTest {
    private static final double LONG = 1000;

    /** P. F. Jordan, exact solutions for lifting surfaces (1971): a circular disc has 1.790; 32 straight panels, 0.1 %. */
    @Test
    void theCircleOfJordan() {
        var circle = Shapes.trueEllipse(4 / Math.PI, 32, 0);
        assertThat(Shapes.slope(circle, Resolution.fineness(2))).isCloseTo(1.790, within(2e-3));
    }

    /** H. C. Garner, B. L. Hewitt and T. E. Labrujere, R&M 3597 (1968): rectangle of aspect ratio 2. */
    @Test
    void theRectangleOfGarnerHewittAndLabrujere() {
        var settled = NeutralPoint.of(Shapes.rectangle(2), 1e-4, 2000, step -> {});
        assertThat(settled.liftSlope() / 2).isCloseTo(2.4744, within(1e-3));
        assertThat(settled.x()).isCloseTo(0.2094, within(1e-4));
    }

    /**
     * M. Van Dyke, Lifting-line theory as a singular-perturbation problem (1964): elliptic wings to third order in 1/A, what
     * is left out falls as 1/A³.
     */
    @ParameterizedTest
    @ValueSource(doubles = {4, 6, 8, 12, 20})
    void theEllipsesOfVanDyke(double aspectRatio) {
        double third = 16 * (Math.log(Math.PI * aspectRatio) - 7.0 / 8) / Math.pow(Math.PI * aspectRatio, 2);
        double slope = 2 * Math.PI / (1 + 2 / aspectRatio + third);
        assertThat(Shapes.slope(Shapes.trueEllipse(aspectRatio, 16, 0), Resolution.fineness(2)))
                .isCloseTo(slope, within(slope * Math.max(0.002, 0.4 / Math.pow(aspectRatio, 3))));
    }

    /**
     * The theorem of reverse flow (F. Ursell and G. N. Ward 1950; M. A. Heaslet and J. R. Spreiter, NACA Report 1119): a wing
     * and the same wing flying backwards have the same lift slope and the same damping in roll.
     */
    @ParameterizedTest
    @MethodSource
    void backwardsAWingLiftsAlike(Planform wing) {
        var back = Shapes.reversed(wing);
        var reference = new Reference(Shapes.area(wing), 2, 1, Vector.ZERO);
        var ahead = NeutralPoint.of(wing, 1e-3, 1500, step -> {});
        double slope = NeutralPoint.of(back, 1e-3, 1500, step -> {}).liftSlope();
        assertThat(slope).isCloseTo(ahead.liftSlope(), within(2e-4 * slope));
        double roll = roll(wing, reference);
        assertThat(roll(back, reference)).isCloseTo(roll, within(-2e-3 * roll));
    }

    static Stream<Planform> backwardsAWingLiftsAlike() {
        double[] one = {1};
        return Stream.of(
                Shapes.delta(2),
                Shapes.cranked(one, new double[] {1.2}, 0.6, 0.25),
                Shapes.cranked(one, new double[] {2.5}, 2, 0),
                Shapes.cranked(one, new double[] {-0.5}, 0.7, 0.4),
                Shapes.cranked(new double[] {0.4, 0.6}, new double[] {0.6, 0.2}, 1, 0.6, 0.3));
    }

    /**
     * Two plates behind each other, of infinite span: the flow u − iv = α(1 − √Π(z − bᵢ)/(z − aᵢ)) leaves both trailing edges b
     * smoothly (N. I. Muskhelishvili, Singular Integral Equations; expanded here for large z). The lift is that of one plate
     * of both chords together, at (S₂/2 − S₁²/4)/S₁ with S₁ = Σ(b − a), S₂ = Σ(b² − a²). Wing and tail, canard and wing, and a slot.
     * A thousand chords of span lack up to 1 % of the lift.
     */
    @ParameterizedTest
    @CsvSource({"0, 1, 3, 3.5", "0, 1, 1.5, 2.5", "0, 0.4, 2, 3", "0, 1, 1.05, 1.55"})
    void platesBehindEachOther(double front, double frontEnd, double rear, double rearEnd) {
        double one = frontEnd - front + rearEnd - rear;
        double two = frontEnd * frontEnd - front * front + rearEnd * rearEnd - rear * rear;
        double x = (two / 2 - one * one / 4) / one;
        var lattice = Lattice.of(Shapes.of(plate(front, frontEnd), plate(rear, rearEnd)), Resolution.fineness(4));
        assertThat(Shapes.neutralPoint(lattice)).isCloseTo(x, within(1.5e-3));
        assertThat(Shapes.slope(lattice, LONG * one)).isCloseTo(2 * Math.PI, within(0.06));
    }

    /** Kutta's pair of plates above each other, a chord apart (1911): 0.855 of the lift of two alone. */
    @Test
    void platesAboveEachOther() {
        var pair = Shapes.of(plate(0, 1), Shapes.surface("upper", 0, 1, Shapes.panel(1, 1, LONG / 2, 0)));
        assertThat(Shapes.slope(Lattice.of(pair, Resolution.fineness(3)), 2 * LONG) / (2 * Math.PI))
                .isCloseTo(0.855, within(0.01));
    }

    /**
     * Thin aerofoil theory of a plate that turns steadily about a point x₀: the lift is that of the incidence at three quarters
     * of the chord, the moment about the quarter chord that of a parabolic camber, −π/8 for qc/U (H. Glauert, The Elements of
     * Aerofoil and Airscrew Theory, chapter 7; derived anew).
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.25, 0.4, 0.6})
    void aTurningPlate(double centre) {
        var about = new Vector(centre, 0, 0);
        var lattice = Lattice.of(Shapes.rectangle(LONG), Resolution.fineness(4), about);
        var pitch =
                Derivatives.of(lattice, new Reference(LONG, LONG, 1, about), 0).by(Motion.PITCH);
        double lift = 4 * Math.PI * (0.75 - centre);
        assertThat(pitch.lift()).isCloseTo(lift, within(0.007 * lift + 0.01));
        assertThat(pitch.pitch()).isCloseTo(-Math.PI / 4 + lift * (centre - 0.25), within(0.015));
    }

    /**
     * R. T. Jones, NACA Report 835: of a slender wing each cross-section lifts as its local span grows, L′ = πρU d(s²w)/dx, so
     * that the lift of a double delta acts at c − ∫s²dx / s² and a delta's damping in pitch follows by one more integral (worked
     * out here). The errors fall with the aspect ratio, as A ln A.
     */
    @Test
    void slenderWings() {
        double[] off = new double[2];
        for (int i = 0; i < 2; i++) {
            double half = i == 0 ? 0.02 : 0.005;
            double inner = 0.4 * half;
            var wing = Shapes.cranked(new double[] {inner, half - inner}, new double[] {0.6, 0.4}, 1, 0.4, 0);
            double squares = inner * inner * 0.6 / 3 + (inner * inner + inner * half + half * half) / 3 * 0.4;
            off[i] = 1 - squares / (half * half) - Shapes.neutralPoint(Lattice.of(wing, Resolution.fineness(4)));
        }
        assertThat(off[0]).isBetween(0.0, 0.012);
        assertThat(off[1]).isBetween(0.0, off[0] / 2);
    }

    @Test
    void aSlenderDeltaIsDampedInPitchAsJonesSays() {
        double aspectRatio = 0.02;
        double chord = 4 / aspectRatio;
        var delta = Shapes.delta(aspectRatio);
        double area = Shapes.area(delta);
        var middle = new Vector(chord / 2, 0, 0);
        var pitch = Derivatives.of(
                        Lattice.of(delta, new Resolution(12, 12, 2, Spacing.SEMICIRCLE), middle),
                        new Reference(area, 2, chord, middle),
                        0)
                .by(Motion.PITCH);
        double lift = 2 * Math.PI / area;
        double moment = -4 * Math.PI * (1.0 / 4 - (1.0 / 4 - 1.0 / 6)) / area;
        assertThat(pitch.lift() / lift).isBetween(0.97, 1.0);
        assertThat(pitch.pitch() / moment).isBetween(0.95, 1.0);
    }

    /**
     * An elliptic wing with washout that grows evenly lifts nothing where its incidence weighted by √(1 − η²) is none, which is
     * at 4/(3π) of the washout (first term of Glauert's series; by reverse flow of surfaces too, where the load is elliptic).
     */
    @ParameterizedTest
    @ValueSource(doubles = {6, 20})
    void evenWashoutOfAnEllipse(double aspectRatio) {
        var lattice = Lattice.of(Shapes.trueEllipse(aspectRatio, 12, -3), Resolution.fineness(2));
        double lift = lattice.load(Motion.AHEAD, Motion.AHEAD).force().z();
        double slope = lattice.load(Motion.INCIDENCE, Motion.AHEAD).force().z();
        assertThat(-lift / slope / Math.toRadians(3)).isCloseTo(4 / (3 * Math.PI), within(0.003));
    }

    /**
     * Far behind an elliptic wing the air sinks by 2CL/(πA) everywhere within its span (Prandtl; M. M. Munk); on the mean over
     * the inner nine tenths, where a surface's load is nearly that of the line.
     */
    @Test
    void downwashFarBehindAnEllipse() {
        double aspectRatio = 8;
        var wing = Shapes.trueEllipse(aspectRatio, 12, 0);
        var lattice = Lattice.of(wing, Resolution.fineness(3));
        double sinks = 2 * Shapes.slope(lattice, Shapes.area(wing)) / (Math.PI * aspectRatio);
        double width = 0;
        double sum = 0;
        for (var strip : lattice.strips()) {
            if (strip.to().y() < 0.9) {
                width += strip.width();
                var far = strip.middle().plus(new Vector(300, 0, 0));
                sum -= strip.width() * lattice.wash(Motion.INCIDENCE, far).z();
            }
        }
        assertThat(sum / width).isCloseTo(sinks, within(0.02 * sinks));
    }

    /** Midway along a long swept half the section lifts 2π cos Λ, as if sheared (A. Betz; 1 % is the downwash of A = 200). */
    @ParameterizedTest
    @ValueSource(doubles = {30, 45, 60})
    void aLongSweptWingIsSheared(double sweep) {
        var lattice = Lattice.of(Shapes.wing(Shapes.panel(1, 1, 100, sweep)), Resolution.fineness(4));
        var circulation = lattice.stripCirculation(Motion.INCIDENCE);
        double slope = 2 * circulation[circulation.length / 2];
        double sheared = 2 * Math.PI * Math.cos(Math.toRadians(sweep));
        assertThat(slope / sheared).isBetween(0.985, 1.0);
    }

    /**
     * A ring of small chord: each section works at the incidence across it, less the even downwash Γ/4R of its own wake, which
     * gives 2π²Rc/(1 + πc/4R) per ½ρU² (H. S. Ribner, The ring airfoil in nonaxial flow, 1947; derived anew); its induced
     * drag is half that of a flat wing of its diameter (M. M. Munk, NACA Report 121). Sixteen flat sides a half.
     */
    @Test
    void theRingOfRibner() {
        double chord = 0.1;
        var lattice = Lattice.of(Shapes.ring(chord, 16), Resolution.fineness(2));
        double lift = 2 * lattice.load(Motion.INCIDENCE, Motion.AHEAD).force().z();
        double ribner = 2 * Math.PI * Math.PI * chord / (1 + Math.PI * chord / 4);
        assertThat(lift).isCloseTo(ribner, within(0.02 * ribner));
        double drag = Trefftz.drag(lattice, lattice.stripCirculation(Motion.INCIDENCE));
        assertThat(lift * lift / (2 * drag * Math.PI * 4)).isCloseTo(2, within(0.02));
        assertThat(Shapes.neutralPoint(lattice) / chord).isCloseTo(0.25, within(0.005));
    }

    /** L. Prandtl, NACA Report 116, table of σ: what two elliptic wings of one span cost each other by their gap. */
    @ParameterizedTest
    @CsvSource({
        "0.05, 0.780",
        "0.1, 0.655",
        "0.15, 0.561",
        "0.2, 0.485",
        "0.25, 0.420",
        "0.3, 0.370",
        "0.4, 0.290",
        "0.5, 0.230"
    })
    void theBiplanesOfPrandtl(double gap, double sigma) {
        var panel = Shapes.panel(0.2, 0.2, 1, 0);
        var lattice = Lattice.of(
                Shapes.of(Shapes.surface("lower", 0, 0, panel), Shapes.surface("upper", 0, 2 * gap, panel)),
                Resolution.fineness(3));
        double one = Trefftz.drag(lattice, elliptic(lattice, 1));
        double both = Trefftz.drag(lattice, elliptic(lattice, 2));
        assertThat(both / one / 2 - 1).isCloseTo(sigma, within(0.006));
    }

    /**
     * End plates of height h: no more than 1 + 1.9 h/b times as efficient as the flat wing (P. B. Hemke, NACA Report 267). Drawn in
     * one piece that reaches past the wing's tip, or in two that meet there, they are the same.
     */
    @Test
    void endPlatesInOnePieceOrTwo() {
        var half = Shapes.panel(0.2, 0.2, 0.2, 0);
        var two = endPlates(Shapes.fin("plates", 0, 1, -0.2, half, half));
        var one = endPlates(Shapes.fin("plates", 0, 1, -0.2, Shapes.panel(0.2, 0.2, 0.4, 0)));
        assertThat(Shapes.slope(one, 0.4)).isCloseTo(Shapes.slope(two, 0.4), within(1e-9));
        double slope = Shapes.slope(one, 0.4);
        double drag = 2 * Trefftz.drag(one, one.stripCirculation(Motion.INCIDENCE)) / 0.4;
        assertThat(slope * slope / (Math.PI * 10 * drag)).isBetween(1.3, 1 + 1.9 * 0.2);
    }

    private static Lattice endPlates(Surface plates) {
        var wing = Shapes.surface("wing", 0, 0, Shapes.panel(0.2, 0.2, 1, 0));
        return Lattice.of(Shapes.of(wing, plates), Resolution.fineness(2));
    }

    private static double[] elliptic(Lattice lattice, int surfaces) {
        return lattice.strips().stream()
                .mapToDouble(strip -> strip.surface() < surfaces
                        ? Math.sqrt(1 - strip.middle().y() * strip.middle().y())
                        : 0)
                .toArray();
    }

    private static Surface plate(double from, double to) {
        return Shapes.surface("plate at " + from, from, 0, Shapes.panel(to - from, to - from, LONG / 2, 0));
    }

    private static double roll(Planform planform, Reference reference) {
        return Derivatives.of(Lattice.of(planform, Resolution.fineness(4)), reference, 0)
                .by(Motion.ROLL)
                .roll();
    }
}
