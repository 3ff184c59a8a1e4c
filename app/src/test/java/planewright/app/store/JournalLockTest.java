package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.ChildProgram;
import planewright.app.disk.Disk;
import planewright.app.disk.Happening;
import planewright.app.journal.Edit;

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
                    .withMessageContainingAll(journal.toString(), "process " + other.pid(), "close it there")
                    .withMessageMatching(".* \\(process \\d+ on .+ since \\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d\\); .*")
                    .withMessageContaining(InetAddress.getLocalHost().getHostName());
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

    /** A program that died leaves its words behind, and an odd program odd ones. */
    @Test
    void nothingIsDecidedByTheWordsInTheLock() throws IOException {
        for (var words :
                new String[] {"process 1 on another machine since 1999-12-31 23:59", "\0\n".repeat(5_000), ""}) {
            Files.writeString(journal.resolve(".lock"), words);
            try (var open = Bench.open(journal)) {
                assertThat(open.readOnly()).isEmpty();
            }
        }
    }

    /** NFS without a lock service answers {@code ENOLCK}: "No locks available" (IEEE 1003.1, errors of fcntl). */
    @Test
    void whereNoFileCanBeLockedTheJournalIsOpenForReadingOnly() throws IOException {
        var unlockable = Disk.at(journal, new Happening() {
            @Override
            public void locking(Path file) throws IOException {
                throw new IOException("No locks available");
            }
        });
        try (var first = Bench.open(unlockable);
                var second = Bench.open(unlockable)) {
            assertThat(first.readOnly().orElseThrow())
                    .contains("No locks available", "two programs could write at once", "copy the journal");
            assertThat(second.readOnly()).isPresent();
            assertThatExceptionOfType(JournalRefused.class)
                    .isThrownBy(() -> first.journal().apply(Edit.add("build", Bench.build("Heron"))))
                    .withMessageContaining("reading only");
        }
        try (var open = Bench.open(journal)) {
            assertThat(open.readOnly()).isEmpty();
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
