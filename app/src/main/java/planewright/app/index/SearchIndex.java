package planewright.app.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.StringField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.index.CodecReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.MultiBits;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.SearcherManager;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.NRTCachingDirectory;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.Slow;

/** Finds entries by their words. Methods may be called from any thread, and may touch the disk: not on the event thread. */
public final class SearchIndex implements AutoCloseable {
    /** Raised when documents are made differently; an index of another version is made anew. */
    private static final String VERSION = "search-1";

    private static final String ALL = "all";
    private static final String ID = "id";
    private static final String BUILD = "build";
    private static final String STAMP = "stamp";

    private final OpenJournal journal;
    private final Analyzer analyzer;
    private final IndexWriter writer;
    private final SearcherManager searchers;
    private final Runnable deaf;
    private final Set<String> followed = new HashSet<>();

    private SearchIndex(Path folder, OpenJournal journal) throws IOException {
        this.journal = journal;
        this.analyzer = new StandardAnalyzer();
        var directory = new NRTCachingDirectory(FSDirectory.open(folder), 5, 60);
        this.writer = new IndexWriter(directory, new IndexWriterConfig(analyzer));
        try {
            this.searchers = new SearcherManager(writer, null);
            this.deaf = journal.listen(this::follow);
        } catch (IOException | RuntimeException failure) {
            writer.rollback();
            directory.close();
            throw failure;
        }
        try {
            catchUp();
        } catch (IOException | RuntimeException failure) {
            deaf.run();
            writer.rollback();
            directory.close();
            throw failure;
        }
    }

    /**
     * Opens the index of a journal and brings it up to date. One that is damaged, or was made by another version, is
     * deleted and made anew.
     */
    public static SearchIndex open(Path cacheFolder, OpenJournal journal) throws IOException {
        Slow.work("opening the search index");
        var folder = cacheFolder.resolve(VERSION);
        try {
            return new SearchIndex(folder, journal);
        } catch (IOException | RuntimeException damaged) {
            delete(folder);
            return new SearchIndex(folder, journal);
        }
    }

    /**
     * The entries that bear all the words typed, the last perhaps unfinished; words in quotes stand in a row. Where no
     * entry does, words that are nearly the same count.
     *
     * @param build only in this build's log; empty for all
     * @param limit how many hits at most
     */
    public Hits find(String typed, Optional<String> build, int limit) throws IOException {
        Slow.work("searching");
        var question = new Question(typed, analyzer);
        if (question.isEmpty()) {
            return new Hits(0, List.of(), false);
        }
        searchers.maybeRefreshBlocking();
        IndexSearcher searcher = searchers.acquire();
        try {
            var exact = within(question.exact(ALL), build);
            int total = searcher.count(exact);
            boolean forgiving = total == 0;
            var query = forgiving ? within(question.forgiving(ALL), build) : exact;
            var found = searcher.search(query, Math.max(1, limit));
            var hits = new ArrayList<Hits.Hit>();
            for (var scored : found.scoreDocs) {
                var id = searcher.storedFields().document(scored.doc).get(ID);
                journal.entry(id).map(entry -> hit(entry, question, forgiving)).ifPresent(hits::add);
            }
            return new Hits(forgiving ? searcher.count(query) : total, hits, forgiving && !hits.isEmpty());
        } finally {
            searchers.release(searcher);
        }
    }

    @Override
    public void close() throws IOException {
        deaf.run();
        searchers.close();
        writer.close();
        writer.getDirectory().close();
        analyzer.close();
    }

    private Hits.Hit hit(EntryRecord entry, Question question, boolean forgiving) {
        var excerpts = Pieces.of(entry, buildName(entry)).stream()
                .map(piece -> new Hits.Excerpt(piece.where(), piece.text(), question.marks(piece.text(), forgiving)))
                .filter(excerpt -> !excerpt.marks().isEmpty())
                .toList();
        return new Hits.Hit(entry.id(), entry.build(), excerpts);
    }

    private static Query within(Query query, Optional<String> build) {
        if (build.isEmpty()) {
            return query;
        }
        return new BooleanQuery.Builder()
                .add(query, BooleanClause.Occur.MUST)
                .add(new TermQuery(new Term(BUILD, build.get())), BooleanClause.Occur.FILTER)
                .build();
    }

    /** Indexes what is new or was changed while nobody looked, and forgets what is gone. */
    private void catchUp() throws IOException {
        var stamps = stamps();
        for (var build : journal.builds()) {
            for (var entry : journal.log(build.id())) {
                catchUp(entry, stamps.remove(entry.id()));
            }
        }
        for (var gone : stamps.keySet()) {
            forget(gone);
        }
        writer.commit();
        searchers.maybeRefreshBlocking();
    }

    /** An edit that came meanwhile has brought its entry up to date already. */
    private synchronized void catchUp(EntryRecord entry, String stamp) throws IOException {
        var document = document(entry);
        if (!document.get(STAMP).equals(stamp) && !followed.contains(entry.id())) {
            writer.updateDocument(new Term(ID, entry.id()), document);
        }
    }

    private synchronized void forget(String gone) throws IOException {
        if (!followed.contains(gone)) {
            writer.deleteDocuments(new Term(ID, gone));
        }
    }

    private Map<String, String> stamps() throws IOException {
        var stamps = new HashMap<String, String>();
        IndexSearcher searcher = searchers.acquire();
        try {
            var reader = searcher.getIndexReader();
            for (var leaf : reader.leaves()) {
                ((CodecReader) leaf.reader()).checkIntegrity();
            }
            var live = MultiBits.getLiveDocs(reader);
            var stored = reader.storedFields();
            for (int doc = 0; doc < reader.maxDoc(); doc++) {
                if (live == null || live.get(doc)) {
                    var document = stored.document(doc);
                    stamps.put(document.get(ID), document.get(STAMP));
                }
            }
        } finally {
            searchers.release(searcher);
        }
        return stamps;
    }

    private void follow(Edit edit) {
        try {
            for (var change : edit.changes()) {
                if (change.subject() instanceof EntryRecord entry) {
                    follow(entry, change.after().isPresent());
                } else if (change.subject() instanceof BuildRecord build
                        && change.after().isPresent()) {
                    for (var entry : journal.log(build.id())) {
                        follow(entry, true);
                    }
                }
            }
        } catch (IOException failure) {
            throw new UncheckedIOException("the search index cannot be written: " + failure.getMessage(), failure);
        }
    }

    private synchronized void follow(EntryRecord entry, boolean present) throws IOException {
        followed.add(entry.id());
        if (present) {
            writer.updateDocument(new Term(ID, entry.id()), document(entry));
        } else {
            writer.deleteDocuments(new Term(ID, entry.id()));
        }
    }

    private Document document(EntryRecord entry) {
        var text = Pieces.joined(Pieces.of(entry, buildName(entry)));
        var stamp = UUID.nameUUIDFromBytes((entry.build() + "\n" + text).getBytes(StandardCharsets.UTF_8));
        var document = new Document();
        document.add(new StringField(ID, entry.id(), Field.Store.YES));
        document.add(new StringField(BUILD, entry.build(), Field.Store.NO));
        document.add(new StringField(STAMP, stamp.toString(), Field.Store.YES));
        document.add(new TextField(ALL, text, Field.Store.NO));
        return document;
    }

    private String buildName(EntryRecord entry) {
        return journal.build(entry.build()).map(BuildRecord::name).orElse("");
    }

    private static void delete(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}
