package planewright.app.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import planewright.app.pictures.PictureRefused;
import planewright.app.pictures.PictureShelf;
import planewright.app.pictures.PlainPicture;

/**
 * Writes files of a journal into a ZIP file. A picture that leaves something out has another content, so another SHA-256 for its
 * name; all that is written of it gets the new one, so what is unpacked is a whole journal again.
 */
final class ArchivedFiles {
    /** Of every entry, for an archive shall not tell more than the journal; ZIP knows no time before 1980. */
    private static final LocalDateTime TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    private final ZipOutputStream zip;
    private final PictureForm form;
    private final Collection<LeftOut> leftOut;
    private final Map<String, String> newHashes = new HashMap<>();
    private final Set<String> written = new HashSet<>();
    private int tellPlace;

    ArchivedFiles(OutputStream out, PictureForm form, Collection<LeftOut> leftOut) {
        this.zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        this.form = form;
        this.leftOut = leftOut;
    }

    /** How many pictures say where they were taken, or would have. */
    int tellPlace() {
        return tellPlace;
    }

    /** How many files were written. */
    int number() {
        return written.size();
    }

    /** Writes a file that is no record; pictures must be written before the records that name them. */
    void add(String name, Path file) throws IOException {
        if (!PictureShelf.isPicture(file)) {
            copy(name, file, Deflater.DEFAULT_COMPRESSION);
            return;
        }
        tellPlace += PictureShelf.tellsPlace(file) ? 1 : 0;
        if (form == PictureForm.AS_TAKEN) {
            copy(name, file, Deflater.NO_COMPRESSION);
        } else {
            addPlain(name, file);
        }
    }

    /** Nothing is begun for a file that is gone. */
    private void copy(String name, Path file, int level) throws IOException {
        try (var in = Files.newInputStream(file)) {
            begin(name, level);
            in.transferTo(zip);
            zip.closeEntry();
        }
    }

    private void addPlain(String name, Path file) throws IOException {
        byte[] plain;
        try {
            plain = PlainPicture.of(file);
        } catch (PictureRefused damaged) {
            leftOut.add(new LeftOut(name, ExchangeWords.say("it is damaged, so the place cannot be cut out of it")));
            return;
        }
        var hash = HASH.matcher(name);
        var given = name;
        if (hash.find()) {
            newHashes.put(hash.group(), PictureShelf.hash(plain));
            given = renamed(name);
        }
        if (!written.contains(given)) {
            begin(given, Deflater.NO_COMPRESSION);
            zip.write(plain);
            zip.closeEntry();
        }
    }

    /** {@code photos/ab/abcd….jpg} under its new hash. */
    private String renamed(String name) {
        var now = withNewHashes(name);
        var hash = HASH.matcher(now);
        return hash.find() && name.startsWith("photos/")
                ? "photos/" + hash.group().substring(0, 2) + "/" + now.substring(hash.start())
                : now;
    }

    /** Writes a text, with the new names of pictures in it. */
    void add(String name, byte[] text) throws IOException {
        begin(name, Deflater.DEFAULT_COMPRESSION);
        var content = newHashes.isEmpty()
                ? text
                : withNewHashes(new String(text, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
        zip.write(content);
        zip.closeEntry();
    }

    private String withNewHashes(String text) {
        return HASH.matcher(text).replaceAll(found -> newHashes.getOrDefault(found.group(), found.group()));
    }

    private void begin(String name, int level) throws IOException {
        written.add(name);
        zip.setLevel(level);
        var entry = new ZipEntry(name);
        entry.setTimeLocal(TIME);
        zip.putNextEntry(entry);
    }

    void finish() throws IOException {
        zip.finish();
    }
}
