package planewright.app.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import planewright.app.files.SafeFile;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
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

    private final Path folder;
    private final JournalHead head;
    private final Optional<JournalLock> lock;
    private final Optional<String> readOnly;
    private final PictureShelf pictures;
    private final OutlineShelf outlines;
    private final OpenJournal journal;
    private final List<SetAside> setAside;
    private final Map<String, Path> files = new ConcurrentHashMap<>();
    private final Replaced replaced = new Replaced();
    private final Bin bin;

    private JournalFolder(Path folder, Optional<JournalLock> lock, UserFolders user) throws IOException {
        this.folder = folder;
        this.lock = lock;
        this.bin = new Bin(folder.resolve("bin"));
        this.head = JournalHead.read(folder);
        this.readOnly = head.refusal().or(() -> unwritable(lock));
        if (readOnly.isEmpty()) {
            SafeFile.sweepFlat(folder);
            for (var ours : List.of("builds", RecordFiles.TEMPLATES, "outlines", "photos", "schema", "bin")) {
                SafeFile.sweep(folder.resolve(ours));
            }
        }
        var loaded = new JournalLoader(folder, files).load();
        this.setAside = loaded.setAside();
        this.pictures = new PictureShelf(
                folder.resolve("photos"), user.cacheOf(id(), folder).resolve("thumbnails"), this::requireWritable);
        this.outlines = new OutlineShelf(folder.resolve("outlines"), this::requireWritable);
        this.journal = new OpenJournal(head.name(), loaded.builds(), loaded.entries(), loaded.others(), this);
    }

    /**
     * Makes a journal in a folder that is empty or does not exist yet.
     *
     * @throws JournalRefused if something is there already
     */
    public static void create(Path folder, String name) throws IOException {
        if (name.isBlank()) {
            throw new JournalRefused("name of the journal is '" + name + "'; accepted: some words");
        }
        if (Files.exists(folder) && !isEmptyFolder(folder)) {
            throw new JournalRefused("folder " + folder
                    + " is not empty; a new journal needs an empty folder or one that does not exist yet");
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
     * Opens a journal and everything in it that can be read. Where its folder cannot be written in, or its format is newer
     * than this program, it is open for reading only.
     *
     * @throws JournalRefused if there is no journal, or it is open elsewhere
     */
    public static JournalFolder open(Path folder, UserFolders user) throws IOException {
        Slow.work("opening a journal");
        if (!isJournal(folder)) {
            throw new JournalRefused("there is no journal in " + folder + ": it holds no file " + HEAD
                    + "; name a journal's folder, or make a new journal there");
        }
        var lock = JournalLock.take(folder);
        try {
            return new JournalFolder(folder, lock, user);
        } catch (Unreadable reason) {
            release(lock);
            throw new JournalRefused("journal " + folder + ": " + HEAD + " cannot be used: " + reason.getMessage());
        } catch (IOException | RuntimeException failure) {
            release(lock);
            throw failure;
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
        return fileOf(build).getParent();
    }

    /** What could not be read at opening; those files are as they were. */
    public List<SetAside> setAside() {
        return setAside;
    }

    /** Why nothing can be written here; empty where it can. */
    public Optional<String> readOnly() {
        return readOnly;
    }

    /** Deleted records that can be brought back: add them again. The last deleted comes first. */
    public synchronized List<Binned> binned() throws IOException {
        Slow.work("looking into the bin");
        return bin.all().stream()
                .filter(each -> !files.containsKey(each.record().id()))
                .toList();
    }

    /** Throws a deleted record away for good. */
    public synchronized void forget(Binned deleted) throws IOException {
        requireWritable();
        bin.forget(deleted.record().id());
    }

    @Override
    public synchronized void save(Edit.Change change) throws IOException {
        requireWritable();
        if (lock.isEmpty() || !lock.get().isHeld()) {
            throw new IOException("journal " + folder + " is closed; open it again and repeat the edit");
        }
        var subject = change.subject();
        var file = fileOf(subject);
        if (change.after().isEmpty()) {
            var text = unchanged(file, subject);
            bin.put(subject.id(), text);
            SafeFile.delete(file);
            replaced.note(subject.id(), text, "");
            files.remove(subject.id());
        } else if (change.before().isEmpty()) {
            requireAbsent(file);
            if (!restored(file, subject, "") && !unbinned(file, subject)) {
                writeRecord(file, JsonFiles.text(RecordFiles.json(subject)), subject);
            }
            files.put(subject.id(), file);
            bin.forget(subject.id());
        } else {
            patch(file, change.before().get(), subject);
        }
    }

    /** Waits for a save under way; none is made after. */
    @Override
    public synchronized void close() throws IOException {
        release(lock);
    }

    private static void release(Optional<JournalLock> lock) throws IOException {
        if (lock.isPresent()) {
            lock.get().close();
        }
    }

    private void requireWritable() throws IOException {
        if (readOnly.isPresent()) {
            throw new JournalRefused("journal " + folder + " is open for reading only: " + readOnly.get());
        }
    }

    private static Optional<String> unwritable(Optional<JournalLock> lock) {
        return lock.isPresent()
                ? Optional.empty()
                : Optional.of("its folder cannot be written in; make it writable, or copy the journal to one that is");
    }

    /** Writes the text that was deleted, if it says what is wanted. */
    private boolean unbinned(Path file, Kept wanted) throws IOException {
        var text = bin.text(wanted.id());
        try {
            if (text.isEmpty() || !isSame(wanted, RecordFiles.read(JsonFiles.parse(text.get()), wanted))) {
                return false;
            }
        } catch (Unreadable spoiled) {
            return false;
        }
        write(file, text.get());
        return true;
    }

    private void patch(Path file, Kept before, Kept after) throws IOException {
        var text = unchanged(file, before);
        if (isSame(before, after) || restored(file, after, text)) {
            return;
        }
        var kind = FileKind.of(after);
        kind.requireOurs(file, JsonFiles.parse(text));
        var tree = kind.migrated(JsonFiles.parse(text));
        Patch.apply(tree, RecordFiles.json(before, tree), RecordFiles.json(after, tree));
        var patched = JsonFiles.text(tree);
        writeRecord(file, patched, after);
        replaced.note(after.id(), text, patched);
    }

    /** Writes the text that the last save has replaced, if it says what is wanted. */
    private boolean restored(Path file, Kept wanted, String now) throws IOException {
        var text = replaced.before(wanted.id(), now);
        if (text.isEmpty() || !isSame(wanted, RecordFiles.read(JsonFiles.parse(text.get()), wanted))) {
            return false;
        }
        write(file, text.get());
        replaced.drop(wanted.id());
        return true;
    }

    /** The text of a file that still says what was read; what another program has written meanwhile is not overwritten. */
    private static String unchanged(Path file, Kept before) throws IOException {
        try {
            var text = JsonFiles.content(file);
            if (isSame(before, RecordFiles.read(JsonFiles.parse(text), before))) {
                return text;
            }
        } catch (Unreadable | NoSuchFileException gone) {
            // said below
        }
        throw new IOException("file " + file
                + " was changed by another program since it was read; open the journal again and repeat the edit");
    }

    /** Whether two records are the same once they are written. */
    private static boolean isSame(Kept one, Kept other) {
        return Arrays.equals(
                bytes(JsonFiles.text(RecordFiles.json(one))), bytes(JsonFiles.text(RecordFiles.json(other))));
    }

    private static void requireAbsent(Path file) throws IOException {
        if (Files.exists(file)) {
            throw new IOException("file " + file + " exists already and is not overwritten");
        }
    }

    private Path fileOf(Kept record) throws IOException {
        var known = files.get(record.id());
        if (known != null) {
            return known;
        }
        return RecordFiles.place(folder, record, files::get);
    }

    /** Writes nothing that could not be read again. */
    private void writeRecord(Path file, String text, Kept record) throws IOException {
        int size = bytes(text).length;
        if (size > JsonFiles.MOST_BYTES) {
            throw new IOException("file " + file + " would have " + size + " bytes; accepted: up to "
                    + JsonFiles.MOST_BYTES + "; tell it in several entries");
        }
        try {
            RecordFiles.read(JsonFiles.parse(text), record);
        } catch (Unreadable reason) {
            throw new IOException("file " + file + " could not be read again: " + reason.getMessage(), reason);
        }
        head.require(FileKind.of(record).format());
        write(file, text);
    }

    private static void write(Path file, String text) throws IOException {
        SafeFile.write(file, bytes(text));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static boolean isEmptyFolder(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isEmpty();
        }
    }
}
