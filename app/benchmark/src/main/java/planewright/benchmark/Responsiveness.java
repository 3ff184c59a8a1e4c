package planewright.benchmark;

import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import planewright.app.synthetic.SyntheticJournal;
import planewright.benchmark.kernel.Folders;

/**
 * Whether the window stays at hand while a builder works in a large journal: how long each event holds the event thread up. The day
 * is not the first: search index and catalogue are made, as is the launcher's archive of classes.
 */
final class Responsiveness implements Section {
    private static final double MOST_OF_NEARLY_ALL = 50;
    private static final double MOST = 200;
    /** In so many rounds the whole hour is worked. */
    private static final double WHOLE = 5;

    private static final double MOST_HEAP = 400;

    @Override
    public boolean needsJournal() {
        return false;
    }

    @Override
    public void measure(Run run) throws IOException, InterruptedException {
        if (GraphicsEnvironment.isHeadless()) {
            run.report().leftOut("an hour's work in the window", "there is no display");
            return;
        }
        var temp = Files.createTempDirectory(run.user().toAbsolutePath().getParent(), "hour");
        try {
            var journal = temp.resolve("journal");
            var size = run.synthetic();
            SyntheticJournal.of(size.builds(), size.entries(), 2 * size.pictures())
                    .write(journal);
            var first = new ChildJvm(journal, temp.resolve("user"), run.plugins(), List.of());
            first.run(SearchReady.class);
            var told = first.archivedFor(OneSession.class, "heap")
                    .run(HourAtTheBench.class, Double.toString(run.rounds() / WHOLE));
            var report = run.report();
            report.goal(
                    Goal.under("an hour's work, 99 of 100 events", "ms", told.get("nearly all"), MOST_OF_NEARLY_ALL));
            report.goal(Goal.under("an hour's work, longest event", "ms", told.get("longest"), MOST));
            report.goal(Goal.under("heap in use after an hour's work", "MiB", told.get("heap in use"), MOST_HEAP));
            told.forEach((name, number) -> report.figure("hour", name, number));
        } finally {
            Folders.delete(temp);
        }
    }
}
