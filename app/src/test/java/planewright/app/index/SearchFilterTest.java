package planewright.app.index;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Unit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.api.journal.Entry.Kind;
import planewright.api.journal.Life;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.index.Hits.Count;
import planewright.app.index.Hits.Hit;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.JointRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.SetUpRecord;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.Written;

/** Filters, their counts, and measured ranges, while the journal changes. */
class SearchFilterTest {
    private final BuildRecord heron = Bench.build("Grey heron").withLife(Life.FLYING);
    private final BuildRecord crane = Bench.build("Red crane").withLife(Life.RESTING);
    private final EntryRecord glued = entry(heron, Kind.WORK, 1, "fin", "glue")
            .withJoints(List.of(joint("contact adhesive"), joint("laminating epoxy")));
    private final EntryRecord weighed = entry(heron, Kind.WORK, 2, "wing")
            .withMeasurements(List.of(
                    measured("left wing panel", "300", Units.GRAM),
                    measured("fin", "14", Units.OUNCE),
                    measured("left wing span", "3 1/2", Units.INCH)));
    private final EntryRecord flown = entry(heron, Kind.FLIGHT, 3, "wing", "fin")
            .withSetUp(List.of(new SetUpRecord("balance point", written("212", Units.MILLIMETRE))));
    private final EntryRecord other = entry(crane, Kind.WORK, 4, "wing")
            .withMeasurements(List.of(measured("wings", "14", Units.OUNCE)))
            .withJoints(List.of(joint("contact adhesive")));
    private final OpenJournal journal = Bench.inMemory(List.of(heron, crane), List.of(glued, weighed, flown, other));

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

    @Test
    void withoutWordsEverythingIsFoundTheNewestFirst() throws IOException {
        assertThat(found(Filter.NONE)).containsExactly(other.id(), flown.id(), weighed.id(), glued.id());
        assertThat(index.find(Question.of("*")).hits())
                .as("a character that is no word")
                .isEmpty();
    }

    @Test
    void entriesAreKeptToByEachFacet() throws IOException {
        assertThat(found(Facet.BUILD, crane.id())).containsExactly(other.id());
        assertThat(found(Facet.TAG, "fin")).containsExactly(flown.id(), glued.id());
        assertThat(found(Facet.KIND, "flight")).containsExactly(flown.id());
        assertThat(found(Facet.MATERIAL, "contact adhesive")).containsExactly(other.id(), glued.id());
        assertThat(found(Facet.LIFE, "resting")).containsExactly(other.id());
        assertThat(found(Facet.TAG, "nobody's")).isEmpty();
    }

    @Test
    void anyValueOfAFacetButAllTags() throws IOException {
        assertThat(found(Filter.NONE.with(Facet.KIND, "flight").with(Facet.KIND, "work")))
                .hasSize(4);
        assertThat(found(Filter.NONE.with(Facet.TAG, "fin").with(Facet.TAG, "wing")))
                .containsExactly(flown.id());
        var both = Filter.NONE.with(Facet.TAG, "fin").with(Facet.TAG, "wing");
        assertThat(found(both.without(Facet.TAG, "fin"))).containsExactly(other.id(), flown.id(), weighed.id());
        assertThat(both.without(Facet.TAG, "fin").without(Facet.TAG, "wing").isNone())
                .isTrue();
    }

    @Test
    void countsTellWhatAnotherChoiceWouldFind() throws IOException {
        var hits = index.find(
                Question.of("").keeping(Filter.NONE.with(Facet.KIND, "work").with(Facet.BUILD, heron.id())));
        assertThat(hits.total()).isEqualTo(2);
        assertThat(hits.of(Facet.KIND)).containsExactly(new Count("work", 2), new Count("flight", 1));
        assertThat(hits.of(Facet.BUILD)).containsExactly(new Count(heron.id(), 2), new Count(crane.id(), 1));
        assertThat(hits.of(Facet.TAG)).containsExactly(new Count("fin", 1), new Count("glue", 1), new Count("wing", 1));
        assertThat(hits.of(Facet.MATERIAL))
                .containsExactly(new Count("contact adhesive", 1), new Count("laminating epoxy", 1));
        assertThat(hits.of(Facet.LIFE)).containsExactly(new Count("flying", 2));
    }

