package planewright.app.index;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a search keeps to besides words. An entry passes if it passes every part.
 *
 * @param kept the values wanted of each facet; an entry must bear all the tags, and of another facet any of the values
 * @param from the first day; empty for all before
 * @param to the last day; empty for all after
 * @param measured a measured value that the entry holds
 */
public record Filter(
        Map<Facet, Set<String>> kept,
        Optional<LocalDate> from,
        Optional<LocalDate> to,
        Optional<MeasuredRange> measured) {
    /** Every entry passes. */
    public static final Filter NONE = new Filter(Map.of(), Optional.empty(), Optional.empty(), Optional.empty());

    public Filter {
        var copy = new EnumMap<Facet, Set<String>>(Facet.class);
        kept.forEach((facet, values) -> {
            if (!values.isEmpty()) {
                copy.put(facet, Set.copyOf(values));
            }
        });
        kept = Map.copyOf(copy);
        if (from.isPresent() && to.isPresent() && from.get().isAfter(to.get())) {
            throw new IllegalArgumentException(IndexWords.say(
                    "from {0} to {1} holds no day; accepted: a first day that is not after the last",
                    from.get(), to.get()));
        }
    }

    /** The values kept to of a facet; empty where all pass. */
    public Set<String> of(Facet facet) {
        return kept.getOrDefault(facet, Set.of());
    }

    /** Keeps to one more value. */
    public Filter with(Facet facet, String value) {
        var values = new LinkedHashSet<>(of(facet));
        values.add(value);
        return with(facet, values);
    }

    /** Keeps to one value less. */
    public Filter without(Facet facet, String value) {
        var values = new LinkedHashSet<>(of(facet));
        values.remove(value);
        return with(facet, values);
    }

    public Filter between(Optional<LocalDate> first, Optional<LocalDate> last) {
        return new Filter(kept, first, last, measured);
    }

    public Filter withMeasured(Optional<MeasuredRange> changed) {
        return new Filter(kept, from, to, changed);
    }

    /** Whether every entry passes. */
    public boolean isNone() {
        return equals(NONE);
    }

    private Filter with(Facet facet, Set<String> values) {
        var changed = new EnumMap<Facet, Set<String>>(Facet.class);
        changed.putAll(kept);
        changed.put(facet, values);
        return new Filter(changed, from, to, measured);
    }
}
