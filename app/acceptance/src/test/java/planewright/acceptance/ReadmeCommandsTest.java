package planewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Settings;
import planewright.app.cli.CommandLineProgram;
import planewright.app.store.UserFolders;

/** The README's command lines, run from top to bottom as they stand there. */
class ReadmeCommandsTest {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    Path folder;

    @Test
    void everyCommandOfTheReadmeWorksAsItStandsThere() throws Exception {
        ImageIO.write(
                new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB),
                "jpg",
                folder.resolve("fin.jpg").toFile());
        Files.writeString(
                folder.resolve("fin.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='80mm' height='40mm' viewBox='0 0 80 40'>"
                        + "<path d='M 0 40 L 60 0 L 80 40 Z'/></svg>");
        int run = 0;
        for (var words : commands()) {
            var err = new StringWriter();
            var out = new StringWriter();
            int code = new CommandLineProgram(settings(), Clock.systemUTC(), new PrintWriter(out), new PrintWriter(err))
                    .run(words.toArray(String[]::new));
            assertThat(code).as(words + ": " + err).isZero();
            run++;
        }
        assertThat(run).isGreaterThanOrEqualTo(10);
        assertThat(folder.resolve("log.pdf")).exists();
        assertThat(folder.resolve("balance.pdf")).exists();
        assertThat(folder.resolve("inlet.pdf")).exists();
        assertThat(folder.resolve("inlet.svg")).exists();
    }

    private Settings settings() throws Exception {
        try (var zips = Files.find(
                root().resolve("plugins"),
                3,
                (file, attributes) -> file.getFileName().toString().matches("planewright-.*\\.zip"))) {
            return new Settings(
                    UserFolders.under(folder.resolve("user")), zips.toList(), Optional.of(folder.resolve("journal")));
        }
    }

    private List<List<String>> commands() throws Exception {
        var readme = Files.readString(root().resolve("README.md"));
        var commands = new ArrayList<List<String>>();
        readme.substring(readme.indexOf("## On the command line"))
                .replace("\\\n", "")
                .lines()
                .filter(line -> line.startsWith("./planewright "))
                .forEach(line -> commands.add(words(line.substring("./planewright ".length()))));
        return commands;
    }

    private List<String> words(String line) {
        var words = new ArrayList<String>();
        var found = WORD.matcher(line.replaceFirst("\\s#.*", ""));
        while (found.find()) {
            var word = found.group(1) != null ? found.group(1) : found.group(2);
            words.add(
                    word.equals("~/journal")
                            ? folder.resolve("journal").toString()
                            : word.matches("\\w+\\.(jpg|pdf|svg)")
                                    ? folder.resolve(word).toString()
                                    : word);
        }
        return words;
    }

    private static Path root() {
        return Path.of(System.getProperty("planewright.root")).normalize();
    }
}
