package planewright.app.store;

import java.awt.image.BufferedImage;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import planewright.app.Bench;
import planewright.app.exchange.CsvForm;
import planewright.app.exchange.CsvMeasurements;
import planewright.app.exchange.DatedNotes;
import planewright.app.exchange.PictureFolder;
import planewright.app.exchange.Watch;
import planewright.app.index.Question;
import planewright.app.index.SearchIndex;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Kept;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.TemplateRecord;

/**
 * Works without end on a journal as its owner would: saves, deletes, brings back, brings in, keeps index and catalogue. It says
 * {@code saved ID NUMBER} after each save of a record, {@code removing ID} before and {@code removed ID} after a removal,
 * {@code brought KIND NUMBER} after something has come in.
 */
final class SavingProgram {
    private static final String FILLING = "Sanded, weighed, sanded again. ".repeat(300);

    private final Path place;
    private final Path inbox;
    private final OutputStream out;
    private int number;

    private SavingProgram(Path place, int number, OutputStream out) throws IOException {
        this.place = place;
        this.number = number;
        this.out = out;
        this.inbox = Files.createTempDirectory(place.getParent(), "inbox");
    }

    /** The words are the journal's folder and the first number. */
    public static void main(String[] words) throws IOException {
        try (var out = new FileOutputStream(FileDescriptor.out)) {
            var program = new SavingProgram(Path.of(words[0]), Integer.parseInt(words[1]), out);
            while (true) {
                program.openAndWork();
            }
        }
    }

    private void openAndWork() throws IOException {
        try (var folder = Bench.open(place);
                var index = SearchIndex.open(place.resolveSibling("index"), folder.journal(), (done, all) -> {})) {
            var build = folder.journal().builds().get(0);
            migrate(folder.journal(), build);
            for (int round = 0; round < 3; round++) {
                var first = saved(folder.journal(), null, entry(build));
                var passing = saved(folder.journal(), null, entry(build));
                saved(folder.journal(), first, first.withTitle(title()));
                template(folder.journal());
                remove(folder.journal(), passing);
                removeAndRestore(folder.journal(), first.id(), build);
                bringIn(folder, build);
                index.find(Question.of("sanded ").most(1));
            }
        }
    }

    private EntryRecord entry(BuildRecord build) {
        return Bench.entry(build, title()).withText(List.of(FILLING));
    }

    /** Old entries that have not been changed yet are brought to the schema of now by the first change. */
    private void migrate(OpenJournal journal, BuildRecord build) throws IOException {
        for (var entry : journal.log(build.id())) {
            if (entry.title().equals(KilledWhileSavingTest.OLD)) {
                saved(journal, entry, entry.withTitle(title()));
                return;
            }
        }
    }

    private void template(OpenJournal journal) throws IOException {
        var before = journal.templates().stream().findFirst();
        var after = before.orElse((TemplateRecord) Bench.full("procedure")).withName(title());
        journal.apply(Edit.put("template", before, after));
        say("saved " + after.id() + " " + number);
    }

    private <R extends Kept> R saved(OpenJournal journal, R before, R after) throws IOException {
        journal.apply(before == null ? Edit.add("add", after) : Edit.change("change", before, after));
        say("saved " + after.id() + " " + number);
        return after;
    }

    private void remove(OpenJournal journal, EntryRecord entry) throws IOException {
        say("removing " + entry.id());
        journal.apply(Edit.remove("remove", entry));
        say("removed " + entry.id());
    }

    private void removeAndRestore(OpenJournal journal, String id, BuildRecord build) throws IOException {
        var entry = journal.entry(build.id(), id).orElseThrow();
        say("removing " + id);
        journal.apply(Edit.remove("remove", entry));
        journal.undo();
        say("saved " + id + " " + entry.title().substring(1));
    }

    private void bringIn(JournalFolder folder, BuildRecord build) throws IOException {
        var journal = folder.journal();
        var day = LocalDate.of(2001, 1, 1).plusDays(++number % 9_000);
        var csv = Files.writeString(
                inbox.resolve("weights.csv"),
                "date,name,value,unit\n" + day + ",brought " + number + ",18,g\n" + day.plusDays(1) + ",brought "
                        + number + ",19,g\n");
        var form = new CsvForm(Map.of(), ',', Optional.empty());
        requireThings(
                CsvMeasurements.bring(journal, csv, form, name -> Optional.of(build), false, Watch.NONE)
                        .things(),
                2);
        say("brought measurements " + number);
        var note = Files.writeString(inbox.resolve("note.txt"), day + " brought note " + number + "\n\nSanded.\n");
        requireThings(DatedNotes.bring(journal, build, note, Watch.NONE).things(), 1);
        say("brought notes " + number);
        Files.delete(note);
        var pictures = Files.createDirectories(inbox.resolve("pictures"));
        var picture = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB);
        picture.setRGB(3, 3, number);
        ImageIO.write(picture, "png", pictures.resolve("picture.png").toFile());
        requireThings(
                PictureFolder.bring(
                                folder,
                                build,
                                pictures,
                                Optional.of(day),
                                day.plusDays(2).atStartOfDay(),
                                Watch.NONE)
                        .things(),
                1);
        say("brought pictures "
                + folder.pictures().check(pictures.resolve("picture.png")).hash());
    }

    private static void requireThings(int things, int wanted) {
        if (things != wanted) {
            throw new IllegalStateException(things + " things came in instead of " + wanted);
        }
    }

    /** In one write, so that a line is said wholly or not at all. */
    private void say(String line) throws IOException {
        out.write((line + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private String title() {
        return "n" + ++number;
    }
}
