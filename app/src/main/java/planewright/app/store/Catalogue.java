package planewright.app.store;

import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;
import planewright.app.files.SafeFile;
import planewright.app.journal.EntryLine;

/**
 * What was known of the entries when the journal was last looked at, in one file of the user's cache: with it a journal of
 * any length opens at once. Without it, or if it is damaged, everything is read again.
 *
 * @param lines by the ids of builds
 * @param odd where entries lie that lie elsewhere than we would put them, by id, within the journal
 */
record Catalogue(Map<String, List<EntryLine>> lines, Map<String, String> odd) {
    /** Raised when the file is written differently. */
    private static final String NAME = "catalogue-2";

    private static final int ID_LENGTH = 26;

    /** The catalogue in a cache folder; empty where there is none that can be used. */
    static Optional<Catalogue> load(Path cache) {
        try {
            var bytes = Files.readAllBytes(cache.resolve(NAME));
            int length = bytes.length - Long.BYTES;
            if (length < 0 || checksum(bytes, length) != checksumIn(bytes, length)) {
                return Optional.empty();
            }
            try (var in = new DataInputStream(new ByteArrayInputStream(bytes, 0, length))) {
                return Optional.of(read(in));
            }
        } catch (IOException | RuntimeException unusable) {
            return Optional.empty();
        }
    }

    /**
     * Writes it; what may have changed without a sign is written as unknown.
     *
     * @param since files that were written later, or shortly before, are looked at again
     */
    void save(Path cache, Instant since) throws IOException {
        var bytes = new ByteArrayOutputStream();
        try (var out = new DataOutputStream(bytes)) {
            write(out, since);
        }
        var content = bytes.toByteArray();
        SafeFile.write(cache.resolve(NAME), stream -> {
            var out = new DataOutputStream(new BufferedOutputStream(stream));
            out.write(content);
            out.writeLong(checksum(content, content.length));
            out.flush();
        });
    }

    private void write(DataOutputStream out, Instant since) throws IOException {
        out.writeInt(lines.size());
        for (var log : lines.entrySet()) {
            out.writeUTF(log.getKey());
            out.writeInt(log.getValue().size());
            for (var line : log.getValue()) {
                out.writeBytes(line.id());
                out.writeLong(line.at().toEpochSecond(ZoneOffset.UTC));
                out.writeInt(line.at().getNano());
                out.writeLong(Stamp.settled(line.stamp(), since));
            }
        }
        out.writeInt(odd.size());
        for (var place : odd.entrySet()) {
            out.writeUTF(place.getKey());
            out.writeUTF(place.getValue());
        }
    }

    private static Catalogue read(DataInputStream in) throws IOException {
        var lines = new HashMap<String, List<EntryLine>>();
        for (int left = in.readInt(); left > 0; left--) {
            var build = in.readUTF();
            int size = in.readInt();
            var log = new ArrayList<EntryLine>(size);
            var id = new byte[ID_LENGTH];
            for (int i = 0; i < size; i++) {
                in.readFully(id);
                var at = LocalDateTime.ofEpochSecond(in.readLong(), in.readInt(), ZoneOffset.UTC);
                log.add(new EntryLine(new String(id, StandardCharsets.ISO_8859_1), at, in.readLong()));
            }
            lines.put(build, log);
        }
        var odd = new HashMap<String, String>();
        for (int left = in.readInt(); left > 0; left--) {
            odd.put(in.readUTF(), in.readUTF());
        }
        return new Catalogue(lines, odd);
    }

    private static long checksum(byte[] bytes, int length) {
        var sum = new CRC32();
        sum.update(bytes, 0, length);
        return sum.getValue();
    }

    private static long checksumIn(byte[] bytes, int at) {
        return ByteBuffer.wrap(bytes, at, Long.BYTES).getLong();
    }
}
