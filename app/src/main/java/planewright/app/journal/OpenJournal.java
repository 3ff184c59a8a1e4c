package planewright.app.journal;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Supplier;
import planewright.api.figure.Outline;
import planewright.api.journal.JournalReader;
import planewright.api.journal.Template;

/**
 * The journal as it is open. Reading is done from any thread and sees an edit wholly or not at all; it waits for the disk
 * only where a log is not at hand. An edit waits for the disk. What waits refuses to run on the event thread. Listeners hear
 * of a change after it is durable, on the thread that made it.
 */
public final class OpenJournal implements JournalReader {
    private static final System.Logger LOGGER = System.getLogger(OpenJournal.class.getName());

    private final String name;
    private final Storage storage;
    private final Deque<Edit> done = new ArrayDeque<>();
    private final Deque<Edit> undone = new ArrayDeque<>();
    private final List<Consumer<News>> listeners = new CopyOnWriteArrayList<>();
    private volatile Contents contents;

    private OpenJournal(String name, Contents contents, Storage storage) {
        this.name = name;
        this.storage = storage;
        this.contents = contents;
    }

    /** A journal that is wholly in memory. */
    public static OpenJournal read(String name, Collection<? extends Kept> records, Storage storage) {
        return new OpenJournal(name, Contents.read(records), storage);
    }

    /**
     * A journal whose entries are read when they are wanted.
     *
     * @param records all but the entries
     * @param lines of all entries, by the ids of their builds
     */
    public static OpenJournal unread(
            String name,
            Collection<? extends Kept> records,
            Map<String, List<EntryLine>> lines,
            Archive archive,
            Storage storage) {
        return new OpenJournal(name, Contents.unread(records, lines, archive), storage);
    }

    /** What its owner calls it. */
    public String name() {
        return name;
    }

    @Override
    public List<BuildRecord> builds() {
        return contents.builds();
    }

    @Override
    public List<EntryRecord> log(String buildId) {
        return contents.log(buildId);
    }

    @Override
    public Optional<BuildRecord> build(String id) {
        return contents.build(id);
    }

    @Override
    public List<TemplateRecord> templates() {
        return contents.templates();
    }

    /** Waits for the disk. */
    @Override
    public Optional<Outline> outline(Template template) {
        return contents.outline(template);
    }

    @Override
    public Optional<CalendarRecord> calendar() {
        return contents.calendar();
    }

    @Override
    public List<MaterialRecord> materials() {
        return contents.materials();
    }

    /** The list of materials as a record, which an edit begins from. */
    public Optional<MaterialsRecord> materialsRecord() {
        return contents.others().materials();
    }

    /** Whether the journal holds the record of that kind and id. */
    public boolean holds(Kept like) {
        return contents.holds(like);
    }

    /** The record of the kind and id of another one that is no entry. */
    public Optional<? extends Kept> record(Kept like) {
        return contents.record(like);
    }

    /** What is known of a build's entries without reading them, in order of time. */
    public List<EntryLine> lines(String buildId) {
        return contents.lines(buildId);
    }

    /** An entry's stamp if every later change of its file shows in it; else zero, for the file may change again without a sign. */
    public long settled(long stamp) {
        return contents.memory().settled(stamp);
    }

    /** The entry of that id in a build's log, or empty; read where it is not in memory. */
    public Optional<EntryRecord> entry(String buildId, String id) {
        return contents.entry(buildId, id);
    }

    /** Those of a build's entries that can be read, in any order; a log that was not at hand is not kept either. */
    public List<EntryRecord> entries(String buildId, Collection<String> ids) {
        return contents.entries(buildId, ids);
    }

    /** Whether a build's log can be had without waiting for the disk. */
    public boolean isAtHand(String buildId) {
        return contents.isAtHand(buildId);
    }

    /** Once they have been read, these builds' logs stay at hand until others are named. */
    public void keepAtHand(Set<String> buildIds) {
        contents.memory().keep(buildIds);
    }

    /** The journal as it is now; no later edit shows in what it has read, so whatever asks it twice gets the same answer. */
    public JournalReader asOfNow() {
        return contents;
    }

    /**
     * Makes an edit. It counts as done, and can be undone, once every change of it is durable.
     *
     * @throws IOException if a change could not be made; those before it are taken back. Where that fails too they stand, and are
     *     shown and can be undone like an edit of their own
     */
    public synchronized void apply(Edit edit) throws IOException {
        done.push(carryOut(edit));
        undone.clear();
    }

    /** Takes the last edit back; empty where there is none. */
    public synchronized Optional<Edit> undo() throws IOException {
        return step(done, undone, true);
    }

    /** Makes the last edit again that was taken back; empty where there is none. */
    public synchronized Optional<Edit> redo() throws IOException {
        return step(undone, done, false);
    }

    /** What {@link #undo()} would take back. */
    public synchronized Optional<Edit> lastDone() {
        return Optional.ofNullable(done.peek());
    }

    /** What {@link #redo()} would make again. */
    public synchronized Optional<Edit> lastUndone() {
        return Optional.ofNullable(undone.peek());
    }

    /**
     * Takes in what another program has done to the files. It cannot be undone here.
     *
     * @param look finds it out; no edit is made meanwhile
     */
    public synchronized void takeIn(Supplier<News> look) {
        publish(look.get());
    }

    /**
     * From now on the listener hears of each change, whoever made it. A change stands even if a listener fails.
     *
     * @return ends the listening
     */
    public Runnable listen(Consumer<News> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    private Optional<Edit> step(Deque<Edit> from, Deque<Edit> to, boolean back) throws IOException {
        if (from.isEmpty()) {
            return Optional.empty();
        }
        var edit = from.peek();
        var made = carryOut(back ? edit.reversed() : edit);
        from.pop();
        to.push(back ? made.reversed() : made);
        return Optional.of(edit);
    }

    /** Makes an edit, and returns it as it was made. */
    private Edit carryOut(Edit edit) throws IOException {
        Slow.work("saving an edit");
        var saved = new ArrayList<Storage.Saved>();
        try {
            for (var change : edit.changes()) {
                saved.add(storage.save(change));
            }
        } catch (IOException | RuntimeException failure) {
            var standing = withoutTakenBack(saved, failure);
            if (!standing.isEmpty()) {
                publish(News.of(standing));
                done.push(made(edit, standing));
                undone.clear();
            }
            throw failure;
        }
        publish(News.of(saved));
        return made(edit, saved);
    }

    private static Edit made(Edit edit, List<Storage.Saved> saved) {
        return new Edit(edit.what(), saved.stream().map(Storage.Saved::change).toList());
    }

    /** Takes back what it can, the last first, and returns what still stands. */
    private List<Storage.Saved> withoutTakenBack(List<Storage.Saved> saved, Exception failure) {
        var standing = new ArrayList<>(saved);
        for (int i = saved.size() - 1; i >= 0; i--) {
            try {
                storage.save(saved.get(i).change().reversed());
                standing.remove(i);
            } catch (IOException | RuntimeException second) {
                failure.addSuppressed(second);
            }
        }
        return standing;
    }

    private void publish(News news) {
        if (!news.isNone()) {
            contents = contents.with(news);
            listeners.forEach(listener -> tell(listener, news));
        }
    }

    private static void tell(Consumer<News> listener, News news) {
        try {
            listener.accept(news);
        } catch (RuntimeException failure) {
            LOGGER.log(System.Logger.Level.WARNING, "told of a change, a listener failed", failure);
        }
    }
}
