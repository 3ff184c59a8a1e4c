package planewright.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import planewright.app.Bench;
import planewright.app.journal.Edit.Change;

class OpenJournalTest {
    private static final long STAMP = 1;
    private final List<Change> saved = new ArrayList<>();
    private final List<Integer> failing = new ArrayList<>();
    private int attempts;
    private final OpenJournal journal = OpenJournal.read("Loft workshop", List.of(), this::save);
    private final BuildRecord heron = Bench.build("Grey heron");
    private final EntryRecord cut = Bench.entry(heron, "Cut the cores");

    @Test
    void anEditIsSavedBeforeAnybodyHearsOfIt() throws IOException {
        var heard = new ArrayList<String>();
        journal.listen(news -> heard.add(
                "after " + saved.size() + " saves, " + journal.builds().size() + " builds"));
        journal.apply(Edit.add("add build", heron));
        assertThat(heard).containsExactly("after 1 saves, 1 builds");
    }

    @Test
    void undoTakesTheLastEditBackAndRedoMakesItAgain() throws IOException {
        journal.apply(Edit.add("add build", heron));
        journal.apply(Edit.add("add entry", cut));
        var renamed = cut.withTitle("Cut four cores");
        journal.apply(Edit.change("change title", cut, renamed));

        assertThat(journal.undo()).map(Edit::what).contains("change title");
        assertThat(journal.log(heron.id())).containsExactly(cut);
        assertThat(journal.undo()).map(Edit::what).contains("add entry");
        assertThat(journal.log(heron.id())).isEmpty();
        assertThat(journal.entry(heron.id(), cut.id())).isEmpty();

        assertThat(journal.redo()).map(Edit::what).contains("add entry");
        assertThat(journal.redo()).map(Edit::what).contains("change title");
        assertThat(journal.log(heron.id())).containsExactly(renamed);
        assertThat(journal.redo()).isEmpty();
    }

    @Test
    void aNewEditEndsWhatCouldBeRedone() throws IOException {
        journal.apply(Edit.add("add build", heron));
        journal.apply(Edit.add("add entry", cut));
        journal.undo();
        assertThat(journal.lastUndone()).isPresent();
        journal.apply(Edit.add("add another", Bench.entry(heron, "Sand the nose")));
        assertThat(journal.lastUndone()).isEmpty();
        assertThat(journal.redo()).isEmpty();
        assertThat(journal.log(heron.id())).extracting(EntryRecord::title).containsExactly("Sand the nose");
    }

    @Test
    void listenersHearWhatHasBecomeOfRecordsThroughAnEditAndItsUndo() throws IOException {
        var heard = new ArrayList<News>();
        journal.listen(heard::add);
        journal.apply(Edit.add("add build", heron));
        journal.undo();
        assertThat(heard)
                .containsExactly(
                        new News(List.of(new News.Present(heron, STAMP)), List.of()),
                        new News(List.of(), List.of(new News.Gone(heron.id(), heron.id()))));
        assertThat(saved).last().isEqualTo(new Change(Optional.of(heron), Optional.empty()));
    }

    @Test
    void anEditThatCannotBeSavedChangesNothing() throws IOException {
        journal.apply(Edit.add("add build", heron));
        var heard = new ArrayList<News>();
        journal.listen(heard::add);
        failing.add(2);
        assertThatExceptionOfType(IOException.class)
                .isThrownBy(() -> journal.apply(Edit.add("add entry", cut)))
                .withMessage("disk full");
        assertThat(journal.log(heron.id())).isEmpty();
        assertThat(journal.lastDone()).map(Edit::what).contains("add build");
        assertThat(heard).isEmpty();
    }

    @Test
    void anUndoThatCannotBeSavedCanBeTriedAgain() throws IOException {
        journal.apply(Edit.add("add build", heron));
        failing.add(2);
        assertThatExceptionOfType(IOException.class).isThrownBy(journal::undo);
        assertThat(journal.builds()).containsExactly(heron);
        journal.undo();
        assertThat(journal.builds()).isEmpty();
    }

    @Test
    void whereTheSecondChangeFailsTheFirstIsTakenBack() {
        failing.add(2);
        var both = new Edit("add both", List.of(add(heron), add(cut)));
        assertThatExceptionOfType(IOException.class).isThrownBy(() -> journal.apply(both));
        assertThat(saved).containsExactly(add(heron), new Change(Optional.of(heron), Optional.empty()));
        assertThat(journal.builds()).isEmpty();
    }

    @Test
    void theReasonForAFailureIsToldEvenIfTakingBackFailsToo() {
        failing.addAll(List.of(2, 3));
        var both = new Edit("add both", List.of(add(heron), add(cut)));
        assertThatExceptionOfType(IOException.class)
                .isThrownBy(() -> journal.apply(both))
                .withMessage("disk full")
                .satisfies(failure -> assertThat(failure.getSuppressed()).hasSize(1));
    }

    /** A place that keeps records may know of newer words than whoever made the edit. */
    @Test
    void anEditCountsAsItWasMadeNotAsItWasAskedFor() throws IOException {
        var theirs = cut.withTags(List.of("cores"));
        var both = theirs.withTitle("mine");
        var merging = OpenJournal.read(
                "Loft workshop",
                List.of(heron, cut),
                change -> change.after().equals(Optional.of(cut.withTitle("mine")))
                        ? new Storage.Saved(new Change(Optional.of(theirs), Optional.of(both)), STAMP)
                        : save(change));
        merging.apply(Edit.change("title", cut, cut.withTitle("mine")));
        assertThat(merging.log(heron.id())).containsExactly(both);
        merging.undo();
        assertThat(merging.log(heron.id())).containsExactly(theirs);
        merging.redo();
        assertThat(merging.log(heron.id())).containsExactly(both);
    }

