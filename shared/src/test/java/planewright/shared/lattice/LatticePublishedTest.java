package planewright.shared.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;
import planewright.shared.Published;
import planewright.shared.planform.SurfaceGeometry;
import planewright.shared.planform.SurfaceGeometry.View;

/** The lattice against published values; each case of {@code published.json} names its source and how it is known. */
class LatticePublishedTest {
    /** C-01: Bertin and Smith, Aerodynamics for Engineers, example 7.2: one panel a chord, four even ones a side. */
    @Test
    void theHandLatticeOfBertinAndSmith() {
        var published = Published.of("C-01");
        double chord = 1 / published.input("aspect_ratio");
        var lattice = Lattice.of(
                Shapes.wing(Shapes.panel(chord, chord, 0.5, published.input("le_sweep"))), Resolution.even(1, 4));
        assertThat(Shapes.slope(lattice, chord))
                .isCloseTo(published.expected("cl_alpha"), within(published.tolerance("cl_alpha")));
        var circulation = lattice.stripCirculation(Motion.INCIDENCE);
        assertThat(circulation).hasSize(4);
        for (int i = 0; i < 4; i++) {
            assertThat(circulation[i] / (4 * Math.PI))
                    .isCloseTo(published.expected("gamma_over_4_pi_b_U_alpha", i), within(5e-5));
        }
    }

    /** C-02: E. O. Tuck, accurate solutions of the lifting surface integral equation (1993); half its last digit. */
    @Test
    void theSquareWingOfTuck() {
        var published = Published.of("C-02");
        assertThat(Shapes.slope(Shapes.rectangle(1), Resolution.fineness(6)))
                .isCloseTo(published.expected("cl_alpha"), within(1e-4));
    }

    /**
     * The Warren 12 planform, with which lattices are compared: aspect ratio 2√2, taper 1/3, leading edge swept 53.54°. Lift
     * slope 2.743 and moment slope −3.10 about the apex with a reference chord of 1; from memory, no text at hand.
     */
    @Test
    void theWarrenTwelve() {
        var wing = Shapes.wing(Shapes.panel(1.5, 0.5, Math.sqrt(2), 53.54));
        var settled = NeutralPoint.of(wing, 1e-3, 2000, step -> {});
        double slope = settled.liftSlope() / Shapes.area(wing);
        assertThat(slope).isCloseTo(2.743, within(0.01));
        assertThat(-slope * settled.x()).isCloseTo(-3.10, within(0.02));
    }

    /** C-03: Helmbold's formula, as in Raymer equation 12.6; the case's note says that it sits 2 to 8 % above a flat plate. */
    @Test
    void helmboldLiesALittleAboveRectangularWings() {
        var published = Published.of("C-03");
        for (int i = 1; i < published.count("aspect_ratios"); i++) {
            double ratio = Shapes.slope(Shapes.rectangle(published.input("aspect_ratios", i)), Resolution.fineness(4))
                    / published.expected("case_a", i);
            assertThat(ratio)
                    .as("aspect ratio %s", published.input("aspect_ratios", i))
                    .isBetween(0.91, 0.985);
        }
    }

    /** C-03: Polhamus's sweep term; the lattice's loss by sweep from 0 to 45° is his within 3 %. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6})
    void sweepCostsWhatPolhamusSays(int position) {
        var published = Published.of("C-03");
        double aspectRatio = published.input("aspect_ratios", position);
        var swept = Shapes.wing(Shapes.panel(1, 1, aspectRatio / 2, 45));
        double ratio = Shapes.slope(swept, Resolution.fineness(4))
                / Shapes.slope(Shapes.rectangle(aspectRatio), Resolution.fineness(4));
        double formula = published.expected("case_c", position) / published.expected("case_a", position);
        assertThat(ratio).isCloseTo(formula, within(0.03 * formula));
    }

    /** C-04: R. T. Jones, NACA Report 835: πA/2 as the aspect ratio goes to 0; how far below is the case's own figure. */
    @Test
    void slenderDeltasNearJones() {
        var published = Published.of("C-04");
        double[] below = {0.03, 0.06};
        for (int i = 0; i < 2; i++) {
            double limit = published.expected("cl_alpha_limit", i);
            double slope = Shapes.slope(Shapes.delta(published.input("aspect_ratio", i)), Resolution.fineness(6));
            assertThat(slope / limit).isBetween(1 - below[i], 1.0);
        }
    }

    /** C-05: elliptic wing; the surface lies below Prandtl's line by the case's own figures and nears it as A grows. */
    @ParameterizedTest
    @CsvSource({"0, 3.75", "2, 4.80", "3, 5.65"})
    void ellipticWingsLieBelowTheLiftingLine(int position, double about) {
        var published = Published.of("C-05");
        double slope =
                Shapes.slope(Shapes.ellipse(published.input("aspect_ratios", position), 12), Resolution.fineness(2));
        assertThat(slope).isCloseTo(about, within(0.03)).isLessThan(published.expected("a", position));
    }

