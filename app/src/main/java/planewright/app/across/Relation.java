package planewright.app.across;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.figure.Chart;
import planewright.shared.fit.Interval;
import planewright.shared.fit.Law;
import planewright.shared.fit.StraightLine;
import planewright.shared.fit.Trend;
import planewright.shared.quantity.Written;

/**
 * How two things go together over builds.
 *
 * @param dots one a build
 * @param trend the line through those that count, or empty
 * @param problem why there is no line; empty where there is one
 * @param fromZero whether a value below 0 means nothing, as of a mass: the band ends there, and so does a line that falls so low
 */
public record Relation(List<Dot> dots, Law law, Optional<Trend> trend, Optional<Problem> problem, boolean fromZero) {
    /** How often the next build lies in the band. */
    public static final double SHARE = 0.95;

    private static final int STEPS = 60;
    private static final double BEYOND = 0.04;
    private static final int FIGURES = 3;
    private static final int MOST_ZEROS = 6;

    public Relation {
        dots = List.copyOf(dots);
    }

    /**
     * A build with both its values.
     *
     * @param counts whether the line goes by it
     */
    public record Dot(Pairs.Pair pair, Reading x, Reading y, boolean counts) {
        /** The name of its build. */
        public String name() {
            return pair.value().build().name();
        }
    }

    /** A bare number in the unit of its axis with its ±, 0 where none is known. */
    public record Reading(double value, double plusMinus) {}

    /** Why there is no line. */
    public sealed interface Problem {}

    /** Fewer builds count than leave a scatter to tell. */
    public record TooFew(int count) implements Problem {}

    /** All builds that count have the same value across. */
    public record AllAlike(Written value) implements Problem {}

    /** A power goes through values above 0 only, and that of this build is not. */
    public record NotAbove0(String build, Written value) implements Problem {}

    /** A power of a scale whose zero is no nothing, such as °C, means nothing. */
    public record NoPower() implements Problem {}

    static Relation of(List<Dot> dots, Law law, Unit<?> unit, Unit<?> againstUnit, boolean fromZero) {
        var counting = dots.stream().filter(Dot::counts).toList();
        var problem = problem(counting, law, hasZero(unit) && hasZero(againstUnit));
        return new Relation(
                dots,
                law,
                problem.isPresent()
                        ? Optional.empty()
                        : Optional.of(Trend.of(
                                law,
                                counting.stream()
                                        .mapToDouble(dot -> dot.x().value())
                                        .toArray(),
                                counting.stream()
                                        .mapToDouble(dot -> dot.y().value())
                                        .toArray())),
                problem,
                fromZero);
    }

    private static <Q extends Quantity<Q>> boolean hasZero(Unit<Q> unit) {
        return unit.getConverterTo(unit.getSystemUnit()).isLinear();
    }

    private static Optional<Problem> problem(List<Dot> counting, Law law, boolean powers) {
        if (counting.size() < StraightLine.LEAST) {
            return Optional.of(new TooFew(counting.size()));
        }
        double first = counting.get(0).x().value();
        if (counting.stream().allMatch(dot -> dot.x().value() == first)) {
            return Optional.of(
                    new AllAlike(counting.get(0).pair().against().orElseThrow().quantity()));
        }
        if (law == Law.STRAIGHT) {
            return Optional.empty();
        }
        if (!powers) {
            return Optional.of(new NoPower());
        }
        return counting.stream()
                .filter(dot -> !(Math.min(dot.x().value(), dot.y().value()) > 0))
                .findFirst()
                .map(dot -> new NotAbove0(
                        dot.name(),
                        (dot.x().value() > 0
                                        ? dot.pair().value()
                                        : dot.pair().against().orElseThrow())
                                .quantity()));
    }

    /** How many builds the line goes by. */
    public long counting() {
        return dots.stream().filter(Dot::counts).count();
    }

    /** Whether the line says more than the mean would: one goes with the other, and not by chance. */
    public boolean isTelling() {
        return trend.filter(found -> found.line().isSloping(SHARE)).isPresent();
    }

