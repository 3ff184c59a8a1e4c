package planewright.app.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.store.JsonFiles;
import planewright.shared.quantity.UnitChoice;

/** Answers side by side: what differs in the inputs, then what came out. */
class VariantsTest {
    private static final Variants.Headings WORDS = new Variants.Headings("side by side", "now", "variant", "rows");

    @TempDir
    private Path temp;

    private PluginHost host;
    private Described station;

    @BeforeEach
    void open() throws IOException {
        TestPlugins.station(temp.resolve("plugins"));
        host = PluginHost.open(List.of(temp.resolve("plugins")), temp.resolve("user"));
        station = host.calculator("bench.station").orElseThrow();
    }

    @AfterEach
    void close() {
        host.close();
    }

    private Outcome.Answered answer(String packAt, String target) throws IOException {
        var inputs = JsonFiles.parse("""
                {"parts": [{"name": "motor", "mass": "60 g", "x": "40 mm"}, {"name": "pack", "mass": "180 g", "x": "%s"}]%s}
                """.formatted(packAt, target));
        return (Outcome.Answered)
                Calculation.run(station, inputs, Runs.unwatched(Bench.inMemory(List.of(), List.of()), Bench.EVENING));
    }

    /** (60 g × 40 mm + 180 g × x) / 240 g: 10 mm for x = 0, 25 mm for x = 20 mm. */
    @Test
    void inputsThatDifferComeBeforeTheValues() throws IOException {
        var variants = new Variants(station);
        assertThat(variants.isEmpty()).isTrue();
        variants.keep(answer("0 mm", ", \"targetX\": \"12 mm\""));
        var table = variants.table(answer("20 mm", ""), WORDS, UnitChoice.NONE);
        assertThat(table.headings()).containsExactly("", "now", "variant 1");
        assertThat(table.rows())
                .containsExactly(
                        List.of("Parts", "2 rows", "2 rows"),
                        List.of("Target x", "", "12.0 mm"),
                        List.of("Mass in all", "240 g", "240 g"),
                        List.of("Station", "25 mm", "10 mm"));
        variants.forget();
        assertThat(variants.table(answer("20 mm", ""), WORDS, UnitChoice.NONE).headings())
                .containsExactly("", "now");
    }

    @Test
    void ofTooManyTheFirstGoes() throws IOException {
        var variants = new Variants(station);
        for (int x = 0; x <= Variants.MOST; x++) {
            variants.keep(answer(x * 4 + " mm", ""));
        }
        var stations = variants.table(answer("0 mm", ""), WORDS, UnitChoice.NONE)
                .rows()
                .get(2);
        assertThat(stations).containsExactly("Station", "10 mm", "13 mm", "16 mm", "19 mm", "22 mm");
    }
}
