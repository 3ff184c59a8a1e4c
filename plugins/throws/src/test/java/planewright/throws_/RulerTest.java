package planewright.throws_;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Millimetres of a throw against the oldest table of chords, and there and back again. */
class RulerTest {
    /** Ptolemy, Almagest I.11: a circle of diameter 120; some rows read, some from memory, see {@code published.json}. */
    @Test
    void straightLineIsPtolemysChord() {
        var table = Published.of("chords");
        double radius = table.input("diameter") / 2;
        for (int i = 0; i < table.inputs("arc").size(); i++) {
            double angle = Math.toRadians(table.inputs("arc").get(i).asDouble());
            var digits = table.expectedList("chord").get(i);
            double chord = digits.get(0).asDouble()
                    + digits.get(1).asDouble() / 60
                    + digits.get(2).asDouble() / 3600;
            assertThat(radius * Ruler.STRAIGHT.factor(angle)).isCloseTo(chord, within(table.tolerance("chord")));
            assertThat(radius * Ruler.SQUARE.factor(angle / 2)).isCloseTo(chord / 2, within(table.tolerance("chord")));
        }
    }

    @ParameterizedTest
    @EnumSource
    void thereAndBackAgain(Ruler ruler) {
        for (double degrees = -90; degrees <= 90; degrees += 0.5) {
            double angle = Math.toRadians(degrees);
            assertThat(ruler.angle(ruler.factor(angle))).isCloseTo(angle, within(1e-7));
        }
        assertThat(ruler.angle(ruler.greatest())).isCloseTo(Math.PI / 2, within(1e-7));
    }

    /** An arc is longer than its chord, which is longer than half the chord of twice the arc: Almagest I.10. */
    @Test
    void arcIsLongestAndSquareIsShortest() {
        for (double angle = 0.01; angle < Math.PI / 2; angle += 0.01) {
            assertThat(Ruler.ARC.factor(angle)).isGreaterThan(Ruler.STRAIGHT.factor(angle));
            assertThat(Ruler.STRAIGHT.factor(angle)).isGreaterThan(Ruler.SQUARE.factor(angle));
        }
    }

    /** JCGM 100:2008, 5.1.2, by hand: s = r δ has u² = (r uδ)² + (δ ur)². */
    @Test
    void spreadOfAngleAndRadiusReachesTheArc() {
        var arc = Ruler.ARC.millimetres(Measured.of(0.5, 0.02, Units.RADIAN), Measured.of(60, 1, Units.MILLIMETRE));
        assertThat(arc.in(Units.MILLIMETRE)).isCloseTo(30, within(1e-9));
        assertThat(arc.spreadIn(Units.MILLIMETRE)).isCloseTo(Math.hypot(60 * 0.02, 0.5 * 1), within(1e-9));
    }
}
