package planewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.store.JsonFiles;

/** {@code find} by words and by what entries hold, for people and as JSON. */
class FindCommandTest {
    @TempDir
    private Path folder;

    private CommandLineBench bench;

    @BeforeEach
    void journal() throws Exception {
        bench = new CommandLineBench(folder);
        add("grebe", "2025-03-01T19:00", "left wing panel 300 g", "--tag", "wing");
        add("grebe", "2025-03-02T19:00", "both wings 14 oz", "--tag", "wing", "--tag", "scale");
        add("grey", "2025-03-03T19:00", "fin joint contact adhesive 12 h", "--tag", "fin");
        add("grey", "2025-04-01T19:00", "The balance point wandered", "--tag", "wing", "--kind", "flight");
    }

    @Test
    void wordsMayBeLeftOutWhereAFilterIsGiven() throws Exception {
        assertThat(found("--build", "grebe")).containsExactly("2025-03-02", "2025-03-01");
        assertThat(found("--tag", "wing", "--tag", "Scale")).containsExactly("2025-03-02");
        assertThat(found("--kind", "Flight")).containsExactly("2025-04-01");
        assertThat(found("--kind", "flight", "--kind", "work")).hasSize(4);
        assertThat(found("--material", "adhesive")).containsExactly("2025-03-03");
        assertThat(found("--life", "sketched", "--build", "grebe")).hasSize(2);
        assertThat(found("--from", "2025-03-02", "--to", "2025-03")).containsExactly("2025-03-03", "2025-03-02");
        assertThat(found("cg", "--from", "2025")).containsExactly("2025-04-01");
        assertThat(found("cg", "--to", "2025-03")).isEmpty();
    }

    /** 14 oz is 396.9 g, NIST Special Publication 811 (2008), appendix B. */
    @Test
    void measuredValuesAreFoundInAnyUnit() throws Exception {
        var wing = List.of("--measurement", "wing mass");
        assertThat(found(with(wing, "--at-least", "300 g", "--at-most", "14 oz")))
                .containsExactly("2025-03-02", "2025-03-01");
        assertThat(found(with(wing, "--at-least", "0.35 kg"))).containsExactly("2025-03-02");
        assertThat(found(with(wing, "--at-most", "350"))).containsExactly("2025-03-01");
        assertThat(found("--at-least", "13.9 oz")).containsExactly("2025-03-02");
        assertThat(found("--measurement", "panel")).containsExactly("2025-03-01");
    }

    @Test
    void countsComeWithTheHits() throws Exception {
        var node = json("--tag", "wing");
        assertThat(node.path("total").intValue()).isEqualTo(3);
        assertThat(node.at("/counts/build").toString())
                .isEqualTo("[{\"value\":\"Grebe\",\"entries\":2},{\"value\":\"Grey heron\",\"entries\":1}]");
        assertThat(node.at("/counts/tag").toString())
                .isEqualTo("[{\"value\":\"wing\",\"entries\":3},{\"value\":\"scale\",\"entries\":1}]");
        assertThat(node.at("/counts/kind/0/value").asText()).isEqualTo("work");
        assertThat(bench.run("find", "--tag", "wing").out())
                .contains("3 entries", "by build: Grebe 2, Grey heron 1", "by kind: work 2, flight 1")
                .doesNotContain("by material");
    }

    private List<String> found(List<String> options) throws Exception {
        return found(options.toArray(String[]::new));
    }

    private List<String> found(String... options) throws Exception {
        return json(options).findValuesAsText("day");
    }

    private JsonNode json(String... options) throws Exception {
        var words = with(List.of("find", "--json"), options);
        var said = bench.run(words.toArray(String[]::new));
        assertThat(said.err()).isEmpty();
        assertThat(said.code()).isZero();
        return JsonFiles.parse(said.out());
    }

    private void add(String build, String at, String line, String... options) {
        var words = with(List.of("add", "--build", build, "--at", at, line), options);
        assertThat(bench.run(words.toArray(String[]::new)).err()).isEmpty();
    }

    private static List<String> with(List<String> first, String... rest) {
        var words = new ArrayList<>(first);
        words.addAll(List.of(rest));
        return words;
    }
}
