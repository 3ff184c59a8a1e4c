package planewright.app.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;
import org.apache.lucene.analysis.tokenattributes.TermToBytesRefAttribute;
import org.apache.lucene.document.BinaryDocValuesField;
import org.apache.lucene.document.BinaryPoint;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.DoublePoint;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.SortedSetDocValuesField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.util.BytesRef;
import planewright.app.index.Pieces.Piece;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;

/**
 * Makes what the index holds of the entries of one build, one entry after another: a document is written before the next is made. For
 * one thread.
 */
final class BuildDocuments {
    private static final Set<String> NAMING = Set.of("tag", "measurement", "joint", "set-up", "picture");

    private final String build;
    private final String life;
    private final long stamp;
    private final StandardTokenizer text = new StandardTokenizer();
    private final TokenStream words = BenchAnalyzer.spelled(text);
    private final TermToBytesRefAttribute word = words.getAttribute(TermToBytesRefAttribute.class);
    private final PositionIncrementAttribute step = words.getAttribute(PositionIncrementAttribute.class);
    private final FieldWords all = new FieldWords();
    private final FieldWords title = new FieldWords();
    private final FieldWords names = new FieldWords();

    BuildDocuments(Optional<BuildRecord> build) {
        this.build = build.map(Pieces::words).orElse("");
        this.life = build.map(each -> each.life().word()).orElse("");
        this.stamp = build.map(Documents::wordsOf).orElse("").hashCode();
    }

    /** What tells whether the document of an entry is still what it would be now, by the stamp of the entry's file. */
    long stamp(long file) {
        return Documents.stamp(file, stamp);
    }

    Document document(EntryRecord entry, long file) {
        var document = new Document();
        document.add(new BinaryPoint(Documents.ID, Documents.point(entry.id())));
        document.add(new BinaryDocValuesField(Documents.ID, new BytesRef(entry.id())));
        document.add(new NumericDocValuesField(Documents.STAMP, stamp(file)));
        document.add(new NumericDocValuesField(Documents.AT, Documents.minutes(entry.at())));
        addWords(document, Pieces.of(entry, build));
        for (var facet : Facet.values()) {
            for (var value : facet.values(entry, life)) {
                document.add(new SortedSetDocValuesField(facet.field(), new BytesRef(Documents.term(value))));
            }
        }
        for (var term : Named.terms(entry)) {
            document.add(new SortedSetDocValuesField(Named.FIELD, new BytesRef(term)));
        }
        for (var each : Measuring.values(entry)) {
            document.add(new SortedSetDocValuesField(Documents.MEASURED, new BytesRef(each.key())));
            document.add(new DoublePoint(Documents.VALUE, Documents.number(each.key()), each.value()));
        }
        return document;
    }

    private void addWords(Document document, List<Piece> pieces) {
        all.clear();
        title.clear();
        names.clear();
        try {
            for (var piece : pieces) {
                spell(piece);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("a text in memory cannot fail to be read", impossible);
        }
        document.add(new Field(Documents.ALL, all, TextField.TYPE_NOT_STORED));
        document.add(new Field(Documents.TITLE, title, TextField.TYPE_NOT_STORED));
        document.add(new Field(Documents.NAMES, names, TextField.TYPE_NOT_STORED));
    }

    private void spell(Piece piece) throws IOException {
        boolean isTitle = piece.where().equals("title");
        boolean isNaming = NAMING.contains(piece.where());
        text.setReader(new NumberReader(piece.words()));
        words.reset();
        while (words.incrementToken()) {
            var written = word.getBytesRef();
            int after = step.getPositionIncrement();
            all.add(written, after);
            if (isTitle) {
                title.add(written, after);
            }
            if (isNaming) {
                names.add(written, after);
            }
        }
        words.end();
        words.close();
    }
}
