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
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The program's own tables of words have all that is said beside them, and nothing that nobody says. */
class SaidWordsTest {
    private static final Path RESOURCES = Path.of("src/main/resources");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]++|\\\\.)*+)\"");
    private static final Pattern PLACE = Pattern.compile("\\{\\d}");

    /** Whose words stand beside itself. */
    private static final Pattern PROBLEM = Pattern.compile("new QuantityProblem\\(.*?\\);", Pattern.DOTALL);

    /** A sentence with values is always said, whatever stands around it. */
    private static final Pattern SENTENCE = Pattern.compile("\"([^\"]*\\{0}[^\"]*)\"");

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
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(said).isNotEmpty();
        assertThat(words).containsKeys(said.toArray(String[]::new));
        words.forEach(
                (english, german) -> assertThat(places(german)).as(english).isEqualTo(places(english)));
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
