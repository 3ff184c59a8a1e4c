package planewright.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import planewright.shared.uncertainty.Propagation;

/**
 * Mass and balance point from readings of scales under supports. SI units; x aft, y to the right wing.
 *
 * <p>One weighing: M = ΣF, x = ΣF·x / M, y = ΣF·y / M with net loads F. Source: FAA-H-8083-1B, chapter 3, of which the
 * nose-wheel and tail-wheel formulas are the cases of two supports. This holds for any number of supports: how a stiff
 * aircraft shares its weight among more than three is not determined, but the sums are. Several weighings of one aircraft
 * over-determine it; they are combined by weighted least squares, which for one constant is the weighted mean with weights
 * 1/u². Their consistency is judged by χ² and the Birge ratio √(χ²/(n − 1)). Source: JCGM 100:2008 for the ±; R. T. Birge,
 * Physical Review 40 (1932) 207, for the ratio (cited from memory).
 */
final class Weighings {
    private Weighings() {}

    /**
     * A support and its scale.
     *
     * @param x station where it touches, m
     * @param y the same to the right, m
     * @param load net of the tare, kg
     * @param xSpread standard uncertainty of x, m
     * @param ySpread of y, m
     * @param loadSpread of the load, kg
     */
    record Support(double x, double y, double load, double xSpread, double ySpread, double loadSpread) {}

    /** A value with its standard uncertainty, SI. */
    record Estimate(double value, double spread) {}

    /**
     * What one weighing says.
     *
     * @param mass kg
     * @param x balance point aft of the datum, m
     * @param y to the right wing, m
     */
    record Outcome(Estimate mass, Estimate x, Estimate y) {}

    /**
     * Several outcomes for one value taken together.
     *
     * @param best the weighted mean
     * @param worstResidual the largest distance of an outcome from it
     * @param birgeRatio about 1 where the outcomes agree as their ± promise; 0 for a single outcome or without any ±
     */
    record Combined(Estimate best, double worstResidual, double birgeRatio) {}

    /**
     * @param supports at least two, with a total load above 0
     */
    static Outcome weigh(List<Support> supports) {
        return new Outcome(
                estimate(supports, Weighings::mass),
                estimate(supports, numbers -> mean(numbers, 0)),
                estimate(supports, numbers -> mean(numbers, 1)));
    }

    /**
     * @param outcomes at least one
     */
    static Combined combine(List<Estimate> outcomes) {
        boolean weighted = outcomes.stream().allMatch(outcome -> outcome.spread() > 0);
        double weights = 0;
        double sum = 0;
        for (var outcome : outcomes) {
            double weight = weighted ? 1 / (outcome.spread() * outcome.spread()) : 1;
            weights += weight;
            sum += weight * outcome.value();
        }
        double best = sum / weights;
        double squares = 0;
        double worst = 0;
        for (var outcome : outcomes) {
            double residual = outcome.value() - best;
            squares += residual * residual / (weighted ? outcome.spread() * outcome.spread() : 1);
            worst = Math.max(worst, Math.abs(residual));
        }
        int free = outcomes.size() - 1;
        if (weighted) {
            double ratio = free == 0 ? 0 : Math.sqrt(squares / free);
            return new Combined(new Estimate(best, Math.max(1, ratio) / Math.sqrt(weights)), worst, ratio);
        }
        double spread = free == 0 ? outcomes.get(0).spread() : Math.sqrt(squares / free / outcomes.size());
        return new Combined(new Estimate(best, spread), worst, 0);
    }

    private static Estimate estimate(List<Support> supports, ToDoubleFunction<double[]> function) {
        var numbers = new ArrayList<Double>();
        var spreads = new ArrayList<Double>();
        for (var support : supports) {
            numbers.addAll(List.of(support.x(), support.y(), support.load()));
            spreads.addAll(List.of(support.xSpread(), support.ySpread(), support.loadSpread()));
        }
        var result = Propagation.through(function, array(numbers), array(spreads));
        return new Estimate(result.value(), result.spread());
    }

    private static double mass(double[] numbers) {
        double mass = 0;
        for (int i = 0; i < numbers.length; i += 3) {
            mass += numbers[i + 2];
        }
        return mass;
    }

    private static double mean(double[] numbers, int axis) {
        double moment = 0;
        for (int i = 0; i < numbers.length; i += 3) {
            moment += numbers[i + axis] * numbers[i + 2];
        }
        return moment / mass(numbers);
    }

    private static double[] array(List<Double> numbers) {
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
