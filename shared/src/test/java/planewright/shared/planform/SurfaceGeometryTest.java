package planewright.shared.planform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;
import planewright.shared.Published;
import planewright.shared.planform.SurfaceGeometry.View;

/** Areas and mean chords against published cases, which name their sources, and against a brute-force integral. */
class SurfaceGeometryTest {
    /** B-01: Raymer, Aircraft Design, 6th edition, figure 4.17. */
    @Test
    void aStraightTaperedWingIsAsInRaymer() {
        var published = Published.of("B-01");
        var wing = wing(new Panel(
                published.input("root_chord"), published.input("tip_chord"), published.input("span") / 2, 0, 0, 0));
        var geometry = SurfaceGeometry.of(wing, View.ABOVE);
        assertThat(geometry.meanChord()).isCloseTo(published.expected("mac"), within(published.tolerance("mac")));
        assertThat(geometry.leadingEdge().y())
                .isCloseTo(published.expected("y_mac"), within(published.tolerance("y_mac")));
        assertThat(geometry.area())
                .isCloseTo(published.expected("area_both_sides"), within(published.tolerance("area_both_sides")));
        assertThat(SurfaceGeometry.taper(wing)).isEqualTo(0.5);
    }

    /** B-02: geometry of the swept wing of NACA research memoranda; the reports print a truncated mean chord. */
    @Test
    void theResearchWingHasThePrintedMeasures() {
        var published = Published.of("B-02");
        double half = published.input("span") / 2;
        double root = published.input("root_chord");
        double tip = published.input("tip_chord");
        double sweep = Math.atan(1 + (root - tip) / 4 / half);
        var geometry = SurfaceGeometry.of(wing(new Panel(root, tip, half, sweep, 0, 0)), View.ABOVE);
        assertThat(geometry.area()).isCloseTo(published.expected("area"), within(published.tolerance("area")));
        assertThat(geometry.meanChord()).isCloseTo(published.expected("mac"), within(published.tolerance("mac")));
        assertThat(geometry.aspectRatio())
                .isCloseTo(published.expected("aspect_ratio"), within(published.tolerance("aspect_ratio")));
        assertThat(geometry.leadingEdge().y()).isCloseTo(published.expected("y_mac"), within(1e-6));
    }

    /** B-03: c̄ of an ellipse is 8/(3π) of its root; 200 straight panels come within 0.02 %. */
    @Test
    void anEllipseOfStraightPanelsNearsItsMeanChord() {
        var published = Published.of("B-03");
        int panels = 200;
        var list = new ArrayList<Panel>();
        for (int i = 0; i < panels; i++) {
            list.add(new Panel(
                    Math.sqrt(1 - square((double) i / panels)),
                    Math.sqrt(1 - square((i + 1.0) / panels)),
                    1.0 / panels,
                    0,
                    0,
                    0));
        }
        var geometry = SurfaceGeometry.of(wing(list.toArray(Panel[]::new)), View.ABOVE);
        assertThat(geometry.meanChord()).isCloseTo(published.expected("mac"), within(2e-4));
    }

    /** B-04: Raymer's formulas with a tip chord of 0. */
    @Test
    void aPureDeltaIsAsInRaymer() {
        var published = Published.of("B-04");
        double root = published.input("root_chord");
        double half = published.input("span") / 2;
        var geometry = SurfaceGeometry.of(wing(new Panel(root, 0, half, Math.atan2(root, half), 0, 0)), View.ABOVE);
        assertThat(geometry.meanChord()).isCloseTo(published.expected("mac"), within(1e-9));
        assertThat(geometry.leadingEdge().y()).isCloseTo(published.expected("y_mac"), within(1e-9));
        assertThat(geometry.leadingEdge().x()).isCloseTo(published.expected("x_le_mac"), within(1e-9));
        assertThat(geometry.quarterChord()).isCloseTo(published.expected("x_quarter_mac"), within(1e-9));
    }

    /** B-05: the definition's integrals over two panels. */
    @Test
    void aStraightCentreSectionCountsAsTheIntegralsSay() {
        var published = Published.of("B-05");
        var panels = new Panel[2];
        for (int i = 0; i < 2; i++) {
            double span = published.input("stations_y", i + 1) - published.input("stations_y", i);
            double back = published.input("x_le", i + 1) - published.input("x_le", i);
            panels[i] = new Panel(
                    published.input("chords", i), published.input("chords", i + 1), span, Math.atan2(back, span), 0, 0);
        }
        var geometry = SurfaceGeometry.of(wing(panels), View.ABOVE);
        assertThat(geometry.area() / 2).isCloseTo(published.expected("semi_area"), within(1e-3));
        assertThat(geometry.meanChord()).isCloseTo(published.expected("mac"), within(2e-6));
        assertThat(geometry.leadingEdge().y()).isCloseTo(published.expected("y_mac"), within(3e-6));
        assertThat(geometry.leadingEdge().x()).isCloseTo(published.expected("x_le_mac"), within(1e-7));
        assertThat(geometry.quarterChord()).isCloseTo(published.expected("x_quarter_mac"), within(1e-6));
    }

