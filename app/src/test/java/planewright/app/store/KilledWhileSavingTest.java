package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.ChildProgram;
import planewright.app.index.Hits.Hit;
import planewright.app.index.Question;
import planewright.app.index.SearchIndex;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.pictures.PictureShelf;

/**
 * Kills a program again and again while it works on a journal: what it acknowledged must be there, all be whole, and index and
 * catalogue say what the journal says.
 */
class KilledWhileSavingTest {
    /** The title of entries that lie in their first schema until they are changed. */
    static final String OLD = "old";

    private static final int KILLS = Integer.getInteger("planewright.kills", 20);
    private static final int KILLS_OF_A_JOURNAL = 25;

    private final long seed = Long.getLong("planewright.seed", System.nanoTime());
    private final Random random = new Random(seed);
    private final Map<String, Integer> acknowledged = new HashMap<>();
    private final Set<String> removed = new HashSet<>();
    private final Set<String> brought = new HashSet<>();
    private int saves;
    private int intakes;
    private int interrupted;

    @TempDir
    private Path temp;

    @Test
    void everyAcknowledgedSaveIsThereAndEveryFileReadable() throws IOException, InterruptedException {
        Path journal = null;
        for (int kill = 1; kill <= KILLS; kill++) {
            if (kill % KILLS_OF_A_JOURNAL == 1) {
                journal = makeJournal("journal" + kill);
            }
            saveAndKill(journal, kill * 10_000);
            interrupted += leftOvers(journal);
            check(journal, "kill " + kill + " of " + KILLS + ", seed " + seed);
        }
        assertThat(saves).as("saves in all, seed %d", seed).isGreaterThan(KILLS);
        assertThat(intakes).as("intakes, seed %d", seed).isPositive();
        System.out.println(KILLS + " kills, seed " + seed + ": " + saves + " acknowledged saves, " + intakes
                + " intakes, " + interrupted + " cut in the middle of a write");
    }

    /** One build, and more entries of the first schema than are changed between two kills. */
    private Path makeJournal(String name) throws IOException {
        var journal = temp.resolve(name).resolve("journal");
        acknowledged.clear();
        removed.clear();
        brought.clear();
        try (var folder = Bench.newJournal(journal)) {
            var build = Bench.build("Grey heron");
            folder.journal().apply(Edit.add("add build", build));
            for (int i = 0; i < 2 * KILLS_OF_A_JOURNAL; i++) {
                var entry = Bench.entry(build, OLD);
                folder.journal().apply(Edit.add("add", entry));
                var file = folder.folderOf(build).resolve(Names.pathOf(entry.id()));
                Files.writeString(file, Files.readString(file).replace("\"schema\": 2", "\"schema\": 1"));
            }
        }
        return journal;
    }

    private void saveAndKill(Path journal, int number) throws IOException, InterruptedException {
        try (var child =
                ChildProgram.start(SavingProgram.class, Map.of(), journal.toString(), Integer.toString(number))) {
            for (int left = 1 + random.nextInt(35); left > 0; left--) {
                note(child.line());
            }
            // a moment somewhere within the next saves
            for (int spins = random.nextInt(200_000); spins > 0; spins--) {
                Thread.onSpinWait();
            }
            child.kill();
            child.rest().forEach(this::note);
        }
    }

    private void note(String line) {
        var words = line == null ? new String[] {"ended"} : line.split(" ");
        if (words[0].equals("saved") && words.length == 3) {
            acknowledged.put(words[1], Integer.valueOf(words[2]));
            saves++;
        } else if (words[0].equals("removing") && words.length == 2) {
            acknowledged.remove(words[1]);
        } else if (words[0].equals("removed") && words.length == 2) {
            removed.add(words[1]);
        } else if (words[0].equals("brought") && words.length == 3) {
            brought.add(words[1] + " " + words[2]);
            intakes++;
        } else {
            throw new AssertionError("the saving program said: " + line + ", seed " + seed);
        }
    }

