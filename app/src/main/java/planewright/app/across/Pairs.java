package planewright.app.across;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Unit;
import planewright.api.quantity.Measured;
import planewright.shared.fit.Law;
import planewright.shared.quantity.QuantityText;

/**
 * What builds have of one thing, each beside the last that the same build has of another.
 *
 * @param against the other thing; empty where one alone is looked at
 * @param pairs the build begun last first, and of a build the newest first
 */
public record Pairs(Named value, Optional<Named> against, List<Pair> pairs) {
    public Pairs {
        pairs = List.copyOf(pairs);
    }

    /** A value and what stands beside it. */
    public record Pair(BuildValue value, Optional<BuildValue> against) {
        /** Whether either was taken over from another build, or both follow from a shape that was. */
        public boolean isCarried() {
            var sources = Stream.concat(Stream.of(value), against.stream())
                    .map(BuildValue::source)
                    .toList();
            return sources.contains(Source.CARRIED)
                    || sources.stream().allMatch(source -> source == Source.CARRIED_SHAPE);
        }
    }

    /** The unit in which most of the values were written. */
    public Unit<?> unit() {
        return common(pairs.stream().map(Pair::value)).orElse(value.kind());
    }

    /** Likewise of what stands beside them. */
    public Unit<?> againstUnit() {
        return common(pairs.stream().flatMap(pair -> pair.against().stream()))
                .or(() -> against.map(Named::kind))
                .orElse(value.kind());
    }

    private static Optional<Unit<?>> common(Stream<BuildValue> values) {
        return values
                .collect(Collectors.groupingBy(each -> each.quantity().unit(), Collectors.counting()))
                .entrySet()
                .stream()
                .max(Comparator.comparingLong(java.util.Map.Entry::getValue))
                .map(java.util.Map.Entry::getKey);
    }

    /** Whether a value below 0 of it means nothing: of its kind none is, and no build has one. */
    private boolean isFromZero() {
        return pairs.stream()
                .map(Pair::value)
                .allMatch(each -> (value.isOfAmount() || each.source().isFigure())
                        && each.quantity().measured().value().getValue().doubleValue() >= 0);
    }

    /** The ids of builds that count for a line only once somebody says so: what was taken over says nothing new. */
    public Set<String> carried() {
        return pairs.stream()
                .filter(Pair::isCarried)
                .map(pair -> pair.value().build().id())
                .collect(Collectors.toSet());
    }

    /**
     * How the two go together: a dot a build, with its last value.
     *
     * @param leftOut ids of builds that do not count for the line
     */
    public Relation relation(Law law, Set<String> leftOut, Unit<?> unit, Unit<?> againstUnit) {
        var dots = pairs.stream()
                .filter(pair -> pair.against().isPresent())
                .collect(Collectors.toMap(
                        pair -> pair.value().build().id(),
                        Function.identity(),
                        (newest, older) -> newest,
                        java.util.LinkedHashMap::new))
                .values()
                .stream()
                .map(pair -> dot(pair, leftOut, unit, againstUnit))
                .toList();
        return Relation.of(dots, law, unit, againstUnit, isFromZero());
    }

    private static Relation.Dot dot(Pair pair, Set<String> leftOut, Unit<?> unit, Unit<?> againstUnit) {
        var build = pair.value().build();
        return new Relation.Dot(
                pair,
                reading(pair.against().orElseThrow(), againstUnit),
                reading(pair.value(), unit),
                !leftOut.contains(build.id()));
    }

    private static Relation.Reading reading(BuildValue value, Unit<?> unit) {
        Measured<?> shown = QuantityText.in(value.quantity().measured(), unit);
        return new Relation.Reading(
                shown.value().getValue().doubleValue(),
                shown.plusMinus().map(spread -> spread.getValue().doubleValue()).orElse(0.0));
    }
}
