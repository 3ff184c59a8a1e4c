package planewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every wrong command says one line that helps, ends with its code, and leaves the journal as it was to the byte. */
class WrongWordsTest {
    @TempDir
    private Path folder;

    private CommandLineBench bench;

    @BeforeEach
    void journal() throws Exception {
        bench = new CommandLineBench(folder);
        bench.file("broken.json", "{\"parts\": [");
        bench.file("list.json", "[1, 2]");
        bench.file("unknown.json", "{\"partz\": []}");
        bench.file("letter.txt", "hello");
    }

    static Stream<Arguments> wrong() {
        return Stream.of(
                wrong(2, "'jump' is no command; accepted: help, new, add, find", "jump"),
                wrong(2, "'--nonsense' is no option of 'planewright'", "--nonsense"),
                wrong(2, "'--nonsense' is no option of 'planewright show'; accepted: --journal", "show", "--nonsense"),
                wrong(2, "'c' is a word too many", "show", "a", "b", "c"),
                wrong(1, "build 'Nobody' is not in the journal; accepted: Grebe, Grey heron", "show", "Nobody"),
                wrong(1, "build 'gre' is not the only one so called", "show", "gre"),
                wrong(1, "build '' is", "show", ""),
                wrong(1, "entry 'zzz' of 'Grebe' is not in its log", "show", "grebe", "zzz"),
                wrong(2, "NAME", "new"),
                wrong(2, "name of a build is ' '", "new", " "),
                wrong(1, "build 'GREBE' is in the journal already", "new", "GREBE"),
                wrong(2, "--life is 'dead'; accepted: sketched", "new", "Teal", "--life", "dead"),
                wrong(1, "is not empty", "new", "Teal", "--in", "@journal"),
                wrong(2, "--build", "add", "hello"),
                wrong(2, "nothing to write; accepted: a line", "add", "--build", "grebe"),
                wrong(1, "build 'Nobody' is not", "add", "--build", "Nobody", "hello"),
                wrong(
                        2,
                        "--kind is 'walk'; accepted: work, note",
                        "add",
                        "--build",
                        "grebe",
                        "--kind",
                        "walk",
                        "hello"),
                wrong(2, "--at is 'yesterday'; accepted: a date", "add", "--build", "grebe", "--at", "yesterday", "x"),
                wrong(2, "'furlongs' is not a unit", "add", "--build", "grebe", "--measurement", "fin=3 furlongs"),
                wrong(2, "--measurement is 'fin'; accepted", "add", "--build", "grebe", "--measurement", "fin"),
                wrong(1, "gone.png is not there", "add", "--build", "grebe", "x", "--picture", "@gone.png"),
                wrong(1, "letter.txt is of another kind", "add", "--build", "grebe", "x", "--picture", "@letter.txt"),
                wrong(2, "nothing is looked for; accepted: WORDS, or an option", "find"),
                wrong(1, "tag 'tale' is in no entry; accepted: none", "find", "--tag", "tale"),
                wrong(1, "material 'jam' is in no entry; accepted: none", "find", "--material", "jam"),
                wrong(2, "--kind is 'walk'; accepted: work, note", "find", "--kind", "walk"),
                wrong(2, "--life is 'dead'; accepted: sketched", "find", "--life", "dead"),
                wrong(2, "--from: 'May' is no day; accepted: a day as 2025-03-14", "find", "--from", "May"),
                wrong(2, "from 2025-01-01 to 2024-12-31 holds no day", "find", "--from", "2025", "--to", "2024"),
                wrong(2, "'3 in' is in in; accepted: kg, g", "find", "--measurement", "mass", "--at-most", "3 in"),
                wrong(2, "no measurement is named; accepted: words", "find", "--at-least", "3"),
                wrong(2, "--limit is 0; accepted: 1 or more", "find", "x", "--limit", "0"),
                wrong(2, "'--limit': 'few'; accepted: a whole number", "find", "x", "--limit", "few"),
                wrong(1, "build 'Nobody' is not", "find", "x", "--build", "Nobody"),
                wrong(2, "--to", "print", "grebe"),
                wrong(1, "build 'Nobody' is not", "print", "Nobody", "--to", "@x.pdf"),
                wrong(1, "is a folder; accepted: a file", "print", "grebe", "--to", "@plugins"),
                wrong(1, "letter.txt", "print", "grebe", "--to", "@letter.txt/x.pdf"),
                wrong(2, "a5", "print", "grebe", "--paper", "a5", "--to", "@x.pdf"),
                wrong(1, "the window needs a display", "open"),
                wrong(1, "holds no file journal.json", "check", "--journal", "@plugins"),
                wrong(1, "holds no file journal.json", "show", "--journal", "@nowhere"));
    }

