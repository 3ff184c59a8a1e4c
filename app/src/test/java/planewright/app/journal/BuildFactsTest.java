package planewright.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import planewright.api.journal.Entry.Kind;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.BuildFacts.Standing;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** The facts of a build say which of them are old, new, or known from another build only. */
class BuildFactsTest {
    private final BuildRecord heron = Bench.fullBuild();

    @Test
    void aNewerMeasuredBalancePointStandsBesideTheOneThatIsSet() {
        assertThat(balance(List.of(set(1, "200 mm")))).containsExactly("balance point FIRM");
        assertThat(balance(List.of(set(1, "200 mm"), measured(2, "203 mm"))))
                .containsExactly("balance point OLDER", "measured balance point NEWER");
        assertThat(balance(List.of(measured(1, "203 mm"), set(2, "200 mm")))).containsExactly("balance point FIRM");
        assertThat(balance(List.of(measured(1, "203 mm")))).containsExactly("measured balance point FIRM");
        assertThat(balance(List.of(set(1, "200 mm"), measured(2, "203 g"))))
                .as("a mass is no place")
                .containsExactly("balance point FIRM");
    }

    @Test
    void whatWasCarriedOverSaysSoUntilItIsSetMeasuredOrDrawnAnew() throws IOException {
        var journal = Bench.inMemory(List.of(heron), List.of(set(1, "200 mm")));
        var begun = BuildRecord.begin("Larger", Bench.EVENING.toLocalDate());
        journal.apply(CarryOver.of(journal, Optional.of(heron), List.of(), 1.2)
                .begin(begun, Bench.EVENING.plusDays(3), new CarryOver.Told("begin", "Begun", List.of())));
        assertThat(facts(journal, begun))
                .contains("balance point CARRIED", "span CARRIED", "wing area CARRIED", "ledger mass CARRIED");
        journal.apply(Edit.add(
                "set",
                EntryRecord.blank(begun.id(), Kind.WORK, Bench.EVENING.plusDays(4))
                        .withSetUp(List.of(new SetUpRecord("balance point", quantity("240 mm"))))
                        .withMeasurements(List.of(MeasurementRecord.of("all-up mass", quantity("2 kg"), "")))));
        assertThat(facts(journal, begun)).contains("balance point FIRM", "all-up mass FIRM", "wing loading CARRIED");
    }

    private List<String> balance(List<EntryRecord> log) {
        return facts(Bench.inMemory(List.of(heron), log), heron).stream()
                .filter(fact -> fact.contains("balance"))
                .toList();
    }

    private static List<String> facts(OpenJournal journal, BuildRecord build) {
        var said = new ArrayList<String>();
        for (var fact : BuildFacts.measures(journal, journal.build(build.id()).orElseThrow())) {
            said.add(fact.label() + " " + fact.standing());
            assertThat(fact.at().isPresent())
                    .as(fact.label())
                    .isEqualTo(fact.standing() == Standing.NEWER || fact.label().endsWith("balance point"));
        }
        return said;
    }

    private EntryRecord set(int day, String value) {
        return EntryRecord.blank(heron.id(), Kind.WORK, Bench.EVENING.plusDays(day))
                .withSetUp(List.of(new SetUpRecord("Balance point", quantity(value))));
    }

    private EntryRecord measured(int day, String value) {
        return EntryRecord.blank(heron.id(), Kind.WORK, Bench.EVENING.plusDays(day))
                .withMeasurements(List.of(MeasurementRecord.of("balance point", quantity(value), "scales")));
    }

    private static Written quantity(String text) {
        try {
            return QuantityText.parse(text, Units.NUMBER);
        } catch (QuantityProblem ours) {
            throw new IllegalStateException(ours);
        }
    }
}
