package planewright.shared.lattice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;

/**
 * Sideslip, roll and yaw against theories from which numbers follow by hand.
 *
 * <p>Slender wings: R. T. Jones, NACA Report 835 (1946): the flow in each plane across the stream is that past a flat strip, and
 * the load is ρV times the jump of potential at the widest place. A downwash w(y) on the strip −s…s makes the jump whose
 * slope is 2/(π√(s² − y²)) · P∫ w(η)√(s² − η²)/(η − y) dη (thin-aerofoil theory, such as Katz and Plotkin, Low-Speed
 * Aerodynamics, chapter 5, from memory).
 *
 * <p>Fins: a fin far behind is a wing on end at the sideslip that it meets: B. Etkin, Dynamics of Atmospheric Flight, chapter 8
 * (from memory).
 */
class LateralTheoryTest {
    /**
     * An even w = Vβ makes the jump 2w√(s² − y²), and so CYβ = −πA/2 for a fin of aspect ratio A, height squared by area.
     * What finite aspect ratio takes off is that of {@link LatticePublishedTest#slenderDeltasNearJones}, 3 and 6 %.
     */
    @ParameterizedTest
    @CsvSource({"0.1, 0.97", "0.25, 0.94"})
    void aSlenderFinIsPushedAsideAsJonesSays(double aspectRatio, double least) {
        var slip = ofFin(aspectRatio).by(Motion.SIDESLIP);
        assertThat(slip.side() / (-Math.PI * aspectRatio / 2)).isBetween(least, 1.0);
    }

    /** The same load is an ellipse over the height, so it acts at half of it, and rolls by that arm: Clβ = CYβ · h / 2b. */
    @Test
    void aSlenderFinRollsAtHalfItsHeight() {
        var slip = ofFin(0.1).by(Motion.SIDESLIP);
        assertThat(slip.roll() / (slip.side() / 2)).isBetween(0.98, 1.02);
    }

    /**
     * Dihedral Γ makes w = VβΓ on the windward half and −VβΓ on the other. The jump is 4w/π · y arcosh(s/|y|); its moment
     * ρVw · 2s³/3 gives Clβ = −AΓ/6. At these aspect ratios as much is missing as in lift, twice over at most, for the load is
     * nearer to the tips.
     */
    @ParameterizedTest
    @CsvSource({"0.1, 0.94", "0.25, 0.88"})
    void dihedralOfASlenderDeltaRollsItByASixthOfItsAspectRatio(double aspectRatio, double least) {
        double dihedral = Math.toRadians(2);
        var flat = Shapes.delta(aspectRatio).surfaces().get(0).panels().get(0);
        var wing = Shapes.wing(new Panel(flat.rootChord(), flat.tipChord(), flat.span(), flat.sweep(), dihedral, 0));
        var slip = derivatives(wing, new Reference(4 / aspectRatio, 2, 1, Vector.ZERO))
                .by(Motion.SIDESLIP);
        assertThat(slip.roll() / (-aspectRatio * dihedral / 6)).isBetween(least, 1.0);
    }

    /**
     * A yaw rate moves a fin an arm l behind sideways at rl, which is a sideslip of −2(l/b) for each rb/2V: Cnr = −2(l/b) Cnβ, CYr =
     * −2(l/b) CYβ. That the air turns along the fin's own chord is left out: it is a twentieth of the arm.
     */
    @Test
    void aFinDampsYawByItsArm() {
        double arm = 20;
        var fin = new Surface("fin", arm - 0.25, 0, -1, false, List.of(new Panel(1, 1, 2, 0, Math.PI / 2, 0)));
        var reference = new Reference(20, 10, 2, Vector.ZERO);
        var by = derivatives(Shapes.of(fin), reference);
        var slip = by.by(Motion.SIDESLIP);
        var yaw = by.by(Motion.YAW);
        assertThat(slip.yaw()).isPositive();
        assertThat(yaw.yaw() / (-2 * arm / 10 * slip.yaw())).isBetween(0.95, 1.05);
        assertThat(yaw.side() / (-2 * arm / 10 * slip.side())).isBetween(0.95, 1.05);
    }

    /**
     * A fin on an endless plane is half of a wing twice as high, for the plane mirrors it. A plane of four chords and some heights
     * mirrors a little less: 3 % allow for that. The wing itself has 91 to 98.5 % of Helmbold's slope (case C-03).
     */
    @ParameterizedTest
    @ValueSource(doubles = {1, 1.5})
    void aWingMirrorsTheFinThatStandsOnIt(double height) {
        var fin = new Surface("fin", 0, 0, 0, false, List.of(new Panel(1, 1, height, 0, Math.PI / 2, 0)));
        var plane = Shapes.surface("wing", -1.5, 0, Shapes.panel(4, 4, 4 * height, 0));
        double slope = -derivatives(Shapes.of(fin, plane), new Reference(height, 1, 1, Vector.ZERO))
                .by(Motion.SIDESLIP)
                .side();
        double twice = 2 * height;
        assertThat(slope / Shapes.slope(Shapes.rectangle(twice), Resolution.fineness(3)))
                .isBetween(0.97, 1.0);
        double helmbold = 2 * Math.PI * twice / (2 + Math.sqrt(twice * twice + 4));
        assertThat(slope / helmbold).isBetween(0.97 * 0.91, 0.985);
    }

    /** As an elliptic wing grows longer its damping in roll nears Glauert's −πA/(4(A + 4)) from below. */
    @Test
    void theLongerAnEllipticWingTheNearerItsRollDampingIsToTheLiftingLine() {
        double before = 0;
        for (double aspectRatio : new double[] {5, 10, 20, 40}) {
            var by = derivatives(Shapes.ellipse(aspectRatio, 12), new Reference(4 / aspectRatio, 2, 1, Vector.ZERO));
            double share = by.by(Motion.ROLL).roll() / (-Math.PI * aspectRatio / (4 * (aspectRatio + 4)));
            assertThat(share).as("aspect ratio %s", aspectRatio).isBetween(before, 1.0);
            before = share;
        }
        assertThat(before).isGreaterThan(0.97);
    }

    /** A triangle on end, of unit height, with a straight trailing edge; coefficients by its own area and height. */
    private static Derivatives ofFin(double aspectRatio) {
        double root = 2 / aspectRatio;
        var fin = new Surface("fin", 0, 0, 0, false, List.of(new Panel(root, 0, 1, Math.atan(root), Math.PI / 2, 0)));
        return Derivatives.of(
                Lattice.of(Shapes.of(fin), Resolution.fineness(6)),
                new Reference(1 / aspectRatio, 1, 1, Vector.ZERO),
                0);
    }

    private static Derivatives derivatives(Planform planform, Reference reference) {
        return Derivatives.of(Lattice.of(planform, Resolution.fineness(3)), reference, 0);
    }
}
