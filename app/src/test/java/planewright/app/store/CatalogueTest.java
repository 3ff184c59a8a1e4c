package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.index.Question;
import planewright.app.index.SearchIndex;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryLine;
import planewright.app.journal.EntryRecord;
import planewright.app.synthetic.SyntheticJournal;

/** A journal opens from what was known of it, and a look finds what has changed since. */
class CatalogueTest {
    private final BuildRecord build = Bench.build("Grey heron");
    private final EntryRecord entry = Bench.entry(build, "First flight");

    @TempDir
    private Path temp;

    private Path journal;
    private UserFolders user;
    private Path file;

    @BeforeEach
    void makeOne() throws IOException {
        journal = temp.resolve("journal");
        user = UserFolders.under(temp.resolve("user"));
        JournalFolder.create(journal, "Loft workshop");
        try (var open = JournalFolder.open(journal, user)) {
            open.journal().apply(Edit.add("build", build));
            open.journal().apply(Edit.add("entry", entry));
        }
        file = Bench.only(journal, entry.id() + ".json");
        grow(file, 10);
        try (var open = JournalFolder.open(journal, user)) {
            assertThat(open.journal().log(build.id())).containsExactly(entry);
        }
    }

    @Test
    void whatWasKnownShowsBeforeAnyFileIsLookedAt() throws IOException {
        var moved = Files.move(file.getParent(), temp.resolve("away"));
        try (var open = JournalFolder.openAsKnown(journal, user)) {
            assertThat(open.isKnown()).isTrue();
            assertThat(open.journal().lines(build.id())).singleElement().satisfies(line -> {
                assertThat(line.id()).isEqualTo(entry.id());
                assertThat(line.at()).isEqualTo(entry.at());
            });
            assertThat(open.journal().isAtHand(build.id())).isFalse();
            Files.move(moved, file.getParent());
            assertThat(open.journal().log(build.id())).containsExactly(entry);
            assertThat(open.journal().isAtHand(build.id())).isTrue();
        }
    }

    @Test
    void whatHasChangedSinceShowsAfterALook() throws IOException {
        Files.writeString(file, Files.readString(file).replace("First", "Last"));
        try (var open = JournalFolder.openAsKnown(journal, user)) {
            open.look((done, all) -> {});
            assertThat(open.journal().log(build.id()))
                    .extracting(EntryRecord::title)
                    .containsExactly("Last flight");
        }
    }

    /** The file system's clock may be coarse: a change of the same size in the same tick leaves time and size as they were. */
    @Test
    void aFileThatWasYoungWhenItWasSeenIsReadAgain() throws IOException {
        assertThat(seenAfterAHiddenChange(Duration.ZERO)).isEqualTo(asChanged());
    }

    /** A clock that was set back makes files of the future. */
    @Test
    void aFileFromTheFutureIsReadAgainEachTime() throws IOException {
        assertThat(seenAfterAHiddenChange(Duration.ofDays(-1))).isEqualTo(asChanged());
    }

    /** What was old when it was seen is not read again, or no long journal would open at once. */
    @Test
    void aFileThatWasOldWhenItWasSeenIsTakenForWhatItWas() throws IOException {
        assertThat(seenAfterAHiddenChange(Duration.ofHours(1))).isEqualTo(asItWas());
    }

    /** Where nothing can be written nothing tells the clock of the file system, which may be that of another time zone. */
    @Test
    void inAJournalThatCannotBeLockedAFileIsYoungForADay() throws IOException {
        Files.delete(journal.resolve(".lock"));
        Files.createDirectories(journal.resolve(".lock"));
        assertThat(seenAfterAHiddenChange(Duration.ofHours(23))).isEqualTo(asChanged());
        assertThat(seenAfterAHiddenChange(Duration.ofHours(25))).isEqualTo(asItWas());
    }

    /** What a journal and its index say of the one entry and its build. */
    private record Said(List<LocalDateTime> times, List<String> builds, long first, long fifth) {}

    private Said asItWas() {
        return new Said(List.of(entry.at()), List.of("Grey heron"), 1, 0);
    }

    private Said asChanged() {
        return new Said(List.of(entry.at().plusHours(1)), List.of("Grey hobby"), 0, 1);
    }

