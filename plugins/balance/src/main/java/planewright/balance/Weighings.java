package planewright.balance;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/**
 * Mass and balance point from readings of scales under supports. SI units; x aft, y to the right wing.
 *
 * <p>One weighing: M = ΣF, x = ΣF·x / M, y = ΣF·y / M with net loads F. Source: FAA-H-8083-1B, chapter 3, of which the
 * nose-wheel and tail-wheel formulas are the cases of two supports. This holds for any number of supports: how a stiff
 * aircraft shares its weight among more than three is not determined, but the sums are. The ± is of first order: u² =
 * Σ((xᵢ − x)·u(Fᵢ)/M)² + Σ(Fᵢ·u(xᵢ)/M)². Source: JCGM 100:2008 (GUM), 5.1.2, equation (10).
 *
 * <p>Several weighings of one aircraft over-determine it. They are combined by weighted least squares, which for one
 * constant is the mean with weights 1/u². Only what each round measured anew counts for the weights and for whether rounds
 * agree; a station or a tare that rounds share shifts all of them alike (JCGM 100:2008, 5.2.4 and F.1.2.3), so its ± is
 * carried over whole and does not shrink with the number of rounds. Agreement is judged by the Birge ratio √(χ²/(n − 1)).
 * Source: R. T. Birge, Physical Review 40 (1932) 207 (cited from memory).
 */
final class Weighings {
    private Weighings() {}

    /**
     * A number that was measured.
     *
     * @param value SI
     * @param spread its standard uncertainty
     * @param source equal for one and the same measurement, however often it is used
     */
    record Reading(double value, double spread, String source) {}

    /**
     * A support and its scale.
     *
     * @param x station where it touches, m
     * @param y the same to the right, m
     * @param gross what the scale shows, kg
     * @param tare of blocks and chocks, kg
     */
    record Support(Reading x, Reading y, Reading gross, Reading tare) {
        double load() {
            return gross.value() - tare.value();
        }
    }

    /**
     * A computed value.
     *
     * @param value SI
     * @param components what each source brings to its standard uncertainty, with the sign of its derivative
     */
    record Estimate(double value, Map<String, Double> components) {
        double spread() {
            return root(components.values().stream().mapToDouble(Double::doubleValue));
        }

        /** Its standard uncertainty without that of the sources that all rounds share. */
        double own(Set<String> common) {
            return root(components.entrySet().stream()
                    .filter(component -> !common.contains(component.getKey()))
                    .mapToDouble(Map.Entry::getValue));
        }
    }

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
     * @param value the weighted mean
     * @param spread its standard uncertainty, enlarged by the Birge ratio where that is above 1
     * @param worstResidual the largest distance of an outcome from it
     * @param birgeRatio about 1 where the outcomes agree as their ± promise; empty for a single outcome, or where a ± is
     *     missing and nothing can be judged
     */
    record Combined(double value, double spread, double worstResidual, Optional<Double> birgeRatio) {}

    /**
     * @param supports at least two, with a total load above 0
     */
    static Outcome weigh(List<Support> supports) {
        double mass = supports.stream().mapToDouble(Support::load).sum();
        var components = new LinkedHashMap<String, Double>();
        for (var support : supports) {
            bring(components, support.gross(), 1);
            bring(components, support.tare(), -1);
        }
        return new Outcome(
                new Estimate(mass, components), mean(supports, mass, Support::x), mean(supports, mass, Support::y));
    }

    /**
     * @param outcomes at least one
     */
    static Combined combine(List<Estimate> outcomes) {
        if (outcomes.size() == 1) {
            return new Combined(outcomes.get(0).value(), outcomes.get(0).spread(), 0, Optional.empty());
        }
        var common = common(outcomes);
        var own = outcomes.stream().mapToDouble(outcome -> outcome.own(common)).toArray();
        var weights = weights(own);
        double value = sum(outcomes, weights, Estimate::value);
        var residuals = outcomes.stream()
                .mapToDouble(outcome -> outcome.value() - value)
                .toArray();
        var ratio = birgeRatio(residuals, own);
        var sources = sources(outcomes);
        double alike = carried(outcomes, weights, common);
        sources.removeAll(common);
        double anew = carried(outcomes, weights, sources);
        return new Combined(
                value,
                Math.hypot(alike, ratio.map(r -> Math.max(1, r) * anew).orElse(Math.max(anew, scatter(residuals)))),
                Arrays.stream(residuals).map(Math::abs).max().orElseThrow(),
                ratio);
    }

    private static Estimate mean(List<Support> supports, double mass, Function<Support, Reading> at) {
        double moment = supports.stream()
                .mapToDouble(support -> support.load() * at.apply(support).value())
                .sum();
        double mean = moment / mass;
        var components = new LinkedHashMap<String, Double>();
        for (var support : supports) {
            double arm = (at.apply(support).value() - mean) / mass;
            bring(components, support.gross(), arm);
            bring(components, support.tare(), -arm);
            bring(components, at.apply(support), support.load() / mass);
        }
        return new Estimate(mean, components);
    }

    private static void bring(Map<String, Double> components, Reading reading, double derivative) {
        if (reading.spread() > 0) {
            components.merge(reading.source(), derivative * reading.spread(), Double::sum);
        }
    }

    /** What all rounds share: it shifts them alike and cannot make them differ. */
    private static Set<String> common(List<Estimate> outcomes) {
        var common = sources(outcomes);
        outcomes.forEach(outcome -> common.retainAll(outcome.components().keySet()));
        return common;
    }

    private static Set<String> sources(List<Estimate> outcomes) {
        var sources = new LinkedHashSet<String>();
        outcomes.forEach(outcome -> sources.addAll(outcome.components().keySet()));
        return sources;
    }

    /** What some sources bring to the standard uncertainty of the weighted mean. */
    private static double carried(List<Estimate> outcomes, double[] weights, Set<String> sources) {
        return root(sources.stream()
                .mapToDouble(source ->
                        sum(outcomes, weights, outcome -> outcome.components().getOrDefault(source, 0.0))));
    }

    /** Adding up to 1 and in proportion to 1/u²; all alike where a round has no ± of its own. */
    private static double[] weights(double[] own) {
        double least = Arrays.stream(own).min().orElseThrow();
        var weights = new double[own.length];
        double sum = 0;
        for (int i = 0; i < own.length; i++) {
            weights[i] = least > 0 ? least / own[i] * (least / own[i]) : 1;
            sum += weights[i];
        }
        for (int i = 0; i < own.length; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    private static Optional<Double> birgeRatio(double[] residuals, double[] own) {
        double squares = 0;
        for (int i = 0; i < own.length; i++) {
            if (own[i] == 0) {
                return Optional.empty();
            }
            squares += residuals[i] / own[i] * (residuals[i] / own[i]);
        }
        return Optional.of(Math.sqrt(squares / (own.length - 1)));
    }

    /** Experimental standard deviation of the mean: JCGM 100:2008, 4.2.3. */
    private static double scatter(double[] residuals) {
        int n = residuals.length;
        return root(Arrays.stream(residuals)) / Math.sqrt(n * (n - 1.0));
    }

    private static double sum(List<Estimate> outcomes, double[] weights, ToDoubleFunction<Estimate> value) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * value.applyAsDouble(outcomes.get(i));
        }
        return sum;
    }

    private static double root(DoubleStream terms) {
        return Math.sqrt(terms.map(term -> term * term).sum());
    }
}
