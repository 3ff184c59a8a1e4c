package planewright.app.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.index.Hits.Hit;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.FlightRecord;
import planewright.app.journal.JointRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.RepairRecord;
import planewright.app.journal.TaskRecord;
import planewright.shared.quantity.Written;

/** Words that mean the same are found, in whichever form they were written. */
class SearchWordsTest {
    private final BuildRecord heron = Bench.build("Grey heron").withLayout("tailless");
    private final EntryRecord balanced = text("The balance point is where it was, the packs moved.");
    private final EntryRecord spar = Bench.entry(heron, "")
            .withMeasurements(List.of(new MeasurementRecord(
                    "k3f9q2", "spar", new Written("3 1/2", Units.INCH, Optional.empty()), "steel rule")));
    private final EntryRecord bonded =
            text("Adhesive on the tip, a propeller nick, boxes of batteries for the takeoff.");
    private final EntryRecord apart = text("The point of a good balance is a quiet mind.");
    private final OpenJournal journal = Bench.inMemory(List.of(heron), List.of(balanced, spar, bonded, apart));

    @TempDir
    private Path temp;

    private SearchIndex index;

    @BeforeEach
    void openIndex() throws IOException {
        index = SearchIndex.open(temp, journal, (done, all) -> {});
    }

    @AfterEach
    void closeIndex() throws IOException {
        index.close();
    }

    @ParameterizedTest
    @CsvSource({"molehill, repair", "linkage, task", "thermal, flight"})
    void flightsRepairsAndWorkDoneAreFound(String typed, String where) throws IOException {
        var day = Bench.entry(heron, "A day")
                .withFlights(List.of(
                        new FlightRecord("a", Optional.empty(), "", "straight"),
                        new FlightRecord("b", Optional.empty(), "thermal", "")))
                .withRepairs(List.of(new RepairRecord("c", "fin", "molehill", "", Optional.empty())))
                .withTasks(List.of(new TaskRecord("d", "free the linkage", Optional.empty())));
        journal.apply(Edit.add("day", day));
        index.close();
        index = SearchIndex.open(temp.resolve("again"), journal, (done, all) -> {});
        var hit = only(typed);
        assertThat(hit.entryId()).isEqualTo(day.id());
        assertThat(hit.excerpts()).anySatisfy(each -> assertThat(each.where()).isEqualTo(where));
    }

    /** Builders name a joint by its parts, and look for it as a joint. */
    @ParameterizedTest
    @CsvSource({"fin joint", "joint left", "Klebung fin"})
    void aJointIsFoundAsOne(String typed) throws IOException {
        var glued = Bench.entry(heron, "An evening")
                .withJoints(List.of(
                        new JointRecord("e", "left fin", "epoxy", Bench.EVENING, Optional.empty(), Optional.empty())));
        journal.apply(Edit.add("evening", glued));
        var hit = only(typed);
        assertThat(hit.entryId()).isEqualTo(glued.id());
        assertThat(hit.excerpts()).anySatisfy(each -> {
            assertThat(each.text()).isEqualTo("left fin · epoxy");
            assertThat(hit.joint(each)).contains(glued.joints().get(0));
        });
    }

    /** Trade terms of the same meaning: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "cg, balance point",
        "CG, balance point",
        "centre of gravity, balance point",
        "center of gravity, balance point",
        "battery moved, packs moved"
    })
    void termsOfTheTradeStandForOneAnother(String typed, String marked) throws IOException {
        var hit = only(typed);
        assertThat(hit.entryId()).isEqualTo(balanced.id());
        assertThat(marks(hit)).containsSubsequence(marked.split(" "));
    }

    @ParameterizedTest
    @CsvSource({
        "glue, Adhesive",
        "airscrew, propeller",
        "prop, propeller",
        "take-off, takeoff",
        "box, boxes",
        "battery, batteries",
        "packs, batteries",
        "nicks, nick"
    })
    void anotherWordOrFormIsFoundAndMarked(String typed, String marked) throws IOException {
        var hits = index.find(Question.of(typed + " ")).hits();
        assertThat(hits).extracting(Hit::entryId).contains(bonded.id());
        var hit =
                hits.stream().filter(each -> each.entryId().equals(bonded.id())).findFirst();
        assertThat(marks(hit.orElseThrow())).containsExactly(marked);
    }

    @Test
    void aTermOfSeveralWordsStandsInARow() throws IOException {
        assertThat(found("cg ")).containsExactly(balanced.id());
        assertThat(found("balance point "))
                .as("as typed, the words may stand apart, but together is better")
                .containsExactly(balanced.id(), apart.id());
        assertThat(found("\"cg\" ")).as("in quotes, as written").isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"3 1/2", "3.5", "3½", "3,5", "3 1/2 in", "spar 3 1/2\"", "3½in"})
    void aNumberIsFoundHoweverItIsWritten(String typed) throws IOException {
        var hit = only(typed);
        assertThat(hit.entryId()).isEqualTo(spar.id());
        assertThat(marks(hit)).contains("3 1/2");
    }

    @Test
    void littleWordsOfAQuestionNeedNotBeThere() throws IOException {
        assertThat(found("where did the nick of a propeller come from? propeller nick "))
                .as("'come' is no little word")
                .isEmpty();
        assertThat(found("what was the nick in the propeller ")).containsExactly(bonded.id());
        assertThat(found("the ")).as("alone, they are looked for").contains(balanced.id(), bonded.id());
    }

    @ParameterizedTest
    @CsvSource({"adhesve, Adhesive", "propelers nick, propeller", "adehs, Adhesive", "propeler, propeller"})
    void slipsAreForgivenInWordsFinishedOrNot(String typed, String marked) throws IOException {
        var hits = index.find(Question.of(typed));
        assertThat(hits.forgiving()).isTrue();
        assertThat(hits.hits()).extracting(Hit::entryId).containsExactly(bonded.id());
        assertThat(marks(hits.hits().get(0))).contains(marked);
    }

    @Test
    void numbersAndShortWordsAreNotForgiven() throws IOException {
        assertThat(found("3.6 ")).isEmpty();
        assertThat(found("tap ")).isEmpty();
    }

    @Test
    void aBuildIsFoundByItsLayout() throws IOException {
        assertThat(found("tailless propeller ")).containsExactly(bonded.id());
    }

    private EntryRecord text(String text) {
        return Bench.entry(heron, "").withText(List.of(text));
    }

    private Hit only(String typed) throws IOException {
        var hits = index.find(Question.of(typed + " "));
        assertThat(hits.forgiving()).isFalse();
        assertThat(hits.hits()).hasSize(1);
        return hits.hits().get(0);
    }

    private List<String> found(String typed) throws IOException {
        return index.find(Question.of(typed)).hits().stream().map(Hit::entryId).toList();
    }

    private static List<String> marks(Hit hit) {
        return hit.excerpts().stream()
                .flatMap(excerpt ->
                        excerpt.marks().stream().map(mark -> excerpt.text().substring(mark.from(), mark.to())))
                .toList();
    }
}
