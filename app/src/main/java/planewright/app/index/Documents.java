package planewright.app.index;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.Set;
import java.util.UUID;
import javax.measure.Unit;
import org.apache.lucene.document.BinaryPoint;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.Query;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.StringHelper;
import planewright.api.quantity.Units;
import planewright.app.journal.BuildRecord;

/** What the index holds of entries, by name. */
final class Documents {
    /** The entry's id, and its {@link #point}: a word that one document alone bears costs more to index. */
    static final String ID = "id";

    static final String STAMP = "stamp";

    /** All words. */
    static final String ALL = "all";

    static final String TITLE = "title";

    /** The words of tags and of what is measured, joined and set. */
    static final String NAMES = "names";

    /** The entry's day and time, in minutes. */
    static final String AT = "at";

    /** Points of two numbers: which {@link #MEASURED} it is, and its value in the system unit. */
    static final String VALUE = "value";

    /** The names of measured values, each with the kind of quantity. */
    static final String MEASURED = "measured";

    private Documents() {}

    /**
     * What changes when the document of an entry would: with its file, and with what is found of its build.
     *
     * @param stamp of the file
     * @param words a number that stands for {@link #wordsOf} its build
     */
    static long stamp(long stamp, long words) {
        return 31 * stamp + words;
    }

    /** Hears the ids and stamps of all entries in an index. */
    interface Stamped {
        void entry(String id, long stamp);
    }

    static void stamps(IndexReader index, Stamped stamped) throws IOException {
        for (var leaf : index.leaves()) {
            var live = leaf.reader().getLiveDocs();
            var ids = DocValues.getBinary(leaf.reader(), ID);
            var numbers = DocValues.getNumeric(leaf.reader(), STAMP);
            for (int doc = ids.nextDoc(); doc != DocIdSetIterator.NO_MORE_DOCS; doc = ids.nextDoc()) {
                if ((live == null || live.get(doc)) && numbers.advanceExact(doc)) {
                    stamped.entry(ids.binaryValue().utf8ToString(), numbers.longValue());
                }
            }
        }
    }

    /** The point of an id: 128 bits of its hash. */
    static byte[] point(String id) {
        var hash = UUID.nameUUIDFromBytes(id.getBytes(StandardCharsets.UTF_8));
        return ByteBuffer.allocate(2 * Long.BYTES)
                .putLong(hash.getMostSignificantBits())
                .putLong(hash.getLeastSignificantBits())
                .array();
    }

    /** Finds the documents of entries. */
    static Query of(Collection<String> ids) {
        return BinaryPoint.newSetQuery(ID, ids.stream().map(Documents::point).toArray(byte[][]::new));
    }

    /** What of a build is in the documents of its entries. */
    static String wordsOf(BuildRecord build) {
        return build.name() + "\n" + build.layout() + "\n" + build.life().word();
    }

    static long minutes(LocalDateTime time) {
        return minutes(time.toLocalDate()) + time.toLocalTime().toSecondOfDay() / 60;
    }

    static long minutes(LocalDate day) {
        return day.atStartOfDay().toEpochSecond(ZoneOffset.UTC) / 60;
    }

    /** The longest that a term may be is 32766 bytes; nobody has such a tag, but a file may. */
    static String term(String value) {
        return value.length() > 500 ? value.substring(0, 500) : value;
    }

    /** The key of a value's name and kind. */
    static String key(String name, Unit<?> unit) {
        return MeasuredRange.kindOf(unit) + " " + term(name.strip());
    }

    /** What a key stands for. */
    static SearchIndex.ValueName valueName(String key, Set<String> builds) {
        int end = key.indexOf(' ');
        return new SearchIndex.ValueName(
                key.substring(end + 1), Units.ofCode(key.substring(0, end)).orElseThrow(), builds);
    }

    /** A number that stands for a key: 53 bits of its hash, as many as a double keeps. */
    static double number(String key) {
        var bytes = new BytesRef(key);
        long high = StringHelper.murmurhash3_x86_32(bytes, 1);
        long low = Integer.toUnsignedLong(StringHelper.murmurhash3_x86_32(bytes, 2));
        return (high << 32 | low) >>> 11;
    }
}
