package planewright.app.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** One program at a time on a journal; the system frees the lock when a program ends, however it ends. */
final class JournalLock implements AutoCloseable {
    private static final String NAME = ".lock";

    private final FileChannel channel;

    private JournalLock(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * @throws JournalRefused if another program has the journal open, or the folder cannot be written in
     */
    static JournalLock take(Path folder) throws IOException {
        var file = folder.resolve(NAME);
        FileChannel channel;
        try {
            channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        } catch (IOException refused) {
            throw new JournalRefused("journal " + folder + " cannot be written in ("
                    + refused.getClass().getSimpleName()
                    + "); make the folder writable, or copy the journal to one that is");
        }
        FileLock lock = tryLock(channel);
        if (lock == null) {
            channel.close();
            throw new JournalRefused(
                    "journal " + folder + " is open in another program" + holder(file) + "; close it there first");
        }
        channel.truncate(0);
        channel.write(ByteBuffer.wrap(("process " + ProcessHandle.current().pid()).getBytes(StandardCharsets.UTF_8)));
        return new JournalLock(channel);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }

    private static FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException here) {
            return null;
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
