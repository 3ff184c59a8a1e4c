package planewright.shared.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Body;
import planewright.api.journal.Planform.Section;

class NeutralPointTest {
    static Stream<String> shapes() {
        return Shapes.study().keySet().stream();
    }

    /** Wherever the refinement stops, the value of a much finer lattice lies within the error claimed, which soon is small. */
    @ParameterizedTest
    @MethodSource("shapes")
    void theClaimedErrorHoldsTheTrueOne(String name) {
        var planform = Shapes.study().get(name);
        double chord = Shapes.chord(planform);
        var truth = NeutralPoint.of(planform, 0, 3300, step -> {});
        for (var step : truth.steps().subList(2, truth.steps().size() - 1)) {
            var stopped = NeutralPoint.of(planform, 0, step.panels() + 1, each -> {});
            assertThat(Math.abs(stopped.x() - truth.x()))
                    .as("%s panels", step.panels())
                    .isLessThan(stopped.error());
        }
        assertThat(NeutralPoint.of(planform, 1e-3 * chord, 2600, step -> {}).error())
                .isLessThanOrEqualTo(1e-3 * chord);
    }

    @Test
    void eachLatticeIsToldOf() {
        var told = new ArrayList<NeutralPoint.Step>();
        var settled = NeutralPoint.of(Shapes.delta(2), 1e-3, 1300, told::add);
        assertThat(told).isEqualTo(settled.steps()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(settled.finest().panels())
                .isEqualTo(told.get(told.size() - 1).panels());
        assertThat(settled.liftSlope() / Shapes.area(Shapes.delta(2))).isCloseTo(2.2, within(0.01));
    }

    @Test
    void surfacesThatLieOnEachOtherHaveNoAnswer() {
        var wing = Shapes.surface("wing", 0, 0, Shapes.panel(0.3, 0.2, 0.8, 10));
        assertThatThrownBy(() -> NeutralPoint.of(Shapes.of(wing, wing), 1e-3, 1000, step -> {}))
                .isInstanceOf(ArithmeticException.class);
    }

    /** Munk: far from any wing a body's moment slope is twice its volume; a double cone holds πw²l/12. */
    @Test
    void aBodyAloneTurnsTheNoseByTwiceItsVolume() {
        var body = new Body(
                "body",
                0,
                List.of(new Section(0, 0, 0, 0), new Section(0.5, 0.1, 0.05, -0.05), new Section(1, 0, 0, 0)));
        var far = new Planform(List.of(Shapes.surface("wing", 60, 0, Shapes.panel(0.2, 0.2, 0.5, 0))), List.of(body));
        assertThat(SlenderBody.momentSlope(far, Lattice.of(far, Resolution.fineness(2))))
                .isCloseTo(2 * Math.PI * 0.01 / 12, within(1e-6));
    }

    /** Multhopp: none where the wing passes through, more than alone ahead of it, less behind it. */
    @Test
    void theWingChangesWhatTheBodyFeels() {
        assertThat(tube(-0.4, -0.1)).isGreaterThan(1);
        assertThat(tube(0.02, 0.18)).isZero();
        assertThat(tube(0.5, 0.9)).isBetween(0.0, 0.8);
    }

    /** Moment slope of a straight tube over twice its volume. */
    private static double tube(double from, double to) {
        var tube =
                new Body("tube", 0, List.of(new Section(from, 0.06, 0.03, -0.03), new Section(to, 0.06, 0.03, -0.03)));
        var planform =
                new Planform(List.of(Shapes.surface("wing", 0, 0, Shapes.panel(0.2, 0.2, 0.7, 0))), List.of(tube));
        return SlenderBody.momentSlope(planform, Lattice.of(planform, Resolution.fineness(2)))
                / (Math.PI / 2 * 0.06 * 0.06 * (to - from));
    }
}
