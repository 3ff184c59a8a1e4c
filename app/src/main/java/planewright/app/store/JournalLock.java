package planewright.app.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** One program at a time on a journal; the system frees the lock when a program ends, however it ends. */
final class JournalLock implements AutoCloseable {
    private static final String NAME = ".lock";

    /** Folders locked by this program: POSIX frees a file's locks when its holder closes the file by any channel. */
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private final Path place;
    private final FileChannel channel;

    private JournalLock(Path place, FileChannel channel) {
        this.place = place;
        this.channel = channel;
    }

    /**
     * Takes the lock; empty where the folder cannot be written in.
     *
     * @throws JournalRefused if another program has the journal open
     */
    static Optional<JournalLock> take(Path folder) throws IOException {
        var place = folder.toRealPath();
        if (!HELD.add(place)) {
            throw refusal(folder, "in this program");
        }
        try {
            var channel = locked(folder);
            if (channel.isEmpty()) {
                HELD.remove(place);
            }
            return channel.map(open -> new JournalLock(place, open));
        } catch (IOException | RuntimeException refused) {
            HELD.remove(place);
            throw refused;
        }
    }

    private static Optional<FileChannel> locked(Path folder) throws IOException {
        var file = folder.resolve(NAME);
        FileChannel channel;
        try {
            channel = FileChannel.open(
                    file,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.READ,
                    StandardOpenOption.WRITE,
                    LinkOption.NOFOLLOW_LINKS);
        } catch (IOException notWritable) {
            return Optional.empty();
        }
        try {
            if (channel.tryLock() == null) {
                throw refusal(folder, "in another program" + holder(file));
            }
            channel.truncate(0);
            channel.write(
                    ByteBuffer.wrap(("process " + ProcessHandle.current().pid()).getBytes(StandardCharsets.UTF_8)));
            return Optional.of(channel);
        } catch (IOException | RuntimeException refused) {
            channel.close();
            throw refused;
        }
    }

    private static JournalRefused refusal(Path folder, String where) {
        return new JournalRefused("journal " + folder + " is open " + where + "; close it there first");
    }

    /** When it was taken, by the clock of the journal's file system. */
    Instant since() throws IOException {
        return Files.getLastModifiedTime(place.resolve(NAME)).toInstant();
    }

    boolean isHeld() {
        return channel.isOpen();
    }

    @Override
    public void close() throws IOException {
        if (channel.isOpen()) {
            try {
                channel.close();
            } finally {
                HELD.remove(place);
            }
        }
    }

    private static String holder(Path file) {
        try {
            var holder = Files.readString(file);
            return holder.isBlank() ? "" : " (" + holder + ")";
        } catch (IOException unknown) {
            return "";
        }
    }
}
