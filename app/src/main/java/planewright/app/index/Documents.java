package planewright.app.index;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Unit;
import org.apache.lucene.document.BinaryDocValuesField;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.DoublePoint;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.LongPoint;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.SortedSetDocValuesField;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.StringHelper;
import planewright.api.journal.Life;
import planewright.api.quantity.Units;
import planewright.app.index.Pieces.Piece;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.OpenJournal;

/** Makes what the index holds of an entry. */
final class Documents {
    static final String ID = "id";
    static final String STAMP = "stamp";
    static final String BUILD = "build";

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

    private static final List<String> NAMING = List.of("tag", "measurement", "joint", "set-up", "picture");

    private final OpenJournal journal;

    Documents(OpenJournal journal) {
        this.journal = journal;
    }

    /**
     * What changes when the document of an entry would: with its file, and with what is found of its build.
     *
     * @param stamp of the file
     */
    long stamp(String build, long stamp) {
        return stamp(stamp, wordsOf(build).hashCode());
    }

    /**
     * The same.
     *
     * @param words what stands for {@link #wordsOf} its build
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

    /** What of a build is in the documents of its entries. */
    String wordsOf(String build) {
        return journal.build(build)
                .map(each ->
                        each.name() + "\n" + each.layout() + "\n" + each.life().word())
                .orElse("");
    }

    List<Piece> pieces(EntryRecord entry) {
        return Pieces.of(
                entry,
                journal.build(entry.build())
                        .map(build -> build.layout().isEmpty() ? build.name() : build.name() + ", " + build.layout())
                        .orElse(""));
    }

    Document document(EntryRecord entry, long stamp) {
        var document = new Document();
        var pieces = pieces(entry);
        long minutes =
                minutes(entry.at().toLocalDate()) + entry.at().toLocalTime().toSecondOfDay() / 60;
        document.add(new StringField(ID, entry.id(), Field.Store.YES));
        document.add(new BinaryDocValuesField(ID, new BytesRef(entry.id())));
        document.add(new StoredField(BUILD, entry.build()));
        document.add(new NumericDocValuesField(STAMP, stamp(entry.build(), stamp)));
        document.add(new TextField(ALL, Pieces.joined(pieces), Field.Store.NO));
        document.add(new TextField(TITLE, entry.title(), Field.Store.NO));
        document.add(new TextField(NAMES, names(pieces), Field.Store.NO));
        document.add(new LongPoint(AT, minutes));
        document.add(new NumericDocValuesField(AT, minutes));
        for (var facet : Facet.values()) {
            for (var value : facet.values(entry, life(entry))) {
                document.add(new StringField(facet.field(), term(value), Field.Store.NO));
                document.add(new SortedSetDocValuesField(facet.field(), new BytesRef(term(value))));
            }
        }
        for (var term : Named.terms(entry)) {
            document.add(new SortedSetDocValuesField(Named.FIELD, new BytesRef(term)));
        }
        for (var each : Measuring.values(entry)) {
            document.add(new SortedSetDocValuesField(MEASURED, new BytesRef(each.key())));
            document.add(new DoublePoint(VALUE, number(each.key()), each.value()));
        }
        return document;
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

    private String life(EntryRecord entry) {
        return journal.build(entry.build())
                .map(BuildRecord::life)
                .map(Life::word)
                .orElse("");
    }

    private static String names(List<Piece> pieces) {
        Stream<String> texts =
                pieces.stream().filter(piece -> NAMING.contains(piece.where())).map(Piece::words);
        return texts.collect(Collectors.joining("\n"));
    }
}
