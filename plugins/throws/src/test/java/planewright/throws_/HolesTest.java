package planewright.throws_;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Finding;
import planewright.api.quantity.Units;

/** The reverse search against trying every pair, with throws found by following the loop equation step by step. */
class HolesTest {
    private static final int TRIES = 250;

    private final Random random = new Random(99);

    @Test
    void bestPairIsTheOneThatTryingAllOfThemFinds() {
        int reached = 0;
        for (int i = 0; i < TRIES; i++) {
            double up = Math.toRadians(5 + 30 * random.nextDouble());
            double down = Math.toRadians(5 + 30 * random.nextDouble());
            var geometry = new Geometry(
                    0.01,
                    Math.toRadians(20 * (random.nextDouble() - 0.5)),
                    0.015,
                    0.008 * (random.nextDouble() - 0.5),
                    0.05 + 0.1 * random.nextDouble(),
                    0.02 * (random.nextDouble() - 0.5),
                    OptionalDouble.empty());
            double travel = Math.toRadians(30 + 30 * random.nextDouble());
            var now = new Setting(Linkage.of(geometry).orElseThrow(), travel, travel, -1);
            var arms = holes(0.005, 0.022);
            var horns = holes(0.007, 0.03);
            var ranked = new Holes(OptionalDouble.of(up), OptionalDouble.of(down)).ranked(now, arms, horns);
            var tried = tried(geometry, travel, up, down, arms, horns);
            if (tried.isEmpty()) {
                assertThat(ranked).noneMatch(pair -> pair.sound() && pair.reaches());
                continue;
            }
            var best = ranked.get(0);
            assertThat(best.sound() && best.reaches()).isTrue();
            assertThat(best.most())
                    .isCloseTo(tried.stream().mapToDouble(x -> x).min().orElseThrow(), within(1e-6));
            assertThat(ranked)
                    .filteredOn(pair -> pair.sound() && pair.reaches())
                    .hasSize(tried.size());
            reached++;
        }
        assertThat(reached).isBetween(TRIES / 3, TRIES - 1);
    }

    /** By how much the larger of up and down exceeds what is wanted, for each pair that reaches both and goes one way only. */
    private static List<Double> tried(
            Geometry geometry, double travel, double up, double down, List<Double> arms, List<Double> horns) {
        var found = new ArrayList<Double>();
        for (double arm : arms) {
            for (double horn : horns) {
                var is = geometry.withHoles(arm, horn);
                double aft = Followed.to(is, travel);
                double forward = Followed.to(is, -travel);
                if (aft >= down && -forward >= up) {
                    found.add(Math.max(aft / down, -forward / up));
                }
            }
        }
        return found;
    }

    private List<Double> holes(double from, double to) {
        var holes = new TreeSet<Double>();
        for (int count = 1 + random.nextInt(5); count > 0; count--) {
            holes.add(from + (to - from) * random.nextDouble());
        }
        return List.copyOf(holes);
    }

    /** The surface of a linkage, followed from neutral in small steps by the speeds of its two ends. */
    private static final class Followed {
        private static final int STEPS = 1500;

        private Followed() {}

        /** Where the surface stands after a turn; NaN where it locked or turned back on the way, so that the rod did not keep its length. */
        static double to(Geometry is, double turn) {
            double deflection = 0;
            double step = turn / STEPS;
            for (int i = 0; i < STEPS; i++) {
                double half = slope(is, i * step, deflection);
                double slope = slope(is, (i + 0.5) * step, deflection + half * step / 2);
                if (!(half > 0 && slope > 0)) {
                    return Double.NaN;
                }
                deflection += slope * step;
            }
            return rooted(is, turn, deflection);
        }

        /** Newton's method takes out what the steps have summed up; far from a root there is none. */
        private static double rooted(Geometry is, double turn, double start) {
            double length = rod(is, 0, 0);
            double root = start;
            for (int i = 0; i < 8; i++) {
                double h = 1e-6;
                double slope = (rod(is, turn, root + h) - rod(is, turn, root - h)) / 2 / h;
                root -= (rod(is, turn, root) - length) / slope;
            }
            boolean closes = Math.abs(rod(is, turn, root) - length) < 1e-12;
            return closes && Math.abs(root - start) < 0.01 && slope(is, turn, root) > 0 ? root : Double.NaN;
        }

        private static double rod(Geometry is, double turn, double deflection) {
            return Math.hypot(
                    is.hingeDistance()
                            + is.hornOffset() * Math.cos(deflection)
                            + is.hornLength() * Math.sin(deflection)
                            - is.arm() * Math.sin(is.lean() + turn),
                    is.hingeRise()
                            + is.hornLength() * Math.cos(deflection)
                            - is.hornOffset() * Math.sin(deflection)
                            - is.arm() * Math.cos(is.lean() + turn));
        }

        /** Both ends of a rigid rod move equally fast along it. */
        private static double slope(Geometry is, double turn, double deflection) {
            double armX = is.arm() * Math.sin(is.lean() + turn);
            double armY = is.arm() * Math.cos(is.lean() + turn);
            double hornX = is.hornOffset() * Math.cos(deflection) + is.hornLength() * Math.sin(deflection);
            double hornY = is.hornLength() * Math.cos(deflection) - is.hornOffset() * Math.sin(deflection);
            double rodX = is.hingeDistance() + hornX - armX;
            double rodY = is.hingeRise() + hornY - armY;
            return (rodX * armY - rodY * armX) / (rodX * hornY - rodY * hornX);
        }
    }

    @Test
    void endPointsOfTheTableGiveTheThrowThatIsWanted() throws Exception {
        var answer = Shops.linkage()
                .wanted(20, 14)
                .holes(List.of(8.0, 10.0, 12.0), List.of(12.0, 16.0, 20.0))
                .answer();
        var best = answer.pairs().get(0);
        assertThat(best.verdict()).isEqualTo("gives it");
        var again = Shops.linkage()
                .arm(best.arm().in(Units.MILLIMETRE))
                .horn(best.horn().in(Units.MILLIMETRE))
                .ends(
                        best.endTowards().orElseThrow().in(Units.PERCENT),
                        best.endAway().orElseThrow().in(Units.PERCENT))
                .answer();
        assertThat(again.throwUp().in(Units.DEGREE)).isCloseTo(20, within(0.05));
        assertThat(again.throwDown().in(Units.DEGREE)).isCloseTo(14, within(0.05));
        assertThat(again.neutralPushrod().in(Units.MILLIMETRE))
                .isCloseTo(best.pushrod().in(Units.MILLIMETRE), within(0.051));
    }

    @Test
    void holesThatCannotGiveItAreToldWithHowMuchIsMissing() throws Exception {
        var answer = Shops.linkage()
                .wanted(40, 40)
                .holes(List.of(6.0), List.of(16.0, 20.0))
                .answer();
        assertThat(answer.pairs()).hasSize(2).allMatch(pair -> pair.verdict().endsWith("short"));
        assertThat(answer.pairs().get(0).horn().in(Units.MILLIMETRE)).isCloseTo(16, within(1e-9));
        assertThat(answer.findings())
                .extracting(Finding::text)
                .anyMatch(text -> text.startsWith(
                        "No pair of these holes gives the throw that is wanted; nearest is hole 6.0 mm"));
    }

    @Test
    void withoutAThrowNothingIsCompared() throws Exception {
        assertThat(Shops.linkage().answer().pairs()).isEmpty();
    }
}
