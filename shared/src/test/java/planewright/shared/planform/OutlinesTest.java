package planewright.shared.planform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;
import planewright.api.journal.Planform;

class OutlinesTest {
    /** A wing of 0.26 m and 0.18 m chord over 0.5 m a side, its leading edge 0.1 m further aft at the tip. */
    private static final Planform.Surface WING = new Planform.Surface(
            "wing", 0, 0, 0, true, List.of(new Planform.Panel(0.26, 0.18, 0.5, Math.atan2(0.1, 0.5), 0, 0)));

    private static final Planform.Surface FIN = new Planform.Surface(
            "fin", 0.4, 0, 0.02, false, List.of(new Planform.Panel(0.15, 0.1, 0.12, 0, Math.PI / 2, 0)));

    @Test
    void aWingFromAboveIsOneShapeFromTipToTip() {
        var paths = Outlines.plan(new Planform(List.of(WING), List.of()));
        assertThat(paths).hasSize(1);
        assertThat(area(paths.get(0))).isCloseTo(0.22e6, within(1e-6));
        assertThat(paths.get(0).points()).contains(new Point(500, -100), new Point(-500, -280));
    }

    /** Two trapezoids by hand: 2 · (0.26 + 0.18)/2 · 0.5 = 0.22 m², seen from above under dihedral times its cosine. */
    @Test
    void areaAndSpanAreThoseOfTheTrapezoids() {
        assertThat(Outlines.projectedArea(WING)).isCloseTo(0.22, within(1e-12));
        assertThat(Outlines.span(new Planform(List.of(WING, FIN), List.of()))).isCloseTo(1.0, within(1e-12));
        var raised = new Planform.Surface(
                "wing", 0, 0, 0, true, List.of(new Planform.Panel(0.2, 0.2, 0.5, 0, Math.toRadians(60), 0)));
        assertThat(Outlines.projectedArea(raised)).isCloseTo(0.1, within(1e-12));
        var upsideDown = new Planform.Surface(
                "left", 0, 0, 0, false, List.of(new Planform.Panel(0.2, 0.2, 0.5, 0, Math.toRadians(180), 0)));
        assertThat(Outlines.projectedArea(upsideDown)).isCloseTo(0.1, within(1e-12));
        assertThat(Outlines.span(new Planform(List.of(raised), List.of()))).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void aFinShowsItsShapeFromTheSideAndALineFromAbove() {
        var planform = new Planform(List.of(FIN), List.of());
        assertThat(area(Outlines.side(planform).get(0))).isCloseTo((150 + 100) / 2.0 * 120, within(1e-6));
        assertThat(area(Outlines.plan(planform).get(0))).isCloseTo(0, within(1e-6));
    }

    @Test
    void surfacesBesideTheCentreLineAreTwo() {
        var fins = new Planform.Surface("tip fin", 0.1, 0.5, 0, true, FIN.panels());
        assertThat(Outlines.front(new Planform(List.of(fins), List.of()))).hasSize(2);
    }

    @Test
    void aBodyIsDrawnByItsSections() {
        var body = new Planform.Body(
                "fuselage",
                0,
                List.of(new Planform.Section(-0.1, 0.04, 0.03, -0.02), new Planform.Section(0.3, 0.06, 0.03, -0.03)));
        var planform = new Planform(List.of(), List.of(body));
        assertThat(area(Outlines.plan(planform).get(0))).isCloseTo(400 * 50, within(1e-6));
        assertThat(area(Outlines.side(planform).get(0))).isCloseTo(400 * 55, within(1e-6));
    }

    private static final List<Planform.Section> POD = List.of(
            new Planform.Section(-0.1, 0, 0, 0),
            new Planform.Section(0, 0.06, 0.03, -0.02),
            new Planform.Section(0.2, 0.06, 0.03, -0.02),
            new Planform.Section(0.5, 0.01, 0.01, 0));

    @Test
    void aBodyRunsSmoothlyThroughItsSectionsAndNeverBulgesBeyondThem() {
        var pod = new Planform(List.of(), List.of(new Planform.Body("pod", 0.1, POD)));
        var points = Outlines.plan(pod).get(0).points();
        assertThat(points).hasSize(2 * 25).contains(new Point(130, 0), new Point(70, -200));
        assertThat(points).allSatisfy(point -> assertThat(point.x()).isBetween(70.0, 130.0));
        var right = points.subList(0, 25);
        assertThat(right.subList(0, 9)).isSortedAccordingTo((a, b) -> Double.compare(a.x(), b.x()));
        assertThat(right.subList(8, 17))
                .allSatisfy(point -> assertThat(point.x()).isCloseTo(130, within(1e-9)));
        assertThat(right.subList(16, 25)).isSortedAccordingTo((a, b) -> Double.compare(b.x(), a.x()));
    }

    /**
     * Between inner sections the tangents are those of SciPy's PchipInterpolator, which is the reference here (SciPy 1.17.1,
     * half of the widths in mm at eighths of the way); it treats the first and the last piece differently.
     */
    @Test
    void theLineThroughUnevenSectionsIsTheMonotoneCubic() {
        double[][] half = {
            {25, 26.097073047, 26.829379536, 27.311863738, 27.659469926, 27.987142374, 28.409825354, 29.042463138},
            {30, 31.346346622, 33.752145948, 36.85247925, 40.282427804, 43.677072882, 46.671495758, 48.900777706}
        };
        var sections = new ArrayList<Planform.Section>();
        double[][] uneven = {{-0.1, 0}, {0, 0.05}, {0.25, 0.06}, {0.4, 0.1}, {0.9, 0.11}};
        for (var section : uneven) {
            sections.add(new Planform.Section(section[0], section[1], 0, 0));
        }
        var points = Outlines.plan(new Planform(List.of(), List.of(new Planform.Body("pod", 0, sections))))
                .get(0)
                .points();
        for (int i = 0; i < 16; i++) {
            assertThat(points.get(8 + i).x()).isCloseTo(half[i / 8][i % 8], within(1e-8));
        }
    }

    /** An ellipse of 60 by 50 mm has π/4·60·50 mm²; 48 corners lose 0.3 % of it. */
    @Test
    void aBodyFromAheadIsItsLargestSection() {
        var pod = new Planform(List.of(), List.of(new Planform.Body("pod", 0.1, POD)));
        var front = Outlines.front(pod).get(0);
        assertThat(area(front)).isCloseTo(Math.PI / 4 * 60 * 50, within(0.004 * Math.PI / 4 * 60 * 50));
        assertThat(front.points().get(0).x()).isCloseTo(-70, within(1e-9));
        assertThat(front.points().get(0).y()).isCloseTo(5, within(1e-9));
    }

    @Test
    void sectionsAtOnePlaceOrOutOfOrderAreJoinedAsTheyAre() {
        var step = List.of(POD.get(0), POD.get(1), new Planform.Section(0, 0.08, 0.04, -0.04), POD.get(3));
        var paths = Outlines.side(new Planform(List.of(), List.of(new Planform.Body("pod", 0, step))));
        assertThat(paths.get(0).points()).hasSize(8);
    }

    @Test
    void tellsHowFarAShapeReaches() {
        assertThat(Outlines.reach(new Planform(List.of(WING), List.of()))).isCloseTo(0.5, within(1e-12));
        assertThat(Outlines.reach(new Planform(List.of(), List.of()))).isZero();
        var lost = new Planform.Surface("lost", Double.NaN, 0, 0, false, WING.panels());
        assertThat(Outlines.reach(new Planform(List.of(lost, WING), List.of()))).isNaN();
    }

    /** The shoelace formula. */
    private static double area(Drawing.Path path) {
        double twice = 0;
        var points = path.points();
        for (int i = 0; i < points.size(); i++) {
            var one = points.get(i);
            var next = points.get((i + 1) % points.size());
            twice += one.x() * next.y() - next.x() * one.y();
        }
        return Math.abs(twice) / 2;
    }
}
