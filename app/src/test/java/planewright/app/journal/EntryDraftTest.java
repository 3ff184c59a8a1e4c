package planewright.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.EntryDraft.Doing;
import planewright.app.journal.EntryDraft.Flying;
import planewright.app.journal.EntryDraft.Mending;

/** Flights, repairs and work done, as somebody types them. */
class EntryDraftTest {
    private final EntryRecord full = Bench.fullEntry(Bench.fullBuild());
    private final EntryRecord empty = Bench.entry(Bench.build("Heron"), "x");

    @Test
    void aDraftOfAnEntrySaysWhatItSays() {
        var checked = EntryDraft.of(full).check(full);
        assertThat(checked.problems()).isEmpty();
        assertThat(checked.entry()).contains(full);
    }

    @Test
    void whatIsTypedIsUnderstood() {
        var entry = typed(
                        empty,
                        List.of(new Flying("", "7 1/2", " calm ", "slow"), new Flying("", "", "", "again")),
                        List.of(new Mending("", "fin", "grass", "glued", "-2 g")),
                        List.of(new Doing("", "sand", "1 h"), new Doing("", "sweep", "")))
                .entry()
                .orElseThrow();
        assertThat(entry.flights()).hasSize(2);
        assertThat(entry.flights().get(0).duration().orElseThrow().in(Units.MINUTE))
                .isEqualTo(7.5);
        assertThat(entry.flights().get(0).conditions()).isEqualTo("calm");
        assertThat(entry.flights().get(1).duration()).isEmpty();
        assertThat(entry.repairs().get(0).massAdded().orElseThrow().in(Units.GRAM))
                .isEqualTo(-2);
        assertThat(entry.tasks().get(0).handsOn().orElseThrow().in(Units.MINUTE))
                .isEqualTo(60);
        assertThat(entry.tasks().get(1).handsOn()).isEmpty();
        assertThat(entry.flights().get(0).id())
                .isNotEqualTo(entry.flights().get(1).id());
    }

    @Test
    void rowsWithoutWordsDoNotCount() {
        var checked = typed(
                empty,
                List.of(new Flying("", "", " ", "")),
                List.of(new Mending("", "", "", "", "")),
                List.of(new Doing("", "", "")));
        assertThat(checked.entry()).contains(empty);
    }

    @Test
    void eachThingThatIsNotUnderstoodIsToldWithItsPlace() {
        var checked = typed(
                empty,
                List.of(new Flying("", "7 mm", "", "")),
                List.of(new Mending("", "", "grass", "", ""), new Mending("", "fin", "", "", "much")),
                List.of(new Doing("", "", "5 min"), new Doing("", "sand", "5 g")));
        assertThat(checked.entry()).isEmpty();
        assertThat(checked.problems())
                .containsOnlyKeys(
                        "flights[0].duration",
                        "repairs[0].broke",
                        "repairs[1].massAdded",
                        "tasks[0].name",
                        "tasks[1].handsOn");
        assertThat(checked.problems().get("repairs[1].massAdded")).contains("fin", "much", "accepted");
    }

    /** A time of 1 h 1/3 shows fewer digits than it has. */
    @Test
    void whatIsNotTypedAnewKeepsItsDigits() {
        var third = full.withTasks(
                List.of(new TaskRecord("k3f9q2", "sand", Optional.of(Measured.of(100.0 / 3, Units.MINUTE)))));
        var entry = EntryDraft.of(third).check(third).entry().orElseThrow();
        assertThat(entry.tasks()).isEqualTo(third.tasks());
    }

    /** It may hold more than this program knows, so it goes only when somebody takes the row out. */
    @Test
    void aFlightOfWhichNothingIsKnownStaysUntilItsRowIsTakenOut() {
        var bare = empty.withFlights(List.of(new FlightRecord("flight", Optional.empty(), "", "")));
        assertThat(EntryDraft.of(bare).check(bare).entry()).contains(bare);
        var cleared = full.withFlights(List.of(full.flights().get(0)));
        var flight = cleared.flights().get(0);
        assertThat(typed(cleared, List.of(new Flying(flight.id(), "", "", "")), List.of(), List.of())
                        .entry()
                        .orElseThrow()
                        .flights())
                .isEmpty();
    }

    @Test
    void anEntryIsToldInLines() {
        assertThat(full.flights().stream().map(EntryWords::flight))
                .containsExactly("7 min; calm; slow to roll", "nose up at power");
        assertThat(full.repairs().stream().map(EntryWords::repair))
                .containsExactly("fin at the root; tall grass; glued, a strip over it; +1.5 g");
        assertThat(full.tasks().stream().map(EntryWords::task)).containsExactly("trim the linkage; 25 min");
    }

    private static EntryDraft.Checked typed(
            EntryRecord before, List<Flying> flights, List<Mending> repairs, List<Doing> tasks) {
        var draft = EntryDraft.of(before);
        var typed = new EntryDraft(
                draft.when(),
                draft.kind(),
                draft.title(),
                draft.text(),
                draft.tags(),
                draft.measurements(),
                draft.joints(),
                draft.setUp(),
                draft.pictures(),
                flights,
                repairs,
                tasks);
        return typed.check(before);
    }
}
