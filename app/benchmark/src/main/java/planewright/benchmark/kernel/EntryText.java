package planewright.benchmark.kernel;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import planewright.app.store.JsonFiles;
import planewright.app.synthetic.SyntheticJournal;

/** An entry's text into a tree and back; plain Jackson without our checks and our layout is the yardstick. */
@State(Scope.Benchmark)
public class EntryText {
    private final JsonMapper plain = new JsonMapper();
    private String text;
    private JsonNode tree;

    @Setup
    public void choose() throws IOException {
        var temp = Files.createTempDirectory("kernel");
        var journal = temp.resolve("journal");
        SyntheticJournal.of(1, 1, 0).write(journal);
        try (Stream<Path> files = Files.walk(journal.resolve("builds"))) {
            var entry = files.filter(file -> file.getParent().getParent().endsWith("entries"))
                    .findFirst()
                    .orElseThrow();
            text = Files.readString(entry);
        }
        tree = JsonFiles.parse(text);
        Folders.delete(temp);
    }

    @Benchmark
    public JsonNode parse() throws IOException {
        return JsonFiles.parse(text);
    }

    @Benchmark
    public JsonNode parsePlain() throws JsonProcessingException {
        return plain.readTree(text);
    }

    @Benchmark
    public String write() {
        return JsonFiles.text(tree.deepCopy());
    }

    @Benchmark
    public String writePlain() throws JsonProcessingException {
        return plain.writeValueAsString(tree.deepCopy());
    }
}
