package planewright.app.index;

import java.io.IOException;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.SortedSetDocValues;

/** Which entries the documents of one segment are; they are asked for in their order. */
final class Whereabouts {
    private final SortedSetDocValues builds;
    private final BinaryDocValues ids;
    private final NumericDocValues times;

    Whereabouts(LeafReader segment) throws IOException {
        builds = DocValues.getSortedSet(segment, Facet.BUILD.field());
        ids = DocValues.getBinary(segment, Documents.ID);
        times = DocValues.getNumeric(segment, Documents.AT);
    }

    SearchIndex.Place of(int document) throws IOException {
        if (!builds.advanceExact(document) || !ids.advanceExact(document) || !times.advanceExact(document)) {
            throw new IOException(IndexWords.say("the search index is damaged"));
        }
        return new SearchIndex.Place(
                builds.lookupOrd(builds.nextOrd()).utf8ToString(),
                ids.binaryValue().utf8ToString(),
                times.longValue());
    }
}
