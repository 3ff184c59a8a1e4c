package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.journal.Life;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.News;
import planewright.app.journal.OpenJournal;
import planewright.shared.quantity.Written;

/** Another program writes into the journal's files while it is open. */
class OutsideEditsTest {
    private final BuildRecord build = Bench.build("Grey heron");
    private final EntryRecord entry = Bench.entry(build, "First flight")
            .withText(List.of("Calm air.", "Nose heavy.", "Landed long."))
            .withMeasurements(List.of(mass("aaaaaa", "pod", "140")));

    @TempDir
    private Path temp;

    private JournalFolder open;
    private OpenJournal journal;
    private Path file;

    @BeforeEach
    void openOne() throws IOException {
        open = Bench.newJournal(temp.resolve("journal"));
        journal = open.journal();
        journal.apply(Edit.add("build", build));
        journal.apply(Edit.add("entry", entry));
        file = Bench.only(open.folder(), entry.id() + ".json");
    }

    @AfterEach
    void close() throws IOException {
        open.close();
    }

    @Test
    void changesOfDifferentFieldsAreBothKept() throws IOException {
        replace("\"First flight\"", "\"Second flight\"");
        replace("\"schema\": 2,", "\"schema\": 2,\n  \"weather\": \"mist\",");
        journal.apply(Edit.change("kind", entry, entry.withTags(List.of("maiden"))));
        assertThat(now().title()).isEqualTo("Second flight");
        assertThat(now().tags()).containsExactly("maiden");
        assertThat(file).content().contains("\"weather\": \"mist\"", "Second flight", "maiden");
        assertThat(open.clashes()).isEmpty();
    }

    @Test
    void paragraphsAndRowsOfBothAreKept() throws IOException {
        replace("\"Calm air.\"", "\"Gusty air.\"");
        replace("\"measurements\": [", """
                "measurements": [
                    {
                      "id": "bbbbbb",
                      "name": "fin",
                      "value": "12",
                      "unit": "g"
                    },""");
        journal.apply(Edit.change(
                "mine",
                entry,
                entry.withText(List.of("Calm air.", "Nose heavy.", "Landed long.", "Try 5 mm back."))
                        .withMeasurements(List.of(mass("aaaaaa", "pod", "141"), mass("cccccc", "wing", "212")))));
        assertThat(now().text()).containsExactly("Gusty air.", "Nose heavy.", "Landed long.", "Try 5 mm back.");
        assertThat(now().measurements())
                .extracting(each -> each.name() + " " + each.quantity().number())
                .containsExactlyInAnyOrder("pod 141", "fin 12", "wing 212");
        assertThat(open.clashes()).isEmpty();
    }

    @Test
    void whereBothChangedOneFieldOursStandsAndTheirsLiesInTheBin() throws IOException {
        replace("\"First flight\"", "\"Theirs\"");
        journal.apply(Edit.change("mine", entry, entry.withTitle("Mine")));
        assertThat(now().title()).isEqualTo("Mine");
        assertThat(open.clashes()).containsExactly(new Clash(file, List.of("title")));
        var other = (EntryRecord) open.binned().get(0).record();
        assertThat(other.title()).isEqualTo("Theirs");
        assertThat(other.text()).isEqualTo(entry.text());
        journal.apply(Edit.add("restore", other));
        assertThat(journal.log(build.id())).extracting(EntryRecord::title).containsExactly("Mine", "Theirs");
    }

    @Test
    void undoOfAMergedEditGivesTheirsBack() throws IOException {
        replace("\"Nose heavy.\"", "\"Tail heavy.\"");
        var theirs = Files.readString(file);
        journal.apply(Edit.change("mine", entry, entry.withTitle("Mine")));
        journal.undo();
        assertThat(now().title()).isEqualTo("First flight");
        assertThat(now().text()).contains("Tail heavy.");
        assertThat(file).hasContent(theirs);
        journal.redo();
        assertThat(now().title()).isEqualTo("Mine");
        assertThat(now().text()).contains("Tail heavy.");
    }

    @Test
    void aBuildIsMergedToo() throws IOException {
        var head = open.folderOf(build).resolve("build.json");
        Files.writeString(head, Files.readString(head).replace("\"sketched\"", "\"flying\""));
        journal.apply(Edit.change("name", build, build.withName("Grey heron 2")));
        assertThat(journal.build(build.id()).orElseThrow().life()).isEqualTo(Life.FLYING);
        assertThat(journal.build(build.id()).orElseThrow().name()).isEqualTo("Grey heron 2");
    }

    @Test
    void whatWasDeletedThereAndEditedHereIsWrittenAgain() throws IOException {
        Files.delete(file);
        journal.apply(Edit.change("mine", entry, entry.withTitle("Mine")));
        assertThat(file).content().contains("Mine", "Nose heavy.");
    }

    @Test
    void whatWasEditedThereIsNotDeletedHere() throws IOException {
        replace("Nose heavy", "Tail heavy");
        var theirs = Files.readString(file);
        assertThatIOException()
                .isThrownBy(() -> journal.apply(Edit.remove("remove", entry)))
                .withMessageContainingAll(file.toString(), "another program");
        assertThat(file).hasContent(theirs);
        open.look((done, all) -> {});
        journal.apply(Edit.remove("remove", now()));
        assertThat(file).doesNotExist();
        assertThat(open.binned()).singleElement().extracting(Binned::record).isNotEqualTo(entry);
    }

