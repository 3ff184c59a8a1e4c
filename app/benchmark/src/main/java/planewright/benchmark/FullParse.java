package planewright.benchmark;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import planewright.app.Settings;

/**
 * The yardstick of opening: in a cold Java virtual machine, on one thread, every JSON file of the journal's builds is found, read
 * and parsed into a tree by a plain Jackson mapper, and let go.
 */
public final class FullParse {
    private FullParse() {}

    public static void main(String[] words) throws IOException {
        var watch = new Stopwatch();
        var mapper = new JsonMapper();
        int fields = 0;
        try (Stream<Path> files =
                Files.walk(Settings.ofSystem().journal().orElseThrow().resolve("builds"))) {
            for (var file :
                    (Iterable<Path>) files.filter(each -> each.toString().endsWith(".json"))::iterator) {
                fields += mapper.readTree(Files.readAllBytes(file)).size();
            }
        }
        if (fields == 0) {
            throw new IOException("no file was parsed");
        }
        ChildJvm.tell("full parse", watch.milliseconds());
    }
}
