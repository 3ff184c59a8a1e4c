package planewright.benchmark;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import planewright.app.index.Facet;
import planewright.app.index.Filter;
import planewright.app.index.MeasuredRange;
import planewright.app.index.Question;
import planewright.app.synthetic.Vocabulary;
import planewright.shared.quantity.QuantityProblem;

/** What is asked of a synthetic journal: kinds of questions, several different ones of each. */
final class Queries {
    /** Kinds that somebody sees answered letter by letter. */
    static final List<String> AS_YOU_TYPE =
            List.of("one word", "two words", "1 letter", "2 letters", "3 letters", "a word and 3 letters");

    private static final int OF_EACH = 20;
    private static final List<String> NAMES = List.of("wing", "fin", "spar", "hatch", "canopy", "nose", "aileron");

    private final Vocabulary vocabulary = Vocabulary.workshop();
    private final List<String> builds;

    /**
     * @param builds ids of builds to keep to
     */
    Queries(List<String> builds) {
        this.builds = builds;
    }

    /** The words of the questions of one word. */
    List<String> words() {
        return IntStream.range(0, OF_EACH).mapToObj(this::word).toList();
    }

    Map<String, List<Question>> byKind() {
        var kinds = new LinkedHashMap<String, List<Question>>();
        put(kinds, "one word", i -> Question.of(word(i) + " "));
        put(kinds, "two words", i -> Question.of(word(i) + " " + word(i + 40) + " "));
        put(kinds, "1 letter", i -> Question.of(word(i).substring(0, 1)));
        put(kinds, "2 letters", i -> Question.of(word(i).substring(0, 2)));
        put(kinds, "3 letters", i -> Question.of(word(i).substring(0, 3)));
        put(
                kinds,
                "a word and 3 letters",
                i -> Question.of(word(i) + " " + word(i + 7).substring(0, 3)));
        put(kinds, "phrase", i -> Question.of("\"" + word(i) + " " + word(i + 1) + "\""));
        put(kinds, "misspelt word", i -> Question.of(misspelt(vocabulary.word(400 + 37 * i)) + " "));
        put(kinds, "mass in grams", i -> ranged("", "mass", 10 * i + " g", 10 * i + 200 + " g"));
        put(kinds, "named mass in ounces", i -> ranged("", name(i) + " mass", "1 oz", 2 + i + " oz"));
        put(kinds, "length in inches and a word", i -> ranged(word(i) + " ", "length", "1 in", (i + 4) + "/2 in"));
        put(
                kinds,
                "a build and a word",
                i -> Question.of(word(i) + " ").keeping(Filter.NONE.with(Facet.BUILD, builds.get(i % builds.size()))));
        put(
                kinds,
                "tag and kind",
                i -> Question.of("")
                        .keeping(Filter.NONE.with(Facet.TAG, "glue").with(Facet.KIND, i % 2 == 0 ? "work" : "note")));
        put(kinds, "everything", i -> Question.of(""));
        return kinds;
    }

    private static void put(Map<String, List<Question>> kinds, String kind, IntFunction<Question> question) {
        var several = new ArrayList<Question>();
        for (int i = 0; i < OF_EACH; i++) {
            several.add(question.apply(i));
        }
        kinds.put(kind, several);
    }

    /** A word of a thing; the first comes in every tenth entry or so. */
    private String word(int number) {
        return vocabulary.word(150 + 3 * number);
    }

    private static String name(int number) {
        return NAMES.get(number % NAMES.size());
    }

    private static String misspelt(String word) {
        int middle = word.length() / 2;
        return word.substring(0, middle) + "q" + word.substring(middle + 1);
    }

    private static Question ranged(String words, String name, String least, String most) {
        try {
            var range = MeasuredRange.parse(name, Optional.of(least), Optional.of(most));
            return Question.of(words).keeping(Filter.NONE.withMeasured(Optional.of(range)));
        } catch (QuantityProblem ours) {
            throw new IllegalStateException(ours);
        }
    }
}
