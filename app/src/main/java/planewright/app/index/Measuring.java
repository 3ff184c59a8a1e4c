package planewright.app.index;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.apache.lucene.search.MatchNoDocsQuery;
import org.apache.lucene.search.Query;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.NamedValue;

/** A measured range as the index knows it: the keys of the values that bear the name, and bounds in their system unit. */
final class Measuring {
    /** Inches and ounces are not exact in metres and kilograms. */
    private static final double ROUNDING = 1e-9;

    private final Set<String> keys;
    private final double least;
    private final double greatest;

    /**
     * @param known all keys of the index
     * @param named whether a name bears the words wanted
     */
    Measuring(MeasuredRange range, Collection<String> known, Predicate<String> named) {
        var kind = range.unit().map(MeasuredRange::kindOf);
        keys = known.stream()
                .filter(key -> kind.isEmpty() || kind.get().equals(key.substring(0, key.indexOf(' '))))
                .filter(key -> named.test(key.substring(key.indexOf(' ') + 1)))
                .collect(Collectors.toSet());
        least = range.atLeast()
                .map(MeasuredRange::base)
                .map(bound -> bound - Math.abs(bound) * ROUNDING)
                .orElse(Double.NEGATIVE_INFINITY);
        greatest = range.atMost()
                .map(MeasuredRange::base)
                .map(bound -> bound + Math.abs(bound) * ROUNDING)
                .orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * A value of an entry.
     *
     * @param named as it stands in the entry
     * @param key its name and kind, as {@link Documents#key} makes it
     * @param value in the system unit
     */
    record Value(NamedValue named, String key, double value) {
        Hits.Excerpt excerpt() {
            var text = named.name() + " " + named.quantity().text();
            return new Hits.Excerpt(named.where(), text, List.of(new Hits.Range(0, text.length())));
        }
    }

    Query query() {
        return keys.isEmpty()
                ? new MatchNoDocsQuery("no such name")
                : new Once(new ValueQuery(
                        keys.stream().mapToDouble(Documents::number).sorted().toArray(), least, greatest));
    }

    /** The values of an entry that lie in the range, as excerpts marked from end to end. */
    List<Hits.Excerpt> excerpts(EntryRecord entry) {
        return values(entry).stream()
                .filter(value -> keys.contains(value.key()) && least <= value.value() && value.value() <= greatest)
                .map(Value::excerpt)
                .toList();
    }

    /** All values of an entry. */
    static List<Value> values(EntryRecord entry) {
        return NamedValue.of(entry).stream()
                .map(each -> new Value(
                        each, Documents.key(each.name(), each.quantity().unit()), MeasuredRange.base(each.quantity())))
                .toList();
    }
}
