package planewright.benchmark;

import java.io.IOException;
import java.util.ArrayList;
import planewright.api.journal.Build;
import planewright.app.index.Question;
import planewright.app.index.SearchIndex;

/**
 * Asks questions of each kind, with their counts by facet, in a program that has been searched in for a while. Of each question it
 * tells the median of several answers, of a kind the median and the worst of its questions, in milliseconds.
 */
public final class Searches {
    private Searches() {}

    /**
     * Runs them.
     *
     * @param words how often each question is put, and how many rounds over all of them go before
     */
    public static void main(String[] words) throws IOException {
        int times = Integer.parseInt(words[0]);
        int before = Integer.parseInt(words[1]);
        try (var program = Opened.program()) {
            var index = program.index().join();
            var kinds = new Queries(
                            program.journal().builds().stream().map(Build::id).toList())
                    .byKind();
            for (int round = 0; round < before; round++) {
                for (var questions : kinds.values()) {
                    for (var question : questions) {
                        index.find(question);
                    }
                }
            }
            for (var kind : kinds.entrySet()) {
                var medians = new ArrayList<Double>();
                for (var question : kind.getValue()) {
                    medians.add(median(index, question, times));
                }
                ChildJvm.tell(kind.getKey() + ", median", Median.of(medians));
                ChildJvm.tell(
                        kind.getKey() + ", worst",
                        medians.stream().mapToDouble(each -> each).max().orElseThrow());
            }
        }
    }

    private static double median(SearchIndex index, Question question, int times) throws IOException {
        var took = new ArrayList<Double>();
        for (int i = 0; i < times; i++) {
            var watch = new Stopwatch();
            index.find(question);
            took.add(watch.milliseconds());
        }
        return Median.of(took);
    }
}
