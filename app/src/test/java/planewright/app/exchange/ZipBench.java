package planewright.app.exchange;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import planewright.app.store.JournalFolder;

/** ZIP files, honest and otherwise. Their bytes are changed where PKWARE's specification 6.3.10 puts them, 4.3.7 and 4.3.12. */
final class ZipBench {
    private final Map<String, byte[]> files = new LinkedHashMap<>();
    private final Map<String, String> names = new LinkedHashMap<>();
    private final Map<String, Change> changes = new LinkedHashMap<>();

    /** Changes bytes of an entry's record in the directory. */
    interface Change {
        void of(ByteBuffer zip, int at);
    }

    /** An archive with nothing but the head of a journal. */
    static ZipBench journal() {
        return new ZipBench().with("journal.json", JournalFolder.head(new UUID(1, 2), "Loft workshop"));
    }

    ZipBench with(String name, String text) {
        return with(name, text.getBytes(StandardCharsets.UTF_8));
    }

    ZipBench with(String name, byte[] content) {
        files.put(name, content);
        return this;
    }

    /** An entry that gets a name of the same length which Java would not write. */
    ZipBench named(String written, String instead) {
        if (written.length() != instead.length()) {
            throw new IllegalArgumentException(written + " and " + instead + " differ in length");
        }
        names.put(written, instead);
        return with(written, "x");
    }

    ZipBench changed(String name, Change change) {
        changes.put(name, change);
        return this;
    }

    /** Says that an entry was made on Unix as a file of this mode. */
    ZipBench mode(String name, int mode) {
        return changed(name, (zip, at) -> zip.put(at + 5, (byte) 3).putInt(at + 38, mode << 16));
    }

    byte[] bytes() throws IOException {
        var out = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(out)) {
            for (var file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
            }
        }
        var bytes = ByteBuffer.wrap(out.toByteArray()).order(ByteOrder.LITTLE_ENDIAN);
        for (int at = 0; at < bytes.limit() - 46; at++) {
            if (bytes.getInt(at) == 0x02014b50) {
                var name = name(bytes, at + 46, bytes.getShort(at + 28));
                if (changes.containsKey(name)) {
                    changes.get(name).of(bytes, at);
                }
                rename(bytes, at + 46, name);
            } else if (bytes.getInt(at) == 0x04034b50) {
                rename(bytes, at + 30, name(bytes, at + 30, bytes.getShort(at + 26)));
            }
        }
        return bytes.array();
    }

    Path write(Path file) throws IOException {
        return Files.write(file, bytes());
    }

    private void rename(ByteBuffer bytes, int at, String name) {
        if (names.containsKey(name)) {
            bytes.put(at, names.get(name).getBytes(StandardCharsets.UTF_8));
        }
    }

    private static String name(ByteBuffer bytes, int at, int length) {
        var name = new byte[length];
        bytes.get(at, name);
        return new String(name, StandardCharsets.UTF_8);
    }
}
