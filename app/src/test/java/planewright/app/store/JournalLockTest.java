package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.ChildProgram;

class JournalLockTest {
    @TempDir
    private Path temp;

    private Path journal;

    @BeforeEach
    void makeJournal() throws IOException {
        journal = temp.resolve("journal");
        JournalFolder.create(journal, "Loft");
    }

    @Test
    void whatAnotherProcessHasOpenIsRefusedNamingIt() throws IOException, InterruptedException {
        try (var other = holding()) {
            assertThat(other.line()).isEqualTo("open");
            assertThatExceptionOfType(JournalRefused.class)
                    .isThrownBy(() -> Bench.open(journal).close())
                    .withMessageContainingAll(journal.toString(), "process " + other.pid(), "close it there");
            other.kill();
            Bench.open(journal).close();
        }
    }

    @Test
    void whatThisProcessHasOpenIsRefusedToOthersAndToItself() throws IOException {
        try (var open = Bench.open(journal)) {
            assertThat(open.id()).isNotBlank();
            assertThatExceptionOfType(JournalRefused.class)
                    .isThrownBy(() -> Bench.open(journal).close())
                    .withMessageContaining(journal.toString());
            // POSIX, fcntl(): closing any descriptor of a file frees all locks the process holds on it
            try (var other = holding()) {
                assertThat(other.line())
                        .contains("process " + ProcessHandle.current().pid());
            }
        }
        try (var other = holding()) {
            assertThat(other.line()).isEqualTo("open");
        }
    }

    @Test
    void aSecondPathToTheSameFolderIsRefusedToo() throws IOException {
        var link = Files.createSymbolicLink(temp.resolve("link"), journal);
        try (var open = Bench.open(journal)) {
            assertThat(open.folder()).isEqualTo(journal);
            assertThatExceptionOfType(JournalRefused.class)
                    .isThrownBy(() -> Bench.open(link).close());
        }
    }

    @Test
    void aLockFileThatIsALinkDoesNotSpoilWhatItPointsTo() throws IOException {
        var precious = Files.writeString(temp.resolve("precious"), "years of work");
        Files.createSymbolicLink(journal.resolve(".lock"), precious);
        try (var open = Bench.open(journal)) {
            assertThat(open.readOnly()).isPresent();
        }
        assertThat(precious).hasContent("years of work");
    }

    @Test
    void closingTwiceFreesNobodyElsesLock() throws IOException {
        var first = Bench.open(journal);
        first.close();
        try (var second = Bench.open(journal)) {
            first.close();
            assertThat(second.folder()).isEqualTo(journal);
            assertThatExceptionOfType(JournalRefused.class)
                    .isThrownBy(() -> Bench.open(journal).close());
        }
    }

    private ChildProgram holding() throws IOException {
        return ChildProgram.start(Holder.class, Map.of(), journal.toString());
    }

    /** Opens a journal and keeps it open. */
    static final class Holder {
        private Holder() {}

        public static void main(String[] words) throws IOException {
            try (var open = Bench.open(Path.of(words[0]))) {
                System.out.println(open.setAside().isEmpty() ? "open" : "broken");
                System.in.read();
            } catch (JournalRefused refused) {
                System.out.println(refused.getMessage());
            }
        }
    }
}
