package planewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.store.JsonFiles;

/** Bringing in and taking out on the command line. */
class ExchangeTest {
    @TempDir
    private Path folder;

    private CommandLineBench bench;

    @BeforeEach
    void journal() throws Exception {
        bench = new CommandLineBench(folder);
    }

    @Test
    void picturesComeIn() throws Exception {
        Files.createDirectories(folder.resolve("card"));
        ImageIO.write(
                new BufferedImage(20, 10, BufferedImage.TYPE_INT_RGB),
                "jpg",
                folder.resolve("card/a.jpg").toFile());
        bench.file("card/b.txt", "words");
        var card = folder.resolve("card").toString();
        var said = bench.run("bring", "pictures", card, "--build", "grebe");
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out())
                .contains(
                        "Brought in 0 pictures, 0 entries written", "left out  a.jpg: does not say when", "b.txt: is");
        said = bench.run("bring", "pictures", card, "--build", "grebe", "--day", "2025-03-01");
        assertThat(said.code()).isZero();
        assertThat(said.out()).contains("Brought in 1 picture, 1 entry written");
        assertThat(bench.run("bring", "pictures", card, "--build", "grebe", "--day", "today")
                        .err())
                .contains("--day is 'today'; accepted: a date");
        assertThat(bench.run("check").code()).isZero();
    }

    @Test
    void measurementsComeInWhollyOrNotAtAll() throws Exception {
        var table = bench.file("table.csv", "Day;Thing;Weight\n14.3.2025;fin;12 g\n15.3.2025;rib;much\n")
                .toString();
        var words = List.of(
                "bring",
                "measurements",
                table,
                "--build",
                "grebe",
                "--separator",
                ";",
                "--dates",
                "d.M.yyyy",
                "--column",
                "name=Thing",
                "--column",
                "value=Weight");
        var before = bench.bytes();
        var said = bench.run(words.toArray(String[]::new));
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out()).contains("line 3: value: 'much' is not a quantity");
        assertThat(said.err()).contains("nothing was brought in, for 1 row is bad; mend it, or use --skip-bad");
        assertThat(bench.bytes()).isEqualTo(before);
        said = bench.run(
                java.util.stream.Stream.concat(words.stream(), java.util.stream.Stream.of("--skip-bad", "--json"))
                        .toArray(String[]::new));
        assertThat(said.code()).isZero();
        var node = JsonFiles.parse(said.out());
        assertThat(node.path("brought").intValue()).isEqualTo(1);
        assertThat(node.at("/leftOut/0/what").asText()).isEqualTo("line 3");
    }

    @Test
    void notesComeInAndEverythingGoesOutAndRound() throws Exception {
        var note = bench.file("2025-03-01 fin.md", "Glued the *fin*.").toString();
        assertThat(bench.run("bring", "notes", note, "--build", "grey").out())
                .contains("Brought in 1 note, 1 entry written");
        bench.run("add", "--build", "grey", "spinner 12 g");
        var zip = folder.resolve("out.zip").toString();
        assertThat(bench.run("take", "journal", "--to", zip).out()).contains("Wrote ", " files to " + zip);
        assertThat(bench.run("take", "journal", "--to", zip).err()).contains("is there already");
        var copy = folder.resolve("copy").toString();
        assertThat(bench.run("bring", "journal", zip, "--in", copy).out())
                .contains("Brought in journal 'Loft workshop' with 2 builds and 2 entries, to " + copy);
        assertThat(bench.run("check", "--journal", copy).code()).isZero();
        assertThat(bench.run("take", "journal", "--build", "grey", "--replace", "--to", zip)
                        .code())
                .isZero();
        var table = folder.resolve("out.csv");
        assertThat(bench.run("take", "measurements", "--to", table.toString()).out())
                .contains("Wrote 1 measurement to " + table);
        assertThat(table).content().contains("Grey heron,2025-03-14T20:15,spinner,12,g,,,12,");
        var pages = folder.resolve("pages");
        assertThat(bench.run("take", "pages", "--to", pages.toString(), "--json")
                        .out())
                .contains("\"taken\": 3");
        assertThat(pages.resolve("index.html")).content().contains("Grey heron");
    }

    @Test
    void wrongWordsAreTold() throws Exception {
        assertThat(bench.run("bring").err())
                .contains("'bring' needs a second word; accepted: pictures, measurements, notes, journal");
        assertThat(bench.run("take").err()).contains("accepted: journal, measurements, outline, pages");
        assertThat(bench.run("take", "all").err()).contains("'all' is no command; accepted: journal");
        assertThat(bench.run("bring", "measurements", "x.csv", "--separator", "--")
                        .code())
                .isEqualTo(2);
        assertThat(bench.run("bring", "measurements", "x.csv", "--dates", "bb").err())
                .contains("--dates is 'bb'");
        assertThat(bench.run("bring", "measurements", "x.csv", "--column", "colour=x")
                        .err())
                .contains("column 'colour' is not known");
        assertThat(bench.run("bring", "--help").out()).contains("pictures", "journal");
        assertThat(bench.run("bring", "notes", "--help").out()).contains("--build");
    }
}