    @Test
    void aFileThatCannotBeReadIsNotOverwritten() throws IOException {
        Files.writeString(file, "<<<<<<< ours");
        assertThatIOException().isThrownBy(() -> journal.apply(Edit.change("mine", entry, entry.withTitle("Mine"))));
        assertThat(file).hasContent("<<<<<<< ours");
        open.look((done, all) -> {});
        assertThat(open.setAside()).extracting(SetAside::file).containsExactly(file);
        assertThat(journal.log(build.id())).isEmpty();
    }

    @Test
    void aLookFindsWhatIsNewChangedAndGoneAndTellsOfIt() throws IOException {
        var gone = Bench.entry(build, "Gone");
        journal.apply(Edit.add("entry", gone));
        var heard = new ArrayList<News>();
        journal.listen(heard::add);
        replace("First flight", "Changed");
        var added = Bench.entry(build, "New");
        Files.writeString(file.resolveSibling("copied from elsewhere.json"), text(added));
        Files.delete(Bench.only(open.folder(), gone.id() + ".json"));
        open.look((done, all) -> {});
        assertThat(journal.log(build.id())).extracting(EntryRecord::title).containsExactlyInAnyOrder("Changed", "New");
        assertThat(heard).singleElement().satisfies(news -> {
            assertThat(news.present())
                    .extracting(each -> each.record().id())
                    .containsExactlyInAnyOrder(entry.id(), added.id());
            assertThat(news.gone()).containsExactly(new News.Gone(gone.id(), build.id()));
        });
        open.look((done, all) -> {});
        assertThat(heard).hasSize(1);
        journal.apply(Edit.change("mine", added, added.withTitle("Mine")));
        assertThat(file.resolveSibling("copied from elsewhere.json")).content().contains("Mine");
        assertThat(journal.lastDone()).map(Edit::what).contains("mine");
    }

    @Test
    void buildsComeAndGoAndTheirFoldersAreRenamed() throws IOException {
        var folder = open.folderOf(build);
        var renamed = Files.move(folder, folder.resolveSibling("heron of the club"));
        open.look((done, all) -> {});
        assertThat(journal.log(build.id())).containsExactly(entry);
        assertThat(open.folderOf(build)).isEqualTo(renamed);
        journal.apply(Edit.change("mine", entry, entry.withTitle("Mine")));
        assertThat(renamed.resolve(folder.relativize(file))).content().contains("Mine");

        var elsewhere = Files.move(renamed, temp.resolve("elsewhere"));
        open.look((done, all) -> {});
        assertThat(journal.builds()).isEmpty();
        assertThat(journal.log(build.id())).isEmpty();
        Files.move(elsewhere, folder);
        open.look((done, all) -> {});
        assertThat(journal.builds()).containsExactly(build);
        assertThat(journal.log(build.id())).extracting(EntryRecord::title).containsExactly("Mine");
    }

    @Test
    void aFileThatWasMovedToAnotherFolderOfItsBuildIsFoundThere() throws IOException {
        open.close();
        open = Bench.open(open.folder());
        var moved = Files.createDirectories(open.folderOf(build).resolve("entries/1999"));
        Files.move(file, moved.resolve(file.getFileName()));
        open.look((done, all) -> {});
        journal = open.journal();
        journal.apply(Edit.change("mine", entry, entry.withTitle("Mine")));
        assertThat(moved.resolve(file.getFileName())).content().contains("Mine");
        assertThat(file).doesNotExist();
    }

    @Test
    void whatIsWrittenWhileSomebodyWatchesIsTakenInAtOnce() throws Exception {
        open.watch();
        var titles = new LinkedBlockingQueue<String>();
        journal.listen(news -> news.present().forEach(each -> {
            if (each.record() instanceof EntryRecord present) {
                titles.add(present.title());
            }
        }));
        replace("First flight", "Second flight");
        assertThat(titles.poll(20, TimeUnit.SECONDS)).isEqualTo("Second flight");

        var crane = Bench.build("Red crane");
        var folder = Files.createDirectories(open.folder().resolve("builds/crane/entries/2025"));
        Files.writeString(folder.resolve("../../build.json").normalize(), JsonFiles.text(RecordFiles.json(crane)));
        var covered = Bench.entry(crane, "Covered");
        Files.writeString(folder.resolve(covered.id() + ".json"), text(covered));
        assertThat(titles.poll(20, TimeUnit.SECONDS)).isEqualTo("Covered");
        assertThat(journal.builds()).contains(crane);
    }

    /** The stick was pulled: what is shown stays, and nothing is taken for deleted. */
    @Test
    void aJournalThatCannotBeReachedLosesNothing() throws IOException {
        var away = Files.move(open.folder(), temp.resolve("away"));
        assertThatIOException()
                .isThrownBy(() -> open.look((done, all) -> {}))
                .withMessageContainingAll(open.folder().toString(), "stick");
        assertThatIOException().isThrownBy(() -> journal.apply(Edit.change("mine", entry, entry.withTitle("Mine"))));
        assertThat(journal.log(build.id())).containsExactly(entry);
        Files.move(away, open.folder());
        journal.apply(Edit.change("mine", entry, entry.withTitle("Mine")));
        open.look((done, all) -> {});
        assertThat(now().title()).isEqualTo("Mine");
    }

    private void replace(String there, String here) throws IOException {
        var text = Files.readString(file);
        assertThat(text).contains(there);
        Files.writeString(file, text.replace(there, here));
    }

    private EntryRecord now() {
        return journal.entry(build.id(), entry.id()).orElseThrow();
    }

    private static String text(EntryRecord entry) {
        return JsonFiles.text(RecordFiles.json(entry));
    }

    private static MeasurementRecord mass(String id, String name, String grams) {
        return new MeasurementRecord(id, name, new Written(grams, Units.GRAM, Optional.empty()), "");
    }
}