    /** C-05, its note: induced drag of an elliptic wing is CL²/(πA); twelve straight panels come within 1 %. */
    @Test
    void anEllipticWingHasTheLeastInducedDrag() {
        double aspectRatio = Published.of("C-05").input("aspect_ratios", 2);
        assertThat(efficiency(Lattice.of(Shapes.ellipse(aspectRatio, 12), Resolution.fineness(2)), 4 / aspectRatio, 2))
                .isBetween(0.99, 1.001);
    }

    /** C-06: Anderson, Fundamentals of Aerodynamics, example 5.1: δ = 0.055 read off a chart of lifting-line theory. A
     * lifting surface spreads its load more evenly than the line, so its δ is smaller; drag differs by less than 4 %. */
    @Test
    void theTaperedWingOfAnderson() {
        var published = Published.of("C-06");
        double aspectRatio = published.input("aspect_ratio");
        double taper = published.input("taper");
        double root = 2 / (1 + taper);
        var wing = Shapes.wing(new Panel(
                root, taper * root, aspectRatio / 2, Math.atan2(root * (1 - taper) / 4, aspectRatio / 2), 0, 0));
        var lattice = Lattice.of(wing, Resolution.fineness(4));
        double slope = Shapes.slope(lattice, aspectRatio);
        assertThat(slope / published.expected("a")).isBetween(0.93, 0.99);
        double drag = 1 / efficiency(lattice, aspectRatio, aspectRatio);
        assertThat(drag - 1).isBetween(0.0, published.input("delta"));
        double alpha = Math.toRadians(published.input("alpha"));
        double lift = published.expected("CL");
        assertThat(lift * lift / (Math.PI * aspectRatio) * drag)
                .isCloseTo(published.expected("CDi"), within(0.04 * published.expected("CDi")));
        assertThat(alpha * slope).isLessThan(lift);
    }

    /** C-07: a thin flat plate has cl = 2πα and its lift at a quarter chord; a wing of aspect ratio 1000 is one. */
    @Test
    void aVeryLongWingIsAFlatPlateSection() {
        var published = Published.of("C-07");
        var lattice = Lattice.of(Shapes.rectangle(1000), Resolution.fineness(3));
        double alpha = Math.toRadians(published.input("alpha"));
        double section = 2 * lattice.stripCirculation(Motion.INCIDENCE)[0] * alpha;
        assertThat(section).isCloseTo(published.expected("cl"), within(2e-3));
        double x = Shapes.neutralPoint(lattice);
        assertThat(-section * x).isCloseTo(published.expected("cm_leading_edge"), within(1e-3));
        assertThat(section * (1 - x)).isCloseTo(published.expected("cm_trailing_edge"), within(2e-3));
    }

    /** B-07: NACA Report 751: for wings of usual shape the aerodynamic centre lies near the quarter point of the mean chord. */
    @ParameterizedTest
    @CsvSource({"0.5, 0", "0.5, 20", "1, 10", "0.4, 30"})
    void theAerodynamicCentreLiesNearTheQuarterPoint(double taper, double sweep) {
        var wing = Shapes.wing(Shapes.panel(1, taper, 3, sweep));
        var geometry = SurfaceGeometry.of(wing.surfaces(), View.ABOVE);
        double x = Shapes.neutralPoint(Lattice.of(wing, Resolution.fineness(4)));
        assertThat((x - geometry.quarterChord()) / geometry.meanChord()).isBetween(-0.05, 0.05);
    }

    /**
     * C-10: Raymer's equation 16.9 with slopes and aerodynamic centres of wing and tail alone and
     * the wing's own downwash where the tail stands, against the lattice of both together. The tail's upwash on the wing is
     * not in the formula; a hundredth of the chord allows for it.
     */
    @Test
    void wingAndTailTogetherAgreeWithRaymersFormula() {
        var wing = Shapes.surface("wing", 0, 0, Shapes.panel(0.22, 0.18, 0.7, 2));
        var tail = Shapes.surface("tail", 0.75, 0.06, Shapes.panel(0.14, 0.12, 0.22, 4));
        var alone = Lattice.of(Shapes.of(wing), Resolution.fineness(4));
        var tailAlone = Lattice.of(Shapes.of(tail), Resolution.fineness(4));
        double slope = 2 * alone.load(Motion.INCIDENCE, Motion.AHEAD).force().z();
        double downwash = IntStream.rangeClosed(0, 20)
                .mapToDouble(i -> alone.wash(Motion.INCIDENCE, new Vector(0.79, 0.01 * i + 0.003, 0.06))
                        .z())
                .average()
                .orElseThrow();
        double tailSlope =
                2 * tailAlone.load(Motion.INCIDENCE, Motion.AHEAD).force().z() * (1 + downwash);
        double formula =
                (slope * Shapes.neutralPoint(alone) + tailSlope * Shapes.neutralPoint(tailAlone)) / (slope + tailSlope);
        double together = Shapes.neutralPoint(Lattice.of(Shapes.of(wing, tail), Resolution.fineness(4)));
        assertThat((together - formula) / 0.2).isCloseTo(0, within(0.01));
        assertThat(downwash).isBetween(-0.6, -0.2);
    }

