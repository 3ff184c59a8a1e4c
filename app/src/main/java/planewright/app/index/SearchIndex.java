package planewright.app.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.lucene.index.CodecReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.MultiBits;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.SearcherManager;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.NRTCachingDirectory;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.Slow;

/** Finds entries by their words and by what they hold. Methods may be called from any thread, and may touch the disk: not on the event thread. */
public final class SearchIndex implements AutoCloseable {
    /** Raised when documents are made differently; an index of another version is made anew. */
    private static final String VERSION = "search-2";

    private final OpenJournal journal;
    private final BenchAnalyzer analyzer = new BenchAnalyzer();
    private final SameMeaning sameMeaning = SameMeaning.read(analyzer);
    private final Documents documents;
    private final IndexWriter writer;
    private final SearcherManager searchers;
    private final Runnable deaf;
    private final Set<String> followed = new HashSet<>();

    private SearchIndex(Path folder, OpenJournal journal) throws IOException {
        this.journal = journal;
        this.documents = new Documents(journal);
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
            forgetOthers(cacheFolder, folder);
            return new SearchIndex(folder, journal);
        } catch (IOException | RuntimeException damaged) {
            delete(folder);
            return new SearchIndex(folder, journal);
        }
    }

    /**
     * The entries that bear all the words and pass the filter, what is meant most likely first. Where no entry does, words
     * that are nearly the same count.
     */
    public Hits find(Question question) throws IOException {
        Slow.work("searching");
        searchers.maybeRefreshBlocking();
        IndexSearcher searcher = searchers.acquire();
        try {
            return new Finder(searcher, journal, documents, analyzer, sameMeaning).find(question);
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
        if (!documents.stamp(entry).equals(stamp) && !followed.contains(entry.id())) {
            writer.updateDocument(new Term(Documents.ID, entry.id()), documents.document(entry));
        }
    }

    private synchronized void forget(String gone) throws IOException {
        if (!followed.contains(gone)) {
            writer.deleteDocuments(new Term(Documents.ID, gone));
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
                    stamps.put(document.get(Documents.ID), document.get(Documents.STAMP));
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
                } else if (change.subject() instanceof BuildRecord build && isOfItsEntries(change)) {
                    for (var entry : journal.log(build.id())) {
                        follow(entry, true);
                    }
                }
            }
        } catch (IOException failure) {
            throw new UncheckedIOException("the search index cannot be written: " + failure.getMessage(), failure);
        }
    }

    /** Entries are found by the name, the layout and the life of their build. */
    private static boolean isOfItsEntries(Edit.Change change) {
        return change.after().isPresent()
                && !(change.before().orElse(null) instanceof BuildRecord before
                        && change.after().get() instanceof BuildRecord after
                        && before.name().equals(after.name())
                        && before.layout().equals(after.layout())
                        && before.life() == after.life());
    }

    private synchronized void follow(EntryRecord entry, boolean present) throws IOException {
        followed.add(entry.id());
        if (present) {
            writer.updateDocument(new Term(Documents.ID, entry.id()), documents.document(entry));
        } else {
            writer.deleteDocuments(new Term(Documents.ID, entry.id()));
        }
    }

    /** Indexes that other versions of the program have made. */
    private static void forgetOthers(Path cacheFolder, Path own) throws IOException {
        if (Files.isDirectory(cacheFolder)) {
            try (var others = Files.newDirectoryStream(cacheFolder, "search-*")) {
                for (var other : others) {
                    if (!other.equals(own)) {
                        delete(other);
                    }
                }
            }
        }
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