    static Stream<Arguments> wrongCalculations() {
        return Stream.of(
                calc(2, "calculator 'bench.staton' is not there; accepted: bench.station", "bench.staton"),
                calc(2, "calculator 'bench.staton' is not there", "bench.staton", "--describe"),
                calc(2, "no calculator is named", "--describe"),
                calc(2, "no calculator is named", "--build", "heron"),
                calc(1, "build 'Nobody' is not in the journal", "bench.station", "--build", "Nobody", "--json"),
                calc(1, "Parts is empty; accepted: 1 or more. Weigh the parts", "bench.station", "--build", "grebe"),
                calc(2, "Target x is '92 g'; accepted: m, cm, mm, in, ft", heron("--target-x", "92 g")),
                calc(
                        2,
                        "mass of 'motor' is -62 g; accepted: above 0 g",
                        heron("--parts", "name=motor, mass=-62 g, x=1 mm")),
                calc(2, "x of 'motor' is '4 lb'; accepted: m, cm", heron("--parts", "name=motor, mass=62 g, x=4 lb")),
                calc(2, "mass of 'motor' is missing", heron("--parts", "name=motor")),
                calc(2, "'motor' of --parts is no name=value", heron("--parts", "motor")),
                calc(
                        2,
                        "'weight' of 'motor' is unknown",
                        heron("--parts", "name=motor, mass=6 g, x=1 mm, weight=62 g")),
                calc(
                        2,
                        "'--target' is no input; inputs of bench.station: --parts, --target-x",
                        heron("--target", "92 mm")),
                calc(2, "'extra' is no input", heron("extra")),
                calc(2, "--target-x", heron("--target-x")),
                calc(2, "gone.json is not there", heron("--inputs", "@gone.json")),
                calc(2, "is not there or no file", heron("--inputs", "@plugins")),
                calc(2, "broken.json: it is not JSON: line 1, column 12", heron("--inputs", "@broken.json")),
                calc(2, "list.json: it holds no JSON object", heron("--inputs", "@list.json")),
                calc(2, "input 'partz' is unknown; accepted: parts, targetX", heron("--inputs", "@unknown.json")),
                calc(2, "--keep needs --build", "bench.station", "--keep"),
                calc(1, "is a folder", heron("--keep", "--print", "@plugins")),
                calc(2, "--true-size needs --print FILE.pdf", heron("--keep", "--true-size")),
                calc(2, "--paper needs --print FILE.pdf", heron("--paper", "letter")),
                calc(
                        2,
                        "--true-size: 'bench.station' draws nothing to cut from",
                        heron("--keep", "--true-size", "--print", "@x.pdf")),
                calc(2, "--svg: 'bench.station' draws nothing to cut from", heron("--keep", "--svg", "@x.svg")),
                calc(2, "no calculator is named", "--svg", "@x.svg"));
    }

    @ParameterizedTest(name = "{2}")
    @MethodSource({"wrong", "wrongCalculations"})
    void oneLineACodeAndNothingWritten(int code, String told, String[] words) throws Exception {
        var before = bench.bytes();
        var files = names();
        var said = bench.run(resolved(words));
        assertThat(said.err()).contains(told).endsWith("\n");
        assertThat(said.err().lines()).hasSize(1);
        assertThat(said.out()).isEmpty();
        assertThat(said.code()).isEqualTo(code);
        assertThat(bench.bytes()).isEqualTo(before);
        assertThat(names()).isEqualTo(files);
    }

    @Test
    void withoutAJournalItIsSaidHowToNameOne() {
        var said = bench.withoutJournal("show");
        assertThat(said.code()).isEqualTo(2);
        assertThat(said.err()).contains("no journal is named; accepted: --journal FOLDER");
    }

    @ParameterizedTest
    @CsvSource({"grey-heron", "grebe"})
    void damagedFileIsToldByCheckAndTheRestIsThere(String build) throws Exception {
        Files.writeString(only(build), "{\n");
        var said = bench.run("check");
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out()).contains("1 build, 0 entries, 1 file wrong", "build.json: it is not JSON: line 2");
    }

    @Test
    void oneBadPictureOfSeveralLeavesNoneBehind() throws Exception {
        var good = bench.path("good.png");
        ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), "png", good.toFile());
        var before = bench.bytes();
        var said = bench.run(
                "add",
                "--build",
                "grebe",
                "--picture",
                good.toString(),
                "--picture",
                bench.path("letter.txt").toString());
        assertThat(said.code()).isEqualTo(1);
        assertThat(bench.bytes()).isEqualTo(before);
    }

    private Path only(String build) throws Exception {
        try (var files = Files.walk(bench.journal().resolve("builds"))) {
            return files.filter(file -> file.getFileName().toString().equals("build.json")
                            && file.getParent().getFileName().toString().startsWith(build))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /** What lies beside the journal, but for the user's own files. */
    private List<String> names() throws Exception {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.equals("user"))
                    .sorted()
                    .toList();
        }
    }

    /** Words that start with @ are files of the test. */
    private String[] resolved(String[] words) {
        return Stream.of(words)
                .map(word ->
                        word.startsWith("@") ? folder.resolve(word.substring(1)).toString() : word)
                .toArray(String[]::new);
    }

    private static Arguments wrong(int code, String told, String... words) {
        return Arguments.of(code, told, words);
    }

    private static Arguments calc(int code, String told, String... words) {
        return Arguments.of(code, told, with(new String[] {"calc"}, words));
    }

    private static String[] heron(String... words) {
        return with(new String[] {"bench.station", "--build", "grey heron"}, words);
    }

    private static String[] with(String[] first, String[] more) {
        return Stream.concat(Stream.of(first), Stream.of(more)).toArray(String[]::new);
    }
}