    @Test
    void countsOfTagsTellWhatOneMoreWouldLeave() throws IOException {
        var hits = index.find(Question.of("").keeping(Filter.NONE.with(Facet.TAG, "fin")));
        assertThat(hits.of(Facet.TAG)).containsExactly(new Count("fin", 2), new Count("glue", 1), new Count("wing", 1));
    }

    @Test
    void countsAreOfTheEntriesThatBearTheWords() throws IOException {
        var hits = index.find(Question.of("balance point"));
        assertThat(hits.of(Facet.KIND)).containsExactly(new Count("flight", 1));
        var nearly = index.find(Question.of("balanec ").keeping(Filter.NONE.with(Facet.TAG, "wing")));
        assertThat(nearly.forgiving()).isTrue();
        assertThat(nearly.of(Facet.KIND)).containsExactly(new Count("flight", 1));
    }

    @Test
    void daysAreCountedWhole() throws IOException {
        var second = Optional.of(LocalDate.of(2025, 3, 2));
        var third = Optional.of(LocalDate.of(2025, 3, 3));
        assertThat(found(Filter.NONE.between(second, third))).containsExactly(flown.id(), weighed.id());
        assertThat(found(Filter.NONE.between(third, Optional.empty()))).containsExactly(other.id(), flown.id());
        assertThat(found(Filter.NONE.between(Optional.empty(), second))).containsExactly(weighed.id(), glued.id());
    }

