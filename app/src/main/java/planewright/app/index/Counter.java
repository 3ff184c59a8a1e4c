package planewright.app.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.SortedSetDocValues;
import org.apache.lucene.search.CollectorManager;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.SimpleCollector;
import org.apache.lucene.util.BytesRef;

/**
 * Counts entries by their facets in one pass. An entry that fails the filter at one facet alone still counts there: it is
 * what choosing another value would find.
 */
final class Counter extends SimpleCollector {
    private final Filter filter;
    private final Map<Facet, Map<String, Integer>> counts = new EnumMap<>(Facet.class);
    private final List<Column> columns = new ArrayList<>();
    private int total;

    private Counter(Filter filter) {
        this.filter = filter;
        for (var facet : Facet.values()) {
            counts.put(facet, new HashMap<>());
        }
    }

    /** Counts what a query finds. */
    static Counter of(IndexSearcher searcher, Query query, Filter filter) throws IOException {
        return searcher.search(query, new CollectorManager<Counter, Counter>() {
            @Override
            public Counter newCollector() {
                return new Counter(filter);
            }

            @Override
            public Counter reduce(Collection<Counter> only) {
                return only.iterator().next();
            }
        });
    }

    /** How many entries pass the whole filter. */
    int total() {
        return total;
    }

    /** The counts, most first, then by name. */
    Map<Facet, List<Hits.Count>> counts() {
        var sorted = new EnumMap<Facet, List<Hits.Count>>(Facet.class);
        counts.forEach((facet, values) -> sorted.put(
                facet,
                values.entrySet().stream()
                        .map(value -> new Hits.Count(value.getKey(), value.getValue()))
                        .sorted(Comparator.comparingInt(Hits.Count::entries)
                                .reversed()
                                .thenComparing(Hits.Count::value))
                        .toList()));
        return sorted;
    }

    @Override
    public ScoreMode scoreMode() {
        return ScoreMode.COMPLETE_NO_SCORES;
    }

    @Override
    protected void doSetNextReader(LeafReaderContext leaf) throws IOException {
        columns.clear();
        for (var facet : Facet.values()) {
            var values = DocValues.getSortedSet(leaf.reader(), facet.field());
            columns.add(new Column(facet, values, filter.of(facet)));
        }
    }

    @Override
    public void collect(int entry) throws IOException {
        int failed = 0;
        Column failing = null;
        for (var column : columns) {
            if (!column.passes(entry)) {
                failed++;
                failing = column;
            }
        }
        if (failed == 0) {
            total++;
            columns.forEach(Column::count);
        } else if (failed == 1 && failing.facet != Facet.TAG) {
            failing.count();
        }
    }

    @Override
    public void finish() {
        for (var column : columns) {
            column.addTo(counts.get(column.facet));
        }
        columns.clear();
    }

    /** The values of one facet in one segment. */
    private static final class Column {
        private final Facet facet;
        private final SortedSetDocValues values;
        private final long[] wanted;
        private final int[] counts;
        private long[] here = new long[8];
        private int held;

        Column(Facet facet, SortedSetDocValues values, Set<String> kept) {
            this.facet = facet;
            this.values = values;
            this.counts = new int[(int) values.getValueCount()];
            this.wanted = kept.stream().mapToLong(this::ordinal).toArray();
        }

        private long ordinal(String value) {
            try {
                return values.lookupTerm(new BytesRef(Documents.term(value)));
            } catch (IOException failure) {
                throw new UncheckedIOException("the search index cannot be read", failure);
            }
        }

        boolean passes(int entry) throws IOException {
            held = values.advanceExact(entry) ? values.docValueCount() : 0;
            here = held > here.length ? new long[held] : here;
            for (int i = 0; i < held; i++) {
                here[i] = values.nextOrd();
            }
            if (wanted.length == 0) {
                return true;
            }
            var matches = Arrays.stream(wanted).filter(this::holds);
            return facet == Facet.TAG
                    ? matches.count() == wanted.length
                    : matches.findAny().isPresent();
        }

        private boolean holds(long ordinal) {
            for (int i = 0; i < held; i++) {
                if (here[i] == ordinal) {
                    return true;
                }
            }
            return false;
        }

        void count() {
            for (int i = 0; i < held; i++) {
                counts[(int) here[i]]++;
            }
        }

        void addTo(Map<String, Integer> all) {
            for (int i = 0; i < counts.length; i++) {
                if (counts[i] > 0) {
                    all.merge(word(i), counts[i], Integer::sum);
                }
            }
        }

        private String word(int ordinal) {
            try {
                return values.lookupOrd(ordinal).utf8ToString();
            } catch (IOException failure) {
                throw new UncheckedIOException("the search index cannot be read", failure);
            }
        }
    }
}
