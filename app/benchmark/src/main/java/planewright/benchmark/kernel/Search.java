package planewright.benchmark.kernel;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import planewright.app.Program;
import planewright.app.index.Hits;
import planewright.app.index.Question;
import planewright.app.index.SearchIndex;
import planewright.app.store.UserFolders;
import planewright.app.synthetic.SyntheticJournal;

/** A question to a journal of a thousand entries, with its hits and counts. */
@State(Scope.Benchmark)
public class Search {
    private static final int BUILDS = 10;
    private static final int ENTRIES = 100;

    private Path temp;
    private Program program;
    private SearchIndex index;

    @Setup
    public void open() throws IOException {
        temp = Files.createTempDirectory("kernel");
        var journal = temp.resolve("journal");
        SyntheticJournal.of(BUILDS, ENTRIES, 0).write(journal);
        program = Program.open(journal, UserFolders.under(temp.resolve("user")), List.of(), Clock.systemDefaultZone());
        index = program.index().join();
    }

    @TearDown
    public void close() throws IOException {
        program.close();
        Folders.delete(temp);
    }

    @Benchmark
    public Hits word() throws IOException {
        return index.find(Question.of("balsa "));
    }

    @Benchmark
    public Hits threeLetters() throws IOException {
        return index.find(Question.of("bal"));
    }
}
