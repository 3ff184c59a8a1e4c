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
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.index.Hits.Excerpt;
import planewright.app.index.Hits.Hit;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.PictureRecord;
import planewright.shared.quantity.Written;

class SearchIndexTest {
    private final BuildRecord heron = Bench.build("Grey heron");
    private final BuildRecord crane = Bench.build("Red crane");
    private final EntryRecord weighed = Bench.entry(heron, "On the scale")
            .withText(List.of("Nose *heavy*, by a lot.", "Löwenzahn everywhere, the elevons were slow."))
            .withTags(List.of("balance", "wing"))
            .withMeasurements(List.of(new MeasurementRecord(
                    "k3f9q2", "left wing panel", new Written("212", Units.GRAM, Optional.empty()), "kitchen balance")))
            .withPictures(List.of(new PictureRecord("ab".repeat(32), "jpg", "both halves on the bench")));
    private final EntryRecord covered = Bench.entry(crane, "Covering the wing");
    private final OpenJournal journal = Bench.inMemory(List.of(heron, crane), List.of(weighed, covered));

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
    @CsvSource({
        "scale, title, scale",
        "NOSE, text, Nose",
        "löwenzahn, text, Löwenzahn",
        "balance, tag, balance",
        "halves, picture, halves",
        "panel, measurement, panel",
        "kitchen, measurement, kitchen",
        "212, measurement, 212"
    })
    void anEntryIsFoundByItsWordsAndMarkedThere(String word, String where, String marked) throws IOException {
        var found = index.find(Question.of(word).most(10));
        assertThat(found.total()).isEqualTo(1);
        assertThat(found.forgiving()).isFalse();
        var hit = found.hits().get(0);
        assertThat(hit.entryId()).isEqualTo(weighed.id());
        assertThat(hit.entry().build()).isEqualTo(heron.id());
        assertThat(hit.excerpts()).anySatisfy(excerpt -> {
            assertThat(excerpt.where()).isEqualTo(where);
            assertThat(marked(excerpt)).contains(marked);
        });
    }

    @Test
    void namesThatAreBorneAreGivenAndThoseOfDeletedEntriesAreNot() throws IOException {
        assertThat(index.names(Named.MEASUREMENT, name -> true, 5)).containsExactly("left wing panel");
        assertThat(index.names(Named.MEASUREMENT, name -> name.startsWith("fin"), 5))
                .isEmpty();
        assertThat(index.names(Named.JOINT, name -> true, 5)).isEmpty();
        var glued = covered.withJoints(List.of(Bench.joint("fin joint", "contact adhesive")));
        journal.apply(Edit.change("glued", covered, glued));
        assertThat(index.names(Named.JOINT, name -> true, 5)).containsExactly("fin joint");
        assertThat(index.names(Named.MATERIAL, name -> true, 5)).containsExactly("contact adhesive");
        journal.undo();
        assertThat(index.names(Named.JOINT, name -> true, 5)).isEmpty();
    }

    @Test
    void allWordsMustBeThereWhereverTheyStand() throws IOException {
        assertThat(found("scale panel heavy")).containsExactly(weighed.id());
        assertThat(found("covering panel")).isEmpty();
        assertThat(found("wing")).containsExactlyInAnyOrder(weighed.id(), covered.id());
    }

    @Test
    void theLastWordMayBeUnfinishedAndIsMarkedWhole() throws IOException {
        var hit = index.find(Question.of("heavy elev").most(10)).hits().get(0);
        assertThat(hit.excerpts().stream().flatMap(excerpt -> marked(excerpt).stream()))
                .containsExactly("heavy", "elevons");
        assertThat(index.find(Question.of("elev heavy").most(10)).forgiving()).isFalse();
        assertThat(found("elev heavy"))
                .as("an unfinished word that is not the last")
                .isEmpty();
    }

