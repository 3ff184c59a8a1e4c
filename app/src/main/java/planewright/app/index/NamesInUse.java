package planewright.app.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.apache.lucene.document.SortedSetDocValuesField;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.util.BytesRef;

/** Finds names that entries bear. */
record NamesInUse(IndexSearcher searcher) {
    /** In the order of the alphabet. */
    List<String> of(Named kind, Predicate<String> wanted, int most) throws IOException {
        var found = new ArrayList<String>();
        for (var name : ever(searcher.getIndexReader(), kind)) {
            if (found.size() < most && wanted.test(name) && isBorne(kind, name)) {
                found.add(name);
            }
        }
        return found;
    }

    /** An index goes on knowing names of what was deleted until it is tidied. */
    private static TreeSet<String> ever(IndexReader index, Named kind) throws IOException {
        var names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER.thenComparing(name -> name));
        for (var leaf : index.leaves()) {
            var terms = DocValues.getSortedSet(leaf.reader(), Named.FIELD).termsEnum();
            if (terms.seekCeil(new BytesRef(kind.head())) != TermsEnum.SeekStatus.END) {
                var term = terms.term();
                while (term != null && term.utf8ToString().startsWith(kind.head())) {
                    names.add(term.utf8ToString().substring(kind.head().length()));
                    term = terms.next();
                }
            }
        }
        return names;
    }

    private boolean isBorne(Named kind, String name) throws IOException {
        var bearing = SortedSetDocValuesField.newSlowExactQuery(Named.FIELD, new BytesRef(kind.head() + name));
        return searcher.search(bearing, 1).scoreDocs.length > 0;
    }
}
