package planewright.benchmark;

import java.io.IOException;
import java.util.Comparator;
import planewright.app.journal.EntryLine;

/** From {@code main} until the builds are known and the newest entries of all are read: what a window could show first. */
public final class FirstScreen {
    private static final int NEWEST = 50;

    private FirstScreen() {}

    private record Place(String build, EntryLine line) {}

    public static void main(String[] words) throws IOException {
        var watch = new Stopwatch();
        try (var program = Opened.program()) {
            var journal = program.journal();
            var newest = journal.builds().stream()
                    .flatMap(build -> journal.lines(build.id()).stream().map(line -> new Place(build.id(), line)))
                    .sorted(Comparator.comparing((Place place) -> place.line().at())
                            .reversed())
                    .limit(NEWEST)
                    .flatMap(place -> journal.entry(place.build(), place.line().id()).stream())
                    .toList();
            double took = watch.milliseconds();
            if (newest.isEmpty()) {
                throw new IOException("the journal has no entries");
            }
            ChildJvm.tell("first screen", took);
        }
    }
}
