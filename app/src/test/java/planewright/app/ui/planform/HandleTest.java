package planewright.app.ui.planform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import planewright.api.journal.Planform;
import planewright.app.ui.planform.Handle.Part;
import planewright.shared.planform.Layout;
import planewright.shared.planform.Shaping;

/** Handles without a window: each goes where it is put as far as it can, and moves nothing else. */
class HandleTest {
    private static final double MM = 0.001;
    private static final double ROUNDED = 1e-9;

    private final Planform shape = Layout.CONVENTIONAL.shape(1.2, 0.22);
    private final Planform tailed = Layout.V_TAIL.shape(1.2, 0.22);

    @ParameterizedTest
    @EnumSource(Layout.class)
    void everyHandleThatIsPutWhereItIsChangesNothing(Layout layout) {
        var whole = layout.shape(1.2, 0.22);
        for (int i = 0; i < whole.surfaces().size(); i++) {
            var sight = Sight.of(whole.surfaces().get(i));
            for (var handle : Handle.of(whole, i)) {
                var at = handle.place(whole);
                var moved = handle.moved(whole, sight, sight.across(at), at.x(), 0);
                assertThat(handle.isIn(moved)).isTrue();
                for (var other : Handle.of(whole, i)) {
                    assertThat(other.place(moved).x())
                            .as("%s by %s", other, handle)
                            .isCloseTo(other.place(whole).x(), within(1e-6));
                    assertThat(sight.across(other.place(moved)))
                            .isCloseTo(sight.across(other.place(whole)), within(1e-6));
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Part.class,
            names = {"EDGE", "CHORD"})
    void aTipGoesToTheStationThatIsAskedFor(Part part) {
        var tip = new Handle(0, part, 1);
        double across = part == Part.EDGE ? 0.7 : Sight.ABOVE.across(tip.place(shape));
        var moved = tip.moved(shape, Sight.ABOVE, across, 0.3, 0);
        assertThat(tip.place(moved).x()).isCloseTo(0.3, within(ROUNDED));
        assertThat(Sight.ABOVE.across(tip.place(moved))).isCloseTo(across, within(ROUNDED));
        assertThat(new Handle(0, Part.EDGE, 0).place(moved)).isEqualTo(new Handle(0, Part.EDGE, 0).place(shape));
    }

    @Test
    void aSlantedSurfaceFollowsThePointerThoughItIsSeenShortened() {
        var tip = new Handle(1, Part.EDGE, 1);
        var moved = tip.moved(tailed, Sight.ABOVE, 0.25, 0.85, 0);
        assertThat(tip.place(moved).y()).isCloseTo(0.25, within(ROUNDED));
        var panel = moved.surfaces().get(1).panels().get(0);
        assertThat(panel.span()).isCloseTo(0.25 / Math.cos(Math.toRadians(38)), within(ROUNDED));
    }

    @Test
    void aFinIsSeenFromTheSideAndGrowsUpwards() {
        var fin = shape.surfaces().get(2);
        assertThat(Sight.of(fin)).isEqualTo(Sight.SIDE);
        var tip = new Handle(2, Part.EDGE, 1);
        var moved = tip.moved(shape, Sight.SIDE, 0.3, tip.place(shape).x(), 0);
        assertThat(tip.place(moved).z()).isCloseTo(0.3, within(ROUNDED));
    }

    @Test
    void stationsAreRoundedToSteps() {
        var tip = new Handle(0, Part.EDGE, 1);
        var moved = tip.moved(shape, Sight.ABOVE, 0.7012, 0.1237, 0.005);
        assertThat(tip.place(moved).x()).isCloseTo(0.125, within(ROUNDED));
        assertThat(tip.place(moved).y()).isCloseTo(0.7, within(ROUNDED));
    }

    @Test
    void keysStepByTheSnapOrByAPercent() {
        var tip = new Handle(0, Part.EDGE, 1);
        var further = tip.stepped(shape, Sight.ABOVE, 10, 1, MM);
        assertThat(tip.place(further).y()).isCloseTo(tip.place(shape).y() + 10 * MM, within(MM / 2 + ROUNDED));
        var begin = new Handle(0, Part.FROM, 0);
        var control = shape.surfaces().get(0).controls().get(0);
        assertThat(begin.stepped(shape, Sight.ABOVE, 1, 0, MM)
                        .surfaces()
                        .get(0)
                        .controls()
                        .get(0)
                        .from())
                .isCloseTo(control.from() + 0.01, within(ROUNDED));
    }

    @Test
    void anEndOfAControlSurfaceStopsBeforeTheOther() {
        var end = new Handle(0, Part.TO, 0);
        var moved = end.moved(shape, Sight.ABOVE, 0, 0, MM);
        var control = moved.surfaces().get(0).controls().get(0);
        assertThat(control.to()).isCloseTo(control.from() + 0.01, within(ROUNDED));
    }

    @Test
    void theHingeStaysParallelUntilItsEndIsMoved() {
        var hinge = new Handle(0, Part.HINGE, 0);
        var moved = hinge.stepped(shape, Sight.ABOVE, 0, -5, MM);
        var control = moved.surfaces().get(0).controls().get(0);
        assertThat(control.hinge()).isEqualTo(control.hingeTo()).isCloseTo(0.7, within(ROUNDED));
        var end = new Handle(0, Part.HINGE_TO, 0).stepped(moved, Sight.ABOVE, 0, 5, MM);
        var tapered = end.surfaces().get(0).controls().get(0);
        assertThat(tapered.hinge()).isCloseTo(0.7, within(ROUNDED));
        assertThat(tapered.hingeTo()).isCloseTo(0.75, within(ROUNDED));
    }

    @Test
    void aChordIsNeverLessThanNothing() {
        var end = new Handle(0, Part.CHORD, 1);
        var moved = end.moved(shape, Sight.ABOVE, 0, -3, MM);
        assertThat(Shaping.stations(moved.surfaces().get(0)).get(1).chord()).isZero();
    }
}
