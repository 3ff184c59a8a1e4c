package planewright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.index.Question;
import planewright.app.journal.Edit;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;

class ProgramTest {
    private static final Clock CLOCK = Clock.fixed(Bench.EVENING.toInstant(ZoneOffset.UTC), ZoneOffset.UTC);

    @TempDir
    private Path temp;

    private Path journal;
    private UserFolders user;

    @BeforeEach
    void makeJournal() throws IOException {
        journal = temp.resolve("journal");
        user = UserFolders.under(temp.resolve("user"));
        JournalFolder.create(journal, "Loft workshop");
    }

    @Test
    void closingWaitsForWhatIsBeingOpenedAndFreesTheJournal() throws IOException {
        var program = Program.open(journal, user, List.of(), CLOCK);
        var index = program.index();
        var plugins = program.plugins();
        program.close();
        assertThat(index).isCompleted();
        assertThat(plugins).isCompleted();
        Bench.open(journal).close();
    }

    @Test
    void anIndexThatCannotBeOpenedKeepsNothingElseOpen() throws IOException {
        Files.createDirectories(temp.resolve("user"));
        Files.writeString(temp.resolve("user/cache"), "a file where a folder should be");
        var program = Program.open(journal, user, List.of(), CLOCK);
        var index = program.index();
        program.close();
        assertThat(index).isCompletedExceptionally();
        Bench.open(journal).close();
    }

    @Test
    void anIndexThatCouldNotBeOpenedIsTriedAgain() throws IOException {
        Files.createDirectories(temp.resolve("user"));
        var obstacle = Files.writeString(temp.resolve("user/cache"), "a file where a folder should be");
        var clock = new SetClock(CLOCK.instant());
        try (var program = Program.open(journal, user, List.of(), clock)) {
            assertThatThrownBy(() -> program.index().join()).hasMessageContaining("cannot be opened");
            Files.delete(obstacle);
            program.journal().apply(Edit.add("build", Bench.build("Grey heron")));
            assertThatThrownBy(() -> program.index().join())
                    .as("not at once: each try may make all of it")
                    .hasMessageContaining("cannot be opened");
            clock.advance(Duration.ofMinutes(1));
            assertThat(program.index().join().find(Question.of("heron").most(1)).total())
                    .isZero();
        }
    }

    /** Once the lock is free another program may be writing there. */
    @Test
    void nothingIsSavedIntoAClosedJournal() throws IOException {
        var program = Program.open(journal, user, List.of(), CLOCK);
        var heron = Bench.build("Grey heron");
        program.close();
        assertThatIOException()
                .isThrownBy(() -> program.journal().apply(Edit.add("add build", heron)))
                .withMessageContainingAll(journal.toString(), "is closed", "open it again");
        assertThat(program.journal().build(heron.id())).isEqualTo(Optional.empty());
        try (var again = Bench.open(journal)) {
            assertThat(again.journal().builds()).isEmpty();
        }
    }
}
