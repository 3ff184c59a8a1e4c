package planewright.app.synthetic;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * The words of a workshop, the commonest first. The word of rank r comes with a chance in proportion to 1 / (r + 2.7)^1.0, as words
 * of English text do.
 *
 * <p>Source: B. Mandelbrot, An informational theory of the statistical structure of language (1953), with constants as commonly
 * given for English, from memory.
 */
public final class Vocabulary {
    private static final int SIZE = 16_000;
    private static final double SHIFT = 2.7;

    private final List<String> words;
    private final double[] cumulative = new double[SIZE];

    private Vocabulary(List<String> words) {
        this.words = words;
        double sum = 0;
        for (int rank = 0; rank < SIZE; rank++) {
            sum += 1 / (rank + 1 + SHIFT);
            cumulative[rank] = sum;
        }
    }

    /** The one vocabulary of all synthetic journals. */
    public static Vocabulary workshop() {
        var things = read("shop.txt");
        var words = new LinkedHashSet<String>(read("little.txt"));
        var doing = read("doing.txt").iterator();
        for (var thing : things) {
            words.add(thing);
            if (doing.hasNext()) {
                words.add(doing.next());
            }
        }
        compounds(things, words);
        return new Vocabulary(List.copyOf(words));
    }

    /** The word of a rank, the commonest being 0. */
    public String word(int rank) {
        return words.get(rank);
    }

    /** How many there are. */
    public int size() {
        return words.size();
    }

    String draw(Random random) {
        double target = random.nextDouble() * cumulative[SIZE - 1];
        int place = Arrays.binarySearch(cumulative, target);
        return words.get(Math.min(SIZE - 1, place < 0 ? -place - 1 : place));
    }

    /** Words of two, such as {@code foamjig}, in an order of their own. */
    private static void compounds(List<String> parts, Set<String> words) {
        var random = new Random(1);
        while (words.size() < SIZE) {
            var first = parts.get(random.nextInt(parts.size()));
            var second = parts.get(random.nextInt(parts.size()));
            words.add(first + second);
        }
    }

    private static List<String> read(String file) {
        try (InputStream in = Vocabulary.class.getResourceAsStream(file)) {
            return new ArrayList<>(new LinkedHashSet<>(List.of(new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .strip()
                    .split("\\s+"))));
        } catch (IOException damaged) {
            throw new UncheckedIOException(damaged);
        }
    }
}