    /** 14 oz = 396.89 g, NIST Special Publication 811 (2008), appendix B; 3 1/2 in = 88.9 mm. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "wing mass, 300 g, 14 oz, weighed other",
                "wing mass, 300.1 g, 396.9 g, other",
                "wing mass, -, 396.8 g, weighed",
                "wing mass, 0.3 kg, 300, weighed",
                "wing, 88.9 mm, 88.9 mm, weighed",
                "wing, 0.0889 m, -, weighed",
                "wing, 89 mm, -, ''",
                "fin mass, 390 g, -, weighed",
                "fin mass, -, 390 g, ''",
                "mass, 10 oz, -, weighed other",
                "balance point, 21 cm, 8 3/8 in, flown",
                "cg, 21 cm, 8 3/8 in, flown",
                "panel, -, -, weighed",
                "rudder, -, -, ''"
            })
    void measuredValuesAreFoundInAnyUnit(String name, String least, String most, String expected)
            throws IOException, QuantityProblem {
        var range = MeasuredRange.parse(name, Optional.ofNullable(least), Optional.ofNullable(most));
        assertThat(index.find(Question.of("").keeping(Filter.NONE.withMeasured(Optional.of(range)))).hits().stream()
                        .map(hit -> hit.entryId().equals(weighed.id())
                                ? "weighed"
                                : hit.entryId().equals(other.id()) ? "other" : "flown")
                        .toList())
                .containsExactlyInAnyOrder(expected.isEmpty() ? new String[0] : expected.split(" "));
    }

    @Test
    void theValueThatWasAskedForIsShown() throws IOException, QuantityProblem {
        var range = MeasuredRange.parse("wing", Optional.of("80 mm"), Optional.empty());
        var hit = index.find(Question.of("").keeping(Filter.NONE.withMeasured(Optional.of(range))))
                .hits()
                .get(0);
        assertThat(hit.excerpts()).hasSize(1);
        assertThat(hit.excerpts().get(0).where()).isEqualTo("measurement");
        assertThat(hit.excerpts().get(0).text()).isEqualTo("left wing span 3 1/2 in");
    }

    @Test
    void filtersAndCountsFollowEveryEdit() throws IOException, QuantityProblem {
        journal.apply(Edit.change("life", crane, crane.withLife(Life.GONE)));
        assertThat(found(Facet.LIFE, "gone")).containsExactly(other.id());
        assertThat(found(Facet.LIFE, "resting")).isEmpty();
        journal.apply(Edit.change("tags", other, other.withTags(List.of("tail"))));
        assertThat(found(Facet.TAG, "tail")).containsExactly(other.id());
        assertThat(index.find(Question.of("")).of(Facet.TAG)).contains(new Count("wing", 2), new Count("tail", 1));
        var heavier = weighed.withMeasurements(List.of(measured("left wing panel", "500", Units.GRAM)));
        journal.apply(Edit.change("weigh", weighed, heavier));
        var heavy = MeasuredRange.parse("wing mass", Optional.of("450 g"), Optional.empty());
        assertThat(found(Filter.NONE.withMeasured(Optional.of(heavy)))).containsExactly(weighed.id());
        journal.undo();
        assertThat(found(Filter.NONE.withMeasured(Optional.of(heavy)))).isEmpty();
        journal.apply(Edit.remove("remove", flown));
        assertThat(index.find(Question.of("")).of(Facet.KIND)).containsExactly(new Count("work", 3));
    }

    @Test
    void filtersHoldWhenTheIndexIsOpenedAgain() throws IOException {
        index.close();
        var changed = weighed.withAt(LocalDateTime.of(2025, 6, 1, 12, 0));
        var later = Bench.inMemory(List.of(heron, crane.withLife(Life.READY)), List.of(glued, changed, flown, other));
        index = SearchIndex.open(temp, later, (done, all) -> {});
        assertThat(found(Filter.NONE)).startsWith(weighed.id());
        assertThat(found(Facet.LIFE, "ready")).containsExactly(other.id());
    }

    @Test
    void aGlanceShowsTheSameHitsAndCountsNoFurtherThanItMust() throws IOException {
        var many = new ArrayList<EntryRecord>();
        for (int i = 0; i < 3000; i++) {
            many.add(entry(heron, Kind.WORK, 1 + i % 28, "fin").withTitle("fin " + "glued ".repeat(i % 7)));
        }
        index.close();
        index = SearchIndex.open(temp.resolve("many"), Bench.inMemory(List.of(heron), many), (done, all) -> {});
        for (var words :
                List.of("fi", "fin ", "glued", "fin glued ", "fin glued glued", "", "fni ", "nothing of it ")) {
            var question = Question.of(words);
            var glance = index.glance(question);
            var found = index.find(question);
            assertThat(glance.hits()).as(words).isEqualTo(found.hits());
            assertThat(glance.forgiving()).as(words).isEqualTo(found.forgiving());
            assertThat(glance.total()).as(words).isBetween(glance.hits().size(), found.total());
            assertThat(glance.tally().exact() ? glance.total() : found.total())
                    .as(words)
                    .isEqualTo(found.total());
            assertThat(found.tally().exact()).as(words).isTrue();
        }
        assertThat(index.glance(Question.of("fi")).tally().exact())
                .as("all 3000 counted at a glance")
                .isFalse();
    }

    @Test
    void noHitsAtAllCannotBeAskedFor() {
        assertThatThrownBy(() -> Question.of("x").most(0)).hasMessageContaining("accepted: 1 or more");
    }

    private List<String> found(Facet facet, String value) throws IOException {
        return found(Filter.NONE.with(facet, value));
    }

    private List<String> found(Filter filter) throws IOException {
        return index.find(Question.of("").keeping(filter)).hits().stream()
                .map(Hit::entryId)
                .toList();
    }

    private static EntryRecord entry(BuildRecord build, Kind kind, int day, String... tags) {
        return EntryRecord.blank(build.id(), kind, LocalDateTime.of(2025, 3, day, 23, 59))
                .withTags(List.of(tags));
    }

    private static JointRecord joint(String material) {
        return new JointRecord("j", "fin to tail", material, Bench.EVENING, Optional.empty(), Optional.empty());
    }

    private static MeasurementRecord measured(String name, String number, Unit<?> unit) {
        return MeasurementRecord.of(name, written(number, unit), "");
    }

    private static Written written(String number, Unit<?> unit) {
        return new Written(number, unit, Optional.empty());
    }
}
