package planewright.app.exchange;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/**
 * What the directory of a ZIP file says beyond what Java tells: how many entries there are, before memory is taken for them,
 * and whether one is a link. Source: PKWARE, .ZIP File Format Specification 6.3.10, 4.3.12 to 4.3.16 and 4.4.
 */
final class ZipListing {
    private static final int END = 0x06054b50;
    private static final int END_LENGTH = 22;
    private static final int LONG_END = 0x06064b50;
    private static final int LONG_END_LENGTH = 56;
    private static final int LONG_LOCATOR = 0x07064b50;
    private static final int LONG_LOCATOR_LENGTH = 20;
    private static final int ENTRY = 0x02014b50;
    private static final int ENTRY_LENGTH = 46;
    private static final int LOCKED = 1;
    private static final int UNIX = 3;
    private static final int MAC_OS = 19;
    private static final int MOST_BYTES_OF_AN_ENTRY = 2048;

    /** Java's own reading of an archive takes as much memory again, and names some more. */
    private static final int MOST_BYTES = 32 << 20;

    private final FileChannel channel;
    private final Path file;

    private ZipListing(FileChannel channel, Path file) {
        this.channel = channel;
        this.file = file;
    }

    /** An entry's name, and whether it is a plain file or a folder and not a link or device. */
    record Item(String name, boolean plain) {}

    /** Where the directory lies. */
    private record Directory(long from, long length, long entries) {}

    /**
     * @throws ExchangeRefused if it is no ZIP file, or has more entries than may be
     */
    static List<Item> read(Path file, Limits limits) throws IOException {
        try (var channel = FileChannel.open(file, StandardOpenOption.READ)) {
            return new ZipListing(channel, file).items(limits);
        } catch (EOFException cut) {
            throw damaged(file);
        }
    }

    private List<Item> items(Limits limits) throws IOException {
        var directory = directory();
        if (directory.entries() > limits.entries()) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "archive {0} has {1} entries; accepted: up to {2}", file, directory.entries(), limits.entries()));
        }
        if (directory.from() < 0
                || directory.length() < 0
                || directory.length() > directory.entries() * MOST_BYTES_OF_AN_ENTRY) {
            throw damaged(file);
        }
        if (directory.length() > MOST_BYTES) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "archive {0} has a directory of {1} MB; accepted: up to {2} MB",
                    file, (directory.length() >> 20), (MOST_BYTES >> 20)));
        }
        var bytes = bytes(directory.from(), Math.toIntExact(directory.length()));
        var items = new ArrayList<Item>();
        while (bytes.remaining() >= ENTRY_LENGTH && bytes.getInt(bytes.position()) == ENTRY) {
            items.add(item(bytes));
        }
        if (items.size() != directory.entries() || bytes.hasRemaining()) {
            throw damaged(file);
        }
        return items;
    }

    private Item item(ByteBuffer bytes) throws IOException {
        int at = bytes.position();
        int madeBy = bytes.get(at + 5) & 0xFF;
        int name = bytes.getShort(at + 28) & 0xFFFF;
        int more = (bytes.getShort(at + 30) & 0xFFFF) + (bytes.getShort(at + 32) & 0xFFFF);
        int mode = bytes.getInt(at + 38) >>> 16;
        if ((bytes.getShort(at + 8) & LOCKED) != 0) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "archive {0} is locked with a password; unlock it with the program that made it", file));
        }
        if (at + ENTRY_LENGTH + name + more > bytes.limit()) {
            throw damaged(file);
        }
        var text = new byte[name];
        bytes.position(at + ENTRY_LENGTH);
        bytes.get(text);
        bytes.position(bytes.position() + more);
        return new Item(new String(text, StandardCharsets.UTF_8), madeBy != UNIX && madeBy != MAC_OS || isPlain(mode));
    }

    /** The kinds of files of POSIX: 0100000 a plain file, 0040000 a folder, 0120000 a link; 0 where none is said. */
    private static boolean isPlain(int mode) {
        int kind = mode & 0xF000;
        return kind == 0 || kind == 0x8000 || kind == 0x4000;
    }

    private Directory directory() throws IOException {
        int length = (int) Math.min(channel.size(), END_LENGTH + 0xFFFF);
        long from = channel.size() - length;
        var tail = bytes(from, length);
        for (int at = length - END_LENGTH; at >= 0; at--) {
            if (tail.getInt(at) == END) {
                if (at + END_LENGTH + (tail.getShort(at + 20) & 0xFFFF) != length) {
                    throw new ExchangeRefused(ExchangeWords.say(
                            "archive {0} ends in two ways: it is damaged, or built to mislead", file));
                }
                return directory(tail, at, from + at);
            }
        }
        throw new ExchangeRefused(
                ExchangeWords.say("archive {0} is not a whole ZIP file; accepted: a ZIP file of a journal", file));
    }

    private Directory directory(ByteBuffer tail, int at, long end) throws IOException {
        long entries = tail.getShort(at + 10) & 0xFFFF;
        long length = tail.getInt(at + 12) & 0xFFFFFFFFL;
        long from = tail.getInt(at + 16) & 0xFFFFFFFFL;
        if (entries == 0xFFFF || length == 0xFFFFFFFFL || from == 0xFFFFFFFFL) {
            var locator = bytes(end - LONG_LOCATOR_LENGTH, LONG_LOCATOR_LENGTH);
            if (locator.getInt(0) == LONG_LOCATOR) {
                return longDirectory(locator.getLong(8));
            }
        }
        return new Directory(end - length, length, entries);
    }

    private Directory longDirectory(long end) throws IOException {
        var record = bytes(end, LONG_END_LENGTH);
        if (record.getInt(0) != LONG_END || record.getLong(32) < 0 || record.getLong(40) < 0) {
            throw damaged(file);
        }
        return new Directory(end - record.getLong(40), record.getLong(40), record.getLong(32));
    }

    private ByteBuffer bytes(long from, int length) throws IOException {
        if (from < 0 || length < 0 || from > channel.size() - length) {
            throw damaged(file);
        }
        var bytes = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
        while (bytes.hasRemaining()) {
            if (channel.read(bytes, from + bytes.position()) < 0) {
                throw new EOFException();
            }
        }
        return bytes.flip();
    }

    private static ExchangeRefused damaged(Path file) {
        return new ExchangeRefused(ExchangeWords.say("archive {0} is damaged; take it from its source again", file));
    }
}
