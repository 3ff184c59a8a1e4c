package planewright.benchmark;

import java.io.IOException;
import java.util.Comparator;
import planewright.app.journal.EntryRecord;

/** From {@code main} until the builds and the newest entries of all are known: what the window shows first. */
public final class FirstScreen {
    private static final int NEWEST = 50;

    private FirstScreen() {}

    public static void main(String[] words) throws IOException {
        var watch = new Stopwatch();
        try (var program = Opened.program()) {
            var journal = program.journal();
            var newest = journal.builds().stream()
                    .flatMap(build -> journal.log(build.id()).stream())
                    .sorted(Comparator.comparing(EntryRecord::at).reversed())
                    .limit(NEWEST)
                    .toList();
            double took = watch.milliseconds();
            if (newest.isEmpty()) {
                throw new IOException("the journal has no entries");
            }
            ChildJvm.tell("first screen", took);
        }
    }
}