    /** What is said after all files were seen at an age and then changed so that neither their times nor their sizes tell it. */
    private Said seenAfterAHiddenChange(Duration age) throws IOException {
        var head = Bench.only(journal, "build.json");
        Said before;
        FileTime tick;
        try (var open = JournalFolder.open(journal, user)) {
            tick = FileTime.from(Instant.now().minus(age));
            rewrite(head, "Grey hobby", "Grey heron", tick);
            rewrite(file, "Fifth", "First", tick);
            rewrite(file, "T21:15", "T20:15", tick);
            open.look((done, all) -> {});
            before = said(open);
        }
        assertThat(before).isEqualTo(asItWas());
        rewrite(head, "Grey heron", "Grey hobby", tick);
        rewrite(file, "First", "Fifth", tick);
        rewrite(file, "T20:15", "T21:15", tick);
        try (var open = JournalFolder.open(journal, user)) {
            return said(open);
        }
    }

    private static void rewrite(Path file, String there, String here, FileTime tick) throws IOException {
        Files.writeString(file, Files.readString(file).replace(there, here));
        Files.setLastModifiedTime(file, tick);
    }

    private Said said(JournalFolder open) throws IOException {
        try (var index = SearchIndex.open(temp.resolve("index"), open.journal(), (done, all) -> {})) {
            return new Said(
                    open.journal().lines(build.id()).stream().map(EntryLine::at).toList(),
                    open.journal().builds().stream().map(BuildRecord::name).toList(),
                    found(index, "first "),
                    found(index, "fifth "));
        }
    }

    private static long found(SearchIndex index, String words) throws IOException {
        var hits = index.find(Question.of(words).most(5));
        return hits.forgiving() ? 0 : hits.total();
    }

    @Test
    void aCatalogueThatIsDamagedCutOrMissingIsMadeAnew() throws IOException {
        var catalogue = Bench.only(temp.resolve("user"), "catalogue-4");
        var sound = Files.readAllBytes(catalogue);
        for (int i = 0; i < sound.length; i += 23) {
            var damaged = sound.clone();
            damaged[i] ^= 0x10;
            Files.write(catalogue, damaged);
            assertMadeAnew();
        }
        Files.write(catalogue, List.of());
        assertMadeAnew();
        Files.write(catalogue, Arrays.copyOf(sound, sound.length / 2));
        assertMadeAnew();
        Files.delete(catalogue);
        assertMadeAnew();
        assertThat(catalogue).exists();
    }

    private void assertMadeAnew() throws IOException {
        var looked = new AtomicInteger();
        try (var open = JournalFolder.openAsKnown(journal, user)) {
            assertThat(open.isKnown()).isFalse();
            open.look((done, all) -> looked.set(all));
            assertThat(looked).hasValue(1);
            assertThat(open.journal().log(build.id())).containsExactly(entry);
        }
    }

    @Test
    void aCopyOfAJournalDoesNotUseTheOthersCatalogue() throws IOException {
        var copy = Bench.copy(journal, temp.resolve("copy"));
        try (var open = JournalFolder.openAsKnown(copy, user)) {
            assertThat(open.isKnown()).isFalse();
        }
    }

    /** More entries than are kept in memory: they leave it and come back, and the log that is held stays. */
    @Test
    void logsLeaveMemoryAndAreReadAgain() throws IOException {
        var large = temp.resolve("large");
        SyntheticJournal.of(6, 1000, 0).write(large);
        try (var open = JournalFolder.open(large, user)) {
            var all = open.journal();
            var builds = all.builds();
            all.keepAtHand(Set.of(builds.get(0).id()));
            var logs = builds.stream().map(each -> all.log(each.id())).toList();
            assertThat(logs.stream().mapToInt(List::size).sum()).isEqualTo(6000);
            assertThat(all.isAtHand(builds.get(0).id())).isTrue();
            assertThat(all.isAtHand(builds.get(1).id())).isFalse();
            assertThat(IntStream.range(0, 6)
                            .filter(i -> all.isAtHand(builds.get(i).id()))
                            .count())
                    .isBetween(2L, 5L);
            for (int i = 0; i < 6; i++) {
                assertThat(all.log(builds.get(i).id())).isEqualTo(logs.get(i));
            }
            var first = logs.get(0).get(0);
            all.apply(Edit.change("title", first, first.withTitle("Mine")));
            builds.forEach(each -> all.log(each.id()));
            assertThat(all.log(first.build()).get(0).title()).isEqualTo("Mine");
        }
    }

    /** So old that its time tells every change. */
    private static void grow(Path file, int seconds) throws IOException {
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().minusSeconds(seconds)));
    }
}
