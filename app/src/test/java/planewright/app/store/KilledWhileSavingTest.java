package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.ChildProgram;
import planewright.app.journal.Edit;

/** Kills a program again and again while it saves into one journal: what it acknowledged must be there, and all be whole. */
class KilledWhileSavingTest {
    private static final int KILLS = Integer.getInteger("planewright.kills", 20);

    private final long seed = Long.getLong("planewright.seed", System.nanoTime());
    private final Random random = new Random(seed);
    private final Map<String, Integer> acknowledged = new HashMap<>();
    private final Set<String> removed = new HashSet<>();
    private int saves;
    private int interrupted;

    @TempDir
    private Path temp;

    @Test
    void everyAcknowledgedSaveIsThereAndEveryFileReadable() throws IOException, InterruptedException {
        var journal = temp.resolve("journal");
        try (var folder = Bench.newJournal(journal)) {
            folder.journal().apply(Edit.add("add build", Bench.build("Grey heron")));
        }
        for (int kill = 1; kill <= KILLS; kill++) {
            saveAndKill(journal, kill * 1_000_000);
            interrupted += leftOvers(journal);
            check(journal, "kill " + kill + " of " + KILLS + ", seed " + seed);
        }
        assertThat(saves).as("saves in all, seed %d", seed).isGreaterThan(KILLS);
        System.out.println(KILLS + " kills, seed " + seed + ": " + saves + " acknowledged saves, " + interrupted
                + " cut in the middle of a write");
    }

    private void saveAndKill(Path journal, int number) throws IOException, InterruptedException {
        try (var child =
                ChildProgram.start(SavingProgram.class, Map.of(), journal.toString(), Integer.toString(number))) {
            for (int left = 1 + random.nextInt(30); left > 0; left--) {
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
        } else {
            throw new AssertionError("the saving program said: " + line + ", seed " + seed);
        }
    }

    private void check(Path journal, String when) throws IOException {
        try (var folder = Bench.open(journal)) {
            assertThat(folder.setAside()).as("set aside, %s", when).isEmpty();
            var log = folder.journal().log(folder.journal().builds().get(0).id());
            var present = new HashMap<String, Integer>();
            for (var entry : log) {
                assertThat(entry.text())
                        .as("text, %s", when)
                        .singleElement()
                        .satisfies(text -> assertThat(text).hasSize(9_300));
                present.put(entry.id(), Integer.valueOf(entry.title()));
            }
            assertThat(present)
                    .as("entries, %s", when)
                    .containsKeys(acknowledged.keySet().toArray(String[]::new));
            assertThat(present).as("removed ones, %s", when).doesNotContainKeys(removed.toArray(String[]::new));
            acknowledged.forEach((id, number) ->
                    assertThat(present.get(id)).as("state of %s, %s", id, when).isGreaterThanOrEqualTo(number));
            // of the save under way when the program was killed, either state
            assertThat(present.size()).as("entries, %s", when).isCloseTo(acknowledged.size(), within(1));
            acknowledged.clear();
            acknowledged.putAll(present);
        }
        assertThat(leftOvers(journal))
                .as("unfinished files after opening, %s", when)
                .isZero();
    }

    private static int leftOvers(Path journal) throws IOException {
        try (Stream<Path> files = Files.walk(journal)) {
            return (int) files.filter(file -> file.toString().endsWith(".tmp")).count();
        }
    }
}
