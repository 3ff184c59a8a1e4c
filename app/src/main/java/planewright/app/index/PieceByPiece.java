package planewright.app.index;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.SearcherFactory;

/** Makes searchers that search the pieces of an index side by side. */
final class PieceByPiece extends SearcherFactory {
    @Override
    public IndexSearcher newSearcher(IndexReader reader, IndexReader previous) {
        return new IndexSearcher(reader, ForkJoinPool.commonPool()) {
            @Override
            protected LeafSlice[] slices(List<LeafReaderContext> leaves) {
                return slices(leaves, 1, 1);
            }
        };
    }
}
