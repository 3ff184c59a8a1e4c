package planewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.index.Hits;
import planewright.app.index.Question;
import planewright.app.index.SearchIndex;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;

/**
 * What a builder means comes first. Mean reciprocal rank as of E. M. Voorhees, "The TREC-8 question answering track report"
 * (1999): one over the place of the first answer. nDCG as of K. Järvelin and J. Kekäläinen, "Cumulated gain-based evaluation
 * of IR techniques", ACM Transactions on Information Systems 20 (2002), with the gain divided by log2(place + 1), over ten
 * places.
 */
class JudgedSearchTest {
    private static final int PLACES = 10;
    private static final int ANSWER = 2;

    @TempDir
    private Path temp;

    @Test
    void whatABuilderMeansComesFirst() throws IOException {
        var told = new ArrayList<String>();
        double reciprocal = 0;
        double gain = 0;
        var questions = questions();
        try (var folder = JournalFolder.open(
                        Workplace.copySample(temp.resolve("journal")), UserFolders.under(temp.resolve("user")));
                var index = SearchIndex.open(temp.resolve("index"), folder.journal(), (done, all) -> {})) {
            for (var judged : questions) {
                var found = index.find(Question.of(judged.words()).most(PLACES)).hits().stream()
                        .map(Hits.Hit::entryId)
                        .map(id -> id.substring(id.length() - 6))
                        .toList();
                reciprocal += judged.reciprocalRank(found);
                gain += judged.gain(found);
                told.add(String.format(
                        Locale.ROOT,
                        "%.2f %.2f %s %s",
                        judged.reciprocalRank(found),
                        judged.gain(found),
                        judged.words(),
                        found));
            }
        }
        double meanReciprocalRank = reciprocal / questions.size();
        double meanGain = gain / questions.size();
        System.out.printf(
                Locale.ROOT,
                "search, %d judged questions: mean reciprocal rank %.3f, nDCG@%d %.3f%n",
                questions.size(),
                meanReciprocalRank,
                PLACES,
                meanGain);
        assertThat(questions).hasSizeGreaterThan(30);
        assertThat(meanReciprocalRank).as(String.join("\n", told)).isGreaterThan(0.90);
        assertThat(meanGain).as(String.join("\n", told)).isGreaterThan(0.85);
    }

    /** A question and the grades of the entries that answer it. */
    private record Judged(String words, Map<String, Integer> grades) {
        double reciprocalRank(List<String> found) {
            for (int i = 0; i < found.size(); i++) {
                if (grades.getOrDefault(found.get(i), 0) == ANSWER) {
                    return 1.0 / (i + 1);
                }
            }
            return 0;
        }

        double gain(List<String> found) {
            return gained(found.stream()
                            .map(entry -> grades.getOrDefault(entry, 0))
                            .toList())
                    / gained(grades.values().stream()
                            .sorted(Comparator.reverseOrder())
                            .toList());
        }

        private static double gained(List<Integer> grades) {
            double sum = 0;
            for (int i = 0; i < Math.min(PLACES, grades.size()); i++) {
                sum += grades.get(i) / (Math.log(i + 2) / Math.log(2));
            }
            return sum;
        }
    }

    private static List<Judged> questions() throws IOException {
        try (var stream = Objects.requireNonNull(
                JudgedSearchTest.class.getResourceAsStream("judged-questions.txt"), "judged-questions.txt")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(JudgedSearchTest::judged)
                    .toList();
        }
    }

    private static Judged judged(String line) {
        var parts = line.split(" \\| ");
        var grades = new HashMap<String, Integer>();
        for (int i = 1; i < parts.length; i++) {
            var entry = parts[i].split(" ");
            grades.put(entry[0], Integer.parseInt(entry[1]));
        }
        return new Judged(parts[0], Map.copyOf(grades));
    }
}
