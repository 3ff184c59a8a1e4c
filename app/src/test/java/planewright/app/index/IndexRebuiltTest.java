package planewright.app.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.index.Hits.Hit;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.OpenJournal;

/** The index is a cache: whatever befalls it, searching finds what the journal holds. */
class IndexRebuiltTest {
    private static final int MANY = 300;

    private final BuildRecord heron = Bench.build("Grey heron");
    private final List<EntryRecord> entries = new ArrayList<>();

    @TempDir
    private Path temp;

    IndexRebuiltTest() {
        for (int i = 0; i < MANY; i++) {
            entries.add(Bench.entry(heron, "Sanding number" + i));
        }
    }

    @Test
    void anIndexThatIsMissingIsMade() throws IOException {
        assertSound();
        delete();
        assertSound();
    }

    @Test
    void aStaleIndexIsBroughtUpToDate() throws IOException {
        assertSound();
        var gone = entries.remove(7);
        entries.set(3, entries.get(3).withTitle("Varnishing number3"));
        entries.add(Bench.entry(heron, "Sanding number" + MANY));
        try (var index = SearchIndex.open(temp, journal(), (done, all) -> {})) {
            assertThat(found(index, "number7 ", 5)).isEmpty();
            assertThat(found(index, "varnishing number3 ", 5))
                    .containsExactly(entries.get(3).id());
            assertThat(found(index, "sanding number3 ", 5)).isEmpty();
            assertThat(found(index, "number" + MANY, 5)).hasSize(1);
            assertThat(index.find(Question.of("number").most(1)).total()).isEqualTo(MANY);
        }
        assertThat(gone.title()).isEqualTo("Sanding number7");
    }

    @Test
    void anIndexThatCoversTheJournalIsNotComparedEntryByEntry() throws IOException {
        assertSound();
        var looked = new AtomicBoolean();
        try (var index = SearchIndex.open(temp, journal(), (done, all) -> looked.set(true))) {
            assertThat(looked).isFalse();
            assertThat(found(index, "number7 ", 5)).hasSize(1);
        }
        entries.set(3, entries.get(3).withTitle("Varnishing number3"));
        SearchIndex.open(temp, journal(), (done, all) -> looked.set(true)).close();
        assertThat(looked).isTrue();
    }

    @Test
    void anIndexOfAnotherJournalIsForgotten() throws IOException {
        assertSound();
        entries.clear();
        entries.add(Bench.entry(heron, "Only this"));
        try (var index = SearchIndex.open(temp, journal(), (done, all) -> {})) {
            assertThat(index.find(Question.of("sanding").most(5)).hits()).isEmpty();
            assertThat(found(index, "only", 5)).hasSize(1);
        }
    }

    @Test
    void whicheverFileIsDamagedTheIndexIsMadeAnew() throws IOException {
        assertSound();
        int damaged = 0;
        for (int file = 0; file < files().size(); file++) {
            for (var damage : Damage.values()) {
                var target = files().get(file);
                Files.write(target, damage.of(Files.readAllBytes(target)));
                assertSound();
                damaged++;
            }
        }
        assertThat(damaged).isGreaterThan(8);
    }

    @Test
    void aFileThatIsGoneOrStrangeDoesNoHarm() throws IOException {
        assertSound();
        for (int file = 0; file < files().size(); file++) {
            Files.delete(files().get(file));
            assertSound();
        }
        Files.writeString(files().get(0).resolveSibling("strange.txt"), "not an index");
        assertSound();
    }

    @Test
    void anEditAfterTheIndexIsClosedIsStillAnEdit() throws IOException {
        var journal = journal();
        SearchIndex.open(temp, journal, (done, all) -> {}).close();
        var late = Bench.entry(heron, "Late");
        journal.apply(Edit.add("add", late));
        assertThat(journal.entry(heron.id(), late.id())).contains(late);
        try (var index = SearchIndex.open(temp, journal, (done, all) -> {})) {
            assertThat(found(index, "late", 5)).containsExactly(late.id());
        }
    }