    /** Whether a value across lies among those that the line goes by. */
    public boolean isAmong(double x) {
        var across = dots.stream()
                .filter(Dot::counts)
                .mapToDouble(dot -> dot.x().value())
                .summaryStatistics();
        return across.getMin() <= x && x <= across.getMax();
    }

    /**
     * What the next build has there, by what the others have; empty where there is no line, where it {@link #fallsBelowZero}, or
     * where a power is asked for a value that is not above 0 or far beyond all measure.
     */
    public Optional<Interval> next(double x) {
        return predicted(x).filter(next -> !isBelowZero(next.middle())).map(this::cut);
    }

    private Optional<Interval> predicted(double x) {
        return trend.filter(found -> law == Law.STRAIGHT || x > 0)
                .map(found -> found.predicted(x, SHARE))
                .filter(next -> Double.isFinite(next.high()));
    }

    private boolean isBelowZero(double value) {
        return fromZero && value < 0;
    }

    private Interval cut(Interval next) {
        return isBelowZero(next.low()) ? new Interval(0, next.middle(), next.high()) : next;
    }

    /** Whether the line is at a value across where nothing can be. */
    public boolean fallsBelowZero(double x) {
        return predicted(x).filter(next -> isBelowZero(next.middle())).isPresent();
    }

    /** Whether the band, as far as it is drawn, ends at 0 and not where the scatter would have it. */
    public boolean isCut(Optional<Double> asked) {
        return across(asked)
                .anyMatch(x ->
                        predicted(x).filter(next -> isBelowZero(next.low())).isPresent());
    }

    /**
     * The line as a formula: {@code mass (g) = 12.3 + 0.45·span (mm)}; empty where there is none.
     *
     * @param y what the values are, with their unit
     * @param x what stands across, likewise
     * @param reader whose decimal sign it bears
     */
    public Optional<String> formula(String y, String x, Locale reader) {
        return trend.map(found -> {
            var a = y + " = " + figures(found.factor(), reader);
            var slope = figures(Math.abs(found.slope()), reader);
            return law == Law.POWER
                    ? a + "·[" + x + "]^" + (found.slope() < 0 ? "-" : "") + slope
                    : a + (found.slope() < 0 ? " - " : " + ") + slope + "·" + x;
        });
    }

    private static String figures(double number, Locale reader) {
        var rounded = new BigDecimal(number).round(new MathContext(FIGURES)).stripTrailingZeros();
        var text = Math.abs(rounded.scale()) > MOST_ZEROS
                ? String.format(Locale.ROOT, "%.3g", number)
                : rounded.toPlainString();
        return text.replace('.', DecimalFormatSymbols.getInstance(reader).getDecimalSeparator());
    }

    /**
     * The line with its band, as far as the dots reach and the value that is asked for.
     *
     * @param name of the line
     */
    public Optional<Chart.Band> band(String name, Optional<Double> asked) {
        return trend.map(found -> new Chart.Band(
                name,
                across(asked)
                        .mapToObj(x -> next(x).map(next -> new Chart.Span(x, next.low(), next.middle(), next.high())))
                        .flatMap(Optional::stream)
                        .toList()));
    }

    /** The values across at which the band is drawn. */
    private DoubleStream across(Optional<Double> asked) {
        var reach = DoubleStream.concat(
                        dots.stream().mapToDouble(dot -> dot.x().value()),
                        asked.stream().mapToDouble(x -> x))
                .filter(x -> law == Law.STRAIGHT || x > 0)
                .summaryStatistics();
        double beyond = BEYOND * (reach.getMax() - reach.getMin());
        double from = reach.getMin() - beyond;
        double least = law == Law.POWER ? Math.max(from, reach.getMin() / 2) : from;
        double start = reach.getMin() >= 0 ? Math.max(0, least) : least;
        double step = (reach.getMax() + beyond - start) / STEPS;
        return IntStream.rangeClosed(0, STEPS).mapToDouble(i -> start + i * step);
    }
}
