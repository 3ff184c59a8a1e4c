package planewright.app.store;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
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
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryLine;

/**
 * What was known of builds and entries when the journal was last looked at, in one file of the user's cache: with it a journal of
 * any length opens at once. Without it, or if it is damaged, everything is read again.
 *
 * @param builds by the names of their folders
 * @param odd where entries lie that lie elsewhere than we would put them, by id, within the journal's builds
 */
record Catalogue(Map<String, Known> builds, Map<String, String> odd) {
    /** Raised when the file is written differently; the shape of a build it tells itself. */
    private static final String NAME = "catalogue-4";

    private static final int ID_LENGTH = 26;

    private static final RecordBytes<BuildRecord> HEAD = new RecordBytes<>(BuildRecord.class);

    /**
     * What was known of a build.
     *
     * @param head the build
     * @param stamp of its file
     * @param lines of its entries, in order of time
     */
    record Known(BuildRecord head, long stamp, List<EntryLine> lines) {}

    /** The catalogue in a cache folder; empty where there is none that can be used. */
    static Optional<Catalogue> load(Path cache) {
        try {
            var bytes = Files.readAllBytes(cache.resolve(NAME));
            int length = bytes.length - Long.BYTES;
            if (length < 0 || checksum(bytes, length) != ByteBuffer.wrap(bytes).getLong(length)) {
                return Optional.empty();
            }
            return read(ByteBuffer.wrap(bytes, 0, length));
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
        RecordBytes.writeText(HEAD.shape(), out);
        out.writeInt(builds.size());
        for (var build : builds.entrySet()) {
            RecordBytes.writeText(build.getKey(), out);
            var known = new ByteArrayOutputStream();
            write(build.getValue(), since, new DataOutputStream(known));
            out.writeInt(known.size());
            known.writeTo(out);
        }
        out.writeInt(odd.size());
        for (var place : odd.entrySet()) {
            RecordBytes.writeText(place.getKey(), out);
            RecordBytes.writeText(place.getValue(), out);
        }
    }

    private static void write(Known known, Instant since, DataOutputStream out) throws IOException {
        HEAD.write(known.head(), out);
        out.writeLong(Stamp.settled(known.stamp(), since));
        out.writeInt(known.lines().size());
        for (var line : known.lines()) {
            out.writeBytes(line.id());
            out.writeLong(line.at().toEpochSecond(ZoneOffset.UTC));
            out.writeInt(line.at().getNano());
            out.writeLong(Stamp.settled(line.stamp(), since));
        }
    }

    private static Optional<Catalogue> read(ByteBuffer in) {
        if (!RecordBytes.readText(in).equals(HEAD.shape())) {
            return Optional.empty();
        }
        var pieces = new HashMap<String, ByteBuffer>();
        for (int left = in.getInt(); left > 0; left--) {
            var folder = RecordBytes.readText(in);
            int length = in.getInt();
            pieces.put(folder, in.slice(in.position(), length));
            in.position(in.position() + length);
        }
        var odd = new HashMap<String, String>();
        for (int left = in.getInt(); left > 0; left--) {
            odd.put(RecordBytes.readText(in), RecordBytes.readText(in));
        }
        var builds = new HashMap<String, Known>();
        pieces.entrySet().parallelStream()
                .map(piece -> Map.entry(piece.getKey(), known(piece.getValue())))
                .toList()
                .forEach(build -> builds.put(build.getKey(), build.getValue()));
        return Optional.of(new Catalogue(builds, odd));
    }

    private static Known known(ByteBuffer in) {
        var head = HEAD.read(in);
        long stamp = in.getLong();
        int size = in.getInt();
        var log = new ArrayList<EntryLine>(size);
        var id = new byte[ID_LENGTH];
        for (int i = 0; i < size; i++) {
            in.get(id);
            var at = LocalDateTime.ofEpochSecond(in.getLong(), in.getInt(), ZoneOffset.UTC);
            log.add(new EntryLine(new String(id, StandardCharsets.ISO_8859_1), at, in.getLong()));
        }
        return new Known(head, stamp, log);
    }

    private static long checksum(byte[] bytes, int length) {
        var sum = new CRC32();
        sum.update(bytes, 0, length);
        return sum.getValue();
    }
}