    @Test
    void whatAnotherProgramDidIsTakenInAndIsNoEditOfOurs() throws IOException {
        journal.apply(new Edit("add both", List.of(add(heron), add(cut))));
        var heard = new ArrayList<News>();
        journal.listen(heard::add);
        var news = new News(
                List.of(new News.Present(cut.withTitle("theirs"), STAMP)),
                List.of(new News.Gone("01JBX000000000000000000001", heron.id())));
        journal.takeIn(() -> news);
        assertThat(heard).containsExactly(news);
        assertThat(journal.log(heron.id())).extracting(EntryRecord::title).containsExactly("theirs");
        assertThat(journal.lastDone()).map(Edit::what).contains("add both");
        journal.takeIn(() -> new News(List.of(), List.of()));
        assertThat(heard).hasSize(1);
    }

    @Test
    void aListenerThatFailsSpoilsNeitherTheEditNorItsUndoNorTheOtherListeners() throws IOException {
        var heard = new ArrayList<String>();
        journal.listen(news -> {
            throw new IllegalStateException("listener broken");
        });
        journal.listen(news -> heard.add(news.present().get(0).record().id()));
        journal.apply(Edit.add("add build", heron));
        assertThat(heard).containsExactly(heron.id());
        assertThat(journal.builds()).containsExactly(heron);
        assertThat(journal.undo()).isPresent();
        assertThat(journal.builds()).isEmpty();
    }

    @Test
    void whoStopsListeningHearsNoMore() throws IOException {
        var heard = new ArrayList<News>();
        var stop = journal.listen(heard::add);
        journal.apply(Edit.add("add build", heron));
        stop.run();
        journal.apply(Edit.add("add entry", cut));
        assertThat(heard).hasSize(1);
    }

    @Test
    void aLogIsInOrderOfTimeAndStaysSoWhenTimesChange() throws IOException {
        journal.apply(Edit.add("add build", heron));
        var early = cut.withAt(Bench.EVENING.minusDays(3));
        var late = Bench.entry(heron, "Cover").withAt(Bench.EVENING.plusDays(1));
        journal.apply(Edit.add("add", late));
        journal.apply(Edit.add("add", early));
        assertThat(journal.log(heron.id())).containsExactly(early, late);
        var later = early.withAt(Bench.EVENING.plusDays(9));
        journal.apply(Edit.change("change", early, later));
        assertThat(journal.log(heron.id())).containsExactly(late, later);
    }

    /** Its file lies in the folder of its build, where a reader would not look for another's. */
    @Test
    void anEntryIsNotMovedToAnotherLogNorGivenAnotherId() {
        var crane = Bench.build("Red crane");
        var moved = EntryRecord.blank(crane.id(), cut.kind(), cut.at());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Edit.change("move", cut, moved))
                .withMessageContainingAll(cut.id(), moved.id(), "accepted: the same id");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Edit.change("move", cut, inLogOf(crane)))
                .withMessageContainingAll(heron.id(), crane.id(), "accepted: the same log");
    }

    private EntryRecord inLogOf(BuildRecord build) {
        return new EntryRecord(
                cut.id(),
                build.id(),
                cut.at(),
                cut.kind(),
                cut.title(),
                cut.text(),
                cut.tags(),
                cut.measurements(),
                cut.joints(),
                cut.pictures(),
                cut.setUp(),
                cut.flights(),
                cut.repairs(),
                cut.tasks(),
                cut.keptResult());
    }

    @Test
    void aReaderOfOneInstantSeesNoLaterEdit() throws IOException {
        journal.apply(new Edit("add both", List.of(add(heron), add(cut))));
        var before = journal.asOfNow();
        journal.apply(Edit.change("change title", cut, cut.withTitle("Cut four cores")));
        assertThat(before.log(heron.id())).isEqualTo(List.of(cut));
        assertThat(journal.asOfNow().log(heron.id())).isEqualTo(List.of(cut.withTitle("Cut four cores")));
    }

    /** Whoever reads while titles change finds the entry in every look, never between two of its states. */
    @Test
    void whileAnEntryChangesReadersNeverMissIt() throws Exception {
        journal.apply(new Edit("add both", List.of(add(heron), add(cut))));
        var writing = new AtomicBoolean(true);
        var pool = Executors.newSingleThreadExecutor();
        try {
            var missed = pool.submit(() -> {
                int misses = 0;
                while (writing.get()) {
                    misses += journal.log(heron.id()).isEmpty() ? 1 : 0;
                }
                return misses;
            });
            var now = cut;
            for (int i = 0; i < 20_000; i++) {
                var next = now.withTitle("title " + i);
                journal.apply(Edit.change("change title", now, next));
                now = next;
            }
            writing.set(false);
            assertThat(missed.get()).isZero();
        } finally {
            writing.set(false);
            pool.shutdown();
        }
    }

    @Test
    void theLatestBegunBuildComesFirst() throws IOException {
        var newer = BuildRecord.begin("Newer", heron.begun().plusDays(1));
        journal.apply(new Edit("add both", List.of(add(heron), add(newer))));
        assertThat(journal.builds()).containsExactly(newer, heron);
    }

    private static Change add(Kept record) {
        return new Change(Optional.empty(), Optional.of(record));
    }

    private Storage.Saved save(Change change) throws IOException {
        attempts++;
        if (failing.contains(attempts)) {
            throw new IOException("disk full");
        }
        saved.add(change);
        return new Storage.Saved(change, STAMP);
    }
}
