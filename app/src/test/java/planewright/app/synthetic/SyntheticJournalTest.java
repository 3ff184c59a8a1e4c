package planewright.app.synthetic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.pictures.PictureShelf;

class SyntheticJournalTest {
    private static final SyntheticJournal FEW = SyntheticJournal.of(3, 40, 7);

    @TempDir
    private Path temp;

    @Test
    void theSameNumbersGiveTheSameBytes() throws IOException {
        FEW.write(temp.resolve("one"));
        FEW.write(temp.resolve("two"));
        assertThat(hashes(temp.resolve("one"))).isEqualTo(hashes(temp.resolve("two")));
    }

    @Test
    void anotherSeedGivesAnotherJournal() throws IOException {
        FEW.write(temp.resolve("one"));
        new SyntheticJournal(3, 40, 7, Snapshot.SMALL, 2).write(temp.resolve("two"));
        var one = hashes(temp.resolve("one")).keySet();
        assertThat(hashes(temp.resolve("two")).keySet().stream().filter(one::contains))
                .allMatch(file -> !file.startsWith("builds") && !file.startsWith("photos"));
    }

    @Test
    void theProgramReadsAllOfItAndFindsEveryPicture() throws IOException {
        FEW.write(temp.resolve("journal"));
        try (var open = Bench.open(temp.resolve("journal"))) {
            assertThat(open.setAside()).isEmpty();
            assertThat(open.journal().builds()).hasSize(3);
            var entries = open.journal().builds().stream()
                    .flatMap(build -> open.journal().log(build.id()).stream())
                    .toList();
            assertThat(entries).hasSize(120);
            var pictures =
                    entries.stream().flatMap(entry -> entry.pictures().stream()).toList();
            assertThat(pictures).hasSize(7).doesNotHaveDuplicates();
            assertThat(pictures)
                    .allSatisfy(picture -> assertThat(
                                    PictureShelf.hash(open.pictures().file(picture)))
                            .isEqualTo(picture.hash()));
        }
    }

    @Test
    void aCommonWordComesAsMuchOftenerAsItsRankSays() throws IOException {
        SyntheticJournal.of(2, 400, 0).write(temp.resolve("journal"));
        var vocabulary = Vocabulary.workshop();
        var counts = new TreeMap<String, Integer>();
        try (Stream<Path> files = Files.walk(temp.resolve("journal/builds"))) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                for (var word : Files.readString(file).split("[^a-z]+")) {
                    counts.merge(word, 1, Integer::sum);
                }
            }
        }
        double ratio = (double) counts.get(vocabulary.word(2)) / counts.get(vocabulary.word(47));
        assertThat(ratio).isBetween(0.5 * 50.7 / 5.7, 1.5 * 50.7 / 5.7);
    }

    @Test
    void aJournalWithoutBuildsIsRefused() {
        assertThatThrownBy(() -> SyntheticJournal.of(0, 5, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0 builds");
    }

    private static Map<String, String> hashes(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .collect(Collectors.toMap(file -> folder.relativize(file).toString(), SyntheticJournalTest::hash));
        }
    }

    private static String hash(Path file) {
        try {
            return PictureShelf.hash(file);
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }
}
