package planewright.app.synthetic;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;
import planewright.app.journal.PictureRecord;
import planewright.app.pictures.PictureShelf;
import planewright.app.store.JournalFolder;
import planewright.app.store.JsonFiles;
import planewright.app.store.Names;
import planewright.app.store.RecordFiles;

/**
 * A journal of invented builds over twenty years, to the byte the same from the same numbers; files are those that the program
 * itself would write, but not forced to disk.
 *
 * @param builds how many
 * @param entries in the log of each build
 * @param pictures in all, each different, spread over the builds
 * @param snapshot the size of the pictures
 * @param seed another one gives another journal
 */
public record SyntheticJournal(int builds, int entries, int pictures, Snapshot snapshot, long seed) {
    private static final LocalDate FIRST_DAY = LocalDate.of(2006, 3, 1);
    private static final int DAYS = 20 * 365;
    private static final int LONGEST_LIFE = 3 * 365;
    private static final int MINUTES_A_DAY = 24 * 60;
    private static final Vocabulary VOCABULARY = Vocabulary.workshop();

    public SyntheticJournal {
        if (builds < 1 || entries < 0 || pictures < 0) {
            throw new IllegalArgumentException("a journal of " + builds + " builds, " + entries + " entries each and "
                    + pictures + " pictures; accepted: 1 build or more, and none below 0");
        }
    }

    /** With small pictures. */
    public static SyntheticJournal of(int builds, int entries, int pictures) {
        return new SyntheticJournal(builds, entries, pictures, Snapshot.SMALL, 1);
    }

    /**
     * Writes it, a build on each processor.
     *
     * @param folder empty, or not there yet
     */
    public void write(Path folder) throws IOException {
        JournalFolder.create(folder, name());
        var id = UUID.nameUUIDFromBytes(toString().getBytes(StandardCharsets.UTF_8));
        Files.writeString(folder.resolve(JournalFolder.HEAD), JournalFolder.head(id, name()));
        try {
            IntStream.range(0, builds).parallel().forEach(number -> writeBuild(folder, number));
        } catch (UncheckedIOException failure) {
            throw failure.getCause();
        }
    }

    private String name() {
        return "Synthetic " + builds + " × " + entries;
    }

    private void writeBuild(Path journal, int number) {
        var random = new Random(seed * 1_000_003 + number);
        var ids = new SeededIds(random);
        var figures = new Figures(random, ids);
        var prose = new Prose(VOCABULARY, random);
        var begun = FIRST_DAY.plusDays((long) number * (DAYS - LONGEST_LIFE) / builds);
        try {
            var build = new SyntheticBuild(random, ids, figures, prose).make(number + 1, begun);
            var folder = journal.resolve("builds").resolve(Names.folderOf(build));
            write(folder.resolve("build.json"), JsonFiles.text(RecordFiles.json(build)));
            var maker = new SyntheticEntry(random, ids, figures, prose);
            var shown = shown(journal.resolve("photos"), number, maker, random);
            var days = days(begun, random);
            for (int i = 0; i < entries; i++) {
                var entry = maker.make(build.id(), days.get(i), shown.get(i));
                write(folder.resolve(Names.pathOf(entry.id())), JsonFiles.text(RecordFiles.json(entry)));
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** When the entries of a build were written, in order. */
    private List<LocalDateTime> days(LocalDate begun, Random random) {
        return random.ints(entries, 0, LONGEST_LIFE * MINUTES_A_DAY)
                .sorted()
                .mapToObj(minute -> begun.atStartOfDay().plusMinutes(minute))
                .toList();
    }

    /** Takes the build's share of the pictures, each into one of its entries. */
    private List<List<PictureRecord>> shown(Path photos, int build, SyntheticEntry maker, Random random)
            throws IOException {
        var shown = new ArrayList<List<PictureRecord>>();
        for (int i = 0; i < entries; i++) {
            shown.add(new ArrayList<>());
        }
        int first = (int) ((long) build * pictures / builds);
        int end = (int) ((build + 1L) * pictures / builds);
        for (int i = first; i < end && entries > 0; i++) {
            var content = snapshot.jpeg(seed * 1_000_003 + i);
            var picture = maker.picture(PictureShelf.hash(content));
            write(photos.resolve(picture.hash().substring(0, 2)).resolve(picture.hash() + ".jpg"), content);
            shown.get(random.nextInt(entries)).add(picture);
        }
        return shown;
    }

    private static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void write(Path file, byte[] content) throws IOException {
        Files.createDirectories(file.getParent());
        Files.write(file, content);
    }
}
