package planewright.benchmark;

import java.io.IOException;
import planewright.app.index.Question;

/** From {@code main} until the search index is open, or made where there was none, and has answered a first question. */
public final class SearchReady {
    private SearchReady() {}

    public static void main(String[] words) throws IOException {
        var watch = new Stopwatch();
        try (var program = Opened.program()) {
            var hits = program.index().join().find(Question.of("wing"));
            double took = watch.milliseconds();
            if (hits.total() == 0) {
                throw new IOException("nothing was found");
            }
            ChildJvm.tell("search ready", took);
        }
    }
}
