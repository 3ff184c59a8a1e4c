package planewright.app.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import javax.measure.Unit;
import org.apache.lucene.codecs.Codec;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.CodecReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.SearcherManager;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.LockObtainFailedException;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.News;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.Slow;

/** Finds entries by their words and by what they hold. Methods may be called from any thread, and may touch the disk: not on the event thread. */
public final class SearchIndex implements AutoCloseable {
    /** Raised when documents are made differently; an index of another version is made anew. */
    private static final String VERSION = "search-6";

    /** Fewer and larger pieces of an index are made faster, and searched faster. */
    private static final double BUFFER_MEGABYTES = 96;

    private final OpenJournal journal;
    private final Progress progress;
    private final BenchAnalyzer analyzer = new BenchAnalyzer();
    private final IndexWriter writer;
    private final SearcherManager searchers;
    private final Runnable deaf;
    private final ReadWriteLock following = new ReentrantReadWriteLock();
    private final Queue<News> heard = new ConcurrentLinkedQueue<>();
    private final Set<String> followed = new HashSet<>();
    private final Map<String, String> words = new ConcurrentHashMap<>();

    /** Hears how far the index has been brought up to date. */
    public interface Progress {
        /** So many of so many builds are up to date. */
        void at(int done, int all);
    }

    private SearchIndex(Directory directory, OpenJournal journal, Progress progress) throws IOException {
        this.journal = journal;
        this.progress = progress;
        this.writer = writer(directory);
        try {
            this.searchers = new SearcherManager(writer, new PieceByPiece());
            checkIntegrity();
            this.deaf = journal.listen(this::hear);
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

    private IndexWriter writer(Directory directory) throws IOException {
        try {
            return new IndexWriter(directory, new IndexWriterConfig(analyzer).setRAMBufferSizeMB(BUFFER_MEGABYTES));
        } catch (IOException | RuntimeException failure) {
            directory.close();
            throw failure;
        }
    }

    /** Loads what every index needs, so that one opens sooner; the journal may be opened meanwhile. */
    public static void warmUp() {
        Codec.getDefault();
        SameMeaning.table();
    }

    /**
     * Opens the index of a journal and brings it up to date. One that is damaged, or was made by another version, is
     * deleted and made anew. Where another program holds it, as it may of a journal that both can only read, this one makes
     * its own in memory.
     *
     * @param progress hears how far it has come
     */
    public static SearchIndex open(Path cacheFolder, OpenJournal journal, Progress progress) throws IOException {
        Slow.work("opening the search index");
        var folder = cacheFolder.resolve(VERSION);
        try {
            IndexFolders.forgetOthers(cacheFolder, folder);
            return new SearchIndex(IndexFolders.open(folder), journal, progress);
        } catch (LockObtainFailedException held) {
            return new SearchIndex(new ByteBuffersDirectory(), journal, progress);
        } catch (IOException | RuntimeException damaged) {
            IndexFolders.delete(folder);
            return new SearchIndex(IndexFolders.open(folder), journal, progress);
        }
    }

    /**
     * The entries that bear all the words and pass the filter, what is meant most likely first. Where no entry does, words
     * that are nearly the same count.
     */
    public Hits find(Question question) throws IOException {
        return ask(finder -> finder.find(question));
    }

    /**
     * The same hits as {@link #find} gives, sooner: their number is counted only as far as finding them takes, their facets
     * not at all. For an answer while the words are still being typed.
     */
    public Hits glance(Question question) throws IOException {
        return ask(finder -> finder.glance(question));
    }

    /**
     * Names that entries bear, in the order of the alphabet.
     *
     * @param wanted which of them are asked for
     * @param most how many are given at most
     */
    public List<String> names(Named kind, Predicate<String> wanted, int most) throws IOException {
        return search(searcher -> new NamesInUse(searcher).of(kind, wanted, most));
    }

    /**
     * A name under which values stand.
     *
     * @param name as somebody wrote it
     * @param kind a unit of the kind that they have
     * @param builds the ids of those that have such values
     */
    public record ValueName(String name, Unit<?> kind, Set<String> builds) {}

    /** The names of all values in the entries; names that differ in their letter case stand apart. */
    public List<ValueName> valueNames() throws IOException {
        return search(searcher -> Values.keys(searcher.getIndexReader())).entrySet().parallelStream()
                .map(key -> Documents.valueName(key.getKey(), key.getValue()))
                .toList();
    }

    /**
     * An entry in which a value stands.
     *
     * @param build the id of its build
     * @param entry its id
     * @param minutes its time
     */
    public record Place(String build, String entry, long minutes) {}

    /** The entries in which a value of that name and kind stands, letter case and outer spaces aside; in any order. */
    public List<Place> valuePlaces(String name, Unit<?> kind) throws IOException {
        var wanted = Documents.key(name, kind);
        return search(searcher -> Values.places(searcher.getIndexReader(), wanted::equalsIgnoreCase));
    }

    private interface Asking<A, B> {
        B of(A asked) throws IOException;
    }

    private Hits ask(Asking<Finder, Hits> asking) throws IOException {
        return search(searcher -> asking.of(new Finder(searcher, journal, analyzer, SameMeaning.table())));
    }

    private <B> B search(Asking<IndexSearcher, B> asking) throws IOException {
        Slow.work("searching");
        follow();
        searchers.maybeRefreshBlocking();
        IndexSearcher searcher = searchers.acquire();
        try {
            return asking.of(searcher);
        } finally {
            searchers.release(searcher);
        }
    }

    @Override
    public void close() throws IOException {
        deaf.run();
        try {
            follow();
            commit();
        } finally {
            closeFiles();
        }
    }

    private void closeFiles() throws IOException {
        searchers.close();
        try {
            writer.close();
        } finally {
            writer.getDirectory().close();
            analyzer.close();
        }
    }

    private void checkIntegrity() throws IOException {
        var searcher = searchers.acquire();
        try {
            searcher.getIndexReader().leaves().parallelStream().forEach(leaf -> {
                try {
                    ((CodecReader) leaf.reader()).checkIntegrity();
                } catch (IOException damaged) {
                    throw new UncheckedIOException(IndexWords.say("the search index is damaged"), damaged);
                }
            });
        } finally {
            searchers.release(searcher);
        }
    }

    /** Indexes what is new or was changed while nobody looked, and forgets what is gone. */
    private void catchUp() throws IOException {
        journal.builds().forEach(build -> words.putIfAbsent(build.id(), Documents.wordsOf(build)));
        var wanted = Coverage.wanted(journal);
        if (wanted.isPresent() && wanted.equals(Coverage.noted(writer))) {
            return;
        }
        var stamps = stamps();
        var builds = journal.builds();
        var done = new AtomicInteger();
        builds.parallelStream().forEach(build -> {
            catchUp(build, stamps);
            progress.at(done.incrementAndGet(), builds.size());
        });
        forget(stamps.keySet());
        flushSideBySide();
        commit();
        searchers.maybeRefreshBlocking();
    }

    /** What each core has gathered is written on a core of its own. */
    private void flushSideBySide() {
        IntStream.rangeClosed(0, ForkJoinPool.getCommonPoolParallelism())
                .parallel()
                .forEach(part -> writing(writer::flushNextBuffer));
    }

    private void commit() throws IOException {
        searchers.maybeRefreshBlocking();
        var searcher = searchers.acquire();
        try {
            Coverage.of(searcher.getIndexReader()).note(writer);
        } finally {
            searchers.release(searcher);
        }
        writer.commit();
    }

    private void catchUp(BuildRecord build, Map<String, Long> stamps) {
        var documents = new BuildDocuments(Optional.of(build));
        var missing = new HashMap<String, Long>();
        var changed = new ArrayList<String>();
        for (var line : journal.lines(build.id())) {
            var stamp = stamps.remove(line.id());
            if (line.stamp() == 0 || stamp == null || stamp != documents.stamp(line.stamp())) {
                missing.put(line.id(), line.stamp());
                if (stamp != null) {
                    changed.add(line.id());
                }
            }
        }
        forget(changed);
        for (var entry : journal.entries(build.id(), missing.keySet())) {
            var document = documents.document(entry, journal.settled(missing.get(entry.id())));
            unlessFollowed(List.of(entry.id()), ids -> writer.addDocument(document));
        }
    }

    private void forget(Collection<String> ids) {
        unlessFollowed(ids, stale -> writer.deleteDocuments(Documents.of(stale)));
    }

    private interface Each {
        void write(List<String> ids) throws IOException;
    }

    /** Of entries for which a change came meanwhile, what the index holds is up to date already. */
    private void unlessFollowed(Collection<String> ids, Each writing) {
        following.readLock().lock();
        try {
            var rest = ids.stream().filter(id -> !followed.contains(id)).toList();
            if (!rest.isEmpty()) {
                writing(() -> writing.write(rest));
            }
        } finally {
            following.readLock().unlock();
        }
    }

    private interface Writing {
        void write() throws IOException;
    }

    private static void writing(Writing writing) {
        try {
            writing.write();
        } catch (IOException failure) {
            throw new UncheckedIOException(
                    IndexWords.say("the search index cannot be written: {0}", failure.getMessage()), failure);
        }
    }

    private Map<String, Long> stamps() throws IOException {
        var stamps = new ConcurrentHashMap<String, Long>();
        var searcher = searchers.acquire();
        try {
            Documents.stamps(searcher.getIndexReader(), stamps::put);
        } finally {
            searchers.release(searcher);
        }
        return stamps;
    }

    /** Nobody who saves waits for the index: it follows in the background, and before the next search. */
    private void hear(News news) {
        heard.add(news);
        CompletableFuture.runAsync(this::follow);
    }

    private void follow() {
        following.writeLock().lock();
        try {
            for (var news = heard.peek(); news != null; news = heard.peek()) {
                var next = news;
                writing(() -> take(next));
                heard.remove();
            }
        } finally {
            following.writeLock().unlock();
        }
    }

    private void take(News news) throws IOException {
        var gone = news.gone().stream().map(News.Gone::id).toList();
        if (!gone.isEmpty()) {
            followed.addAll(gone);
            writer.deleteDocuments(Documents.of(gone));
        }
        for (var each : news.present()) {
            if (each.record() instanceof EntryRecord entry) {
                var documents = new BuildDocuments(journal.build(entry.build()));
                update(entry.id(), documents.document(entry, journal.settled(each.stamp())));
            } else if (each.record() instanceof BuildRecord build) {
                take(build);
            }
        }
    }

    /** Entries are found by the name, the layout and the life of their build. */
    private void take(BuildRecord build) throws IOException {
        var now = Documents.wordsOf(build);
        if (!now.equals(words.put(build.id(), now))) {
            var documents = new BuildDocuments(Optional.of(build));
            var stamps = new HashMap<String, Long>();
            journal.lines(build.id()).forEach(line -> stamps.put(line.id(), line.stamp()));
            for (var entry : journal.entries(build.id(), stamps.keySet())) {
                update(entry.id(), documents.document(entry, journal.settled(stamps.get(entry.id()))));
            }
        }
    }

    private void update(String id, Document document) throws IOException {
        followed.add(id);
        writer.updateDocuments(Documents.of(List.of(id)), List.of(document));
    }
}
