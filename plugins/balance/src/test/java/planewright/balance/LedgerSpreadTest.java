package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Language;
import planewright.api.calculator.Proposal;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.uncertainty.Propagation;

/**
 * Every ± of a ledger against numeric propagation through the plain sums, which in turn is tested against the budgets of
 * JCGM 100:2008. Central differences leave out terms of third order; with a ± of a few parts in a hundred 0.1 % covers them.
 */
class LedgerSpreadTest {
    private static final int COLUMNS = 7;

    /** Mass in kg, x, y, z, length, width, height in m, and their ±. */
    private static final double[][] PARTS = {
        {0.212, 0.140, -0.260, 0.004, 0.22, 0.50, 0.02, 0.002, 0.002, 0.003, 0.001, 0.004, 0.005, 0.001},
        {0.219, 0.141, 0.258, 0.004, 0.22, 0.50, 0.02, 0.002, 0.002, 0.003, 0.001, 0.004, 0.005, 0.001},
        {0.062, 0.330, 0, 0.020, 0.03, 0.03, 0.03, 0.0005, 0.001, 0, 0.001, 0, 0, 0},
        {0.186, -0.040, 0.003, -0.012, 0.10, 0.035, 0.025, 0.001, 0.003, 0.001, 0.002, 0.001, 0.001, 0.001}
    };

    private static final double TARGET = 0.11;
    private static final int PACK = 3;

    private final MassProperties total = MassProperties.of(points());
    private final MassPoint pack = total.parts().get(PACK);

    @Test
    void inertiaIsAsSureAsItsParts() {
        told(total.roll(), all -> inertia(all, 2, 3));
        told(total.pitch(), all -> inertia(all, 1, 3));
        told(total.yaw(), all -> inertia(all, 1, 2));
        told(total.rollYaw(), all -> {
            double x = mean(all, 1);
            double z = mean(all, 3);
            return sum(i -> mass(all, i) * (all[i * COLUMNS + 1] - x) * (all[i * COLUMNS + 3] - z));
        });
    }

    @Test
    void whatIfIsAsSureAsTheWholeLedger() {
        told(total.moveFor(TARGET, pack), all -> missing(all) / mass(all, PACK));
        told(total.stationFor(TARGET, pack), all -> all[PACK * COLUMNS + 1] + missing(all) / mass(all, PACK));
        told(total.ballastFor(TARGET, pack), all -> missing(all) / (all[PACK * COLUMNS + 1] - TARGET));
        told(total.shiftWithout(pack), all -> {
            double rest = sum(i -> mass(all, i)) - mass(all, PACK);
            double moment = sum(i -> mass(all, i) * all[i * COLUMNS + 1]) - mass(all, PACK) * all[PACK * COLUMNS + 1];
            return moment / rest - mean(all, 1);
        });
    }

    /** Where nobody knows a ±, none is told; 62, 186 and 426 g add up to 674 g. */
    @Test
    void tellsNoSpreadWhereNoneIsKnown() throws Exception {
        var results = LedgerAnswer.of(
                        new Words(Language.ENGLISH),
                        Lines.inputs(
                                Optional.of(Measured.of(60, Units.MILLIMETRE)),
                                List.of(exact("motor", 62, 40), exact("pack", 186, -20), exact("wing", 426, 100))))
                .results();
        assertThat(results.mass().in(Units.GRAM)).isCloseTo(674, within(1e-9));
        var told = new ArrayList<Measured<?>>(List.of(
                results.mass(),
                results.balanceX(),
                results.balanceY(),
                results.rollInertia(),
                results.pitchInertia(),
                results.productXz()));
        results.whatIf().forEach(line -> told.addAll(List.of(line.move(), line.station())));
        results.contributions().forEach(line -> told.add(line.shiftWithout()));
        results.proposals()
                .forEach(proposal -> told.add(
                        proposal instanceof Proposal.NewMeasurement measurement
                                ? measurement.value()
                                : ((Proposal.NewSetUpValue) proposal).value()));
        assertThat(told)
                .hasSize(6 + 6 + 3 + 3)
                .allSatisfy(each -> assertThat(each.plusMinus()).isEmpty());
    }

    @Test
    void doesNotSayAheadOrBehindOfWhatWouldShowAsNothing() throws Exception {
        var parts = List.of(exact("pack", 186, 100.04));
        var target = Optional.of(Measured.of(100, Units.MILLIMETRE));
        assertThat(LedgerAnswer.of(new Words(Language.ENGLISH), Lines.inputs(target, parts))
                        .results()
                        .findings())
                .extracting(Finding::text)
                .contains("The balance point is at the target, within the tolerance of 2.0 mm.");
    }

    private static Ledger.PartLine exact(String name, double grams, double millimetres) {
        Measured<Length> x = Measured.of(millimetres, Units.MILLIMETRE);
        return Lines.part(name, Measured.of(grams, Units.GRAM), x, 0);
    }

    private static void told(MassProperties.Value told, ToDoubleFunction<double[]> formula) {
        var values = new double[PARTS.length * COLUMNS];
        var spreads = new double[PARTS.length * COLUMNS];
        for (int i = 0; i < PARTS.length; i++) {
            System.arraycopy(PARTS[i], 0, values, i * COLUMNS, COLUMNS);
            System.arraycopy(PARTS[i], COLUMNS, spreads, i * COLUMNS, COLUMNS);
        }
        var expected = Propagation.through(formula, values, spreads);
        assertThat(told.value()).isCloseTo(expected.value(), within(1e-12));
        assertThat(expected.spread()).isPositive();
        assertThat(told.spread()).isCloseTo(expected.spread(), within(1e-3 * expected.spread()));
    }

    private static List<MassPoint> points() {
        return List.of(PARTS).stream()
                .map(row -> new MassPoint(row[0], row[7], at(row, 1), at(row, 8), at(row, 4), at(row, 11)))
                .toList();
    }

    private static MassPoint.Vector at(double[] row, int from) {
        return new MassPoint.Vector(row[from], row[from + 1], row[from + 2]);
    }

    /** Moments of inertia by the parallel-axis theorem, of boxes, about the axis across two columns. */
    private static double inertia(double[] all, int one, int other) {
        return second(all, one) + second(all, other);
    }

    private static double second(double[] all, int column) {
        double mean = mean(all, column);
        return sum(i -> mass(all, i)
                * (Math.pow(all[i * COLUMNS + column] - mean, 2) + Math.pow(all[i * COLUMNS + column + 3], 2) / 12));
    }

    private static double missing(double[] all) {
        return sum(i -> mass(all, i) * (TARGET - all[i * COLUMNS + 1]));
    }

    private static double mean(double[] all, int column) {
        return sum(i -> mass(all, i) * all[i * COLUMNS + column]) / sum(i -> mass(all, i));
    }

    private static double mass(double[] all, int part) {
        return all[part * COLUMNS];
    }

    private static double sum(IntToDoubleFunction term) {
        return IntStream.range(0, PARTS.length).mapToDouble(term).sum();
    }
}
