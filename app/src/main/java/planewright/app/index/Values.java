package planewright.app.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.SortedSetDocValues;
import org.apache.lucene.search.DocIdSetIterator;

/** Under which names values stand in the entries of which builds. */
final class Values {
    private Values() {}

    /** Keys, as {@link Documents#key} makes them, with the builds that have such a value. */
    static Map<String, Set<String>> keys(IndexReader index) throws IOException {
        var keys = new HashMap<String, Set<String>>();
        for (var leaf : index.leaves()) {
            var measured = DocValues.getSortedSet(leaf.reader(), Documents.MEASURED);
            var builds = builds(leaf.reader());
            var found = new TreeMap<Long, BitSet>();
            each(leaf.reader(), measured, (entry, ordinal) -> {
                if (builds.advanceExact(entry)) {
                    found.computeIfAbsent(ordinal, key -> new BitSet()).set((int) builds.nextOrd());
                }
            });
            for (var one : found.entrySet()) {
                var named =
                        keys.computeIfAbsent(measured.lookupOrd(one.getKey()).utf8ToString(), key -> new HashSet<>());
                for (int build = one.getValue().nextSetBit(0); build >= 0; ) {
                    named.add(builds.lookupOrd(build).utf8ToString());
                    build = one.getValue().nextSetBit(build + 1);
                }
            }
        }
        return keys;
    }

    /** Where the values of some keys stand. */
    static List<SearchIndex.Place> places(IndexReader index, Predicate<String> wanted) throws IOException {
        var places = new ArrayList<SearchIndex.Place>();
        for (var leaf : index.leaves()) {
            var reader = leaf.reader();
            var measured = DocValues.getSortedSet(reader, Documents.MEASURED);
            var ordinals = ordinals(measured, wanted);
            if (ordinals.isEmpty()) {
                continue;
            }
            var entries = new BitSet();
            each(reader, measured, (entry, ordinal) -> {
                if (ordinals.get((int) ordinal)) {
                    entries.set(entry);
                }
            });
            var found = new Whereabouts(reader);
            for (int entry = entries.nextSetBit(0); entry >= 0; entry = entries.nextSetBit(entry + 1)) {
                places.add(found.of(entry));
            }
        }
        return places;
    }

    private static BitSet ordinals(SortedSetDocValues measured, Predicate<String> wanted) throws IOException {
        var ordinals = new BitSet();
        for (int i = 0; i < measured.getValueCount(); i++) {
            if (wanted.test(measured.lookupOrd(i).utf8ToString())) {
                ordinals.set(i);
            }
        }
        return ordinals;
    }

    private static SortedSetDocValues builds(LeafReader reader) throws IOException {
        return DocValues.getSortedSet(reader, Facet.BUILD.field());
    }

    private interface Seen {
        void value(int entry, long ordinal) throws IOException;
    }

    /** Goes through all values of the entries that are not deleted. */
    private static void each(LeafReader reader, SortedSetDocValues measured, Seen seen) throws IOException {
        var live = reader.getLiveDocs();
        for (int entry = measured.nextDoc(); entry != DocIdSetIterator.NO_MORE_DOCS; entry = measured.nextDoc()) {
            if (live == null || live.get(entry)) {
                for (int i = measured.docValueCount(); i > 0; i--) {
                    seen.value(entry, measured.nextOrd());
                }
            }
        }
    }
}
