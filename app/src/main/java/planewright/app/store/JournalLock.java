package planewright.app.store;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;

/**
 * One program at a time writes into a journal; the system frees the lock when a program ends, however it ends. What stands in
 * the file says who holds it, in words for the others: nothing is decided by them.
 */
final class JournalLock implements AutoCloseable {
    private static final String NAME = ".lock";

    /** Far behind the words: where locks keep others from reading, the words can still be read. */
    private static final long LOCKED_BYTE = 1 << 30;

    /** More than a clock that tells another time zone is wrong by. */
    private static final Duration CLOCKS_APART = Duration.ofDays(1);

    private static final int MOST_WORDS = 200;
    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    /** Folders locked by this program: POSIX frees a file's locks when its holder closes the file by any channel. */
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private final Path place;
    private final Optional<FileChannel> channel;
    private final String refusal;

    private JournalLock(Path place, Optional<FileChannel> channel, String refusal) {
        this.place = place;
        this.channel = channel;
        this.refusal = refusal;
    }

    /**
     * Takes the lock, or finds out why nobody can: then the journal can only be read.
     *
     * @throws JournalRefused if another program has the journal open
     */
    static JournalLock take(Path folder) throws IOException {
        var place = folder.toRealPath();
        if (!HELD.add(place)) {
            throw new JournalRefused("journal {0} is open in this program; close it there first", folder);
        }
        try {
            var lock = locked(folder, place);
            if (!lock.isHeld()) {
                HELD.remove(place);
            }
            return lock;
        } catch (IOException | RuntimeException refused) {
            HELD.remove(place);
            throw refused;
        }
    }

    private static JournalLock locked(Path folder, Path place) throws IOException {
        FileChannel channel;
        try {
            channel = FileChannel.open(
                    folder.resolve(NAME),
                    StandardOpenOption.CREATE,
                    StandardOpenOption.READ,
                    StandardOpenOption.WRITE,
                    LinkOption.NOFOLLOW_LINKS);
        } catch (IOException notWritable) {
            return not(
                    place,
                    StoreWords.say(
                            "its folder cannot be written in; make it writable, or copy the journal to one that is"));
        }
        try {
            if (channel.tryLock(LOCKED_BYTE, 1, false) == null) {
                throw new JournalRefused(
                        "journal {0} is open in another program{1}; close it there first",
                        folder, holder(folder.resolve(NAME)));
            }
        } catch (JournalRefused | RuntimeException refused) {
            channel.close();
            throw refused;
        } catch (IOException unable) {
            channel.close();
            return not(
                    place,
                    StoreWords.say(
                            "no file can be locked where it lies ({0}), so two programs could write at once; copy the "
                                    + "journal to a disk of this machine",
                            unable.getMessage()));
        }
        sign(channel, folder.resolve(NAME));
        return new JournalLock(place, Optional.of(channel), "");
    }

    private static JournalLock not(Path place, String why) {
        return new JournalLock(place, Optional.empty(), why);
    }

    /** Why nobody can take the lock; empty where it was taken. */
    Optional<String> refusal() {
        return channel.isPresent() ? Optional.empty() : Optional.of(refusal);
    }

    /**
     * When it was taken, by the clock of the journal's file system. Where it was not, nothing tells that clock: a day before this
     * program began, by ours.
     */
    Instant since() throws IOException {
        return channel.isPresent()
                ? Files.getLastModifiedTime(place.resolve(NAME)).toInstant()
                : ProcessHandle.current()
                        .info()
                        .startInstant()
                        .map(began -> began.minus(CLOCKS_APART))
                        .orElse(Instant.EPOCH);
    }

    boolean isHeld() {
        return channel.filter(FileChannel::isOpen).isPresent();
    }

    @Override
    public void close() throws IOException {
        if (isHeld()) {
            try {
                channel.get().close();
            } finally {
                HELD.remove(place);
            }
        }
    }

    /** A lock without words is a lock: the disk may be full. */
    private static void sign(FileChannel channel, Path file) {
        try {
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(" ".getBytes(StandardCharsets.UTF_8)), 0);
            var now = LocalDateTime.ofInstant(Files.getLastModifiedTime(file).toInstant(), ZoneId.systemDefault());
            var words = "process " + ProcessHandle.current().pid() + " on " + host() + " since " + MINUTES.format(now);
            channel.write(ByteBuffer.wrap(words.getBytes(StandardCharsets.UTF_8)));
        } catch (IOException noRoom) {
            System.getLogger(JournalLock.class.getName())
                    .log(System.Logger.Level.WARNING, "the lock cannot say who holds it", noRoom);
        }
    }

    /** This machine's name; a network that does not answer is not waited for. */
    private static String host() {
        return CompletableFuture.supplyAsync(() -> {
                    try {
                        return InetAddress.getLocalHost().getHostName();
                    } catch (UnknownHostException nameless) {
                        return "a machine without a name";
                    }
                })
                .completeOnTimeout("a machine without a name", 300, TimeUnit.MILLISECONDS)
                .join();
    }

    private static String holder(Path file) {
        try (var in = Files.newInputStream(file)) {
            var words = new String(in.readNBytes(MOST_WORDS), StandardCharsets.UTF_8)
                    .replaceAll("\\p{Cntrl}", " ")
                    .strip();
            return words.isEmpty() ? "" : " (" + words + ")";
        } catch (IOException unknown) {
            return "";
        }
    }
}
