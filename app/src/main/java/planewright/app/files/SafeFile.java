package planewright.app.files;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Pattern;
import planewright.api.calculator.Language;

/**
 * Files that are wholly old or wholly new at any instant: written beside the target, forced to disk, renamed over it, and
 * the folder forced too, without which a rename may be lost in a power cut.
 */
public final class SafeFile {
    private static final String ENDING = ".tmp";
    private static final Pattern LEFT_OVER = Pattern.compile("\\..+\\.\\d+-\\d+\\.tmp");
    private static final AtomicLong COUNTER = new AtomicLong();

    private SafeFile() {}

    /** Writes a file; when it returns, the content survives a crash of program and machine. */
    public static void write(Path file, byte[] content) throws IOException {
        write(file, out -> out.write(content));
    }

    /** As {@link #write(Path, byte[])}, with content that need not fit into memory. */
    public static void write(Path file, Content content) throws IOException {
        told(file, () -> makeFolder(file.getParent()));
        var beside = file.resolveSibling("." + file.getFileName() + "."
                + ProcessHandle.current().pid() + "-" + COUNTER.incrementAndGet() + ENDING);
        try {
            write(file, beside, content);
            told(file, () -> Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE));
        } catch (IOException | RuntimeException failure) {
            clear(beside, failure);
            throw failure;
        }
        force(file.getParent());
    }

    private static void write(Path file, Path beside, Content content) throws IOException {
        var options = Set.of(StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE);
        try (var channel = told(file, () -> FileChannel.open(beside, options))) {
            content.to(new Telling(file, Channels.newOutputStream(channel)));
            told(file, () -> {
                channel.force(true);
                return channel;
            });
        }
    }

    private static void clear(Path beside, Exception failure) {
        try {
            Files.deleteIfExists(beside);
        } catch (IOException second) {
            failure.addSuppressed(second);
        }
    }

    private interface Step<T> {
        T go() throws IOException;
    }

    private static <T> T told(Path file, Step<T> step) throws IOException {
        try {
            return step.go();
        } catch (IOException refused) {
            throw notWritten(file, refused);
        }
    }

    private static IOException notWritten(Path file, IOException refused) {
        var words = Language.of(Locale.getDefault(Locale.Category.DISPLAY), SafeFile.class);
        return new IOException(
                words.say(
                        "file {0} cannot be written ({1}); what was there is as it was. If its disk is full make room, "
                                + "then repeat; accepted: one in a folder you may write in",
                        file, reason(refused)),
                refused);
    }

    private static String reason(IOException refused) {
        if (refused instanceof FileSystemException known) {
            return known.getReason() == null
                    ? known.getClass().getSimpleName().replace("Exception", "")
                    : known.getReason();
        }
        return refused.getMessage();
    }

    /** Says of which file a write was refused; what its content throws is told as it is. */
    private static final class Telling extends FilterOutputStream {
        private final Path file;

        Telling(Path file, OutputStream out) {
            super(out);
            this.file = file;
        }

        @Override
        public void write(int one) throws IOException {
            write(new byte[] {(byte) one}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            told(file, () -> {
                out.write(bytes, from, length);
                return out;
            });
        }
    }

    /** What shall stand in a file. */
    public interface Content {
        /** Writes all of it; what is thrown leaves the file as it was. */
        void to(OutputStream out) throws IOException;
    }

    /** Moves a file within its disk, durably; a file that is there is replaced. */
    public static void move(Path from, Path to) throws IOException {
        told(to, () -> makeFolder(to.getParent()));
        told(to, () -> Files.move(from, to, StandardCopyOption.ATOMIC_MOVE));
        force(to.getParent());
        force(from.getParent());
    }

    /** Deletes a file, durably. */
    public static void delete(Path file) throws IOException {
        Files.deleteIfExists(file);
        force(file.getParent());
    }

    /** Removes what killed saves of other programs have left beside their targets, where folders can be read. */
    public static void sweep(Path folder) throws IOException {
        sweep(folder, Integer.MAX_VALUE);
    }

    /** The same beside files that lie in the folder itself. */
    public static void sweepFlat(Path folder) throws IOException {
        sweep(folder, 1);
    }

    private static void sweep(Path folder, int depth) throws IOException {
        Files.walkFileTree(folder, Set.of(), depth, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                sweepAway(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException unreadable) {
                return FileVisitResult.CONTINUE;
            }
        });
    }

    /** Removes a file if it is an unfinished save of another program. */
    public static void sweepAway(Path file) throws IOException {
        if (isLeftOver(file)
                && !file.getFileName()
                        .toString()
                        .contains("." + ProcessHandle.current().pid() + "-")) {
            Files.deleteIfExists(file);
        }
    }

    /** Whether a file is an unfinished save. */
    public static boolean isLeftOver(Path file) {
        var name = file.getFileName().toString();
        return LEFT_OVER.matcher(name).matches();
    }

    private static Path makeFolder(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            makeFolder(folder.toAbsolutePath().getParent());
            Files.createDirectories(folder);
            force(folder.toAbsolutePath().getParent());
        }
        return folder;
    }

    /** Forces a folder to disk: the names of what lies in it. */
    public static void force(Path folder) {
        try (var channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException refused) {
            // Windows opens no folders, some network shares force none; there a rename is as durable as it gets
        }
    }
}
