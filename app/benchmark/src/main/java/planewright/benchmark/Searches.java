package planewright.benchmark;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import planewright.api.journal.Build;
import planewright.app.index.Hits;
import planewright.app.index.Question;

/**
 * Asks questions of each kind as the window does, those that are answered letter by letter at a glance, the others with their
 * counts by facet, in a program that has been searched in for a while. Of each question it
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
                        index.glance(question);
                        index.find(question);
                    }
                }
            }
            for (var kind : kinds.entrySet()) {
                if (Queries.AS_YOU_TYPE.contains(kind.getKey())) {
                    tell(kind.getKey(), medians(kind.getValue(), times, index::glance));
                    tell(kind.getKey() + ", counted", medians(kind.getValue(), times, index::find));
                } else {
                    tell(kind.getKey(), medians(kind.getValue(), times, index::find));
                }
            }
        }
    }

    private interface Asking {
        Hits put(Question question) throws IOException;
    }

    private static void tell(String kind, List<Double> medians) {
        ChildJvm.tell(kind + ", median", Median.of(medians));
        ChildJvm.tell(
                kind + ", worst",
                medians.stream().mapToDouble(each -> each).max().orElseThrow());
    }

    private static List<Double> medians(List<Question> questions, int times, Asking asking) throws IOException {
        var medians = new ArrayList<Double>();
        for (var question : questions) {
            medians.add(median(asking, question, times));
        }
        return medians;
    }

    private static double median(Asking asking, Question question, int times) throws IOException {
        var took = new ArrayList<Double>();
        for (int i = 0; i < times; i++) {
            var watch = new Stopwatch();
            asking.put(question);
            took.add(watch.milliseconds());
        }
        return Median.of(took);
    }
}