    @Test
    void wordsInQuotesStandInARow() throws IOException {
        assertThat(found("\"left wing panel\"")).containsExactly(weighed.id());
        assertThat(found("\"left panel wing\"")).doesNotContain(covered.id());
        assertThat(index.find(Question.of("\"wing left\"").most(10)).forgiving())
                .isTrue();
    }

    @Test
    void aSearchMayKeepToOneBuild() throws IOException {
        var found = index.find(Question.of("wing").keeping(Filter.NONE.with(Facet.BUILD, crane.id())));
        assertThat(found.total()).isEqualTo(1);
        assertThat(found.hits()).extracting(Hit::entryId).containsExactly(covered.id());
        assertThat(index.find(Question.of("wing").keeping(Filter.NONE.with(Facet.BUILD, "unknown")))
                        .hits())
                .isEmpty();
    }

    @Test
    void aSlipOfTheKeyboardIsForgivenAndSaidSo() throws IOException {
        var found = index.find(Question.of("coevring").most(10));
        assertThat(found.forgiving()).isTrue();
        assertThat(found.hits()).extracting(Hit::entryId).containsExactly(covered.id());
        assertThat(found.hits().get(0).excerpts().stream().flatMap(excerpt -> marked(excerpt).stream()))
                .containsExactly("Covering");
    }

    @Test
    void theLimitCutsTheHitsAndNotTheCount() throws IOException {
        for (int i = 0; i < 30; i++) {
            journal.apply(Edit.add("add", Bench.entry(crane, "Sanding pass " + i)));
        }
        var found = index.find(Question.of("sanding").most(7));
        assertThat(found.total()).isEqualTo(30);
        assertThat(found.hits()).hasSize(7);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "   ",
                "\"",
                "\"\"",
                "* ? ~ ^ : ( [ { \\ / + - ! && || AND",
                "½",
                "\uD83D",
                "-",
                "title:wing)"
            })
    void anythingMayBeTyped(String typed) throws IOException {
        assertThat(index.find(Question.of(typed).most(10)).total()).isGreaterThanOrEqualTo(0);
    }

    @Test
    void aWholePageMayBePasted() throws IOException {
        for (int i = 0; i < 120; i++) {
            journal.apply(Edit.add(
                    "add", Bench.entry(crane, "panel" + (char) ('a' + i % 26) + " wingz" + (char) ('a' + i / 26))));
        }
        var typed = new StringBuilder();
        for (int i = 0; i < 3_000; i++) {
            typed.append("panelx wingzy word").append(i).append(' ');
        }
        assertThat(index.find(Question.of(typed.toString()).most(10)).hits()).isEmpty();
    }

    @Test
    void editsAreFoundAtOnceAndUndoForgetsThem() throws IOException {
        var added = Bench.entry(heron, "Sharpening the planer");
        journal.apply(Edit.add("add", added));
        assertThat(found("planer")).containsExactly(added.id());
        journal.apply(Edit.change("change", added, added.withTitle("Sharpening the razor")));
        assertThat(found("planer")).isEmpty();
        assertThat(found("razor")).containsExactly(added.id());
        journal.undo();
        assertThat(found("razor")).isEmpty();
        assertThat(found("planer")).containsExactly(added.id());
        journal.undo();
        assertThat(found("planer")).isEmpty();
        journal.redo();
        assertThat(found("planer")).containsExactly(added.id());
    }

    @Test
    void theEntriesOfABuildAreFoundByItsNewName() throws IOException {
        journal.apply(Edit.change("rename", crane, crane.withName("Wet flamingo")));
        assertThat(found("flamingo")).containsExactly(covered.id());
        assertThat(found("\"red crane\"")).isEmpty();
    }

    private List<String> found(String typed) throws IOException {
        return index.find(Question.of(typed).most(100)).hits().stream()
                .map(Hit::entryId)
                .toList();
    }

    private static List<String> marked(Excerpt excerpt) {
        return excerpt.marks().stream()
                .map(mark -> excerpt.text().substring(mark.from(), mark.to()))
                .toList();
    }
}
