package planewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.ChildProgram;
import planewright.app.Main;
import planewright.app.journal.Edit;
import planewright.app.store.JournalFolder;

/** Programs that are told to end in the middle of bringing in and taking out: all is as it was before. */
class StoppedTest {
    /** Exit code of a Java program that SIGTERM ended: 128 + 15. */
    private static final int TERMINATED = 143;

    private static final int MANY = 1500;

    @TempDir
    private Path folder;

    private Path journal;

    @BeforeEach
    void journal() throws IOException {
        journal = folder.resolve("journal");
        try (var opened = Bench.newJournal(journal)) {
            opened.journal().apply(Edit.add("build", Bench.build("Grey heron")));
        }
    }

    @Test
    void picturesThatWereNotAllBroughtInAreNotOnTheShelf() throws Exception {
        var before = files(journal);
        var card = manyPictures();
        stop("photos", 20, "bring", "pictures", card.toString(), "--build", "Grey heron", "--day", "2025-03-14");
        assertThat(files(journal)).isEqualTo(before);
        try (var opened = Bench.open(journal)) {
            assertThat(opened.journal().log(opened.journal().builds().get(0).id()))
                    .isEmpty();
        }
    }

    @Test
    void halfAnUnpackedJournalIsGone() throws Exception {
        var zip = folder.resolve("in.zip");
        try (var out = new ZipOutputStream(Files.newOutputStream(zip))) {
            out.putNextEntry(new ZipEntry(JournalFolder.HEAD));
            out.write(Files.readAllBytes(journal.resolve(JournalFolder.HEAD)));
            for (int i = 0; i < 10 * MANY; i++) {
                out.putNextEntry(new ZipEntry("plans/" + i + ".txt"));
                out.write(i);
            }
        }
        stop(
                "place",
                30,
                "bring",
                "journal",
                zip.toString(),
                "--in",
                folder.resolve("place/new").toString());
        assertThat(files(folder.resolve("place"))).isEmpty();
    }

    @Test
    void halfAnArchiveAndHalfOfThePagesAreGone() throws Exception {
        var card = manyPictures();
        try (var whole = start("bring", "pictures", card.toString(), "--build", "Grey heron", "--day", "2025-03-14")) {
            assertThat(whole.rest()).last().asString().startsWith("Brought in " + MANY);
        }
        var place = Files.createDirectories(folder.resolve("place"));
        Files.writeString(place.resolve("mine.zip"), "the last one");
        stop(
                "place",
                2,
                "take",
                "journal",
                "--replace",
                "--to",
                place.resolve("mine.zip").toString());
        assertThat(files(place)).containsExactly("mine.zip");
        assertThat(place.resolve("mine.zip")).hasContent("the last one");
        stop("place", 30, "take", "pages", "--to", place.resolve("pages").toString());
        assertThat(files(place)).containsExactly("mine.zip");
    }

    /** Ends the program once so many files lie below a folder. */
    private void stop(String below, int files, String... words) throws Exception {
        try (var child = start(words)) {
            while (child.isAlive() && files(folder.resolve(below), journal.resolve(below)) < files) {
                Thread.onSpinWait();
            }
            assertThat(child.end())
                    .as("%s; it said %s", List.of(words), child.rest())
                    .isEqualTo(TERMINATED);
        }
    }

    private ChildProgram start(String... words) throws IOException {
        return ChildProgram.start(Main.class, Map.of("PLANEWRIGHT_JOURNAL", journal.toString()), words);
    }

    private Path manyPictures() throws IOException {
        var card = Files.createDirectories(folder.resolve("card"));
        var image = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < MANY; i++) {
            image.setRGB(0, 0, i);
            ImageIO.write(image, "png", card.resolve(i + ".png").toFile());
        }
        return card;
    }

    private static int files(Path one, Path other) throws IOException {
        return (Files.exists(one) ? files(one).size() : 0)
                + (Files.exists(other) ? files(other).size() : 0);
    }

    /** Every file below a folder but the lock; what goes while it is looked at does not count. */
    private static TreeSet<String> files(Path below) throws IOException {
        var found = new TreeSet<String>();
        try (Stream<Path> files = Files.walk(below)) {
            files.filter(Files::isRegularFile)
                    .filter(file -> !file.endsWith(".lock"))
                    .forEach(file -> found.add(below.relativize(file).toString()));
        } catch (java.io.UncheckedIOException moving) {
            return found;
        }
        return found;
    }
}
