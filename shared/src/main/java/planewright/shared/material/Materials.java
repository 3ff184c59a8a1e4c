package planewright.shared.material;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import planewright.api.calculator.Language;

/**
 * The table of materials.
 *
 * @param facts in the order of the table
 */
public record Materials(List<MaterialFact> facts) {
    /** In which a builder may name a material. */
    private static final List<Language> LANGUAGES =
            List.of(Language.ENGLISH, Language.of(Locale.GERMAN, Materials.class));

    /** The heading of what cures, dries or sets. */
    public static final String CURE = "cure";

    public Materials {
        facts = List.copyOf(facts);
    }

    /** The table that comes with the program. */
    public static Materials table() {
        return Loaded.TABLE;
    }

    /** The materials that have figures under a heading, in the order of the table. */
    public List<String> names(String heading) {
        return facts.stream()
                .filter(fact -> fact.heading().equals(heading))
                .map(MaterialFact::material)
                .distinct()
                .toList();
    }

    /** A figure of a material, letter case aside. */
    public Optional<MaterialFact> fact(String material, String property) {
        return facts.stream()
                .filter(fact -> fact.material().equalsIgnoreCase(material)
                        && fact.property().equals(property))
                .findFirst();
    }

    /** All figures of a material under a heading. */
    public List<MaterialFact> of(String heading, String material) {
        return facts.stream()
                .filter(fact ->
                        fact.heading().equals(heading) && fact.material().equalsIgnoreCase(material))
                .toList();
    }

    /**
     * The material that a builder's words mean: its name, or the only one whose name has all the words ({@code contact
     * adhesive}, {@code Kontaktkleber}), or the only one whose whole name stands among the words ({@code laminating epoxy with flock}).
     */
    public Optional<String> meant(String heading, String words) {
        return LANGUAGES.stream()
                .flatMap(language -> meant(heading, words, language).stream())
                .findFirst();
    }

    private Optional<String> meant(String heading, String words, Language language) {
        var typed = words(words);
        var names = names(heading);
        return names.stream()
                .filter(name -> words(language.say(name)).equals(typed))
                .findFirst()
                .or(() -> only(names.stream()
                        .filter(name ->
                                !typed.isEmpty() && words(language.say(name)).containsAll(typed))
                        .toList()))
                .or(() -> only(names.stream()
                        .filter(name -> typed.containsAll(words(language.say(name))))
                        .toList()));
    }

    private static Optional<String> only(List<String> names) {
        return names.size() == 1 ? Optional.of(names.get(0)) : Optional.empty();
    }

    private static Set<String> words(String text) {
        var words = new HashSet<>(List.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")));
        words.remove("");
        return words;
    }

    private static final class Loaded {
        private static final Materials TABLE = load();

        private static Materials load() {
            try (var in = Objects.requireNonNull(Materials.class.getResourceAsStream("materials.tsv"))) {
                var text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                return new Materials(text.lines().skip(1).map(MaterialFact::of).toList());
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
    }
}
