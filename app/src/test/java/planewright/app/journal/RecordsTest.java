package planewright.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.awt.EventQueue;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import planewright.app.Bench;

class RecordsTest {
    @Test
    void newIdsAreUlidsThatSortInTheOrderTheyWereMade() {
        var ids = Stream.generate(Ids::next).limit(5_000).toList();
        assertThat(ids).isSorted().doesNotHaveDuplicates();
        assertThat(ids).allMatch(id -> id.matches("[0-7][0-9A-HJKMNP-TV-Z]{25}"));
    }

    @Test
    void smallIdsHaveSixCharactersAndSeldomRepeat() {
        var ids = new HashSet<String>();
        for (int i = 0; i < 1_000; i++) {
            ids.add(Ids.small());
        }
        assertThat(ids).allMatch(id -> id.matches("[a-z0-9]{6}"));
        // 32^6 ids: the chance of a repeat among 1000 is 0.0005, of a second one below 1e-6
        assertThat(ids).hasSizeGreaterThan(998);
    }

    @Test
    void aNamelessRecordIsRefusedByName() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bench.build(" \t"))
                .withMessageContainingAll("name of a build", "' \t'", "accepted");
        assertThat(Bench.build("  Grey heron ").name()).isEqualTo("Grey heron");
    }

    @Test
    void tagsAreASortedSet() {
        var entry = Bench.entry(Bench.build("Heron"), "x").withTags(List.of("wing", " balance", "wing ", ""));
        assertThat(entry.tags()).containsExactly("balance", "wing");
    }

    @Test
    void aPictureWhoseHashCouldLeaveItsFolderIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PictureRecord("../../../etc/passwd", "jpg", ""))
                .withMessageContaining("../../../etc/passwd");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PictureRecord("ab".repeat(32), "/../x", ""))
                .withMessageContaining("/../x");
    }

    @Test
    void anEditChangesSomethingAndReversesInTheOppositeOrder() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Edit("nothing", List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new Edit.Change(Optional.empty(), Optional.empty()));
        var build = Bench.build("Heron");
        var entry = Bench.entry(build, "x");
        var edit = new Edit(
                "both",
                List.of(
                        new Edit.Change(Optional.empty(), Optional.of(build)),
                        new Edit.Change(Optional.empty(), Optional.of(entry))));
        assertThat(edit.reversed().changes())
                .containsExactly(
                        new Edit.Change(Optional.of(entry), Optional.empty()),
                        new Edit.Change(Optional.of(build), Optional.empty()));
        assertThat(edit.reversed().reversed()).isEqualTo(edit);
    }

    @Test
    void slowWorkIsRefusedOnTheRealEventThreadAndAllowedElsewhere()
            throws InterruptedException, InvocationTargetException {
        Slow.work("saving");
        var journal = Bench.inMemory(List.of(), List.of());
        var caught = new AtomicReference<RuntimeException>();
        EventQueue.invokeAndWait(() -> {
            try {
                journal.apply(Edit.add("add build", Bench.build("Heron")));
            } catch (IOException | RuntimeException refused) {
                caught.set(refused instanceof RuntimeException wrong ? wrong : null);
            }
        });
        assertThatIllegalStateException()
                .isThrownBy(() -> {
                    throw caught.get();
                })
                .withMessageContaining("event thread");
        assertThat(journal.builds()).isEmpty();
    }
}
