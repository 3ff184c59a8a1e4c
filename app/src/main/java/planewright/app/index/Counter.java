package planewright.app.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.SortedDocValues;
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
    private final List<Column> kept = new ArrayList<>();
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
            public Counter reduce(Collection<Counter> parts) {
                var whole = new Counter(filter);
                parts.forEach(whole::add);
                return whole;
            }
        });
    }

    private void add(Counter part) {
        total += part.total;
        part.counts.forEach((facet, values) -> {
            var sums = counts.get(facet);
            values.forEach((value, entries) -> sums.merge(value, entries, Integer::sum));
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
        for (var facet : Facet.values()) {
            var values = DocValues.getSortedSet(leaf.reader(), facet.field());
            columns.add(new Column(facet, values, filter.of(facet)));
        }
        columns.stream().filter(Column::isKept).forEach(kept::add);
    }

    @Override
    public void collect(int entry) throws IOException {
        Column failing = null;
        for (var column : kept) {
            if (!column.passes(entry)) {
                if (failing != null) {
                    return;
                }
                failing = column;
            }
        }
        if (failing == null) {
            total++;
            for (var column : columns) {
                column.count(entry);
            }
        } else if (failing.facet != Facet.TAG) {
            failing.count(entry);
        }
    }

    @Override
    public void finish() {
        for (var column : columns) {
            column.addTo(counts.get(column.facet));
        }
        columns.clear();
        kept.clear();
    }

    /** The values of one facet in one segment. */
    private static final class Column {
        private final Facet facet;
        private final SortedSetDocValues values;
        private final SortedDocValues single;
        private final long[] wanted;
        private final int[] counts;
        private int[] here = new int[8];
        private int held;
        private int read = -1;

        Column(Facet facet, SortedSetDocValues values, Set<String> kept) {
            this.facet = facet;
            this.values = values;
            this.single = DocValues.unwrapSingleton(values);
            this.counts = new int[(int) values.getValueCount()];
            this.wanted = kept.stream().mapToLong(this::ordinal).toArray();
        }

        private long ordinal(String value) {
            try {
                return values.lookupTerm(new BytesRef(Documents.term(value)));
            } catch (IOException failure) {
                throw new UncheckedIOException(IndexWords.say("the search index cannot be read"), failure);
            }
        }

        boolean isKept() {
            return wanted.length > 0;
        }

        boolean passes(int entry) throws IOException {
            read(entry);
            int borne = 0;
            for (long ordinal : wanted) {
                borne += holds(ordinal) ? 1 : 0;
            }
            return facet == Facet.TAG ? borne == wanted.length : borne > 0;
        }

        void count(int entry) throws IOException {
            read(entry);
            for (int i = 0; i < held; i++) {
                counts[here[i]]++;
            }
        }

        private boolean holds(long ordinal) {
            for (int i = 0; i < held; i++) {
                if (here[i] == ordinal) {
                    return true;
                }
            }
            return false;
        }

        /** An entry's values can be gone through only once. */
        private void read(int entry) throws IOException {
            if (entry == read) {
                return;
            }
            read = entry;
            if (single != null) {
                held = single.advanceExact(entry) ? 1 : 0;
                here[0] = held == 1 ? single.ordValue() : 0;
                return;
            }
            held = values.advanceExact(entry) ? values.docValueCount() : 0;
            here = held > here.length ? new int[held] : here;
            for (int i = 0; i < held; i++) {
                here[i] = (int) values.nextOrd();
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
                throw new UncheckedIOException(IndexWords.say("the search index cannot be read"), failure);
            }
        }
    }
}
