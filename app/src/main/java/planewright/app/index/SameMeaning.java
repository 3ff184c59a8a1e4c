package planewright.app.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Trade words that mean the same, from the table {@code same-meaning.txt}. */
final class SameMeaning {
    private final Map<List<String>, List<List<String>>> others = new HashMap<>();
    private int longest = 1;

    private SameMeaning() {}

    /** The table, its words as the index has them; read once. */
    static SameMeaning table() {
        return Table.READ;
    }

    private static final class Table {
        static final SameMeaning READ = read();
    }

    private static SameMeaning read() {
        var table = new SameMeaning();
        try (var analyzer = new BenchAnalyzer();
                var stream = SameMeaning.class.getResourceAsStream("same-meaning.txt")) {
            new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .forEach(line -> table.add(line, analyzer));
        } catch (IOException impossible) {
            throw new UncheckedIOException("a resource of the program cannot be read", impossible);
        }
        return table;
    }

    /** How many words the longest term has. */
    int longest() {
        return longest;
    }

    /** Other terms for a term of singular words; empty where none is known. */
    List<List<String>> of(List<String> term) {
        return others.getOrDefault(term, List.of());
    }

    private void add(String line, BenchAnalyzer analyzer) {
        var group = new ArrayList<List<String>>();
        for (var term : line.split(",")) {
            group.add(analyzer.tokens(term).stream()
                    .map(BenchAnalyzer.Token::singular)
                    .toList());
        }
        for (var term : group) {
            longest = Math.max(longest, term.size());
            var rest = new ArrayList<>(of(term));
            group.stream()
                    .filter(other -> !other.equals(term) && !rest.contains(other))
                    .forEach(rest::add);
            others.put(term, List.copyOf(rest));
        }
    }
}
