package planewright.benchmark;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import planewright.api.journal.Entry.Kind;
import planewright.app.Program;
import planewright.app.index.Question;
import planewright.app.index.SearchIndex;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.store.JsonFiles;
import planewright.app.store.RecordFiles;

/**
 * Saves new and changed entries with the search index open, and by turns writes the same bytes into a bare file beside the journal and
 * forces it to disk. Tells medians: of a save, of a bare write, and from a save's end to the entry being found; milliseconds.
 */
public final class Saves {
    private static final int WARMING = 200;

    /** A workshop writes about a few builds; each has its folder for this year after its first entry. */
    private static final int ON_THE_BENCH = 5;

    private final List<Double> saves = new ArrayList<>();
    private final List<Double> bare = new ArrayList<>();
    private final List<Double> found = new ArrayList<>();
    private final Program program;
    private final SearchIndex index;
    private final Path beside;
    private int files;

    private Saves(Program program, Path beside) {
        this.program = program;
        this.index = program.index().join();
        this.beside = beside;
    }

    /**
     * Runs them.
     *
     * @param words how many entries are written and changed
     */
    public static void main(String[] words) throws IOException {
        int count = Integer.parseInt(words[0]);
        try (var program = Opened.program()) {
            var beside = Files.createDirectories(
                    program.folder().folder().resolveSibling("bare-writes-" + System.nanoTime()));
            var measured = new Saves(program, beside);
            for (int i = 0; i < WARMING + count; i++) {
                measured.entry(i, i >= WARMING);
            }
            ChildJvm.tell("save", Median.of(measured.saves));
            ChildJvm.tell("bare write", Median.of(measured.bare));
            ChildJvm.tell("found", Median.of(measured.found));
        }
    }

    private void entry(int number, boolean counts) throws IOException {
        var builds = program.journal().builds();
        var build = builds.get(number % Math.min(ON_THE_BENCH, builds.size()));
        var word = "quiltwort" + Integer.toString(number, 36) + "x" + Long.toString(System.nanoTime(), 36);
        var written = EntryRecord.blank(build.id(), Kind.NOTE, LocalDateTime.now())
                .withTitle("Fillet of the " + number + ". rib")
                .withText(List.of(("Left wing sanded, weighed and hung up; the fin waits. ").repeat(25)));
        save(Edit.add("add entry", written), written, counts);
        var changed = written.withTitle(word);
        save(Edit.change("change title", written, changed), changed, counts);
        var watch = new Stopwatch();
        if (index.find(Question.of(word)).total() != 1) {
            throw new IOException("an entry that was saved is not found");
        }
        note(found, watch, counts);
    }

    private void save(Edit edit, EntryRecord entry, boolean counts) throws IOException {
        var watch = new Stopwatch();
        program.journal().apply(edit);
        note(saves, watch, counts);
        var bytes = JsonFiles.text(RecordFiles.json(entry)).getBytes(StandardCharsets.UTF_8);
        var bareWatch = new Stopwatch();
        try (var channel = FileChannel.open(
                beside.resolve(++files + ".json"), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.wrap(bytes));
            channel.force(true);
        }
        note(bare, bareWatch, counts);
    }

    private static void note(List<Double> times, Stopwatch watch, boolean counts) {
        if (counts) {
            times.add(watch.milliseconds());
        }
    }
}