    private void check(Path journal, String when) throws IOException {
        var user = UserFolders.under(journal.resolveSibling("journal-user"));
        var known = new HashMap<String, List<EntryRecord>>();
        try (var folder = JournalFolder.openAsKnown(journal, user)) {
            folder.look((done, all) -> {});
            assertThat(folder.setAside()).as("set aside, %s", when).isEmpty();
            var open = folder.journal();
            checkRecords(open, when);
            checkIntakes(folder, when);
            checkIndex(journal, open, when);
            open.builds().forEach(build -> known.put(build.id(), open.log(build.id())));
        }
        try (var fresh = JournalFolder.open(journal, UserFolders.under(journal.resolveSibling(when)))) {
            assertThat(fresh.journal().builds())
                    .as(when)
                    .extracting(BuildRecord::id)
                    .containsExactlyElementsOf(known.keySet());
            known.forEach((build, log) -> assertThat(fresh.journal().log(build))
                    .as("without what was known before, %s", when)
                    .isEqualTo(log));
        }
        assertThat(leftOvers(journal))
                .as("unfinished files after opening, %s", when)
                .isZero();
    }

    private void checkRecords(OpenJournal open, String when) {
        var present = new HashMap<String, Integer>();
        for (var entry : open.log(open.builds().get(0).id())) {
            if (entry.title().matches("n\\d+")) {
                present.put(entry.id(), Integer.valueOf(entry.title().substring(1)));
            }
        }
        open.templates()
                .forEach(each ->
                        present.put(each.id(), Integer.valueOf(each.name().substring(1))));
        assertThat(present)
                .as("records, %s", when)
                .containsKeys(acknowledged.keySet().toArray(String[]::new));
        assertThat(present).as("removed ones, %s", when).doesNotContainKeys(removed.toArray(String[]::new));
        acknowledged.forEach((id, number) ->
                assertThat(present.get(id)).as("state of %s, %s", id, when).isGreaterThanOrEqualTo(number));
        // of the save under way when the program was killed, either state
        assertThat(present.size()).as("records, %s", when).isCloseTo(acknowledged.size(), within(1));
        acknowledged.clear();
        acknowledged.putAll(present);
    }

    private void checkIntakes(JournalFolder folder, String when) throws IOException {
        var found = new ArrayList<String>();
        for (var entry : folder.journal().log(folder.journal().builds().get(0).id())) {
            if (entry.title().startsWith("brought note ")) {
                found.add("notes " + entry.title().substring("brought note ".length()));
            }
            for (var measurement : entry.measurements()) {
                found.add("measurements " + measurement.name().substring("brought ".length()));
            }
            for (var picture : entry.pictures()) {
                var file = folder.pictures().file(picture);
                assertThat(PictureShelf.hash(file)).as("%s, %s", file, when).isEqualTo(picture.hash());
                found.add("pictures " + picture.hash());
            }
        }
        assertThat(found).as("brought in, %s", when).containsAll(brought);
    }

    /** The index belongs to the journal's place, as the program keeps it. */
    private void checkIndex(Path journal, OpenJournal open, String when) throws IOException {
        var log = open.log(open.builds().get(0).id());
        try (var index = SearchIndex.open(journal.resolveSibling("index"), open, (done, all) -> {})) {
            var sanded = log.stream()
                    .filter(entry -> entry.text().stream().anyMatch(text -> text.startsWith("Sanded")))
                    .map(EntryRecord::id)
                    .collect(Collectors.toSet());
            var found = index.find(Question.of("sanded ").most(10_000));
            assertThat(found.hits())
                    .as("found, %s", when)
                    .extracting(Hit::entryId)
                    .containsExactlyInAnyOrderElementsOf(sanded);
            var last =
                    log.stream().filter(entry -> entry.title().matches("n\\d+")).reduce((one, other) -> other);
            if (last.isPresent()) {
                assertThat(index.find(Question.of(last.get().title() + " ").most(5))
                                .hits())
                        .as("found by its title, %s", when)
                        .extracting(Hit::entryId)
                        .containsExactly(last.get().id());
            }
        }
    }

    private static int leftOvers(Path journal) throws IOException {
        try (Stream<Path> files = Files.walk(journal)) {
            return (int) files.filter(file -> file.toString().endsWith(".tmp")).count();
        }
    }
}
