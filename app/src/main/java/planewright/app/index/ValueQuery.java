package planewright.app.index;

import java.io.IOException;
import java.util.Arrays;
import org.apache.lucene.document.DoublePoint;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.PointValues;
import org.apache.lucene.index.PointValues.Relation;
import org.apache.lucene.search.ConstantScoreScorer;
import org.apache.lucene.search.ConstantScoreWeight;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.QueryVisitor;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.Scorer;
import org.apache.lucene.search.Weight;
import org.apache.lucene.util.DocIdSetBuilder;

/**
 * Entries that hold a value of any of several keys within bounds. One walk through the points serves all keys; a range query for
 * each would walk as often as there are names.
 */
final class ValueQuery extends Query {
    private final double[] keys;
    private final double least;
    private final double greatest;

    /**
     * @param keys as {@link Documents#number} makes them, in order
     */
    ValueQuery(double[] keys, double least, double greatest) {
        this.keys = keys;
        this.least = least;
        this.greatest = greatest;
    }

    @Override
    public Weight createWeight(IndexSearcher searcher, ScoreMode scoreMode, float boost) {
        return new ConstantScoreWeight(this, boost) {
            @Override
            public Scorer scorer(LeafReaderContext leaf) throws IOException {
                var points = leaf.reader().getPointValues(Documents.VALUE);
                if (points == null) {
                    return null;
                }
                var found = new DocIdSetBuilder(leaf.reader().maxDoc(), points, Documents.VALUE);
                points.intersect(new Walk(found));
                var iterator = found.build().iterator();
                return iterator == null ? null : new ConstantScoreScorer(this, score(), scoreMode, iterator);
            }

            @Override
            public boolean isCacheable(LeafReaderContext leaf) {
                return true;
            }
        };
    }

    /** Takes the entries of points that lie within. */
    private final class Walk implements PointValues.IntersectVisitor {
        private final DocIdSetBuilder found;
        private DocIdSetBuilder.BulkAdder adder;

        Walk(DocIdSetBuilder found) {
            this.found = found;
        }

        @Override
        public void grow(int count) {
            adder = found.grow(count);
        }

        @Override
        public void visit(int entry) {
            adder.add(entry);
        }

        @Override
        public void visit(int entry, byte[] point) {
            double value = value(point);
            if (least <= value && value <= greatest && Arrays.binarySearch(keys, key(point)) >= 0) {
                adder.add(entry);
            }
        }

        @Override
        public Relation compare(byte[] lowest, byte[] highest) {
            int at = Arrays.binarySearch(keys, key(lowest));
            int next = at < 0 ? -at - 1 : at;
            if (next == keys.length
                    || keys[next] > key(highest)
                    || value(highest) < least
                    || value(lowest) > greatest) {
                return Relation.CELL_OUTSIDE_QUERY;
            }
            boolean oneKey = key(lowest) == key(highest);
            return oneKey && least <= value(lowest) && value(highest) <= greatest
                    ? Relation.CELL_INSIDE_QUERY
                    : Relation.CELL_CROSSES_QUERY;
        }

        private static double key(byte[] point) {
            return DoublePoint.decodeDimension(point, 0);
        }

        private static double value(byte[] point) {
            return DoublePoint.decodeDimension(point, Double.BYTES);
        }
    }

    @Override
    public void visit(QueryVisitor visitor) {
        visitor.visitLeaf(this);
    }

    @Override
    public String toString(String field) {
        return keys.length + " names, " + least + " to " + greatest;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ValueQuery query
                && Arrays.equals(keys, query.keys)
                && least == query.least
                && greatest == query.greatest;
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(keys) + Double.hashCode(least) + Double.hashCode(greatest);
    }
}
