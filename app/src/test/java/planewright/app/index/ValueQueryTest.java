package planewright.app.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.DoublePoint;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.junit.jupiter.api.Test;

/** Points of many names, found by the query and by looking at each of them. */
class ValueQueryTest {
    private static final int NAMES = 1_500;
    private static final int ENTRIES = 6_000;

    private final Random random = new Random(7);

    private record Value(int entry, double key, double value) {}

    @Test
    void findsWhatLookingAtEveryValueFinds() throws IOException {
        var names = random.doubles(NAMES, 0, 1e15).map(Math::rint).toArray();
        var values = values(names);
        try (var directory = new ByteBuffersDirectory()) {
            write(values, directory);
            try (var reader = DirectoryReader.open(directory)) {
                var searcher = new IndexSearcher(reader);
                for (int wanted : new int[] {1, 3, 40, NAMES}) {
                    compare(searcher, values, Arrays.copyOf(names, wanted), 20, 60);
                    compare(searcher, values, Arrays.copyOf(names, wanted), Double.NEGATIVE_INFINITY, 7);
                    compare(searcher, values, Arrays.copyOf(names, wanted), 0, 100);
                    compare(searcher, values, Arrays.copyOf(names, wanted), 200, 300);
                }
            }
        }
    }

    @Test
    void workedOutOnceItFindsTheSameTwice() throws IOException {
        var names = new double[] {3, 8};
        var values = values(names);
        try (var directory = new ByteBuffersDirectory()) {
            write(values, directory);
            try (var reader = DirectoryReader.open(directory)) {
                var searcher = new IndexSearcher(reader);
                var query = new ValueQuery(names, 10, 50);
                var once = new Once(query);
                var found = found(searcher, query);
                assertThat(found).isNotEmpty();
                assertThat(found(searcher, once)).isEqualTo(found);
                assertThat(found(searcher, once)).isEqualTo(found);
                assertThat(searcher.count(once)).isEqualTo(found.size());
            }
        }
    }

    private static void compare(IndexSearcher searcher, List<Value> values, double[] keys, double least, double most)
            throws IOException {
        Arrays.sort(keys);
        Set<Integer> expected = values.stream()
                .filter(each -> Arrays.binarySearch(keys, each.key()) >= 0)
                .filter(each -> least <= each.value() && each.value() <= most)
                .map(Value::entry)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(found(searcher, new ValueQuery(keys, least, most))).isEqualTo(expected);
    }

    private List<Value> values(double[] names) {
        var values = new ArrayList<Value>();
        for (int entry = 0; entry < ENTRIES; entry++) {
            for (int i = random.nextInt(3); i > 0; i--) {
                values.add(new Value(entry, names[random.nextInt(names.length)], random.nextInt(100)));
            }
        }
        return values;
    }

    private static Set<Integer> found(IndexSearcher searcher, Query query) throws IOException {
        var found = new TreeSet<Integer>();
        for (var hit : searcher.search(query, ENTRIES).scoreDocs) {
            found.add(searcher.storedFields()
                    .document(hit.doc)
                    .getField("entry")
                    .numericValue()
                    .intValue());
        }
        return found;
    }

    private static void write(List<Value> values, ByteBuffersDirectory directory) throws IOException {
        try (var writer = new IndexWriter(
                directory,
                new IndexWriterConfig()
                        .setMaxBufferedDocs(900)
                        .setRAMBufferSizeMB(IndexWriterConfig.DISABLE_AUTO_FLUSH))) {
            int next = 0;
            for (int entry = 0; entry < ENTRIES; entry++) {
                var document = new Document();
                document.add(new StoredField("entry", entry));
                for (; next < values.size() && values.get(next).entry() == entry; next++) {
                    var each = values.get(next);
                    document.add(new DoublePoint(Documents.VALUE, each.key(), each.value()));
                }
                writer.addDocument(document);
            }
        }
    }
}
