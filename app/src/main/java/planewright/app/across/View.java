package planewright.app.across;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.figure.Chart;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.figure.Fitted;
import planewright.shared.fit.Interval;
import planewright.shared.fit.Law;

/**
 * What somebody looks at: values of builds, how they go with others, and what the next build would have.
 *
 * @param leftOut ids of builds that do not count for the line
 * @param unit in which the values are drawn
 * @param againstUnit in which those are drawn that stand beside them
 * @param asked the value across for which the next build's is wanted, in its unit
 */
public record View(
        Pairs pairs,
        Law law,
        Set<String> leftOut,
        Unit<?> unit,
        Unit<?> againstUnit,
        Optional<Double> asked,
        Relation relation) {
    private static final int FIGURES = 4;

    public View {
        leftOut = Set.copyOf(leftOut);
    }

    public static View of(
            Pairs pairs, Law law, Set<String> leftOut, Unit<?> unit, Unit<?> againstUnit, Optional<Double> asked) {
        return new View(pairs, law, leftOut, unit, againstUnit, asked, pairs.relation(law, leftOut, unit, againstUnit));
    }

    /** What the next build has, by what the others have; empty where nobody asks, or nothing can be told. */
    public Optional<Interval> next() {
        return asked.flatMap(relation::next);
    }

    /** Whether the line goes by a build. */
    public boolean counts(Pairs.Pair pair) {
        return !leftOut.contains(pair.value().build().id());
    }

    /** An example of a value across; empty where there is none. */
    public Optional<Measured<?>> middleAcross() {
        var across =
                relation.dots().stream().mapToDouble(dot -> dot.x().value()).average();
        return across.isPresent() ? Optional.of(onAxisAcross(across.getAsDouble())) : Optional.empty();
    }

    /** A number on the axis of the values, with four figures: no line deserves more. */
    public Measured<?> onAxis(double value) {
        return rounded(value, unit);
    }

    /** A number on the axis across, likewise. */
    public Measured<?> onAxisAcross(double value) {
        return rounded(value, againstUnit);
    }

    private static <Q extends Quantity<Q>> Measured<Q> rounded(double value, Unit<Q> unit) {
        return Measured.of(new BigDecimal(value).round(new MathContext(FIGURES)).doubleValue(), unit);
    }

    /**
     * The line as a formula in the units that are shown; empty where there is none.
     *
     * @param words the names of things in the language of whoever looks
     * @param reader whose decimal sign it bears
     */
    public Optional<String> formula(UnaryOperator<String> words, Locale reader) {
        return pairs.against()
                .flatMap(against -> relation.formula(
                        in(words.apply(pairs.value().name()), unit),
                        in(words.apply(against.name()), againstUnit),
                        reader));
    }

    private static String in(String name, Unit<?> unit) {
        var symbol = Units.symbolOf(unit);
        return symbol.isEmpty() ? name : name + " (" + symbol + ")";
    }

    /**
     * The picture of it.
     *
     * @param words the names of things in the language of whoever looks
     */
    public Fitted fitted(String title, UnaryOperator<String> words) {
        var against = pairs.against().orElseThrow();
        return new Fitted(
                title,
                new Chart.Axis(words.apply(against.name()), Units.codeOf(againstUnit)),
                new Chart.Axis(words.apply(pairs.value().name()), Units.codeOf(unit)),
                relation.dots().stream()
                        .map(dot -> new Fitted.Dot(
                                dot.name(),
                                dot.x().value(),
                                dot.x().plusMinus(),
                                dot.y().value(),
                                dot.y().plusMinus(),
                                dot.counts()))
                        .toList(),
                relation.band("", asked),
                next().map(next -> new Chart.Span(asked.orElseThrow(), next.low(), next.middle(), next.high())),
                relation.fromZero());
    }
}
