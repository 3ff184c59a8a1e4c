package planewright.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.ChildProgram;

class SafeFileTest {
    private static final int SIZE = 400_000;

    @TempDir
    private Path temp;

    @Test
    void aFileIsWrittenWithItsFoldersAndReplacedWhole() throws IOException {
        var file = temp.resolve("a/b/entry.json");
        SafeFile.write(file, bytes("first, and rather long"));
        SafeFile.write(file, bytes("second"));
        assertThat(file).hasContent("second");
        assertThat(file.getParent().toFile().list()).containsExactly("entry.json");
    }

    @Test
    void aWriteThatFailsLeavesTheOldAndNothingBeside() throws IOException {
        var taken = Files.createDirectories(temp.resolve("taken/inner")).getParent();
        assertThatIOException().isThrownBy(() -> SafeFile.write(taken, bytes("x")));
        assertThat(taken.resolve("inner")).isDirectory();
        assertThat(temp.toFile().list()).containsExactly("taken");
    }

    @Test
    void aKilledWriteLeavesTheOldOrTheNew() throws IOException, InterruptedException {
        long seed = System.nanoTime();
        var random = new Random(seed);
        var file = temp.resolve("file");
        for (int kill = 0; kill < 8; kill++) {
            try (var child = ChildProgram.start(Overwriter.class, Map.of(), file.toString())) {
                for (int left = 1 + random.nextInt(20); left > 0; left--) {
                    assertThat(child.line()).as("seed %d", seed).isEqualTo("written");
                }
                for (int spins = random.nextInt(100_000); spins > 0; spins--) {
                    Thread.onSpinWait();
                }
                child.kill();
            }
            var content = Files.readString(file);
            assertThat(content).as("kill %d, seed %d", kill, seed).hasSize(SIZE);
            assertThat(content.chars().distinct().count())
                    .as("kill %d, seed %d", kill, seed)
                    .isOne();
            SafeFile.sweep(temp);
            assertThat(temp.toFile().list()).containsExactly("file");
        }
    }

    @Test
    void sweepingRemovesUnfinishedSavesAndNothingElse() throws IOException {
        var folder = Files.createDirectories(temp.resolve("entries/2025"));
        Files.writeString(folder.resolve(".01JBX000000000000000000001.json.4711-3.tmp"), "{\"sche");
        for (var other :
                new String[] {".notes.tmp", "drawing.4711-3.tmp", ".lock", "01JBX000000000000000000001.json"}) {
            Files.writeString(folder.resolve(other), "mine");
        }
        SafeFile.sweep(temp);
        assertThat(folder.toFile().list())
                .containsExactlyInAnyOrder(
                        ".notes.tmp", "drawing.4711-3.tmp", ".lock", "01JBX000000000000000000001.json");
        SafeFile.sweep(temp.resolve("nowhere"));
    }

    @Test
    void manyThreadsMayWriteOneFile() throws Exception {
        var file = temp.resolve("photo");
        var pool = Executors.newFixedThreadPool(8);
        try {
            var writes = new ArrayList<Future<?>>();
            for (int i = 0; i < 64; i++) {
                writes.add(pool.submit(() -> {
                    SafeFile.write(file, bytes("x".repeat(5_000)));
                    return null;
                }));
            }
            for (var write : writes) {
                write.get();
            }
        } finally {
            pool.shutdown();
        }
        assertThat(file).content().hasSize(5_000);
        assertThat(temp.toFile().list()).containsExactly("photo");
    }

    @Test
    void deletingWhatIsGoneIsNoFailure() throws IOException {
        SafeFile.delete(temp.resolve("gone"));
        assertThat(temp).isEmptyDirectory();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Writes one file again and again, each time of another letter. */
    static final class Overwriter {
        private Overwriter() {}

        public static void main(String[] words) throws IOException {
            for (int i = 0; ; i++) {
                SafeFile.write(
                        Path.of(words[0]),
                        bytes(Character.toString('a' + i % 26).repeat(SIZE)));
                System.out.println("written");
            }
        }
    }
}
