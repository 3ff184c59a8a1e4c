package planewright.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import planewright.api.journal.Entry;
import planewright.app.Bench;
import planewright.app.print.SetUpSheet;
import planewright.app.print.Sheet;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** What holds now and what held before, and that a value set anew holds whatever the day has brought already. */
class SetUpNowTest {
    private static final LocalDateTime NOW = LocalDateTime.of(2026, 11, 28, 19, 30);
    private static final String THROW = "Elevator throw up";

    private final BuildRecord build = Bench.fullBuild();

    private static Written mm(String text) throws Exception {
        return QuantityText.parse(text, planewright.api.quantity.Units.MILLIMETRE);
    }

    private EntryRecord entry(LocalDateTime at, Entry.Kind kind, String name, String quantity) throws Exception {
        return EntryRecord.blank(build.id(), kind, at).withSetUp(List.of(new SetUpRecord(name, mm(quantity))));
    }

    private OpenJournal journal(EntryRecord... entries) {
        return Bench.inMemory(List.of(build), List.of(entries));
    }

    @Test
    void theNewestHoldsAndTheOthersAreItsHistoryWhateverTheLettersAre() throws Exception {
        var journal = journal(
                entry(NOW.minusDays(9), Entry.Kind.WORK, "elevator throw up ", "12"),
                entry(NOW.minusDays(2), Entry.Kind.FLIGHT, "Elevator Throw Up", "10"),
                entry(NOW.minusDays(5), Entry.Kind.WORK, "aileron throw", "9"));
        var values = SetUpNow.of(journal.log(build.id()));
        assertThat(values).extracting(SetUpNow.Value::name).containsExactly("aileron throw", "Elevator Throw Up");
        assertThat(values.get(1).sets()).extracting(set -> set.what().written()).containsExactly("12", "10");
    }

    @Test
    void aValueSetAnewStandsInTodaysEntryOnceAndHolds() throws Exception {
        var today = entry(NOW.minusHours(3), Entry.Kind.WORK, "elevator throw up", "12");
        var journal = journal(today);
        journal.apply(SetUpNow.setting(journal, build.id(), NOW, "set", THROW, mm("11")));
        var log = journal.log(build.id());
        assertThat(log).hasSize(1);
        assertThat(log.get(0).setUp()).containsExactly(new SetUpRecord(THROW, mm("11")));
        journal.undo();
        assertThat(journal.log(build.id())).containsExactly(today);
    }

    /** A kept result of this afternoon is newer than this morning's entry: what is set now must not be older than it. */
    @Test
    void aValueThatAKeptResultHasSetTodayIsOvertakenByANewEntry() throws Exception {
        var journal = journal(
                entry(NOW.minusHours(8), Entry.Kind.WORK, "aileron throw", "9"),
                entry(NOW.minusHours(3), Entry.Kind.KEPT_RESULT, THROW, "12"));
        journal.apply(SetUpNow.setting(journal, build.id(), NOW, "set", THROW, mm("11")));
        assertThat(journal.log(build.id())).hasSize(3);
        assertThat(journal.setUpValue(build.id(), THROW).orElseThrow().what().written())
                .isEqualTo("11");
    }

    @Test
    void theSheetTellsWhatHoldsSinceWhenAndFromWhatAndCautions() throws Exception {
        var journal =
                journal(entry(NOW, Entry.Kind.WORK, THROW, "12 mm ± 1 mm").withTitle("Throws for the first flight"));
        var sheet = SetUpSheet.of(journal, build);
        assertThat(sheet.blocks())
                .filteredOn(Sheet.Table.class::isInstance)
                .first()
                .extracting(table -> ((Sheet.Table) table).rows())
                .isEqualTo(List.of(List.of(THROW, "12 mm ± 1 mm", "28 Nov 2026", "Throws for the first flight")));
        assertThat(build.parts()).as("something is weighed").isNotEmpty();
        assertThat(sheet.blocks())
                .filteredOn(Sheet.Table.class::isInstance)
                .last()
                .satisfies(table -> assertThat(((Sheet.Table) table)
                                .rows().stream().flatMap(List::stream).toList())
                        .containsAll(build.parts().stream()
                                .filter(part -> part.mass().isPresent())
                                .map(PartRecord::name)
                                .toList()));
        assertThat(sheet.blocks())
                .filteredOn(Sheet.Remark.class::isInstance)
                .extracting(remark -> ((Sheet.Remark) remark).word())
                .contains("Propeller", "Controls", "Balance", "Packs");
    }
}
