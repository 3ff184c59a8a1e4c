package planewright.app.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import planewright.api.figure.Outline;
import planewright.app.files.SafeFile;
import planewright.app.journal.Archive;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryLine;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Kept;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.Slow;
import planewright.app.journal.Storage;
import planewright.app.outline.OutlineShelf;
import planewright.app.pictures.PictureShelf;

/** A journal on disk: one folder, opened by one program at a time. Its layout stands in {@code README.md} of each journal. */
public final class JournalFolder implements Storage, AutoCloseable {
    /** The file that makes a folder a journal. */
    public static final String HEAD = "journal.json";

    private static final System.Logger LOGGER = System.getLogger(JournalFolder.class.getName());

    private final Path folder;
    private final JournalHead head;
    private final JournalLock lock;
    private final Optional<String> readOnly;
    private final Path cache;
    private final PictureShelf pictures;
    private final OutlineShelf outlines;
    private final OpenJournal journal;
    private final Places places;
    private final Survey survey;
    private final RecordStore records;
    private final Bin bin;
    private final AtomicLong saves = new AtomicLong();
    private final Instant opened;
    private volatile boolean catalogued;
    private boolean swept;
    private Optional<Watch> watch = Optional.empty();

    private JournalFolder(Path folder, JournalLock lock, UserFolders user) throws IOException {
        this.folder = folder;
        this.lock = lock;
        this.opened = lock.since();
        this.bin = new Bin(folder.resolve("bin"));
        this.head = JournalHead.read(folder);
        this.readOnly = head.refusal().or(lock::refusal);
        this.cache = user.cacheOf(id(), folder);
        this.pictures = new PictureShelf(folder.resolve("photos"), cache.resolve("thumbnails"), this::requireWritable);
        this.outlines = new OutlineShelf(folder.resolve("outlines"), this::requireWritable);
        this.places = new Places(folder);
        this.survey = new Survey(folder, places, readOnly.isEmpty());
        this.records = new RecordStore(head, places, bin);
        var known = Catalogue.load(cache);
        this.catalogued = known.isPresent();
        var catalogue = known.orElse(new Catalogue(Map.of(), Map.of()));
        var found = survey.records(catalogue.builds());
        this.journal = OpenJournal.unread(head.name(), found, lines(found, catalogue), new Reading(), this);
        journal.listen(news -> catalogued = false);
    }

    /** Lines of builds that are still there; a build that is new has none yet. */
    private Map<String, List<EntryLine>> lines(List<Kept> found, Catalogue catalogue) throws IOException {
        var lines = new HashMap<String, List<EntryLine>>();
        for (var record : found) {
            if (record instanceof BuildRecord build) {
                var folder = places.of(build).getParent().getFileName().toString();
                var known = Optional.ofNullable(catalogue.builds().get(folder))
                        .filter(each -> each.head().id().equals(build.id()));
                lines.put(build.id(), known.map(Catalogue.Known::lines).orElse(List.of()));
                if (!catalogue.odd().isEmpty()) {
                    noteOdd(build, lines.get(build.id()), catalogue);
                }
            }
        }
        return lines;
    }

    private void noteOdd(BuildRecord build, List<EntryLine> log, Catalogue catalogue) throws IOException {
        for (var line : log) {
            var odd = catalogue.odd().get(line.id());
            if (odd != null) {
                places.noteEntry(
                        build.id(),
                        line.id(),
                        folder.resolve(RecordFiles.BUILDS).resolve(odd));
            }
        }
    }

    /**
     * Makes a journal in a folder that is empty or does not exist yet.
     *
     * @throws JournalRefused if something is there already
     */
    public static void create(Path folder, String name) throws IOException {
        if (name.isBlank()) {
            throw new JournalRefused("name of the journal is '{0}'; accepted: some words", name);
        }
        if (Files.exists(folder) && !isEmptyFolder(folder)) {
            throw new JournalRefused(
                    "folder {0} is not empty; a new journal needs an empty folder or one that does not exist yet",
                    folder);
        }
        JournalHead.create(folder, name);
    }

    /** What the file {@value #HEAD} of a journal says. */
    public static String head(UUID id, String name) {
        return JournalHead.text(id, name);
    }

    /** Whether a folder is a journal's. */
    public static boolean isJournal(Path folder) {
        return Files.isRegularFile(folder.resolve(HEAD));
    }

    /**
     * Opens a journal and looks at every file in it. Where its folder cannot be written in, or its format is newer than this
     * program, it is open for reading only.
     *
     * @throws JournalRefused if there is no journal, or it is open elsewhere
     */
    public static JournalFolder open(Path folder, UserFolders user) throws IOException {
        var opened = openAsKnown(folder, user);
        try {
            opened.look((done, all) -> {});
            return opened;
        } catch (IOException | RuntimeException failure) {
            opened.close();
            throw failure;
        }
    }

    /**
     * As {@link #open}, with what was known of the entries when the journal was open last: what has changed since shows only
     * after {@link #look}.
     */
    public static JournalFolder openAsKnown(Path folder, UserFolders user) throws IOException {
        Slow.work("opening a journal");
        if (!isJournal(folder)) {
            throw new JournalRefused(
                    "there is no journal in {0}: it holds no file {1}; name a journal's folder, or make a new journal there",
                    folder, HEAD);
        }
        var lock = JournalLock.take(folder);
        try {
            return new JournalFolder(folder, lock, user);
        } catch (Unreadable reason) {
            lock.close();
            throw new JournalRefused("journal {0}: {1} cannot be used: {2}", folder, HEAD, reason.getMessage());
        } catch (IOException | RuntimeException failure) {
            lock.close();
            throw failure;
        }
    }

