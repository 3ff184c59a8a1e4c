package planewright.shared.material;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import planewright.api.calculator.Language;

/**
 * The usual cautions at the bench, by the words that call for them; the table is {@code cautions.tsv} beside this package.
 * They are common practice without a printed source. A maker's safety sheet and local rules go before them.
 */
public final class Cautions {
    private static final List<Caution> TABLE = load();

    private Cautions() {}

    /** The cautions that belong to what is said, such as materials and a step's text; each once, in the order of the table. */
    public static List<String> usual(Collection<String> said) {
        var all = " " + words(String.join(" | ", said)) + " ";
        return TABLE.stream()
                .filter(caution -> caution.words().stream().anyMatch(word -> all.contains(" " + word + " ")))
                .map(Caution::text)
                .toList();
    }

    /** As {@link #usual}, in the language of a place. */
    public static List<String> usual(Collection<String> said, Locale locale) {
        var language = Language.of(locale, Cautions.class);
        return usual(said).stream().map(language::say).toList();
    }

    /** Has the table read by the time it returns, so that whoever may not wait for a file can ask afterwards. */
    public static void prepare(Locale locale) {
        Objects.requireNonNull(TABLE);
        Language.of(locale, Cautions.class);
    }

    private record Caution(List<String> words, String text) {}

    private static String words(String text) {
        return text.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}|]+", " ")
                .strip();
    }

    private static List<Caution> load() {
        try (var in = Objects.requireNonNull(Cautions.class.getResourceAsStream("cautions.tsv"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.split("\t"))
                    .map(cells -> new Caution(
                            Stream.of(cells[0].split(",")).map(Cautions::words).toList(), cells[1]))
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
