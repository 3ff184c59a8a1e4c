package planewright.shared.planform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;
import planewright.shared.planform.Shaping.Station;
import planewright.shared.planform.SurfaceGeometry.View;

/** Changing one section leaves the others where they are; lengths and places by plane geometry. */
class ShapingTest {
    private static final double ROUNDED = 1e-12;

    /** Edges at 0, 0.1, 0.25 and 0.3 m, along the panels at 0, 0.4, 0.7 and 0.9 m. */
    private static final Surface WING = new Surface(
            "wing",
            0.02,
            0,
            0.03,
            true,
            List.of(
                    new Panel(0.3, 0.25, 0.4, Math.atan2(0.1, 0.4), 0, 0),
                    new Panel(0.25, 0.2, 0.3, Math.atan2(0.15, 0.3), Math.toRadians(4), Math.toRadians(-1)),
                    new Panel(0.18, 0.1, 0.2, Math.atan2(0.05, 0.2), Math.toRadians(8), Math.toRadians(-2))));

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void aMovedEdgeMovesNoOtherSection(int section) {
        onlyChanges(section, surface -> Shaping.edge(surface, section, 0.4), (was, now) -> {
            assertThat(now.edge().x()).isCloseTo(0.4, within(ROUNDED));
            assertThat(now.along()).isCloseTo(was.along(), within(ROUNDED));
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void aSectionMovedAlongLeavesTheOthersAndItsOwnEdge(int section) {
        double to = Shaping.stations(WING).get(section).along() + 0.05;
        onlyChanges(section, surface -> Shaping.along(surface, section, to), (was, now) -> {
            assertThat(now.along()).isCloseTo(to, within(ROUNDED));
            assertThat(now.edge().x()).isCloseTo(was.edge().x(), within(ROUNDED));
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void aTwistedSectionLeavesTheTwistOfTheOthers(int section) {
        onlyChanges(
                section,
                surface -> Shaping.twist(surface, section, Math.toRadians(3)),
                (was, now) -> assertThat(Math.toDegrees(now.twist())).isCloseTo(3, within(ROUNDED)));
    }

    @Test
    void theRootTakesAllSectionsAlong() {
        var moved = Shaping.edge(WING, 0, 0.12);
        var before = Shaping.stations(WING);
        var after = Shaping.stations(moved);
        for (int i = 0; i < before.size(); i++) {
            assertThat(after.get(i).edge().x()).isCloseTo(before.get(i).edge().x() + 0.1, within(ROUNDED));
        }
    }

    @Test
    void aChordThatJumpsKeepsItsJump() {
        var wider = Shaping.chord(WING, 2, 0.24);
        assertThat(wider.panels().get(1).tipChord()).isCloseTo(0.24, within(ROUNDED));
        assertThat(wider.panels().get(2).rootChord()).isCloseTo(0.22, within(ROUNDED));
        assertThat(Shaping.chord(WING, 2, 0).panels().get(2).rootChord()).isZero();
    }

    @Test
    void noSectionPassesItsNeighbour() {
        var stations = Shaping.stations(Shaping.along(WING, 1, 5));
        assertThat(stations.get(1).along()).isCloseTo(0.7 - Shaping.SHORTEST, within(ROUNDED));
        stations = Shaping.stations(Shaping.along(WING, 1, -5));
        assertThat(stations.get(1).along()).isCloseTo(Shaping.SHORTEST, within(ROUNDED));
    }

    /** A trapezoid cut in the middle is the same trapezoid; its parts joined again are it too. */
    @Test
    void oneMoreSectionChangesNoMeasureAndGoesAgain() {
        for (int i = 0; i < WING.panels().size(); i++) {
            var cut = Shaping.split(WING, i);
            assertThat(cut.panels()).hasSize(4);
            var one = SurfaceGeometry.of(WING, View.ALONG);
            var other = SurfaceGeometry.of(cut, View.ALONG);
            assertThat(other.area()).isCloseTo(one.area(), within(ROUNDED));
            assertThat(other.meanChord()).isCloseTo(one.meanChord(), within(ROUNDED));
            assertThat(other.leadingEdge().x()).isCloseTo(one.leadingEdge().x(), within(ROUNDED));
            same(Shaping.stations(Shaping.without(cut, i + 1)), Shaping.stations(WING), -1);
        }
    }

    @Test
    void theLastPanelStays() {
        var one = Shaping.without(Shaping.without(WING, 3), 2);
        assertThat(one.panels()).hasSize(1);
        assertThat(Shaping.without(one, 1)).isEqualTo(one);
    }

    /** At half of 0.9 m along, 0.05 m into the second panel: edge 0.02 + 0.1 + 0.15/6, chord 0.25 − 0.05/6. */
    @Test
    void aPlaceOnASurfaceLiesBetweenItsSections() {
        var place = Shaping.place(WING, 0.5, 1);
        assertThat(place.x()).isCloseTo(0.02 + 0.1 + 0.15 / 6 + 0.25 - 0.05 / 6, within(ROUNDED));
        assertThat(place.y()).isCloseTo(0.4 + 0.05 * Math.cos(Math.toRadians(4)), within(ROUNDED));
        assertThat(place.z()).isCloseTo(0.03 + 0.05 * Math.sin(Math.toRadians(4)), within(ROUNDED));
    }

    @Test
    void aSurfaceThatIsAddedLiesBehindAllOthers() {
        var shape = new Planform(List.of(WING), List.of());
        var added = Shaping.beside(shape, "tail");
        double behind = Shaping.stations(WING).stream()
                .mapToDouble(station -> station.edge().x() + station.chord())
                .max()
                .orElseThrow();
        assertThat(added.x()).isGreaterThan(behind);
    }

    private interface Changed {
        void look(Station was, Station now);
    }

    private static void onlyChanges(int section, UnaryOperator<Surface> change, Changed changed) {
        var before = Shaping.stations(WING);
        var after = Shaping.stations(change.apply(WING));
        changed.look(before.get(section), after.get(section));
        same(after, before, section);
    }

    private static void same(List<Station> some, List<Station> others, int but) {
        assertThat(some).hasSameSizeAs(others);
        for (int i = 0; i < some.size(); i++) {
            if (i != but) {
                assertThat(some.get(i).along()).isCloseTo(others.get(i).along(), within(ROUNDED));
                assertThat(some.get(i).edge().x())
                        .isCloseTo(others.get(i).edge().x(), within(ROUNDED));
                assertThat(some.get(i).chord()).isCloseTo(others.get(i).chord(), within(ROUNDED));
                assertThat(some.get(i).twist()).isCloseTo(others.get(i).twist(), within(ROUNDED));
            }
        }
    }
}
