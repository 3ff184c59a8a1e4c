package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import planewright.app.Bench;
import planewright.app.disk.Disk;
import planewright.app.disk.PowerCut;
import planewright.app.disk.PowerCut.Carelessness;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Kept;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.PictureRecord;
import planewright.app.journal.TemplateRecord;
import planewright.app.pictures.PictureShelf;

/**
 * The power goes after any step of saving: what was acknowledged before is there, and nothing is torn. The same test sees the
 * loss when the program is thought to leave out what it does for that.
 */
class PowerCutTest {
    private static final int CUTS = Integer.getInteger("planewright.cuts", 100);

    /** A cut within one write tears it once in four, so that a care that matters is missed all but surely. */
    private static final int ROUNDS = 20;

    private final long seed = Long.getLong("planewright.seed", System.nanoTime());
    private final Random random = new Random(seed);
    private final BuildRecord build = Bench.build("Grey heron");
    private final EntryRecord old = Bench.entry(build, "Of schema one");
    private final List<Moment> moments = new ArrayList<>();

    @TempDir
    private Path temp;

    private PowerCut power;

    /** What the journal held once so many steps were made; it was acknowledged by then. */
    private record Moment(int steps, Map<String, Kept> records) {}

    @BeforeEach
    void work() throws IOException {
        var real = temp.resolve("journal");
        try (var open = Bench.newJournal(real)) {
            open.journal().apply(Edit.add("build", build));
            open.journal().apply(Edit.add("entry", old));
        }
        replace(Bench.only(real, old.id() + ".json"), "\"schema\": 2", "\"schema\": 1");
        replace(real.resolve(JournalFolder.HEAD), "\"minReader\": 3", "\"minReader\": 1");
        power = new PowerCut(real);
        try (var open = JournalFolder.open(Disk.at(real, power), UserFolders.under(temp.resolve("user")))) {
            acknowledge(open.journal());
            apply(open, Edit.change("migrate", old, old.withTitle("Of schema two")));
            var heron = Bench.entry(build, "First");
            apply(open, Edit.add("add", heron));
            apply(open, Edit.change("change", heron, heron.withTitle("Second")));
            var picture = open.pictures().add(new BufferedImage(20, 20, BufferedImage.TYPE_INT_RGB), "fin");
            apply(open, Edit.add("add", Bench.entry(build, "With a picture").withPictures(List.of(picture))));
            apply(open, Edit.remove("remove", heron.withTitle("Second")));
            open.journal().undo();
            acknowledge(open.journal());
            apply(open, Edit.add("another", Bench.build("Crane")));
            var template = (TemplateRecord) Bench.full("procedure");
            apply(open, Edit.add("template", template));
            apply(open, Edit.change("template", template, template.withName("Another name")));
            apply(open, Edit.add("calendar", Bench.full("calendar")));
            apply(open, new Edit("two", List.of(added("One"), added("Other"))));
            open.journal().undo();
            acknowledge(open.journal());
        }
    }

    private static void replace(Path file, String what, String by) throws IOException {
        assertThat(file).content().contains(what);
        Files.writeString(file, Files.readString(file).replace(what, by));
    }

    private Edit.Change added(String title) {
        return new Edit.Change(Optional.empty(), Optional.of(Bench.entry(build, title)));
    }

    private void apply(JournalFolder open, Edit edit) throws IOException {
        open.journal().apply(edit);
        acknowledge(open.journal());
    }

    private void acknowledge(OpenJournal journal) {
        moments.add(new Moment(power.steps(), records(journal)));
    }

    private static Map<String, Kept> records(OpenJournal journal) {
        var records = new HashMap<String, Kept>();
        for (var each : journal.builds()) {
            records.put(each.id(), each);
            journal.log(each.id()).forEach(entry -> records.put(entry.id(), entry));
        }
        journal.templates().forEach(each -> records.put(each.id(), each));
        journal.calendar().ifPresent(each -> records.put(each.id(), each));
        return records;
    }

    @Test
    void whateverWasAcknowledgedIsThere() throws IOException {
        for (int cut = 0; cut < CUTS; cut++) {
            int steps = begun() + random.nextInt(power.steps() - begun() + 1);
            assertThat(loss(steps, Carelessness.NONE))
                    .as("cut %d, seed %d", cut, seed)
                    .isEmpty();
        }
        System.out.println(CUTS + " power cuts within " + power.steps() + " steps, seed " + seed + ": nothing lost");
    }

    /** Every step is tried until one loses something, as only few of them matter to some cares. */
    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "NONE")
    void eachCareIsMissedWhenItIsLeftOut(Carelessness carelessness) throws IOException {
        int lost = 0;
        for (int round = 0; round < ROUNDS && lost == 0; round++) {
            for (int steps = begun(); steps <= power.steps(); steps++) {
                lost += loss(steps, carelessness).isPresent() ? 1 : 0;
            }
        }
        assertThat(lost).as("steps with a loss, seed %d", seed).isPositive();
        System.out.println(carelessness + ": cuts at " + lost + " steps lost something, seed " + seed);
    }

    private int begun() {
        return moments.get(0).steps();
    }

    /** What is lost when the power goes after so many steps; empty where nothing is. */
    private Optional<String> loss(int steps, Carelessness carelessness) throws IOException {
        var folder = Files.createTempDirectory(temp, "cut");
        power.leave(steps, carelessness, random, folder);
        int now = 0;
        while (now + 1 < moments.size() && moments.get(now + 1).steps() <= steps) {
            now++;
        }
        var sure = moments.get(now).records();
        var perhaps = moments.get(Math.min(now + 1, moments.size() - 1)).records();
        try (var open = Bench.open(folder)) {
            return open.setAside().isEmpty()
                    ? difference(open, sure, perhaps)
                    : Optional.of("set aside " + open.setAside());
        } catch (JournalRefused refused) {
            return Optional.of(refused.getMessage());
        }
    }

    /** Of the edit under way, each record may be as it was or as it was to be. */
    private static Optional<String> difference(JournalFolder open, Map<String, Kept> sure, Map<String, Kept> perhaps) {
        var found = records(open.journal());
        var ids = new HashSet<>(found.keySet());
        ids.addAll(sure.keySet());
        for (var id : ids) {
            var record = found.get(id);
            if (!Objects.equals(record, sure.get(id)) && !Objects.equals(record, perhaps.get(id))) {
                return Optional.of(id + " is " + record + " instead of " + sure.get(id));
            }
            if (record instanceof EntryRecord entry) {
                for (var picture : entry.pictures()) {
                    if (!isSound(open, picture)) {
                        return Optional.of("picture " + picture.hash());
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isSound(JournalFolder open, PictureRecord picture) {
        try {
            return PictureShelf.hash(open.pictures().file(picture)).equals(picture.hash());
        } catch (IOException missing) {
            return false;
        }
    }
}
