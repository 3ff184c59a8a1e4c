package planewright.shared.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import planewright.shared.planform.Layout;
import planewright.shared.planform.MarginBand;
import planewright.shared.planform.Outlines;
import planewright.shared.planform.SurfaceKind;

/** Every layout that a shape can begin from: as wide as asked for, and balanced where such an aircraft is. */
class BalanceBandTest {
    private static final double SPAN = 1.2;
    private static final double CHORD = 0.22;

    @ParameterizedTest
    @EnumSource(Layout.class)
    void aLayoutIsAsWideAsAskedForAndBeginsWithAWing(Layout layout) {
        var shape = layout.shape(SPAN, CHORD);
        assertThat(Outlines.span(shape)).isCloseTo(SPAN, within(1e-9));
        assertThat(shape.surfaces().get(0).panels().get(0).rootChord()).isEqualTo(CHORD);
        assertThat(SurfaceKind.of(shape, 0)).isEqualTo(SurfaceKind.WING);
        assertThat(shape.surfaces())
                .anySatisfy(surface -> assertThat(surface.controls()).isNotEmpty());
    }

    /** What a coarse lattice says at once is within the error that it claims for itself and that of the settled one. */
    @ParameterizedTest
    @EnumSource(Layout.class)
    void whatIsSaidAtOnceStandsWhenItHasSettled(Layout layout) {
        var shape = layout.shape(SPAN, CHORD);
        var margin = MarginBand.usual(layout.word(), shape);
        var first = BalanceBand.first(shape, margin);
        var settled = BalanceBand.settled(shape, margin, step -> {});
        assertThat(BalanceBand.isFeasible(shape)).isTrue();
        assertThat(first.neutral())
                .isCloseTo(
                        settled.neutral(),
                        within(first.surfaces().error() + settled.surfaces().error()));
        assertThat(settled.from()).isLessThan(settled.to());
        assertThat(settled.to()).isLessThan(settled.neutral());
    }

    /**
     * Without a tail the neutral point lies near the quarter of the mean chord (thin aerofoil theory), a tail moves it aft, a
     * surface ahead forward: common practice, no source for how far.
     */
    @ParameterizedTest
    @EnumSource(Layout.class)
    void theNeutralPointLiesWhereTheLayoutPutsIt(Layout layout) {
        var band = BalanceBand.first(
                layout.shape(SPAN, CHORD), MarginBand.usual(layout.word(), layout.shape(SPAN, CHORD)));
        double share =
                (band.neutral() - band.wing().leadingEdge().x()) / band.wing().meanChord();
        switch (layout) {
            case CONVENTIONAL, V_TAIL, BIPLANE -> assertThat(share).isBetween(0.3, 0.8);
            case CANARD -> assertThat(share).isLessThan(0.1);
            default -> assertThat(share).isBetween(0.2, 0.35);
        }
    }
}
