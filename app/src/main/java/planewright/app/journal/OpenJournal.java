package planewright.app.journal;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import planewright.api.journal.JournalReader;

/**
 * The journal in memory. Reading never waits, from any thread, and sees an edit wholly or not at all; an edit waits for the
 * disk, so it belongs off the event thread. Listeners hear of a change after it is durable, on the thread that made it.
 */
public final class OpenJournal implements JournalReader {
    private static final System.Logger LOGGER = System.getLogger(OpenJournal.class.getName());

    private final String name;
    private final Storage storage;
    private final Deque<Edit> done = new ArrayDeque<>();
    private final Deque<Edit> undone = new ArrayDeque<>();
    private final List<Consumer<Edit>> listeners = new CopyOnWriteArrayList<>();
    private volatile Contents contents;

    public OpenJournal(String name, Collection<BuildRecord> builds, Collection<EntryRecord> entries, Storage storage) {
        this(name, builds, entries, List.of(), storage);
    }

    /**
     * @param others templates, and the calendar and the materials where there are any
     */
    public OpenJournal(
            String name,
            Collection<BuildRecord> builds,
            Collection<EntryRecord> entries,
            Collection<? extends Kept> others,
            Storage storage) {
        this.name = name;
        this.storage = storage;
        this.contents = Contents.of(builds, entries, others);
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

    /** The entry of that id, or empty. */
    public Optional<EntryRecord> entry(String id) {
        return contents.entry(id);
    }

    /** The journal as it is now; no later edit shows in it, so whatever asks it twice gets the same answer. */
    public JournalReader asOfNow() {
        return contents;
    }

    /** Makes an edit. It counts as done, and can be undone, once every change of it is durable. */
    public synchronized void apply(Edit edit) throws IOException {
        carryOut(edit);
        done.push(edit);
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
     * From now on the listener hears of each edit, undone ones as the edit that took them back. An edit stands even if a
     * listener fails.
     *
     * @return ends the listening
     */
    public Runnable listen(Consumer<Edit> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    private Optional<Edit> step(Deque<Edit> from, Deque<Edit> to, boolean back) throws IOException {
        if (from.isEmpty()) {
            return Optional.empty();
        }
        var edit = from.peek();
        carryOut(back ? edit.reversed() : edit);
        to.push(from.pop());
        return Optional.of(edit);
    }

    private void carryOut(Edit edit) throws IOException {
        Slow.work("saving an edit");
        var saved = new ArrayList<Edit.Change>();
        try {
            for (var change : edit.changes()) {
                requireCurrent(change);
                storage.save(change);
                saved.add(0, change);
            }
        } catch (IOException | RuntimeException failure) {
            takeBack(saved, failure);
            throw failure;
        }
        contents = contents.with(edit);
        listeners.forEach(listener -> tell(listener, edit));
    }

    private void takeBack(List<Edit.Change> saved, Exception failure) {
        for (var change : saved) {
            try {
                storage.save(change.reversed());
            } catch (IOException | RuntimeException second) {
                failure.addSuppressed(second);
            }
        }
    }

    private static void tell(Consumer<Edit> listener, Edit edit) {
        try {
            listener.accept(edit);
        } catch (RuntimeException failure) {
            LOGGER.log(System.Logger.Level.WARNING, "told of '" + edit.what() + "', a listener failed", failure);
        }
    }

    /** An edit was made on what somebody saw; if that is no longer so, somebody else's edit would be lost. */
    private void requireCurrent(Edit.Change change) {
        if (!contents.current(change.subject()).equals(change.before())) {
            throw new IllegalStateException("record " + change.subject().id()
                    + " has changed since it was read; read it again and repeat the edit");
        }
    }
}
