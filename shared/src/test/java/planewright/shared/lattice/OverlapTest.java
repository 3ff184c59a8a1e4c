package planewright.shared.lattice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;
import planewright.shared.planform.Layout;

class OverlapTest {
    private static final Surface WING = Shapes.surface("wing", 0, 0, Shapes.panel(0.25, 0.18, 0.7, 5));

    @Test
    void aTailDrawnIntoTheWingLiesOnIt() {
        assertThat(Overlap.first(Shapes.of(WING, tail(0.1, 0)))).contains(new Overlap("wing", "tail"));
        assertThat(Overlap.first(Shapes.of(WING, tail(0.1, 0.0005)))).isPresent();
        assertThat(Overlap.first(Shapes.of(WING, WING))).contains(new Overlap("wing", "wing"));
        assertThat(BalanceBand.isFeasible(Shapes.of(WING, tail(0.1, 0)))).isFalse();
    }

    @Test
    void onTheLeftSideToo() {
        var left = new Surface("left", 0.05, -0.1, 0, false, List.of(new Panel(0.1, 0.1, 0.3, 0, Math.PI, 0)));
        assertThat(Overlap.first(Shapes.of(WING, left))).isPresent();
    }

    @Test
    void whatTouchesOrPassesThroughDoesNot() {
        assertThat(Overlap.first(Shapes.of(WING, tail(0.26, 0)))).isEmpty();
        assertThat(Overlap.first(
                        Shapes.of(Shapes.surface("wing", 0, 0, Shapes.panel(0.25, 0.25, 0.7, 0)), tail(0.25, 0))))
                .isEmpty();
        assertThat(Overlap.first(Shapes.of(WING, tail(0.1, 0.1)))).isEmpty();
        assertThat(Overlap.first(Shapes.of(WING, Shapes.fin("fins", 0.05, 0.3, -0.05, Shapes.panel(0.1, 0.1, 0.2, 0)))))
                .isEmpty();
        var tip = new Surface("tip", 0.0612, 0.7, 0, true, List.of(Shapes.panel(0.18, 0.1, 0.1, 10)));
        assertThat(Overlap.first(Shapes.of(WING, tip))).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Layout.class)
    void noLayoutDoes(Layout layout) {
        assertThat(Overlap.first(layout.shape(1.2, 0.22))).isEmpty();
    }

    private static Surface tail(double x, double z) {
        return Shapes.surface("tail", x, z, Shapes.panel(0.12, 0.12, 0.22, 0));
    }
}
