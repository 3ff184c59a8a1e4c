package planewright.shared.planform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
