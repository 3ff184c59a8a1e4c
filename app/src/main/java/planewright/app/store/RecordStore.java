package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import planewright.app.files.SafeFile;
import planewright.app.journal.Edit;
import planewright.app.journal.Ids;
import planewright.app.journal.Kept;
import planewright.app.journal.Storage.Saved;

/** Writes records into their files; what another program has written meanwhile is not lost. */
final class RecordStore {
    private final JournalHead head;
    private final Places places;
    private final Bin bin;
    private final Replaced replaced = new Replaced();
    private final List<Clash> clashes = new CopyOnWriteArrayList<>();

    RecordStore(JournalHead head, Places places, Bin bin) {
        this.head = head;
        this.places = places;
        this.bin = bin;
    }

    /** Where two programs have written into the same field. */
    List<Clash> clashes() {
        return List.copyOf(clashes);
    }

    Saved save(Edit.Change change) throws IOException {
        var subject = change.subject();
        var file = places.of(subject);
        if (change.after().isEmpty()) {
            return remove(change, file);
        }
        return change.before().isEmpty() ? add(change, file) : patch(change, file);
    }

    private Saved remove(Edit.Change change, Path file) throws IOException {
        var subject = change.subject();
        var text = unchanged(file, subject);
        bin.take(subject.id(), file, text);
        replaced.note(subject.id(), text, "");
        places.forget(subject);
        return new Saved(change, Stamp.UNKNOWN);
    }

    private Saved add(Edit.Change change, Path file) throws IOException {
        var subject = change.subject();
        if (Files.exists(file)) {
            throw new IOException(StoreWords.say("file {0} exists already and is not overwritten", file));
        }
        if (!restored(file, subject, "") && !unbinned(file, subject)) {
            writeRecord(file, JsonFiles.text(RecordFiles.json(subject)), subject);
        }
        places.note(subject, file);
        bin.forget(subject.id());
        return new Saved(change, stamp(file));
    }

    private Saved patch(Edit.Change change, Path file) throws IOException {
        var before = change.before().orElseThrow();
        var after = change.subject();
        var found = text(file);
        if (found.isEmpty()) {
            writeRecord(file, JsonFiles.text(RecordFiles.json(after)), after);
            return new Saved(change, stamp(file));
        }
        var text = found.get();
        var tree = JsonFiles.parse(text);
        var current = RecordFiles.read(tree, before);
        if (!isSame(before, current)) {
            return new Saved(
                    new Edit.Change(Optional.of(current), Optional.of(merge(file, text, before, after))), stamp(file));
        }
        if (!isSame(before, after) && !restored(file, after, text)) {
            patch(file, text, tree, before, after);
        }
        return new Saved(change, stamp(file));
    }

    private void patch(Path file, String text, ObjectNode found, Kept before, Kept after) throws IOException {
        var kind = FileKind.of(after);
        kind.requireOurs(file, found);
        var tree = kind.migrated(found);
        Patch.apply(tree, RecordFiles.json(before, tree), RecordFiles.json(after, tree));
        var patched = JsonFiles.text(tree);
        writeRecord(file, patched, after);
        replaced.note(after.id(), text, patched);
    }

    /** Carries our change over to what another program has written; its version is kept where both wrote into one field. */
    private Kept merge(Path file, String text, Kept before, Kept after) throws IOException {
        var kind = FileKind.of(after);
        kind.requireOurs(file, JsonFiles.parse(text));
        var tree = kind.migrated(JsonFiles.parse(text));
        var fields = Patch.apply(tree, RecordFiles.json(before, tree), RecordFiles.json(after, tree));
        if (!fields.isEmpty() && !Names.isUlid(after.id())) {
            throw changed(file);
        }
        if (!fields.isEmpty()) {
            var other = Ids.next();
            bin.put(other, JsonFiles.text(JsonFiles.parse(text).put("id", other)));
            clashes.add(new Clash(file, fields));
        }
        var merged = JsonFiles.text(tree);
        writeRecord(file, merged, after);
        replaced.note(after.id(), text, merged);
        return RecordFiles.read(tree, after);
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

    /** The text of a file; empty where there is none. */
    private static Optional<String> text(Path file) throws IOException {
        try {
            return Optional.of(JsonFiles.content(file));
        } catch (NoSuchFileException gone) {
            return Optional.empty();
        }
    }

    /** The text of a file that still says what was read: nobody's newer words are deleted. */
    private static String unchanged(Path file, Kept before) throws IOException {
        var text = text(file);
        try {
            if (text.isPresent() && isSame(before, RecordFiles.read(JsonFiles.parse(text.get()), before))) {
                return text.get();
            }
        } catch (Unreadable other) {
            // said below
        }
        throw changed(file);
    }

    private static IOException changed(Path file) {
        return new IOException(StoreWords.say(
                "file {0} was changed by another program since it was read; look at it again, then repeat", file));
    }

    /** Whether two records are the same once they are written. */
    private static boolean isSame(Kept one, Kept other) {
        return one.equals(other)
                || Arrays.equals(
                        bytes(JsonFiles.text(RecordFiles.json(one))), bytes(JsonFiles.text(RecordFiles.json(other))));
    }

    /** Writes nothing that could not be read again. */
    private void writeRecord(Path file, String text, Kept record) throws IOException {
        int size = bytes(text).length;
        if (size > JsonFiles.MOST_BYTES) {
            throw new IOException(StoreWords.say(
                    "file {0} would have {1} bytes; accepted: up to {2}; tell it in several entries",
                    file, size, JsonFiles.MOST_BYTES));
        }
        try {
            RecordFiles.read(JsonFiles.parse(text), record);
        } catch (Unreadable reason) {
            throw new IOException(
                    StoreWords.say("file {0} could not be read again: {1}", file, reason.getMessage()), reason);
        }
        head.require(FileKind.of(record).format());
        write(file, text);
    }

    private static void write(Path file, String text) throws IOException {
        SafeFile.write(file, bytes(text));
    }

    private static long stamp(Path file) throws IOException {
        return Stamp.of(Files.readAttributes(file, BasicFileAttributes.class));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