    @Test
    void editsMadeWhileTheIndexOpensAreNotMissed() throws Exception {
        for (int round = 0; round < 5; round++) {
            delete();
            var journal = journal();
            var opened = new AtomicBoolean();
            var begun = new CountDownLatch(1);
            var editor = Executors.newSingleThreadExecutor();
            try {
                var editing = editor.submit(() -> {
                    var made = new ArrayList<EntryRecord>();
                    while (!opened.get()) {
                        var entry = Bench.entry(heron, "Whittling number" + made.size());
                        journal.apply(Edit.add("add", entry));
                        var first = journal.log(heron.id()).get(0);
                        journal.apply(Edit.change("change", first, first.withTitle("Whittling first" + made.size())));
                        made.add(entry);
                        begun.countDown();
                    }
                    return made.size();
                });
                begun.await();
                try (var index = SearchIndex.open(temp, journal, (done, all) -> {})) {
                    opened.set(true);
                    int made = editing.get();
                    assertThat(index.find(Question.of("whittling ").most(1)).total())
                            .isEqualTo(made + 1);
                    assertThat(found(index, "first" + (made - 1) + " ", 5)).hasSize(1);
                    assertThat(index.find(Question.of("number0 ").most(5)).total())
                            .isEqualTo(1);
                }
            } finally {
                opened.set(true);
                editor.shutdown();
            }
        }
    }

    /** A journal that both can only read is open in two programs, which share a cache. */
    @Test
    void anIndexThatAnotherHoldsIsLeftToIt() throws IOException {
        var one = journal();
        var other = journal();
        var late = Bench.entry(heron, "Late");
        try (var first = SearchIndex.open(temp, one, (done, all) -> {})) {
            try (var second = SearchIndex.open(temp, other, (done, all) -> {})) {
                one.apply(Edit.add("add", late));
                var own = Bench.entry(heron, "Elsewhere");
                other.apply(Edit.add("add", own));
                assertThat(found(second, "number42 ", 5))
                        .containsExactly(entries.get(42).id());
                assertThat(found(second, "elsewhere ", 5)).containsExactly(own.id());
                assertThat(found(first, "elsewhere ", 5)).isEmpty();
                assertThat(found(first, "late ", 5)).containsExactly(late.id());
            }
            assertThat(found(first, "number42 ", 5))
                    .containsExactly(entries.get(42).id());
        }
        var looked = new AtomicBoolean();
        try (var again = SearchIndex.open(temp, one, (done, all) -> looked.set(true))) {
            assertThat(found(again, "late ", 5)).containsExactly(late.id());
            assertThat(looked).isFalse();
        }
    }

    private void assertSound() throws IOException {
        try (var index = SearchIndex.open(temp, journal(), (done, all) -> {})) {
            assertThat(index.find(Question.of("sanding ").most(1)).total()).isEqualTo(MANY);
            assertThat(found(index, "number42 ", 5))
                    .containsExactly(entries.get(42).id());
        }
    }

    private OpenJournal journal() {
        return Bench.inMemory(List.of(heron), entries);
    }

    private static List<String> found(SearchIndex index, String typed, int limit) throws IOException {
        var found = index.find(Question.of(typed).most(limit));
        return found.forgiving()
                ? List.of()
                : found.hits().stream().map(Hit::entryId).toList();
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.walk(temp)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> !file.endsWith("write.lock"))
                    .sorted()
                    .toList();
        }
    }

    private void delete() throws IOException {
        for (var file : files()) {
            Files.delete(file);
        }
    }

    private enum Damage {
        EMPTY {
            @Override
            byte[] of(byte[] content) {
                return new byte[0];
            }
        },
        HALF {
            @Override
            byte[] of(byte[] content) {
                return Arrays.copyOf(content, content.length / 2);
            }
        },
        FLIPPED {
            @Override
            byte[] of(byte[] content) {
                return flipped(content, content.length / 3, content.length / 2);
            }
        },
        FLIPPED_EARLY {
            @Override
            byte[] of(byte[] content) {
                return flipped(content, content.length / 8, content.length / 4);
            }
        },
        ONE_BIT {
            @Override
            byte[] of(byte[] content) {
                return flipped(content, content.length * 2 / 3, content.length * 2 / 3 + 1);
            }
        };

        private static byte[] flipped(byte[] content, int from, int to) {
            for (int i = from; i < to; i++) {
                content[i] ^= 0x54;
            }
            return content;
        }

        abstract byte[] of(byte[] content);
    }
}
