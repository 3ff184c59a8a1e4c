package planewright.app.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.search.ConstantScoreScorer;
import org.apache.lucene.search.ConstantScoreWeight;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.QueryVisitor;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.Scorer;
import org.apache.lucene.search.Weight;
import org.apache.lucene.util.BitSetIterator;
import org.apache.lucene.util.FixedBitSet;

/**
 * What another query finds, each with the same score. It is worked out once for each segment, although a search goes over it twice,
 * for the counts and for the hits. For one search.
 */
final class Once extends Query {
    private final Query query;
    private final Map<Object, FixedBitSet> found = new ConcurrentHashMap<>();

    Once(Query query) {
        this.query = query;
    }

    @Override
    public Weight createWeight(IndexSearcher searcher, ScoreMode scoreMode, float boost) throws IOException {
        var weight = searcher.createWeight(searcher.rewrite(query), ScoreMode.COMPLETE_NO_SCORES, 1);
        return new ConstantScoreWeight(this, boost) {
            @Override
            public Scorer scorer(LeafReaderContext leaf) throws IOException {
                var here = found(weight, leaf);
                int count = here.cardinality();
                return count == 0
                        ? null
                        : new ConstantScoreScorer(this, score(), scoreMode, new BitSetIterator(here, count));
            }

            @Override
            public boolean isCacheable(LeafReaderContext leaf) {
                return false;
            }
        };
    }

    private FixedBitSet found(Weight weight, LeafReaderContext leaf) throws IOException {
        try {
            return found.computeIfAbsent(leaf.id(), first -> find(weight, leaf));
        } catch (UncheckedIOException failure) {
            throw failure.getCause();
        }
    }

    private static FixedBitSet find(Weight weight, LeafReaderContext leaf) {
        var here = new FixedBitSet(Math.max(1, leaf.reader().maxDoc()));
        try {
            var scorer = weight.scorer(leaf);
            if (scorer != null) {
                here.or(scorer.iterator());
            }
            return here;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Override
    public void visit(QueryVisitor visitor) {
        query.visit(visitor);
    }

    @Override
    public String toString(String field) {
        return query.toString(field);
    }

    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