    /** B-06: Raymer, page 75: a fin is one-sided. */
    @Test
    void aFinIsMeasuredAlongItsHeight() {
        var published = Published.of("B-06");
        double height = 0.3;
        var fin = new Surface("fin", 1, 0, 0, false, List.of(new Panel(0.2, 0.1, height, 0.2, Math.PI / 2, 0)));
        var geometry = SurfaceGeometry.of(fin, View.ALONG);
        assertThat(geometry.leadingEdge().z() / height)
                .isCloseTo(published.expected("y_mac_over_h_at_taper_0.5"), within(1e-9));
        assertThat(geometry.area()).isCloseTo(0.045, within(1e-12));
        assertThat(geometry.aspectRatio()).isCloseTo(2, within(1e-12));
        assertThat(SurfaceGeometry.of(fin, View.SIDE).area()).isCloseTo(0.045, within(1e-12));
    }

    /** A tail in V seen from above and from the side: its area times the cosine and the sine of its angle. */
    @Test
    void aTailInVShowsItsShadow() {
        double angle = Math.toRadians(38);
        var tail = new Surface("tail", 0.9, 0, 0, true, List.of(new Panel(0.13, 0.09, 0.3, 0.1, angle, 0)));
        double area = SurfaceGeometry.of(tail, View.ALONG).area();
        assertThat(area).isCloseTo(2 * 0.11 * 0.3, within(1e-12));
        assertThat(SurfaceGeometry.of(tail, View.ABOVE).area()).isCloseTo(area * Math.cos(angle), within(1e-12));
        assertThat(SurfaceGeometry.of(tail, View.SIDE).area()).isCloseTo(area * Math.sin(angle), within(1e-12));
        assertThat(SurfaceGeometry.of(tail, View.ABOVE).span()).isCloseTo(0.6 * Math.cos(angle), within(1e-12));
    }

    /** Two wings together against sums over ten thousand strips of each. */
    @Test
    void twoWingsTogetherAgreeWithStrips() {
        var upper = new Surface(
                "upper",
                0.01,
                0,
                0.1,
                true,
                List.of(new Panel(0.2, 0.2, 0.4, 0, 0, 0), new Panel(0.2, 0.1, 0.2, 0.3, 0.1, 0)));
        var lower = new Surface("lower", 0.08, 0.05, 0, true, List.of(new Panel(0.18, 0.12, 0.5, 0.1, 0.2, 0)));
        double area = 0;
        double square = 0;
        double x = 0;
        double centre = 0;
        for (var surface : List.of(upper, lower)) {
            double back = surface.x();
            for (var panel : surface.panels()) {
                double strip = panel.span() * Math.cos(panel.dihedral()) / 10_000;
                for (int i = 0; i < 10_000; i++) {
                    double part = (i + 0.5) / 10_000;
                    double chord = panel.rootChord() + part * (panel.tipChord() - panel.rootChord());
                    double edge = back + part * panel.span() * Math.tan(panel.sweep());
                    area += 2 * strip * chord;
                    square += 2 * strip * chord * chord;
                    x += 2 * strip * chord * edge;
                    centre += 2 * strip * chord * (edge + chord / 2);
                }
                back += panel.span() * Math.tan(panel.sweep());
            }
        }
        var geometry = SurfaceGeometry.of(List.of(upper, lower), View.ABOVE);
        assertThat(geometry.area()).isCloseTo(area, within(1e-8));
        assertThat(geometry.meanChord()).isCloseTo(square / area, within(1e-8));
        assertThat(geometry.leadingEdge().x()).isCloseTo(x / area, within(1e-8));
        assertThat(geometry.centroid().x()).isCloseTo(centre / area, within(1e-8));
        assertThat(SurfaceGeometry.wings(new Planform(List.of(upper, lower), List.of())))
                .hasSize(2);
    }

    @Test
    void aSurfaceWithoutAreaIsRefused() {
        assertThatThrownBy(() -> SurfaceGeometry.of(wing(new Panel(0, 0, 1, 0, 0, 0)), View.ABOVE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("above 0 m²");
    }

    private static double square(double value) {
        return value * value;
    }

    private static Surface wing(Panel... panels) {
        return new Surface("wing", 0, 0, 0, true, List.of(panels));
    }
}