    /**
     * Roll damping of an elliptic wing by lifting-line theory: with a₀ = 2π the second term of the series gives Clp = −πA /
     * (4(A + 4)) (H. Glauert, Elements of Aerofoil and Airscrew Theory, chapter 11, from memory; derived anew). A surface of
     * aspect ratio 20 lies up to 5 % below.
     */
    @Test
    void anEllipticWingIsDampedInRollAsGlauertSays() {
        double aspectRatio = 20;
        var reference = new Reference(4 / aspectRatio, 2, 1, Vector.ZERO);
        var derivatives =
                Derivatives.of(Lattice.of(Shapes.ellipse(aspectRatio, 12), Resolution.fineness(2)), reference, 0);
        double line = -Math.PI * aspectRatio / (4 * (aspectRatio + 4));
        assertThat(derivatives.by(Motion.ROLL).roll() / line).isBetween(0.95, 1.0);
    }

    /**
     * Dihedral effect of an elliptic wing by lifting-line theory: sideslip β meets a half of dihedral Γ at an incidence of βΓ, the
     * other at −βΓ. With a₀ = 2π the second term of the series for that step is 16/(3π) · βΓ / (A + 4), so Clβ = −4AΓ /
     * (3(A + 4)) (the series: H. Glauert, Elements of Aerofoil and Airscrew Theory, chapter 11, from memory; the term derived
     * here). The step at the middle is rounded by a surface, which so lies up to 8 % below the line.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1, 3, 6})
    void dihedralOfAnEllipticWingRollsItAsTheLiftingLineSays(double degrees) {
        double aspectRatio = 20;
        var flat = Shapes.ellipse(aspectRatio, 12).surfaces().get(0);
        double dihedral = Math.toRadians(degrees);
        var bent = Shapes.wing(flat.panels().stream()
                .map(panel -> new Panel(
                        panel.rootChord(), panel.tipChord(), panel.span(), panel.sweep(), dihedral, panel.twist()))
                .toArray(Panel[]::new));
        var reference = new Reference(4 / aspectRatio, 2, 1, Vector.ZERO);
        var derivatives = Derivatives.of(Lattice.of(bent, Resolution.fineness(2)), reference, 0);
        double line = -4 * aspectRatio * dihedral / (3 * (aspectRatio + 4));
        assertThat(derivatives.by(Motion.SIDESLIP).roll() / line).isBetween(0.92, 1.0);
    }

    /**
     * Weathercock stability of a fin alone: Cnβ = a · Sf l / (S b) with the slope a by Helmbold's formula (C-03), its lift at a
     * quarter chord. The lattice lies below it as it does for the wings of C-03.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 4})
    void aFinTurnsTheNoseIntoTheWindAsItsVolumeSays(double aspectRatio) {
        double arm = 12;
        var fin = new Surface(
                "fin",
                arm - 0.25,
                0,
                -aspectRatio / 2,
                false,
                List.of(new Panel(1, 1, aspectRatio, 0, Math.PI / 2, 0)));
        var reference = new Reference(20, 10, 2, Vector.ZERO);
        var derivatives = Derivatives.of(Lattice.of(Shapes.of(fin), Resolution.fineness(3)), reference, 0);
        double slope = 2 * Math.PI * aspectRatio / (2 + Math.sqrt(aspectRatio * aspectRatio + 4));
        var slip = derivatives.by(Motion.SIDESLIP);
        assertThat(slip.yaw() / (slope * aspectRatio * arm / (20 * 10))).isBetween(0.91, 0.985);
        assertThat(slip.side() / (-slope * aspectRatio / 20)).isBetween(0.91, 0.985);
    }

    private static double efficiency(Lattice lattice, double area, double span) {
        double lift = Shapes.slope(lattice, area);
        double drag = 2 * Trefftz.drag(lattice, lattice.stripCirculation(Motion.INCIDENCE)) / area;
        return lift * lift / (Math.PI * span * span / area * drag);
    }
}
