package planewright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The program's own tables of words have all that is said beside them, and nothing that nobody says. */
class SaidWordsTest {
    private static final Path RESOURCES = Path.of("src/main/resources");
    private static final String QUOTED = "[^\"\\\\\n]*+(?:\\\\.[^\"\\\\\n]*+)*+";
    private static final Pattern LITERAL = Pattern.compile("\"(" + QUOTED + ")\"");
    private static final Pattern PLACE = Pattern.compile("\\{\\d}");

    /** Whose words stand beside itself. */
    private static final Pattern PROBLEM = Pattern.compile("new QuantityProblem\\(.*?\\);", Pattern.DOTALL);

    /** A sentence with values is always said, whatever stands around it; so is one that is given to be said or thrown. */
    private static final Pattern SENTENCE = Pattern.compile(
            "\"([^\"]*\\{0}[^\"]*)\"" + "|(?:\\bsay|new (?:Faulty|Unreadable|\\w+Refused))\\(\\s*\"([^\"]+)\"\\s*[,)]");

    /** An exception in English whatever the language: for what cannot happen, and where only the command line reads it. */
    private static final Pattern ENGLISH =
            Pattern.compile("new (?:(?:Unchecked)?IOException|IllegalArgumentException|SetAside|PluginProblem)\\("
                    + "[^;\"]*+(?:\"" + QUOTED + "\"[^;\"]*+)*+;");

    private static final Set<String> IN_ENGLISH = Set.of(
            "cannot be written as bytes",
            "a text in memory cannot fail to be read",
            "a resource of the program cannot be read",
            "a picture in memory that cannot be written into memory",
            "px; accepted: above 0 px",
            "hits are asked for; accepted: 1 or more",
            "is no day; accepted: a day as 2025-03-14, a month as 2025-03, or a year",
            "a comma, a semicolon or a tab");

    static Stream<Path> tables() throws IOException {
        return Files.find(RESOURCES, 8, (file, attributes) -> file.endsWith("words_de.tsv"))
                .sorted();
    }

    @ParameterizedTest
    @MethodSource("tables")
    void everySentenceThatIsSaidHasATranslationWithTheSameValues(Path table) {
        var words = words(table);
        var folder =
                Path.of("src/main/java").resolve(RESOURCES.relativize(table).getParent());
        var said = sources(folder, 1)
                .map(source -> PROBLEM.matcher(source).replaceAll(""))
                .flatMap(source -> SENTENCE.matcher(source).results())
                .map(found -> found.group(1) == null ? found.group(2) : found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(said).isNotEmpty();
        var known = new HashMap<>(words(RESOURCES.resolve("planewright/app/journal/words_de.tsv")));
        known.putAll(words);
        assertThat(known).containsKeys(said.toArray(String[]::new));
        words.forEach(
                (english, german) -> assertThat(places(german)).as(english).isEqualTo(places(english)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"store", "pictures", "outline", "index", "files", "exchange"})
    void nothingIsThrownPastTheTable(String place) {
        var unsaid = sources(Path.of("src/main/java/planewright/app").resolve(place), 1)
                .flatMap(source -> ENGLISH.matcher(source).results())
                .map(MatchResult::group)
                .filter(thrown -> LITERAL.matcher(thrown)
                        .results()
                        .anyMatch(literal -> literal.group(1).contains(" ")))
                .filter(thrown -> !thrown.contains(".say("))
                .filter(thrown -> IN_ENGLISH.stream().noneMatch(thrown::contains));
        assertThat(unsaid).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("tables")
    void everyTextOfATableStandsInTheCode(Path table) {
        var literals = Stream.of(
                        Path.of("src/main/java"), Path.of("../shared/src/main/java"), Path.of("../api/src/main/java"))
                .flatMap(root -> sources(root, 12))
                .flatMap(source -> LITERAL.matcher(source).results())
                .map(found -> found.group(1).replace("\\\"", "\""))
                .collect(Collectors.toSet());
        assertThat(words(table).keySet())
                .filteredOn(english -> !literals.contains(english) && !english.startsWith("the build's "))
                .isEmpty();
    }

    private static Map<String, String> words(Path table) {
        var words = new HashMap<String, String>();
        for (var line : lines(table)) {
            var cells = line.split("\t");
            assertThat(cells).as(line).hasSize(2);
            assertThat(words.put(cells[0], cells[1])).as(line).isNull();
        }
        return words;
    }

    /** Sources with texts that go over several lines put together. */
    private static Stream<String> sources(Path folder, int depth) {
        try {
            return Files.find(
                            folder, depth, (file, attributes) -> file.toString().endsWith(".java"))
                    .map(file -> String.join("\n", lines(file)).replaceAll("\"\\s*\\+\\s*\"", ""));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static TreeSet<String> places(String text) {
        return PLACE.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }
}