    /** Whether anything was known of the entries at opening; if not, {@link #look} has all of them to read. */
    public boolean isKnown() {
        return catalogued;
    }

    /** Hears how far a look has come. */
    public interface Progress {
        /** So many of so many builds have been looked at. */
        void at(int done, int all);
    }

    /** Looks at every file; what other programs have changed is taken in and told to whoever listens to the journal. */
    public void look(Progress progress) throws IOException {
        Slow.work("looking at all files");
        if (!isJournal(folder)) {
            throw new JournalRefused(unreachable());
        }
        sweep();
        survey.look(journal, saves::get, folder -> true, progress);
        keepCatalogue();
    }

    /** Removes what killed saves have left, once: while this program holds the lock, no other leaves any. */
    private synchronized void sweep() throws IOException {
        if (readOnly.isEmpty() && !swept) {
            SafeFile.sweepFlat(folder);
            for (var ours : List.of(RecordFiles.TEMPLATES, "outlines", "photos", "schema", "bin")) {
                SafeFile.sweep(folder.resolve(ours));
            }
            swept = true;
        }
    }

    /**
     * From now on, until the journal is closed, what other programs write is taken in as soon as the system tells of it. Where
     * it cannot tell, as on some network drives, only {@link #look} finds it.
     */
    public synchronized void watch() throws IOException {
        Slow.work("watching folders");
        watch = Optional.of(Watch.begin(folder, this::lookAt));
    }

    private void lookAt(Set<Path> builds) throws IOException {
        if (isJournal(folder)) {
            survey.look(journal, saves::get, builds::contains, (done, all) -> {});
        }
    }

    public Path folder() {
        return folder;
    }

    /** The journal's UUID. */
    public String id() {
        return head.id();
    }

    public OpenJournal journal() {
        return journal;
    }

    public PictureShelf pictures() {
        return pictures;
    }

    public OutlineShelf outlines() {
        return outlines;
    }

    /** Where a build's files lie. */
    public Path folderOf(BuildRecord build) throws IOException {
        return places.of(build).getParent();
    }

    /** Where a record's file lies, or would. */
    public Path fileOf(Kept record) throws IOException {
        return places.of(record);
    }

    /** What could not be read when it was looked at last; those files are as they were. */
    public List<SetAside> setAside() {
        return survey.setAside();
    }

    /** Where another program has written into the same fields since the journal was opened. */
    public List<Clash> clashes() {
        return records.clashes();
    }

    /** Why nothing can be written here; empty where it can. */
    public Optional<String> readOnly() {
        return readOnly;
    }

    /** Deleted records that can be brought back: add them again. The last deleted comes first. */
    public synchronized List<Binned> binned() throws IOException {
        Slow.work("looking into the bin");
        return bin.all().stream().filter(each -> !journal.holds(each.record())).toList();
    }

    /** Throws a deleted record away for good. */
    public synchronized void forget(Binned deleted) throws IOException {
        requireWritable();
        bin.forget(deleted.record().id());
    }

    @Override
    public synchronized Saved save(Edit.Change change) throws IOException {
        requireWritable();
        if (!lock.isHeld()) {
            throw new IOException(StoreWords.say("journal {0} is closed; open it again and repeat the edit", folder));
        }
        try {
            return records.save(change);
        } finally {
            saves.incrementAndGet();
        }
    }

    /** Waits for a save under way; none is made after. */
    @Override
    public void close() throws IOException {
        synchronized (this) {
            if (watch.isPresent()) {
                watch.get().close();
            }
        }
        keepCatalogue();
        synchronized (this) {
            lock.close();
        }
    }

    /** The catalogue only spares time: where it cannot be written, the journal is read again. */
    private void keepCatalogue() {
        if (!catalogued) {
            try {
                survey.catalogue(journal).save(cache, opened);
                catalogued = true;
            } catch (IOException failure) {
                LOGGER.log(System.Logger.Level.WARNING, "the catalogue of " + folder + " cannot be kept", failure);
            }
        }
    }

    /** What is read when it is wanted. What is broken is left out, for the journal is open and the rest counts. */
    private final class Reading implements Archive {
        @Override
        public List<EntryRecord> read(String build, Collection<String> ids) {
            var read = new ArrayList<EntryRecord>();
            for (var entry : ids) {
                try {
                    read.add(FileKind.ENTRY.read(JsonFiles.read(places.entry(build, entry))));
                } catch (IOException unreadable) {
                    requireReachable(unreadable);
                }
            }
            return read;
        }

        @Override
        public long settled(long stamp) {
            return Stamp.settled(stamp, opened);
        }

        @Override
        public Optional<Outline> outline(String hash) {
            try {
                return Optional.of(outlines.read(hash));
            } catch (IOException unreadable) {
                requireReachable(unreadable);
                return Optional.empty();
            }
        }
    }

    /** One file may be broken or gone, and is set aside at the next look; without its folder nothing can be said. */
    private void requireReachable(IOException failure) {
        if (!isJournal(folder)) {
            throw new UncheckedIOException(unreachable(), failure);
        }
    }

    private String unreachable() {
        return StoreWords.say("the journal's folder {0} cannot be reached; is its disk or stick connected?", folder);
    }

    private void requireWritable() throws IOException {
        if (readOnly.isPresent()) {
            throw new JournalRefused("journal {0} is open for reading only: {1}", folder, readOnly.get());
        }
        if (!isJournal(folder)) {
            throw new JournalRefused(unreachable());
        }
    }

    private static boolean isEmptyFolder(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isEmpty();
        }
    }
}
