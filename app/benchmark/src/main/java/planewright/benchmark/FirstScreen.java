package planewright.benchmark;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
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
                    .flatMap(build -> newest(journal.lines(build.id())).map(line -> new Place(build.id(), line)))
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

    /** Lines are in order of time. */
    private static Stream<EntryLine> newest(List<EntryLine> lines) {
        return lines.subList(Math.max(0, lines.size() - NEWEST), lines.size()).stream();
    }
}
