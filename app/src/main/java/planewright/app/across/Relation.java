package planewright.app.across;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.figure.Chart;
import planewright.shared.fit.Interval;
import planewright.shared.fit.Law;
import planewright.shared.fit.StraightLine;
import planewright.shared.fit.Trend;

/**
 * How two things go together over builds.
 *
 * @param dots one a build
 * @param trend the line through those that count, or empty
 * @param problem why there is no line; empty where there is one
 */
public record Relation(List<Dot> dots, Law law, Optional<Trend> trend, Optional<Problem> problem) {
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
    public sealed interface Problem {
        /** {@return the same in words} */
        String said();
    }

    /** Fewer builds count than leave a scatter to tell. */
    public record TooFew(int count) implements Problem {
        @Override
        public String said() {
            return "builds that have both and count: " + count + "; a line with its band needs " + StraightLine.LEAST
                    + " or more";
        }
    }

    /** All builds that count have the same value across. */
    public record AllAlike(String value) implements Problem {
        @Override
        public String said() {
            return "all builds that count have " + value + " across; a line needs two that differ";
        }
    }

    /** A power goes through values above 0 only, and that of this build is not. */
    public record NotAbove0(String build, String value) implements Problem {
        @Override
        public String said() {
            return "a power goes through values above 0 only, and '" + build + "' has " + value
                    + "; leave it out, or take a straight line";
        }
    }

    /** A power of a scale whose zero is no nothing, such as °C, means nothing. */
    public record NoPower() implements Problem {
        @Override
        public String said() {
            return "a power of a temperature in °C means nothing; take a straight line";
        }
    }

    static Relation of(List<Dot> dots, Law law, Unit<?> unit, Unit<?> againstUnit) {
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
                problem);
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
            return Optional.of(new AllAlike(
                    counting.get(0).pair().against().orElseThrow().quantity().text()));
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
                                .quantity()
                                .text()));
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
     * What the next build has there, by what the others have; empty where there is no line, or a power is asked for a value that
     * is not above 0 or far beyond all measure.
     */
    public Optional<Interval> next(double x) {
        return trend.filter(found -> law == Law.STRAIGHT || x > 0)
                .map(found -> found.predicted(x, SHARE))
                .filter(next -> Double.isFinite(next.high()));
    }

    /**
     * The line as a formula in the units of the axes: {@code y = 12.3 + 0.45·x}; empty where there is none.
     *
     * @param reader whose decimal sign it bears
     */
    public Optional<String> formula(Locale reader) {
        return trend.map(found -> {
            var a = figures(found.factor(), reader);
            return law == Law.POWER
                    ? "y = " + a + "·x^" + figures(found.slope(), reader)
                    : "y = " + a + (found.slope() < 0 ? " − " : " + ") + figures(Math.abs(found.slope()), reader)
                            + "·x";
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
        return trend.map(found -> {
            var across = IntStream.range(0, dots.size() + 1)
                    .mapToObj(i -> i < dots.size() ? Optional.of(dots.get(i).x().value()) : asked)
                    .flatMap(Optional::stream)
                    .filter(x -> law == Law.STRAIGHT || x > 0)
                    .mapToDouble(x -> x)
                    .summaryStatistics();
            double beyond = BEYOND * (across.getMax() - across.getMin());
            double from = law == Law.POWER
                    ? Math.max(across.getMin() - beyond, across.getMin() / 2)
                    : across.getMin() - beyond;
            double step = (across.getMax() + beyond - from) / STEPS;
            return new Chart.Band(
                    name,
                    IntStream.rangeClosed(0, STEPS)
                            .mapToObj(i -> span(found, from + i * step))
                            .flatMap(Optional::stream)
                            .toList());
        });
    }

    /** Empty where a power of points that scatter widely has no number for it. */
    private static Optional<Chart.Span> span(Trend trend, double x) {
        var next = trend.predicted(x, SHARE);
        return Double.isFinite(next.high())
                ? Optional.of(new Chart.Span(x, next.low(), next.middle(), next.high()))
                : Optional.empty();
    }
}
